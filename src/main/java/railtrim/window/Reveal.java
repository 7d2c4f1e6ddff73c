package railtrim.window;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls just far enough that a node is seen whole, its top first. */
final class Reveal {
    private Reveal() {}

    static void within(ScrollPane scroll, Node node) {
        scroll.applyCss();
        scroll.layout();
        Node content = scroll.getContent();
        Bounds at = content.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        double view = scroll.getViewportBounds().getHeight();
        double hidden = content.getBoundsInLocal().getHeight() - view;
        if (hidden <= 0) {
            return;
        }
        double top = scroll.getVvalue() * hidden;
        if (at.getMaxY() > top + view) {
            top = at.getMaxY() - view;
        }
        top = Math.min(top, at.getMinY());
        scroll.setVvalue(Math.max(0, Math.min(1, top / hidden)));
    }
}
