package railtrim.window.bench;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.PlainScroll;

/** The whole bench, top to bottom: the meter, which stays in sight, the board with its probes, power and load, the iron and the parts. */
public final class BenchView {
    /** One part of the bench in the window. */
    interface Panel {
        javafx.scene.Node node();

        void show();
    }

    private final Words words;
    private final Workbench work;
    private final List<Panel> panels;
    private final Label mishap = Build.prose("", "bench-mishap");
    private final ScrollPane scroll;
    private final VBox whole;
    private Runnable changed = () -> {};

    /** @param course what the job has chosen, and what it asks; @param again lays out the same board afresh */
    public BenchView(Words words, Bench bench, Supplier<Course> course, Runnable again) {
        this.words = words;
        work = new Workbench(bench, words);
        MeterFace face = new MeterFace(words, work, this::deed);
        List<Panel> below = List.of(
                new GuidePanel(words, work, course, again, this::deed),
                new MeterPanel(words, work, this::deed),
                new BoardPanel(words, work, this::deed),
                new PowerPanel(words, work, this::deed),
                new PartsPanel(words, work, () -> course.get().state().figures(), this::deed));
        panels = Stream.concat(Stream.of(face), below.stream()).toList();
        Handle.give(mishap, "mishap");
        VBox column = Build.column("bench", mishap);
        below.stream().map(Panel::node).forEach(column.getChildren()::add);
        scroll = new PlainScroll(column);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("step-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        whole = Build.column("bench-whole", face.node(), scroll);
        show();
    }

    public javafx.scene.Node node() {
        return whole;
    }

    /** Told after each deed on the bench, for time goes on with it. */
    public void onDeed(Runnable listener) {
        changed = listener;
    }

    /** Lets time go by, as from elsewhere in the window. */
    public void pass(long seconds) {
        work.pass(seconds);
        show();
    }

    /** Draws the bench again, for the job or the bench may have changed. */
    public void show() {
        String said = work.mishap().map(this::told).orElse("");
        if (!said.isEmpty() && !said.equals(mishap.getText())) {
            scroll.setVvalue(0);
        }
        mishap.setText(said);
        Build.present(mishap, work.mishap().isPresent());
        panels.forEach(Panel::show);
    }

    /** What happened; where the voltage was too high also how it came to that, and which check of the wizard finds it in time. */
    private String told(Bench.Mishap what) {
        Bench bench = work.bench();
        String happened = words.of(
                "window.bench.mishap."
                        + what.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                Display.volts(bench.highestSeen()),
                Display.volts(bench.board().failing().damage()));
        if (what != Bench.Mishap.DAMAGED && what != Bench.Mishap.ABOVE_STOCK) {
            return happened;
        }
        String where = bench.bridged()
                .or(work::soldered)
                .map(pair -> Pads.print(words, pair))
                .orElse("");
        return happened + " " + words.of("window.bench.blame." + Blame.of(bench, work.soldered()), where);
    }

    private void deed(Runnable work) {
        work.run();
        changed.run();
        show();
    }
}
