package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.procedure.Figures;
import railtrim.report.Drawing.Shape;

/** The regulator's package seen from above, marking up, with what each pin is for. */
final class PackageDrawing {
    private static final double BODY_WIDTH = 62;
    private static final double PITCH = 26;
    private static final double PIN = 16;

    private final Source source;
    private final Outline outline;
    private final List<Optional<PinRole>> roles;
    private final List<Shape> shapes = new ArrayList<>();

    private PackageDrawing(Source source, Outline outline, List<Optional<PinRole>> roles) {
        this.source = source;
        this.outline = outline;
        this.roles = roles;
    }

    /** Shapes around a middle line at {@code x}, from {@code top} down; empty where the package is not known. */
    static List<Shape> shapes(Source source, double x, double top) {
        Figures figures = source.figures();
        return figures.outline()
                .map(outline -> new PackageDrawing(source, outline, figures.pins()).draw(x, top))
                .orElse(List.of());
    }

    private List<Shape> draw(double x, double top) {
        shapes.add(new Shape.Label(x, top + 4, outline.id(), "strong", "middle"));
        double bodyTop = top + 16;
        if (outline.twoSides()) {
            twoSides(x, bodyTop);
        } else {
            oneSide(x, bodyTop);
        }
        return shapes;
    }

    /** Pin 1 is at the top left, and the count goes round against the clock. */
    private void twoSides(double x, double top) {
        int left = (outline.pins() + 1) / 2;
        double height = left * PITCH;
        shapes.add(new Shape.Box(x - BODY_WIDTH / 2, top, BODY_WIDTH, height, "part"));
        shapes.add(new Shape.Dot(x - BODY_WIDTH / 2 + 10, top + 10));
        for (int pin = 1; pin <= outline.pins(); pin++) {
            boolean onLeft = pin <= left;
            double place =
                    onLeft ? pin - 1 : (outline.pins() - pin) * (left - 1.0) / Math.max(1, outline.pins() - left - 1);
            side(x, top + PITCH * (place + 0.5), pin, onLeft);
        }
    }

    private void side(double x, double y, int pin, boolean onLeft) {
        double edge = onLeft ? x - BODY_WIDTH / 2 : x + BODY_WIDTH / 2;
        double end = onLeft ? edge - PIN : edge + PIN;
        shapes.add(new Shape.Line(edge, y, end, y, "thick"));
        shapes.add(new Shape.Label(onLeft ? end - 5 : end + 5, y + 4, said(pin), "plain", onLeft ? "end" : "start"));
    }

    /** Standing on its pins, tab up; pins in a row from the left, their names one below the other so that none runs into the next. */
    private void oneSide(double x, double top) {
        double width = Math.max(BODY_WIDTH, outline.pins() * PITCH);
        double bodyTop = top;
        if (outline.hasTab()) {
            shapes.add(new Shape.Box(x - width / 2 + 6, top, width - 12, 18, "part"));
            bodyTop += 18;
        }
        shapes.add(new Shape.Box(x - width / 2, bodyTop, width, 46, "part"));
        double foot = bodyTop + 46;
        double first = x - PITCH * (outline.pins() - 1) / 2;
        for (int pin = 1; pin <= outline.pins(); pin++) {
            double at = first + PITCH * (pin - 1);
            shapes.add(new Shape.Label(at, foot - 8, Integer.toString(pin), "plain", "middle"));
            shapes.add(new Shape.Line(at, foot, at, foot + PIN, "thick"));
        }
        int named = outline.pins() + (outline.hasTab() ? 1 : 0);
        for (int pin = 1; pin <= named; pin++) {
            shapes.add(new Shape.Label(x, foot + PIN + 17.0 * pin, said(pin), "plain", "middle"));
        }
    }

    private String said(int pin) {
        return pin > outline.pins()
                ? source.say("report.role.tab", role(pin - 1))
                : source.say("report.role.pin", Integer.toString(pin), role(pin - 1));
    }

    private String role(int index) {
        return index < roles.size() ? roles.get(index).map(source::role).orElse("?") : "?";
    }
}
