package railtrim.window.bench;

import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import railtrim.practice.Node;

/** One probe on its pad: the tip, the grip, and the lead that goes off the board below. */
final class ProbeArt {
    /** Left of this the chip is in the way of a lead to the middle. */
    private static final double EDGE = 92;

    private final Line tip;
    private final Line grip;
    private final CubicCurve lead = new CubicCurve();
    private final Group group;
    private final double lean;

    /** @param lean to which side the grip leans, pixels for each pixel down */
    ProbeArt(String colour, double lean) {
        this.lean = lean;
        tip = BoardArt.line(0, 0, 0, 0, "probe-tip");
        grip = BoardArt.line(0, 0, 0, 0, "probe-grip");
        grip.getStyleClass().add(colour);
        lead.getStyleClass().addAll("lead", colour);
        group = new Group(lead, grip, tip);
        group.setMouseTransparent(true);
    }

    Group node() {
        return group;
    }

    void show(Optional<Node> on) {
        group.setVisible(on.isPresent());
        on.map(Spots::of).ifPresent(this::show);
    }

    private void show(Point2D pad) {
        // Above the middle of the board a probe comes from below, in its lowest part it has to lie flat.
        double down = pad.getY() > Spots.HEIGHT - 70 ? 0.45 : 1;
        // Beside the chip it keeps to the edge of the board, or it would lie on the chip’s temperature.
        boolean edge = pad.getX() < EDGE;
        Point2D way = new Point2D(edge ? -Math.abs(lean) : lean, down).normalize();
        Point2D start = pad.add(way.multiply(16));
        Point2D end = pad.add(way.multiply(44));
        set(tip, pad.add(way.multiply(2)), start);
        set(grip, start, end);
        lead.setStartX(end.getX());
        lead.setStartY(end.getY());
        lead.setControlX1(end.getX() + 30 * way.getX());
        lead.setControlY1(Math.min(Spots.HEIGHT, end.getY() + 40 * way.getY()));
        double foot = edge ? 32 + 10 * Math.signum(lean) : 185 + 34 * Math.signum(lean);
        lead.setControlX2(foot);
        lead.setControlY2(Spots.HEIGHT - 20);
        lead.setEndX(foot);
        lead.setEndY(Spots.HEIGHT);
    }

    private static void set(Line line, Point2D from, Point2D to) {
        line.setStartX(from.getX());
        line.setStartY(from.getY());
        line.setEndX(to.getX());
        line.setEndY(to.getY());
    }
}
