package railtrim.window.picture;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.HeatData.Part;

/**
 * Temperatures of the chip and of its regulator, before and after, as bars; below them all heat of the two as one long bar before and one after, so
 * that what the chip saves and what moved to the regulator are seen side by side.
 */
record HeatDrawing(HeatData data, Words words) implements Drawing {
    private static final double TOP = 42;
    private static final double LABEL = 60;
    private static final double VALUE = 66;
    private static final double LEFT = 8 + LABEL;

    @Override
    public void drawOn(Sheet sheet) {
        if (data.empty()) {
            sheet.write(words.of("picture.heat.where"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
            new WarmSpots(words).drawOn(sheet, 26, sheet.height() - 46);
            sheet.writeLines(
                    words.of("picture.heat.empty"),
                    8,
                    sheet.height() - 30,
                    sheet.width() - 16,
                    2,
                    Align.LEFT,
                    Type.PLAIN,
                    Ink.QUIET);
            return;
        }
        sheet.write(words.of("picture.heat.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        double row = Math.min(28, (sheet.height() - 160) / 8.5);
        double y = TOP;
        y = temperatures(sheet, "picture.board.chip", data.chip(), y, row);
        y = temperatures(sheet, "picture.divider.regulator", data.regulator(), y, row);
        if (data.chip().powerBefore().isPresent()) {
            powers(sheet, y, row * 1.25);
        }
        String said = note();
        int lines = sheet.linesOf(said, sheet.width() - 16, 3, Type.PLAIN);
        double last = sheet.height() - 6 - (lines - 0.5) * Type.PLAIN.lead();
        sheet.writeLines(said, 8, last, sheet.width() - 16, 3, Align.LEFT, Type.PLAIN, Ink.TEXT);
    }

    private String note() {
        if (data.chip().powerAfter().isEmpty() && data.chip().after().isEmpty()) {
            return words.of("picture.heat.before");
        }
        if (data.saved().isEmpty() || data.moved().isEmpty()) {
            return words.of("picture.heat.chip");
        }
        double saved = data.saved().getAsDouble();
        double moved = data.moved().getAsDouble();
        if (moved <= 0) {
            return words.of("picture.heat.cooler", power(saved), power(-moved));
        }
        String share = Display.of(Math.round(100 * moved / saved), Unit.PERCENT);
        return words.of("picture.heat.moved", power(saved), power(moved), share);
    }

    /** @return where the next part begins */
    private double temperatures(Sheet sheet, String name, Part part, double top, double row) {
        if (part.before().isEmpty() && part.after().isEmpty()) {
            return top;
        }
        sheet.write(words.of(name), 8, top, Align.LEFT, Type.STRONG, Ink.TEXT);
        double most = Stream.of(data.chip(), data.regulator())
                .flatMapToDouble(each -> DoubleStream.concat(each.before().stream(), each.after().stream()))
                .reduce(80, Math::max);
        temperature(sheet, name, "picture.heat.was", part.before(), most, top + row, row, Ink.WARM_FILL);
        temperature(sheet, name, "picture.heat.is", part.after(), most, top + 2 * row, row, Ink.ADDED);
        return top + 3 * row + 8;
    }

    private void temperature(
            Sheet sheet, String name, String key, OptionalDouble value, double most, double y, double row, Ink ink) {
        value.ifPresent(celsius -> {
            double room = sheet.width() - LEFT - VALUE;
            double wide = Math.max(2, Math.max(0, celsius) / most * room);
            sheet.writeWithin(words.of(key), LEFT - 6, y, LABEL, Align.RIGHT, Type.SMALL, Ink.TEXT);
            double thick = row * 0.68;
            sheet.box(LEFT, y - thick / 2, wide, thick, 2, ink);
            sheet.write(temperature(celsius), LEFT + wide + 6, y, Align.LEFT, Type.STRONG, Ink.TEXT);
            sheet.detail(
                    said(name, key, temperature(celsius)), new Area(LEFT - 2, y - row / 2, sheet.width() - LEFT, row));
        });
    }

    private void powers(Sheet sheet, double top, double thick) {
        double before = sum(data.chip().powerBefore(), data.regulator().powerBefore());
        double after = sum(data.chip().powerAfter(), data.regulator().powerAfter());
        double room = sheet.width() - LEFT - 12;
        double perUnit = room / Math.max(before, after);
        sheet.write(words.of("picture.heat.powers"), 8, top, Align.LEFT, Type.STRONG, Ink.TEXT);
        double first = top + 13 + thick / 2;
        double second = first + thick + 8;
        stack(
                sheet,
                "picture.heat.was",
                first,
                perUnit,
                data.chip().powerBefore(),
                data.regulator().powerBefore(),
                Ink.WARM_FILL,
                thick);
        if (data.chip().powerAfter().isPresent()) {
            stack(
                    sheet,
                    "picture.heat.is",
                    second,
                    perUnit,
                    data.chip().powerAfter(),
                    data.regulator().powerAfter(),
                    Ink.ADDED,
                    thick);
            double end = LEFT + after * perUnit;
            double gone = (before - after) * perUnit;
            if (gone > 3) {
                sheet.box(end + 1, second - thick / 2, gone - 1, thick, 2, Ink.GHOST);
                sheet.detail(
                        words.of("picture.says.value", words.of("picture.heat.gone"), power(before - after)),
                        new Area(end, second - thick / 2, gone, thick));
            }
        }
        legend(sheet, data.chip().powerAfter().isPresent() ? second + thick / 2 + 13 : first + thick / 2 + 13);
    }

    private static double sum(OptionalDouble one, OptionalDouble two) {
        return one.orElse(0) + two.orElse(0);
    }

    private void stack(
            Sheet sheet,
            String key,
            double y,
            double perUnit,
            OptionalDouble chip,
            OptionalDouble regulator,
            Ink ink,
            double thick) {
        sheet.writeWithin(words.of(key), LEFT - 6, y, LABEL, Align.RIGHT, Type.SMALL, Ink.TEXT);
        double end = piece(sheet, "picture.board.chip", key, LEFT, y, perUnit, chip, ink, thick);
        piece(sheet, "picture.divider.regulator", key, end, y, perUnit, regulator, Ink.BODY, thick);
    }

    /** @return its right end */
    private double piece(
            Sheet sheet,
            String name,
            String key,
            double left,
            double y,
            double perUnit,
            OptionalDouble value,
            Ink ink,
            double thick) {
        if (value.isEmpty()) {
            return left;
        }
        double wide = Math.max(2, value.getAsDouble() * perUnit);
        String written = power(value.getAsDouble());
        sheet.box(left, y - thick / 2, wide, thick, 2, ink);
        if (sheet.widthOf(written, Type.STRONG) + 8 <= wide) {
            sheet.write(written, left + wide / 2, y, Align.CENTRE, Type.STRONG, Ink.TEXT);
        }
        sheet.detail(said(name, key, written), new Area(left, y - thick / 2, wide, thick));
        return left + wide;
    }

    /** What the pieces are, in the order they lie from left to right. */
    private void legend(Sheet sheet, double y) {
        double x = LEFT;
        x = legend(sheet, x, y, "picture.board.chip", data.chip().powerAfter().isPresent() ? Ink.ADDED : Ink.WARM_FILL);
        if (data.regulator().powerBefore().isPresent()) {
            legend(sheet, x, y, "picture.divider.regulator", Ink.BODY);
        } else {
            sheet.writeWithin(
                    words.of("picture.heat.unknown"), x, y, sheet.width() - x - 4, Align.LEFT, Type.SMALL, Ink.QUIET);
        }
    }

    private double legend(Sheet sheet, double x, double y, String key, Ink ink) {
        sheet.box(x, y - 5, 10, 10, 1, ink);
        String name = words.of(key);
        sheet.write(name, x + 15, y, Align.LEFT, Type.SMALL, Ink.TEXT);
        return x + 15 + sheet.widthOf(name, Type.SMALL) + 18;
    }

    private static String temperature(double celsius) {
        return Display.of(celsius, Unit.CELSIUS);
    }

    private String power(double value) {
        return data.relative() ? Display.of(Math.round(value * 100), Unit.PERCENT) : Display.of(value, Unit.WATT);
    }

    private String said(String name, String key, String value) {
        return words.of("picture.says.value", words.of(name) + ", " + words.of(key), value);
    }

    @Override
    public String says() {
        if (data.empty()) {
            return new WarmSpots(words).says() + " " + words.of("picture.heat.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.heat.says"));
        say(said, "picture.board.chip", data.chip());
        say(said, "picture.divider.regulator", data.regulator());
        return said.append(' ').append(note()).toString();
    }

    private void say(StringBuilder said, String name, Part part) {
        part.before().ifPresent(value -> add(said, name, "picture.heat.was", temperature(value)));
        part.after().ifPresent(value -> add(said, name, "picture.heat.is", temperature(value)));
        part.powerBefore().ifPresent(value -> add(said, name, "picture.heat.power.was", power(value)));
        part.powerAfter().ifPresent(value -> add(said, name, "picture.heat.power.is", power(value)));
    }

    private void add(StringBuilder said, String name, String key, String value) {
        said.append(' ').append(said(name, key, value));
    }
}
