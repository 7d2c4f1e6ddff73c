package railtrim.window.kit;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;

/**
 * A large button with a title and a line that says what it does; the words lie over the button, so that they may wrap. It lays out its few parts
 * itself: boxes within boxes are more to style before the first page is painted.
 */
public final class Tile extends Region {
    /** Pixels at the usual text size. */
    private static final int SIGN = 28;
    /** What lies between a sign and the words, in parts of the sign. */
    private static final double GAP = 0.5;
    /** The least width of the words, pixels: one long word. */
    private static final double LEAST_WORDS = 80;

    private final Button button;
    private final List<Node> signs;
    private final Passage words;

    /** @param signs at most one */
    public Tile(String id, String title, String about, Runnable pressed, Icon... signs) {
        this.button = Build.dress(new Button(), id, title + ". " + about, pressed, "tile-button");
        this.signs = List.of(signs).stream().map(icon -> icon.draw(SIGN)).toList();
        this.words = new Passage(title, "tile-words").then(about, "tile-about");
        words.setMouseTransparent(true);
        this.signs.forEach(sign -> sign.setMouseTransparent(true));
        getChildren().add(button);
        getChildren().addAll(this.signs);
        getChildren().add(words);
        getStyleClass().add("tile");
        setMinHeight(USE_PREF_SIZE);
    }

    /** As the one to take first. */
    public Tile first() {
        getStyleClass().add("tile-first");
        return this;
    }

    public Button button() {
        return button;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return aside() + LEAST_WORDS;
    }

    @Override
    protected double computePrefWidth(double height) {
        return aside() + words.prefWidth(-1);
    }

    @Override
    protected double computePrefHeight(double width) {
        double high = words.prefHeight(width < 0 ? -1 : width - aside());
        for (Node sign : signs) {
            high = Math.max(high, sign.prefHeight(-1));
        }
        return high + getInsets().getTop() + getInsets().getBottom();
    }

    /** All but the words, pixels across. */
    private double aside() {
        double wide = getInsets().getLeft() + getInsets().getRight();
        for (Node sign : signs) {
            wide += sign.prefWidth(-1) * (1 + GAP);
        }
        return wide;
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        double left = in.getLeft();
        double high = getHeight() - in.getTop() - in.getBottom();
        button.resizeRelocate(0, 0, getWidth(), getHeight());
        for (Node sign : signs) {
            double wide = sign.prefWidth(-1);
            layoutInArea(sign, left, in.getTop(), wide, high, 0, HPos.LEFT, VPos.CENTER);
            left += wide * (1 + GAP);
        }
        double room = getWidth() - aside();
        layoutInArea(words, left, in.getTop(), room, high, 0, Insets.EMPTY, true, false, HPos.LEFT, VPos.CENTER);
    }
}
