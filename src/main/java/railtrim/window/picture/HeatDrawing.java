package railtrim.window.picture;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.picture.HeatData.Part;

/** Two bars each, before and after, for the chip and for its regulator: temperature first, then power. */
record HeatDrawing(HeatData data, Words words) implements Drawing {
    private static final double TOP = 44;
    private static final double BAR = 13;
    private static final double ROW = 19;
    private static final double LABEL = 68;
    private static final double VALUE = 72;

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.heat.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (data.empty()) {
            sheet.writeLines(
                    words.of("picture.heat.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        double bottom = sheet.height() - 44;
        double half = (bottom - TOP) / 2;
        part(sheet, "picture.board.chip", data.chip(), TOP, half);
        part(sheet, "picture.divider.regulator", data.regulator(), TOP + half, half);
        String said = note();
        int lines = sheet.linesOf(said, sheet.width() - 16, 2, Type.PLAIN);
        double y = sheet.height() - 8 - (lines - 0.5) * Type.PLAIN.lead() + 4;
        sheet.writeLines(said, 8, y, sheet.width() - 16, 2, Align.LEFT, Type.PLAIN, Ink.TEXT);
    }

    private String note() {
        if (data.chip().powerAfter().isEmpty() && data.chip().after().isEmpty()) {
            return words.of("picture.heat.before");
        }
        if (data.regulator().powerAfter().isEmpty()) {
            return words.of("picture.heat.chip");
        }
        return words.of(data.regulatorGetsHotter() ? "picture.heat.hotter" : "picture.heat.cooler");
    }

    private void part(Sheet sheet, String name, Part part, double top, double high) {
        double space = Math.min(16, (high - 18 - 4 * ROW) / 3);
        sheet.write(words.of(name), 8, top, Align.LEFT, Type.STRONG, Ink.TEXT);
        double y = top + 20;
        if (part.before().isPresent() || part.after().isPresent()) {
            double most = largest(
                    80,
                    Stream.of(data.chip(), data.regulator())
                            .flatMapToDouble(
                                    each -> DoubleStream.concat(each.before().stream(), each.after().stream())));
            bar(sheet, "picture.heat.was", part.before(), Unit.CELSIUS, most, y, false);
            bar(sheet, "picture.heat.is", part.after(), Unit.CELSIUS, most, y + ROW, true);
            y += 2 * ROW + space;
        }
        if (part.powerBefore().isPresent()) {
            double most = largest(
                    0,
                    Stream.of(data.chip(), data.regulator())
                            .flatMapToDouble(each ->
                                    DoubleStream.concat(each.powerBefore().stream(), each.powerAfter().stream())));
            bar(sheet, "picture.heat.power.was", part.powerBefore(), Unit.WATT, most, y, false);
            bar(sheet, "picture.heat.power.is", part.powerAfter(), Unit.WATT, most, y + ROW, true);
        } else if (part.before().isEmpty() && part.after().isEmpty()) {
            sheet.writeLines(
                    words.of("picture.heat.unknown"), 8, y, sheet.width() - 16, 1, Align.LEFT, Type.PLAIN, Ink.QUIET);
        }
    }

    private static double largest(double least, DoubleStream values) {
        return Math.max(least, values.max().orElse(1));
    }

    private void bar(Sheet sheet, String key, OptionalDouble value, Unit unit, double most, double y, boolean after) {
        if (value.isEmpty()) {
            return;
        }
        double left = 8 + LABEL;
        double room = sheet.width() - left - VALUE;
        double number = value.getAsDouble();
        sheet.writeWithin(words.of(key), left - 6, y, LABEL, Align.RIGHT, Type.SMALL, Ink.TEXT);
        double wide = Math.max(2, Math.max(0, number) / most * room);
        sheet.box(left, y - BAR / 2, wide, BAR, 2, after ? Ink.ADDED : Ink.WARM_FILL);
        sheet.write(written(number, unit), left + wide + 6, y, Align.LEFT, Type.STRONG, Ink.TEXT);
    }

    private String written(double value, Unit unit) {
        if (unit == Unit.WATT && data.relative()) {
            return words.of("picture.heat.percent", String.format(Locale.ROOT, "%.0f", value * 100));
        }
        return unit == Unit.CELSIUS ? String.format(Locale.ROOT, "%.1f °C", value) : Display.of(value, unit);
    }

    @Override
    public String says() {
        if (data.empty()) {
            return words.of("picture.heat.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.heat.says"));
        say(said, words.of("picture.board.chip"), data.chip());
        say(said, words.of("picture.divider.regulator"), data.regulator());
        return said.append(' ').append(note()).toString();
    }

    private void say(StringBuilder said, String name, Part part) {
        value(said, name, "picture.heat.was", part.before(), Unit.CELSIUS);
        value(said, name, "picture.heat.is", part.after(), Unit.CELSIUS);
        value(said, name, "picture.heat.power.was", part.powerBefore(), Unit.WATT);
        value(said, name, "picture.heat.power.is", part.powerAfter(), Unit.WATT);
    }

    private void value(StringBuilder said, String name, String key, OptionalDouble value, Unit unit) {
        value.ifPresent(number -> said.append(' ')
                .append(words.of("picture.says.value", name + ", " + words.of(key), written(number, unit))));
    }
}
