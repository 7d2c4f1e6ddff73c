package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import railtrim.circuit.LineSolve;
import railtrim.quantity.Display;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;

/**
 * The line check: 1/(|V| − Vref) over 1/Radded is a straight line for a circuit that is what it was taken for (see the one law), and a reading that
 * lies beside it does not belong.
 */
final class LineDrawing {
    private static final int WIDTH = 680;
    private static final int HEIGHT = 270;
    private static final double LEFT = 60;
    private static final double RIGHT = 420;
    private static final double TOP = 16;
    private static final double BOTTOM = 226;

    private final Source source;
    private final List<Shape> shapes = new ArrayList<>();

    LineDrawing(Source source) {
        this.source = source;
    }

    /** Empty before two readings have led to a line. */
    Optional<Block.Picture> picture() {
        return source.figures()
                .solution()
                .flatMap(found -> source.figures().reference().stream()
                        .mapToObj(reference -> draw(found, reference))
                        .findFirst());
    }

    private Block.Picture draw(LineSolve.Solution found, double reference) {
        List<LineSolve.Point> points = source.figures().points();
        double most =
                points.stream().mapToDouble(point -> 1 / point.added()).max().orElse(0);
        Axis across = new Axis(0, Math.max(most, 1e-9) * 1.1, LEFT, RIGHT);
        double atNone = 1 / (found.legCurrent() * found.leg());
        double atMost = (1 / found.leg() + across.high()) / found.legCurrent();
        Axis up = Axis.around(atNone, atMost, BOTTOM, TOP);
        shapes.add(new Shape.Line(LEFT, TOP, LEFT, BOTTOM, "thin"));
        shapes.add(new Shape.Line(LEFT, BOTTOM, RIGHT, BOTTOM, "thin"));
        shapes.add(new Shape.Line(across.at(0), up.at(atNone), across.at(across.high()), up.at(atMost), "thin"));
        double free = BOTTOM - 8;
        for (LineSolve.Point point : points) {
            double x = across.at(1 / point.added());
            double y = Math.max(TOP, Math.min(BOTTOM, up.at(1 / (point.volts() - reference))));
            double place = Math.min(free, y);
            free = place - 20;
            shapes.add(new Shape.Dot(x, y));
            shapes.add(new Shape.Line(x + 4, y, RIGHT + 26, place, "leader"));
            shapes.add(new Shape.Label(RIGHT + 30, place + 4, said(point), "plain", "start"));
        }
        shapes.add(
                new Shape.Label((LEFT + RIGHT) / 2, BOTTOM + 24, source.say("report.line.across"), "plain", "middle"));
        shapes.add(new Shape.Label(8, TOP - 2, source.say("report.line.up"), "plain", "start"));
        String inWords = points.size() == 2
                ? source.say("report.line.in-words-two", Display.ohms(found.leg()), said(points))
                : source.say(
                        "report.line.in-words",
                        Integer.toString(points.size()),
                        Display.ohms(found.leg()),
                        millivolts(found.worstResidual()),
                        said(points));
        return new Block.Picture(new Drawing(WIDTH, HEIGHT, source.say("report.line"), shapes), inWords);
    }

    private static String millivolts(double volts) {
        return String.format(Locale.ROOT, "%.1f mV", 1000 * volts);
    }

    private String said(List<LineSolve.Point> points) {
        return points.stream().map(this::said).collect(Collectors.joining("; "));
    }

    private String said(LineSolve.Point point) {
        return Double.isInfinite(point.added())
                ? source.say("report.line.none", source.rail(point.volts()))
                : source.say("report.line.with", Display.ohms(point.added()), source.rail(point.volts()));
    }
}
