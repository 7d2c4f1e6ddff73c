package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Point2D;
import railtrim.practice.Node;

/** Where things lie on the drawing of the board. */
final class Spots {
    static final double WIDTH = 370;
    static final double HEIGHT = 230;

    private static final Map<Node, Point2D> PADS = new EnumMap<>(Map.of(
            Node.INPUT, new Point2D(66, 66),
            Node.OUTPUT, new Point2D(326, 66),
            Node.ADJUST, new Point2D(250, 126),
            Node.GROUND, new Point2D(326, 186),
            Node.CONTROL, new Point2D(66, 126)));

    private Spots() {}

    static Point2D of(Node node) {
        return PADS.get(node);
    }
}
