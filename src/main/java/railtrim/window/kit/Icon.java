package railtrim.window.kit;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.SVGPath;

/** Small signs, our own drawings on a grid of 24 by 24; their colours come from the style sheet. */
public enum Icon {
    TICK("M4 12.6 L6.6 10 L10 13.4 L17.6 5.8 L20.2 8.4 L10 18.6 Z"),
    DOWN("M2 7 L5 7 L12 15 L19 7 L22 7 L12 19 Z"),
    CROSS("M5 7.1 L7.1 5 L12 9.9 L16.9 5 L19 7.1 L14.1 12 L19 16.9 L16.9 19 L12 14.1 L7.1 19 L5 16.9 L9.9 12 Z"),
    /** A round arrow: do again. */
    AGAIN("M12 4 A8 8 0 1 0 20 12 L17.4 12 A5.4 5.4 0 1 1 12 6.6 L12 9.6 L17.6 5.3 L12 1 Z"),
    LOCK(
            "M7 10 L7 8 A5 5 0 0 1 17 8 L17 10 L19 10 L19 21 L5 21 L5 10 Z M9.4 10 L14.6 10 L14.6 8 A2.6 2.6 0 0 0 9.4 8 Z"),
    EYE(
            "M1.5 12 Q12 1.5 22.5 12 Q12 22.5 1.5 12 Z M12 7.4 A4.6 4.6 0 1 0 12 16.6 A4.6 4.6 0 1 0 12 7.4 Z M12 10 A2 2 0 1 1 12 14 A2 2 0 1 1 12 10 Z"),
    /** Warning signs: a triangle, with what the hazard is. */
    GENERAL(Ground.TRIANGLE
            + "M10.7 8.6 L13.3 8.6 L12.9 15.4 L11.1 15.4 Z M12 16.6 A1.5 1.5 0 1 0 12 19.6 A1.5 1.5 0 1 0 12 16.6 Z"),
    ELECTRICITY(Ground.TRIANGLE + "M13.4 7.8 L8.4 14.6 L11.4 14.6 L9.9 19.6 L15.8 12.6 L12.6 12.6 Z"),
    HOT(Ground.TRIANGLE
            + "M6.6 18.2 L17.4 18.2 L17.4 19.8 L6.6 19.8 Z "
            + "M8.4 17 Q7.2 15.2 8.4 13.6 Q9 12.6 8.4 11.8 L9.9 11.8 Q10.6 12.8 9.9 13.8 Q9 15.4 9.9 17 Z "
            + "M11.2 17 Q10 15 11.2 13.2 Q11.8 12.2 11.2 10.2 L12.8 10.2 Q13.4 12.4 12.7 13.4 Q11.8 15.2 12.7 17 Z "
            + "M14 17 Q12.9 15.2 14 13.6 Q14.6 12.6 14 11.8 L15.5 11.8 Q16.2 12.8 15.5 13.8 Q14.6 15.4 15.5 17 Z"),
    FUME(Ground.TRIANGLE
            + "M7 19.6 L17 17.6 L17 19 L7 20.8 Z "
            + "M8 16.4 Q10.5 15.6 9.6 13.2 Q9 11 11.2 9.4 L12.2 10.4 Q10.8 11.6 11.2 13 Q12 16.2 9 17.6 Z "
            + "M12.4 15.8 Q14.4 15 13.6 13.2 L15 12.6 Q16.2 15.6 13.4 17 Z"),
    /** Instructions: a disc, with what to do. */
    EYES(
            Ground.DISC
                    + "M3.6 9.2 L20.4 9.2 L20.4 10.8 L19.4 10.8 A3.7 3.7 0 0 1 12.5 12.8 L11.5 12.8 A3.7 3.7 0 0 1 4.6 10.8 L3.6 10.8 Z"),
    STATIC(
            Ground.DISC
                    + "M4.8 15.6 L12.4 12.4 L17.4 14 L19.6 17 L4.8 17 Z M14.6 4.4 L10.6 9 L13 9 L11.6 11.8 L16 7.8 L13.4 7.8 Z"),
    MANUAL(
            Ground.DISC
                    + "M4.6 6.4 Q8.6 5.4 11.3 7.2 L11.3 18 Q8.6 16.4 4.6 17.2 Z M19.4 6.4 Q15.4 5.4 12.7 7.2 L12.7 18 Q15.4 16.4 19.4 17.2 Z"),
    /** Forbidden: a ring with a bar, over a hand. */
    NO_TOUCH(
            "M12 1 A11 11 0 1 0 12 23 A11 11 0 1 0 12 1 Z M12 3.4 A8.6 8.6 0 1 1 12 20.6 A8.6 8.6 0 1 1 12 3.4 Z "
                    + "M5 6.6 L6.6 5 L19 17.4 L17.4 19 Z M14 5.4 L16.4 5.4 L16.4 12.6 L14 10.2 Z M7.6 11.4 L13.6 17.4 L9.6 17.4 Z"),
    NOTE(Ground.DISC
            + "M10.6 10 L13.4 10 L13.4 18.4 L10.6 18.4 Z M12 5.2 A1.7 1.7 0 1 0 12 8.6 A1.7 1.7 0 1 0 12 5.2 Z"),
    /** An empty ring: nothing flows. */
    POWER_OFF(
            "M12 1.5 A10.5 10.5 0 1 0 12 22.5 A10.5 10.5 0 1 0 12 1.5 Z M12 4.3 A7.7 7.7 0 1 1 12 19.7 A7.7 7.7 0 1 1 12 4.3 Z"),
    POWER_ON("M13.8 1 L4.4 13.8 L10.4 13.8 L8.6 23 L19.6 9.4 L13 9.4 Z"),
    STOP_HAND("M7.4 1 L16.6 1 L23 7.4 L23 16.6 L16.6 23 L7.4 23 L1 16.6 L1 7.4 Z M6 10.6 L18 10.6 L18 13.4 L6 13.4 Z"),
    CLOCK(
            "M12 1 A11 11 0 1 0 12 23 A11 11 0 1 0 12 1 Z M12 3.6 A8.4 8.4 0 1 1 12 20.4 A8.4 8.4 0 1 1 12 3.6 Z M10.8 6 L13.2 6 L13.2 11.5 L17 15 L15.4 16.7 L10.8 12.6 Z"),
    FOLDER("M2 4.5 L9 4.5 L11.4 7.4 L22 7.4 L22 20 L2 20 Z M4.4 10 L4.4 17.6 L19.6 17.6 L19.6 10 Z"),
    /** Three spines on a board. */
    SHELF("M3 3 L7.4 3 L7.4 18 L3 18 Z M9 3 L13.4 3 L13.4 18 L9 18 Z M15 4.4 L19 3.4 L22 17.4 L18 18.4 Z "
            + "M2 19.6 L22 19.6 L22 22 L2 22 Z"),
    /** A meter with its needle and its two sockets. */
    METER(
            "M4 1.5 L20 1.5 L20 22.5 L4 22.5 Z M6.2 3.7 L6.2 12 L17.8 12 L17.8 3.7 Z M11 11 L15.2 5.2 L16.4 6.2 L13 11 Z "
                    + "M8.6 15.4 A2 2 0 1 0 8.6 19.4 A2 2 0 1 0 8.6 15.4 Z M15.4 15.4 A2 2 0 1 0 15.4 19.4 A2 2 0 1 0 15.4 15.4 Z"),
    /** A pad of the trace with a trimmer's slot. */
    MARK(
            "M12 1 A11 11 0 1 0 12 23 A11 11 0 1 0 12 1 Z M12 4 A8 8 0 1 1 12 20 A8 8 0 1 1 12 4 Z M6.6 15.6 L15.6 6.6 L17.4 8.4 L8.4 17.4 Z");

