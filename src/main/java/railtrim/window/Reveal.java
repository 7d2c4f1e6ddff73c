package railtrim.window;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls just far enough that a node, which has its styles already, is seen whole; of one that is higher than the room, its top, or what has the focus in it. */
final class Reveal {
    /** Room for the mark of the focus and the tails of letters, pixels. */
    private static final double BELOW = 4;

    private Reveal() {}

    private static Bounds in(Node content, Node node) {
        return content.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    }

    static void within(ScrollPane scroll, Node node) {
        reveal(scroll, node, false);
    }

    /** Its end before its top, for what is said about an entry stands below it; but never so far that the entry with the focus is out of sight. */
    static void endOf(ScrollPane scroll, Node node) {
        reveal(scroll, node, true);
    }

    /** Whether both can be seen at once, with all that stands between them. */
    static boolean roomFor(ScrollPane scroll, Node upper, Node lower) {
        scroll.layout();
        Node content = scroll.getContent();
        double height = in(content, lower).getMaxY() - in(content, upper).getMinY();
        return height <= scroll.getViewportBounds().getHeight();
    }

    private static void reveal(ScrollPane scroll, Node node, boolean endFirst) {
        Node content = scroll.getContent();
        if (node.getScene() == null || node.getScene() != scroll.getScene()) {
            return;
        }
        scroll.layout();
        Bounds at = in(content, node);
        double view = scroll.getViewportBounds().getHeight();
        double hidden = content.getBoundsInLocal().getHeight() - view;
        if (hidden <= 0) {
            return;
        }
        double top = scroll.getVvalue() * hidden;
        if (at.getMaxY() + BELOW > top + view) {
            top = at.getMaxY() + BELOW - view;
        }
        top = Math.min(top, at.getMinY());
        boolean focus = node.isFocusWithin();
        Bounds entry = focus ? in(content, node.getScene().getFocusOwner()) : at;
        if (at.getHeight() > view && endFirst) {
            top = focus ? Math.min(at.getMaxY() - view, entry.getMinY() - BELOW) : at.getMaxY() - view;
        } else if (at.getHeight() > view && focus) {
            top = Math.max(top, entry.getMaxY() + BELOW - view);
        }
        scroll.setVvalue(Math.max(0, Math.min(1, top / hidden)));
    }
}
