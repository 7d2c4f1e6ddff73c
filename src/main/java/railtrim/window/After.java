package railtrim.window;

import java.util.List;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** Below a step: that it is done, and doing it again; or leaving it out, where that is allowed. */
final class After {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    private final Words words;
    private final Desk desk;
    private final Sheet sheet;
    private final VBox box = Build.column("after");
    private final Label done = Build.prose("", "done-line");
    private final Button again;
    private final Button skip;
    private final Button takeBack;

    After(Words words, Desk desk, Sheet sheet) {
        this.words = words;
        this.desk = desk;
        this.sheet = sheet;
        again = Build.button("again", words.of("window.again"), this::askAgain, "plain");
        skip = Build.button("skip", words.of("window.skip"), this::askSkip, "link");
        takeBack =
                Build.button("take-back", words.of("window.take-back"), new TakeBack(words, desk, sheet)::ask, "link");
        Handle.give(done, "done-line");
    }

    Node node() {
        return box;
    }

    /** The line that says the step is done, which is shown where nothing is to be worked on. */
    Node firstSaid() {
        return done;
    }

    void show(StepState step, boolean working) {
        box.getChildren().clear();
        if (!working) {
            boolean stale = desk.lookingAtStale();
            done.setText(
                    words.of(stale ? "window.done.stale" : desk.lookingBack() ? "window.done.before" : "window.done"));
            done.pseudoClassStateChanged(STALE, stale);
            done.setGraphic((stale ? Icon.AGAIN : Icon.TICK).draw(18));
            box.getChildren().addAll(done, again);
            desk.said("reopen")
                    .filter(Verdict.Refuse.class::isInstance)
                    .map(Verdict.Refuse.class::cast)
                    .ifPresent(refused -> refused.says()
                            .forEach(why -> box.getChildren().add(Build.prose(words.of(why), "verdict-bad"))));
        } else if (step.step().skippable()) {
            box.getChildren().add(skip);
        }
        boolean lastWasHere = desk.course()
                .lastEntry()
                .filter(each -> each.fact().step().equals(step.step().id()))
                .isPresent();
        if (lastWasHere) {
            box.getChildren().add(takeBack);
        }
        Build.present(box, !box.getChildren().isEmpty());
    }

    private void askAgain() {
        StepState step = desk.shown();
        List<String> falls = desk.course().relocks(step.step().id()).stream()
                .map(each -> words.of("step." + each.id() + ".title"))
                .toList();
        TextField reason = reason("again-reason");
        VBox body = Build.column("sheet-body");
        body.getChildren()
                .add(Build.prose(
                        falls.isEmpty()
                                ? words.of("window.again.none")
                                : words.of("window.again.falls", String.join("; ", falls)),
                        "sheet-text"));
        body.getChildren().addAll(Build.prose(words.of("window.again.reason"), "field-label"), reason);
        Button keep = Build.button("again-keep", words.of("window.again.keep"), sheet::close, "plain");
        Button go = Build.button(
                "again-go",
                words.of("window.again.go"),
                () -> {
                    sheet.close();
                    desk.reopen(step.step().id(), reason.getText().strip());
                },
                "primary");
        sheet.ask(words.of("window.again.title", words.of("step." + step.step().id() + ".title")), body, keep, go);
    }

    private void askSkip() {
        TextField reason = reason("skip-reason");
        VBox body = Build.column(
                "sheet-body",
                Build.prose(words.of("window.skip.text"), "sheet-text"),
                Build.prose(words.of("window.skip.reason"), "field-label"),
                reason);
        Button keep = Build.button("skip-keep", words.of("window.skip.keep"), sheet::close, "plain");
        Button go = Build.button(
                "skip-go",
                words.of("window.skip.go"),
                () -> {
                    sheet.close();
                    desk.skip(reason.getText().strip());
                },
                "primary");
        go.disableProperty().bind(reason.textProperty().map(text -> text.strip().length() < 3));
        sheet.ask(words.of("window.skip.title"), body, keep, go);
    }

    private TextField reason(String id) {
        TextField field = new TextField();
        Handle.give(field, id);
        field.setAccessibleText(words.of("window.again.reason"));
        field.getStyleClass().add("first-focus");
        return field;
    }
}