    /** Pixels at the usual text size of 14; the style sheet has a rule for each, which costs less than a style for each icon. */
    static final List<Integer> SIZES = List.of(10, 12, 16, 18, 20, 28, 30, 44);

    private static final double GRID = 24;

    private final String path;

    Icon(String path) {
        this.path = path;
    }

    /** The sign a caution names. */
    public static Icon of(String symbol) {
        return valueOf(symbol.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** @param size of the square it fills, one of {@link #SIZES}; it grows with the text */
    public Node draw(int size, String... classes) {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        shape.setFillRule(FillRule.EVEN_ODD);
        shape.getStyleClass().add("icon");
        shape.getStyleClass().addAll(classes);
        StackPane pane = new StackPane(shape);
        if (!SIZES.contains(size)) {
            throw new IllegalArgumentException("the style sheet has no icon of " + size);
        }
        pane.getStyleClass().add("icon-" + size);
        pane.widthProperty().addListener((of, was, is) -> shape.setScaleX(is.doubleValue() / GRID));
        pane.heightProperty().addListener((of, was, is) -> shape.setScaleY(is.doubleValue() / GRID));
        return pane;
    }

    private static final class Ground {
        static final String TRIANGLE = "M12 1.5 L23.4 22 L0.6 22 Z ";
        static final String DISC = "M12 1 A11 11 0 1 0 12 23 A11 11 0 1 0 12 1 Z ";
    }
}
