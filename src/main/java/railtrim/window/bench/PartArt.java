package railtrim.window.bench;

import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Rotate;
import javafx.scene.transform.Translate;
import railtrim.practice.Bench;
import railtrim.practice.Node;
import railtrim.practice.Part;
import railtrim.window.kit.Build;

/** The user's own part, flying from pad to pad: a trimmer with its screw, or a resistor. A lead that is lifted or loose ends short of its pad. */
final class PartArt {
    private static final double LONG = 34;
    private static final double HIGH = 18;

    /** How far a loose lead ends from its pad. */
    private static final double GAP = 26;

    private PartArt() {}

    static Group of(Workbench.Mounted<? extends Part> mounted, Bench bench) {
        Node.Pair pair = mounted.across().orElseThrow();
        Point2D from = Spots.of(pair.first());
        Point2D to = Spots.of(pair.second());
        // Beside what already lies on a straight track.
        Point2D along = to.subtract(from).normalize();
        Point2D aside = new Point2D(-along.getY(), along.getX()).multiply(straight(from, to) ? 30 : 0);
        Point2D middle = from.midpoint(to).add(aside);
        boolean off = mounted.lifted() || bench.isLoose(mounted.part());
        Group group = new Group();
        group.setMouseTransparent(true);
        group.getChildren().add(wire(from, middle, 0));
        group.getChildren().add(wire(to, middle, off ? GAP : 0));
        group.getChildren().add(body(mounted.part(), middle, angle(from, to)));
        group.getChildren().addAll(joint(from, "joint-good"));
        if (!off) {
            group.getChildren().add(joint(to, bench.isDry(mounted.part()) ? "joint-dry" : "joint-good"));
        }
        // Two in a row take two lines, so that the name stays clear of the pads.
        Label name = Build.label(mounted.name().replace(" + ", " +\n"), "part-name");
        name.setLayoutX(middle.getX() - 68);
        name.setLayoutY(middle.getY() + (middle.getY() < 126 ? -40 : 4));
        group.getChildren().add(name);
        return group;
    }

    private static boolean straight(Point2D from, Point2D to) {
        return from.getX() == to.getX() || from.getY() == to.getY();
    }

    private static double angle(Point2D from, Point2D to) {
        return Math.toDegrees(Math.atan2(to.getY() - from.getY(), to.getX() - from.getX()));
    }

    private static Line wire(Point2D pad, Point2D body, double ends) {
        Point2D end = pad.add(body.subtract(pad).normalize().multiply(ends));
        return BoardArt.line(end.getX(), end.getY(), body.getX(), body.getY(), "part-wire");
    }

    private static Circle joint(Point2D pad, String styleClass) {
        Circle joint = new Circle(pad.getX(), pad.getY(), 6);
        joint.getStyleClass().add(styleClass);
        return joint;
    }

    private static Group body(Part part, Point2D middle, double angle) {
        Group body = new Group();
        Rectangle box = new Rectangle(-LONG / 2, -HIGH / 2, LONG, HIGH);
        box.getStyleClass().add(part instanceof Part.Trimmer ? "part-trimmer" : "board-resistor");
        body.getChildren().add(box);
        if (part instanceof Part.Trimmer trimmer) {
            double turns = trimmer.trimmer().travel() * trimmer.trimmer().turns();
            body.getChildren().add(screw(7, 360 * turns));
        } else {
            for (double x : new double[] {-9, -3, 8}) {
                body.getChildren().add(BoardArt.line(x, -HIGH / 2, x, HIGH / 2, "part-band"));
            }
        }
        body.getTransforms().addAll(new Translate(middle.getX(), middle.getY()), new Rotate(upright(angle)));
        return body;
    }

    private static double upright(double angle) {
        return angle > 90 ? angle - 180 : angle < -90 ? angle + 180 : angle;
    }

    /** A brass screw with its slot turned so far, degrees. */
    static Group screw(double radius, double turned) {
        Circle head = new Circle(radius);
        head.getStyleClass().add("screw-head");
        Line slot = BoardArt.line(-radius * 0.75, 0, radius * 0.75, 0, "screw-slot");
        slot.setRotate(turned);
        return new Group(head, slot);
    }
}
