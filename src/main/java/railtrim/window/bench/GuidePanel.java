package railtrim.window.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.RailSign;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** What a teacher would say at the bench: a hint when asked, a fresh start, and at the end what the board was there to teach. */
final class GuidePanel implements BenchView.Panel {
    private final Words words;
    private final Workbench work;
    private final Supplier<Course> course;
    private final Label hint = Build.prose("", "bench-hint");
    private final Label lesson = Build.prose("", "bench-lesson");
    private final VBox box;
    private String asked = "";

    /** @param again lays out the same board afresh */
    GuidePanel(Words words, Workbench work, Supplier<Course> course, Runnable again, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.course = course;
        Handle.give(hint, "bench-hint-text");
        Handle.give(lesson, "bench-lesson");
        FlowPane row = new FlowPane(
                Build.button(
                        "bench-hint",
                        words.of("window.bench.hint"),
                        () -> deed.accept(() -> asked = now()),
                        "plain",
                        "bench-small"),
                Build.button("bench-again", words.of("window.bench.afresh"), again, "plain", "bench-small"));
        row.getStyleClass().add("bench-flow");
        box = Build.column("bench-panel", row, hint, lesson);
    }

    @Override
    public Node node() {
        return box;
    }

    /** A hint stays until the question it was for is answered. */
    @Override
    public void show() {
        boolean wanted = !asked.isEmpty() && asked.equals(now());
        hint.setText(wanted ? hint() : "");
        Build.present(hint, wanted);
        boolean over = ended();
        lesson.setText(over ? lesson() : "");
        Build.present(lesson, over);
    }

    private boolean ended() {
        State state = course.get().state();
        return state.complete()
                || state.card().filter(State.Card.Stop.class::isInstance).isPresent();
    }

    private String lesson() {
        String taught = words.of("practice.lesson", work.bench().board().label().teaches());
        String told = taught + " " + truth();
        told += work.mishaps().isEmpty()
                ? words.of("window.bench.lesson.clean")
                : words.of("window.bench.lesson.mishaps", mishaps());
        for (Bench.Manner manner : List.of(Bench.Manner.TOUCH, Bench.Manner.PLENTY)) {
            if (work.careless(manner)) {
                told += " " + words.of("window.bench.lesson." + manner.name().toLowerCase(Locale.ROOT));
            }
        }
        return told;
    }

    /** What was hidden until the job was done; nothing where it was stopped, for then nobody looked for it. */
    private String truth() {
        State state = course.get().state();
        if (!state.complete()) {
            return "";
        }
        Bench bench = work.bench();
        Board.Failing failing = bench.board().failing();
        RailSign sign = state.figures().sign();
        return words.of(
                        "window.bench.lesson.truth",
                        sign.volts(failing.hot()),
                        sign.volts(failing.cold()),
                        sign.volts(bench.trueUnderLoad()))
                + " ";
    }

    private String mishaps() {
        return work.mishaps().stream()
                .map(each -> words.of("window.bench.lesson.mishap."
                        + each.name().toLowerCase(Locale.ROOT).replace('_', '-')))
                .collect(Collectors.joining(", "));
    }

    /** The question that is open now: a card's, a caution's or the step's next field. */
    private String now() {
        State state = course.get().state();
        if (state.card().isPresent()) {
            return state.card().get().getClass().getSimpleName();
        }
        State.StepState current = state.current();
        List<String> open = current.open().isEmpty() ? current.missing() : current.open();
        return current.step().id() + ":" + open.stream().findFirst().orElse("");
    }

    private String hint() {
        State state = course.get().state();
        if (state.card().isPresent()) {
            return words.of("window.bench.hint.card");
        }
        State.StepState current = state.current();
        if (!current.open().isEmpty()) {
            return words.of("window.bench.hint.caution");
        }
        Optional<Field> field = current.missing().stream()
                .findFirst()
                .flatMap(id -> course.get().field(id));
        return words.of("window.bench.hint."
                + field.map(each -> Hints.of(each, state.figures())).orElse("trouble"));
    }
}
