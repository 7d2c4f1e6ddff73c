package railtrim.report;

import java.util.List;

/**
 * Shapes for a vector picture, in the order they are drawn; lengths in points of the picture.
 *
 * @param title what it is, in words
 */
public record Drawing(int width, int height, String title, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** {@code kind()} is for the page template. */
    public sealed interface Shape {
        String kind();

        /** @param style thin, thick, dashed or leader */
        record Line(double x1, double y1, double x2, double y2, String style) implements Shape {
            @Override
            public String kind() {
                return "line";
            }
        }

        /** @param style part, added, band-COLOUR */
        record Box(double x, double y, double width, double height, String style) implements Shape {
            @Override
            public String kind() {
                return "box";
            }
        }

        record Dot(double x, double y) implements Shape {
            @Override
            public String kind() {
                return "dot";
            }
        }

        /** @param style plain, strong or small; @param anchor start, middle or end */
        record Label(double x, double y, String text, String style, String anchor) implements Shape {
            @Override
            public String kind() {
                return "label";
            }
        }
    }
}
