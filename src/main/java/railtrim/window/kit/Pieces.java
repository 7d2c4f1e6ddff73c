package railtrim.window.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;

/** A tree of nodes taken apart, to be put together again piece by piece where all of it at once would take too long. */
public final class Pieces {
    /** A pane with fewer nodes in it stays whole. */
    private static final int SMALL = 12;

    private final List<Runnable> steps = new ArrayList<>();

    private Pieces() {}

    /** @return what puts one piece back each, outermost first */
    public static List<Runnable> of(Parent whole) {
        Pieces pieces = new Pieces();
        pieces.take(whole);
        return List.copyOf(pieces.steps);
    }

    private void take(Node node) {
        if (node instanceof ScrollPane scroll) {
            take(scroll.getContent());
        } else if (node instanceof Pane pane && !(node instanceof BorderPane) && size(node) >= SMALL) {
            List<Node> children = List.copyOf(pane.getChildren());
            pane.getChildren().clear();
            for (Node child : children) {
                steps.add(() -> putBack(pane, child));
                take(child);
            }
        }
    }

    /** A page that fits itself to its room may have done so already. */
    private static void putBack(Pane pane, Node child) {
        if (!pane.getChildren().contains(child)) {
            pane.getChildren().add(child);
        }
    }

    private static int size(Node node) {
        int size = 1;
        if (node instanceof ScrollPane scroll) {
            size += size(scroll.getContent());
        } else if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                size += size(child);
            }
        }
        return size;
    }
}
