package railtrim.window.picture;

import java.util.List;

/** One mark on a sheet; x to the right, y down, in units of the sheet. */
sealed interface Mark {
    Ink ink();

    record Line(double x1, double y1, double x2, double y2, Ink ink) implements Mark {}

    /** @param round radius of the corners */
    record Box(double x, double y, double width, double height, double round, Ink ink) implements Mark {}

    record Disc(double x, double y, double radius, Ink ink) implements Mark {}

    /** Straight strokes from point to point, x and y in turn. */
    record Strokes(List<Double> points, boolean closed, Ink ink) implements Mark {
        public Strokes {
            points = List.copyOf(points);
        }
    }

    /**
     * One line of writing.
     *
     * @param y its middle
     * @param width what it takes up
     * @param part size of its letters as a part of the type's, 1 where there is room
     */
    record Writing(String text, double x, double y, double width, Align align, Type type, double part, Ink ink)
            implements Mark {
        double left() {
            return switch (align) {
                case LEFT -> x;
                case CENTRE -> x - width / 2;
                case RIGHT -> x - width;
            };
        }
    }
}
