package railtrim.window;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** What to do when a reading does not fit: shown as soon as one did not. */
final class Outside {
    private final Words words;
    private final Desk desk;
    private final Label text = Build.prose("", "outside-text");
    private final VBox box;

    Outside(Words words, Desk desk) {
        this.words = words;
        this.desk = desk;
        box = Build.column("outside", Build.prose(words.of("window.outside"), "outside-title"), text);
        Handle.give(box, "outside");
    }

    Node node() {
        return box;
    }

    void show(StepState step, boolean working) {
        boolean odd = step.step().fields().stream()
                .flatMap(field -> desk.said(field.id()).stream())
                .anyMatch(verdict -> !(verdict instanceof Verdict.Accept));
        boolean blocked = step.findings().stream().anyMatch(finding -> finding.blocks());
        text.setText(words.of("step." + step.step().id() + ".outside"));
        Build.present(box, working && (odd || blocked));
    }
}
