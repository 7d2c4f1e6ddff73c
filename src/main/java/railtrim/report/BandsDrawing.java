package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import railtrim.parts.Bands;
import railtrim.report.Drawing.Shape;

/** A resistor with its colour bands; the names of the colours stand beside it in words. */
final class BandsDrawing {
    private static final int WIDTH = 260;
    private static final int HEIGHT = 60;

    private BandsDrawing() {}

    static Drawing of(List<Bands.Colour> colours, String title) {
        return new Drawing(WIDTH, HEIGHT, title, shapes(colours, 0));
    }

    /** Several parts beside each other. */
    static Drawing row(List<List<Bands.Colour>> parts, String title) {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            shapes.addAll(shapes(parts.get(i), i * WIDTH));
        }
        return new Drawing(WIDTH * parts.size(), HEIGHT, title, shapes);
    }

    private static List<Shape> shapes(List<Bands.Colour> colours, double left) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(left + 4, 30, left + 256, 30, "thick"));
        shapes.add(new Shape.Box(left + 40, 10, 180, 40, "body"));
        for (int i = 0; i < colours.size(); i++) {
            // The last band, the tolerance, stands apart so that one knows which end to begin at.
            double x = i == colours.size() - 1 ? 192 : 54 + 26.0 * i;
            String name = colours.get(i).name().toLowerCase(Locale.ROOT);
            shapes.add(new Shape.Box(left + x, 10, 14, 40, "band band-" + name));
        }
        return shapes;
    }
}
