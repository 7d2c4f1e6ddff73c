package railtrim.window.kit;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/**
 * Content as it is while there is room for it, and in a scroll pane once there is not. A scroll pane costs a sixth of the styling of the first
 * page, whether it scrolls or not, and is painted into a picture of its own first.
 */
public final class SparingScroll extends StackPane {
    private final Region content;
    private ScrollPane scroll;

    public SparingScroll(Region content, String styleClass) {
        super(content);
        this.content = content;
        getStyleClass().add(styleClass);
    }

    @Override
    protected void layoutChildren() {
        boolean fits = content.minWidth(-1) <= getWidth() && content.minHeight(getWidth()) <= getHeight();
        if (fits != (content.getParent() == this)) {
            Node focused = getScene() == null ? null : getScene().getFocusOwner();
            move(fits);
            // What leaves the window, even for a moment, loses the focus.
            if (focused != null && focused.getScene() == getScene()) {
                focused.requestFocus();
            }
        }
        super.layoutChildren();
    }

    private void move(boolean fits) {
        if (fits) {
            scroll.setContent(null);
            getChildren().setAll(content);
        } else {
            getChildren().setAll(scrolled());
            // Made in the middle of a layout, it would be painted empty once.
            scroll.applyCss();
        }
    }

    private ScrollPane scrolled() {
        if (scroll == null) {
            scroll = new PlainScroll();
            scroll.setFitToWidth(true);
            scroll.setFitToHeight(true);
            scroll.setFocusTraversable(false);
            scroll.getStyleClass().addAll(getStyleClass());
        }
        getChildren().clear();
        scroll.setContent(content);
        return scroll;
    }

    /** It takes the room it is given. */
    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }
}
