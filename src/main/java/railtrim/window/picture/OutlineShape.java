package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Outline;

/**
 * How a package looks, in units of its own with the middle of its body at 0, 0. Shapes are ours and only roughly to scale; pins are numbered as
 * on the maker's drawing, counter-clockwise from the mark when seen from above (common practice).
 *
 * @param pins pin 1 first
 * @param fromFront seen from the front with the legs down; else from above
 */
record OutlineShape(
        Bounds body,
        Optional<Bounds> tab,
        boolean hole,
        boolean flat,
        boolean notch,
        List<Pin> pins,
        boolean fromFront) {

    record Bounds(double x, double y, double width, double height) {
        static Bounds middle(double width, double height) {
            return new Bounds(-width / 2, -height / 2, width, height);
        }

        double bottom() {
            return y + height;
        }
    }

    enum Side {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM
    }

    /** @param x where it leaves the body; @param cut a stub that does not reach the board */
    record Pin(double x, double y, Side side, double length, double thick, boolean cut) {
        double tipX() {
            return side == Side.LEFT ? x - length : side == Side.RIGHT ? x + length : x;
        }

        double tipY() {
            return side == Side.TOP ? y - length : side == Side.BOTTOM ? y + length : y;
        }
    }

    static OutlineShape of(Outline outline) {
        return switch (outline) {
            case TO_92 -> plain(Bounds.middle(64, 56), true, row(28, 58, 6, -20, 0, 20), true);
            case TO_220 ->
                tabbed(Bounds.middle(82, 62), new Bounds(-41, -76, 82, 47), true, row(31, 54, 8, -27, 0, 27), true);
            case TO_220_5 ->
                tabbed(
                        Bounds.middle(82, 62),
                        new Bounds(-41, -76, 82, 47),
                        true,
                        row(31, 54, 6, -32, -16, 0, 16, 32),
                        true);
            case TO_252 ->
                tabbed(
                        Bounds.middle(76, 62),
                        new Bounds(-31, -47, 62, 18),
                        false,
                        cutMiddle(row(31, 26, 9, -25, 0, 25)),
                        false);
            case TO_263 ->
                tabbed(Bounds.middle(92, 72), new Bounds(-46, -62, 92, 28), false, row(36, 30, 9, -30, 0, 30), false);
            case TO_263_5 ->
                tabbed(
                        Bounds.middle(92, 72),
                        new Bounds(-46, -62, 92, 28),
                        false,
                        row(36, 30, 8, -36, -18, 0, 18, 36),
                        false);
            case SOT_223 ->
                tabbed(Bounds.middle(84, 48), new Bounds(-20, -44, 40, 22), false, row(24, 20, 12, -29, 0, 29), false);
            case SOT_23 ->
                plain(
                        Bounds.middle(78, 40),
                        false,
                        join(row(20, 16, 12, -26, 26), List.of(new Pin(0, -20, Side.TOP, 16, 12, false))),
                        false);
            case SOT_23_5 ->
                plain(
                        Bounds.middle(80, 42),
                        false,
                        join(
                                row(21, 16, 11, -27, 0, 27),
                                List.of(
                                        new Pin(27, -21, Side.TOP, 16, 11, false),
                                        new Pin(-27, -21, Side.TOP, 16, 11, false))),
                        false);
            case SOIC_8 ->
                new OutlineShape(
                        Bounds.middle(66, 98),
                        Optional.empty(),
                        false,
                        false,
                        true,
                        bothSides(33, 16, 10, -36, -12, 12, 36),
                        false);
            case PLAIN_3 -> plain(Bounds.middle(84, 48), false, row(24, 20, 10, -28, 0, 28), false);
            case PLAIN_4, PLAIN_5, PLAIN_6, PLAIN_7, PLAIN_8 -> box(outline.pins());
        };
    }

    /** A box with its pins on both sides, one more on the left where the number is odd. */
    private static OutlineShape box(int pins) {
        int left = (pins + 1) / 2;
        List<Pin> all = new ArrayList<>();
        for (int pin = 0; pin < left; pin++) {
            all.add(new Pin(-33, 24 * (pin - (left - 1) / 2.0), Side.LEFT, 16, 10, false));
        }
        int right = pins - left;
        for (int pin = right - 1; pin >= 0; pin--) {
            double between = right == 1 ? 0 : 24.0 * (left - 1) / (right - 1);
            all.add(new Pin(33, between * (pin - (right - 1) / 2.0), Side.RIGHT, 16, 10, false));
        }
        return new OutlineShape(Bounds.middle(66, 24 * left + 2), Optional.empty(), false, false, true, all, false);
    }

    private static OutlineShape plain(Bounds body, boolean flat, List<Pin> pins, boolean fromFront) {
        return new OutlineShape(body, Optional.empty(), false, flat, false, pins, fromFront);
    }

    private static OutlineShape tabbed(Bounds body, Bounds tab, boolean hole, List<Pin> pins, boolean fromFront) {
        return new OutlineShape(body, Optional.of(tab), hole, false, false, pins, fromFront);
    }

    private static List<Pin> row(double y, double length, double thick, double... xs) {
        List<Pin> pins = new ArrayList<>();
        for (double x : xs) {
            pins.add(new Pin(x, y, Side.BOTTOM, length, thick, false));
        }
        return pins;
    }

    private static List<Pin> cutMiddle(List<Pin> row) {
        List<Pin> pins = new ArrayList<>(row);
        Pin middle = row.get(1);
        pins.set(1, new Pin(middle.x(), middle.y(), middle.side(), 9, middle.thick(), true));
        return pins;
    }

    private static List<Pin> bothSides(double x, double length, double thick, double... ys) {
        List<Pin> pins = new ArrayList<>();
        for (double y : ys) {
            pins.add(new Pin(-x, y, Side.LEFT, length, thick, false));
        }
        for (int i = ys.length - 1; i >= 0; i--) {
            pins.add(new Pin(x, ys[i], Side.RIGHT, length, thick, false));
        }
        return pins;
    }

    private static List<Pin> join(List<Pin> first, List<Pin> second) {
        List<Pin> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    double top() {
        double top = tab.map(Bounds::y).orElse(body.y());
        return pins.stream().mapToDouble(Pin::tipY).reduce(top, Math::min);
    }

    double bottom() {
        return pins.stream().mapToDouble(Pin::tipY).reduce(body.bottom(), Math::max);
    }

    /** Draws body, tab and pins, without any words. */
    void draw(Sheet sheet, double middleX, double middleY, double scale) {
        tab.ifPresent(bounds -> {
            bounds(sheet, bounds, middleX, middleY, scale, 2, Ink.METAL);
            if (hole) {
                double y = (bounds.y() + body.y()) / 2;
                sheet.disc(middleX, middleY + y * scale, 9 * scale, Ink.PART);
            }
        });
        pins.forEach(pin -> pin(sheet, pin, middleX, middleY, scale));
        if (flat) {
            chamfered(sheet, middleX, middleY, scale);
        } else {
            bounds(sheet, body, middleX, middleY, scale, 3, Ink.BODY);
        }
        if (notch) {
            sheet.box(
                    middleX - 8 * scale, middleY + body.y() * scale - 0.5, 16 * scale, 7 * scale, 3 * scale, Ink.PART);
        }
    }

    /** The flat face towards you. */
    private void chamfered(Sheet sheet, double middleX, double middleY, double scale) {
        double left = middleX + body.x() * scale;
        double right = left + body.width() * scale;
        double top = middleY + body.y() * scale;
        double bottom = middleY + body.bottom() * scale;
        double cut = 9 * scale;
        sheet.polygon(
                Ink.BODY,
                left,
                bottom,
                left,
                top + cut,
                left + cut,
                top,
                right - cut,
                top,
                right,
                top + cut,
                right,
                bottom);
    }

    private static void bounds(
            Sheet sheet, Bounds bounds, double middleX, double middleY, double scale, double round, Ink ink) {
        sheet.box(
                middleX + bounds.x() * scale,
                middleY + bounds.y() * scale,
                bounds.width() * scale,
                bounds.height() * scale,
                round * scale,
                ink);
    }

    private static void pin(Sheet sheet, Pin pin, double middleX, double middleY, double scale) {
        boolean upright = pin.side() == Side.TOP || pin.side() == Side.BOTTOM;
        double x = Math.min(pin.x(), pin.tipX()) - (upright ? pin.thick() / 2 : 0);
        double y = Math.min(pin.y(), pin.tipY()) - (upright ? 0 : pin.thick() / 2);
        double wide = upright ? pin.thick() : pin.length();
        double high = upright ? pin.length() : pin.thick();
        bounds(sheet, new Bounds(x, y, wide, high), middleX, middleY, scale, 1, Ink.METAL);
    }
}
