package railtrim.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/**
 * Where there is no room for both, step and picture share one place, with a button for each above it. The step comes to the front whenever it asks for
 * something new, and while cautions wait there is no way round them.
 */
final class OneColumn {
    private final Node step;
    private final Node side;
    private final ToggleButton toStep;
    private final ToggleButton toSide;
    private final Node buttons;
    private final VBox column = new VBox();
    private String front = "";
    private boolean stepAlone;

    OneColumn(Words words, Node step, Node side, String sideWord) {
        this.step = step;
        this.side = side;
        this.toStep = button("column-step", words.of("window.tab.step"));
        this.toSide = button("column-side", sideWord);
        SegmentedButton both = new SegmentedButton(toStep, toSide);
        this.buttons = Build.row("column-buttons", Build.spring(), both);
        VBox.setVgrow(step, Priority.ALWAYS);
        VBox.setVgrow(side, Priority.ALWAYS);
        toStep.setSelected(true);
    }

    private ToggleButton button(String id, String word) {
        ToggleButton button = new ToggleButton(word);
        return Build.dress(button, id, word, this::lay);
    }

    Node node() {
        lay();
        return column;
    }

    /** @param asked changes when the person has to look at the step, {@code alone} while there is no way round it */
    void show(String asked, boolean alone) {
        if (!asked.equals(front)) {
            front = asked;
            toStep.setSelected(true);
        }
        stepAlone = alone;
        if (!column.getChildren().isEmpty()) {
            lay();
        }
    }

    /** The nodes are needed elsewhere. */
    void leave() {
        column.getChildren().clear();
    }

    private void lay() {
        Build.present(buttons, !stepAlone);
        Node shown = toSide.isSelected() && !stepAlone ? side : step;
        if (!column.getChildren().equals(List.of(buttons, shown))) {
            column.getChildren().setAll(buttons, shown);
        }
    }
}
