package railtrim.window.kit;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;
import javafx.scene.control.skin.ScrollPaneSkin;

/**
 * What scrolls, painted straight into the window. The toolkit paints what a scroll pane holds into a picture of its own first, all of it whatever has
 * changed, and that picture into the window: good where the same thing is scrolled for long, and a fifth of the painting where each step brings another.
 * And the pictures of panes that are gone stay in the store of its effects until the memory is full, a megabyte or more for each.
 */
public final class PlainScroll extends ScrollPane {
    public PlainScroll() {}

    public PlainScroll(Node content) {
        super(content);
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        Skin<?> skin = new ScrollPaneSkin(this);
        getChildren().forEach(part -> part.setCache(false));
        return skin;
    }
}
