package railtrim.window.kit;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Short ways to make the nodes every view is made of. */
public final class Build {
    private Build() {}

    public static Label label(String text, String... classes) {
        Label label = new Label(text);
        label.getStyleClass().addAll(classes);
        return label;
    }

    /** A label of running text that may take several lines and is never cut short. */
    public static Label prose(String text, String... classes) {
        Label label = new Prose(text);
        label.getStyleClass().addAll(classes);
        return label;
    }

    public static Button button(String id, String text, Runnable pressed, String... classes) {
        Button button = new Button(text);
        button.setMnemonicParsing(true);
        button.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        return dress(button, id, text.replace("_", ""), pressed, classes);
    }

    public static <B extends ButtonBase> B dress(
            B button, String id, String name, Runnable pressed, String... classes) {
        Handle.give(button, id);
        button.setAccessibleText(name);
        button.setOnAction(event -> pressed.run());
        button.getStyleClass().addAll(classes);
        return button;
    }

    public static VBox column(String styleClass, Node... children) {
        VBox box = new Column(children);
        box.getStyleClass().add(styleClass);
        return box;
    }

    public static HBox row(String styleClass, Node... children) {
        HBox box = new Row(children);
        box.getStyleClass().add(styleClass);
        return box;
    }

    /** Puts nodes into a box; those that are there stay, so that none loses the focus. @param wanted in an order that never changes */
    public static void lay(Pane box, List<Node> wanted) {
        List<Node> there = box.getChildren();
        there.removeIf(node -> !wanted.contains(node));
        for (int i = 0; i < wanted.size(); i++) {
            if (i == there.size() || there.get(i) != wanted.get(i)) {
                there.add(i, wanted.get(i));
            }
        }
    }

    public static Region spring() {
        Region region = new Region();
        HBox.setHgrow(region, Priority.ALWAYS);
        return region;
    }

    /** Shows a node and gives it room, or takes both away. */
    public static void present(Node node, boolean present) {
        node.setVisible(present);
        node.setManaged(present);
    }
}
