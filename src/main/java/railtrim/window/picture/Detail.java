package railtrim.window.picture;

import java.util.List;
import java.util.Optional;

/**
 * Something in a picture that tells its number when it is pointed at or reached by the keyboard.
 *
 * @param areas where it is, not empty; the first is framed
 * @param asks what can be answered by pressing it, empty for nothing
 */
record Detail(List<Area> areas, String says, Optional<Asks> asks) {
    Detail {
        areas = List.copyOf(areas);
    }

    /** @param answer the one answer that pressing gives; empty to choose among all */
    record Asks(String field, Optional<String> answer) {}

    /** @param x left edge in units of the sheet, {@code y} top edge */
    record Area(double x, double y, double width, double height) {
        static Area around(double x, double y, double reach) {
            return new Area(x - reach, y - reach, 2 * reach, 2 * reach);
        }

        boolean holds(double atX, double atY) {
            return atX >= x && atX <= x + width && atY >= y && atY <= y + height;
        }
    }

    Area first() {
        return areas.get(0);
    }

    boolean holds(double x, double y) {
        return areas.stream().anyMatch(area -> area.holds(x, y));
    }
}
