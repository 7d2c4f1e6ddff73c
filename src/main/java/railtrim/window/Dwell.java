package railtrim.window;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.LongConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.kit.Icon;

/** The timer of a step that has to be waited through: when it began, when it ends, how long is left. */
final class Dwell {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

    private final Words words;
    private final Desk desk;
    private final Label left = Build.prose("", "dwell-left");
    private final Label span = Build.prose("", "dwell-span");
    private final Label missed;
    private final Label broken = Build.prose("", "dwell-span");
    private final ProgressBar bar = new ProgressBar();
    private final VBox box;

    Dwell(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        Handle.give(left, "dwell");
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setFocusTraversable(false);
        bar.setAccessibleText(words.of("window.dwell.bar"));
        left.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(left, Priority.ALWAYS);
        HBox head = Build.row("dwell-head", Icon.CLOCK.draw(20), left);
        desk.pass()
                .ifPresent(pass -> head.getChildren()
                        .add(Build.button("wait", words.of("window.dwell.pass"), () -> passOver(pass), "plain")));
        missed = Build.prose(words.of("window.dwell.missed"), "dwell-span");
        // One in the place of the other, both with the room of the longer: answers below must not jump under the hand.
        StackPane under = new StackPane(span, missed);
        StackPane.setAlignment(span, Pos.TOP_LEFT);
        StackPane.setAlignment(missed, Pos.TOP_LEFT);
        box = Build.column("dwell", head, bar, under, broken);
    }

    Node node() {
        return box;
    }

    void show() {
        StepState step = desk.shown();
        long whole = step.step().dwellSeconds();
        boolean shown = whole > 0 && desk.working() && step.open().isEmpty();
        Build.present(box, shown);
        if (!shown) {
            return;
        }
        Optional<Message> brokenOff = brokenOff(step);
        broken.setText(brokenOff.map(words::of).orElse(""));
        Build.present(broken, brokenOff.isPresent());
        long remaining = desk.course().dwellLeft();
        left.setText(
                remaining > 0
                        ? words.of("window.dwell.left", minutes(remaining))
                        : words.of("window.dwell.over", minutes(whole)));
        bar.setProgress(1 - (double) remaining / whole);
        Instant end = desk.now().plusSeconds(remaining);
        span.setText(words.of("window.dwell.span", clock(end.minusSeconds(whole)), clock(end)));
        span.setVisible(remaining > 0);
        missed.setVisible(remaining <= 0);
    }

    /** What was not seen of a wait that was broken off belongs beside the timer, not among the findings below the fields. */
    static Optional<Message> brokenOff(StepState step) {
        return step.findings().stream()
                .map(Step.Finding::message)
                .filter(message -> message.key().equals("dwell.broken-off"))
                .findFirst();
    }

    private void passOver(LongConsumer pass) {
        pass.accept(desk.course().dwellLeft());
        desk.changed();
    }

    private static String minutes(long seconds) {
        return String.format(java.util.Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    private static String clock(Instant at) {
        return CLOCK.format(at.atZone(ZoneId.systemDefault()));
    }
}
