package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import railtrim.parts.Bands;
import railtrim.parts.Resistors;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.ResistorsData.Row;

/** Candidates one below the other: the part with its bands and their names on the left, where the output can come to on the right. */
record ResistorsDrawing(ResistorsData data, Words words) implements Drawing {
    private static final double TOP = 28;
    /** The least height of one candidate. */
    private static final double ROW = 83;

    private static final double SPLIT = 0.54;

    /** Voltages from left to right. */
    private record Across(double low, double high, double left, double right) {
        double at(double volts) {
            return left + (volts - low) / (high - low) * (right - left);
        }
    }

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.resistors.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (data.rows().isEmpty()) {
            sheet.writeLines(
                    words.of("picture.resistors.empty"),
                    8,
                    38,
                    sheet.width() - 16,
                    4,
                    Align.LEFT,
                    Type.PLAIN,
                    Ink.QUIET);
            data.exact()
                    .ifPresent(ohms -> sheet.writeLines(
                            words.of("picture.resistors.exact", Display.ohms(ohms)),
                            8,
                            100,
                            sheet.width() - 16,
                            2,
                            Align.LEFT,
                            Type.PLAIN,
                            Ink.TEXT));
            return;
        }
        double bottom = sheet.height() - 34;
        int shown = (int) Math.min(data.rows().size(), Math.floor((bottom - TOP) / ROW));
        double high = Math.min(ROW + 14, (bottom - TOP) / shown);
        Across across = across(sheet.width());
        for (int i = 0; i < shown; i++) {
            row(sheet, data.rows().get(i), TOP + i * high, high, across);
        }
        legend(sheet, TOP + high * shown);
    }

    private Across across(double width) {
        double[] volts = DoubleStream.concat(
                        data.rows().stream().flatMapToDouble(row -> DoubleStream.of(row.lowest(), row.highest())),
                        DoubleStream.concat(data.target().stream(), data.atLeast().stream()))
                .toArray();
        double low = DoubleStream.of(volts).min().orElse(0);
        double high = DoubleStream.of(volts).max().orElse(1);
        double least = Math.max(0, 0.01 - (high - low)) / 2;
        return new Across(low - least, high + least, width * SPLIT + 20, width - 20);
    }

    /** What the two upright lines are. */
    private void legend(Sheet sheet, double bottom) {
        double y = bottom + 10;
        if (data.target().isPresent()) {
            legend(sheet, "picture.resistors.target", data.target().getAsDouble(), y, Ink.GHOST);
        }
        if (data.atLeast().isPresent()) {
            legend(sheet, "picture.resistors.least", data.atLeast().getAsDouble(), y + Type.SMALL.lead(), Ink.BAD);
        }
    }

    private void legend(Sheet sheet, String key, double volts, double y, Ink ink) {
        String said = words.of(key, Display.volts(volts));
        double right = sheet.width() - 8;
        double left = right - sheet.widthOf(said, Type.SMALL);
        sheet.write(said, right, y, Align.RIGHT, Type.SMALL, Ink.TEXT);
        sheet.line(left - 22, y, left - 6, y, ink);
    }

    private void row(Sheet sheet, Row row, double top, double high, Across across) {
        double left = 10;
        double right = sheet.width() * SPLIT;
        if (row.picked()) {
            sheet.box(3, top, sheet.width() - 6, high - 4, 4, Ink.ADDED_WIRE);
        }
        double start = top + 2 + (high - ROW) / 2;
        parts(sheet, row, left, start + 17, right - left - 4);
        sheet.writeLines(named(row), left, start + 43, right - left, 1, Align.LEFT, Type.STRONG, Ink.TEXT);
        sheet.writeLines(
                colours(row), left, start + 57, sheet.width() - 2 * left, 2, Align.LEFT, Type.SMALL, Ink.QUIET);
        interval(sheet, row, start + 25, across);
    }

    private void parts(Sheet sheet, Row row, double left, double y, double wide) {
        if (row.arrangement() == Resistors.Arrangement.PARALLEL) {
            sheet.strokes(Ink.WIRE, left + 12, y - 9, left + 6, y - 9, left + 6, y + 9, left + 12, y + 9);
            double end = left + wide - 12;
            sheet.strokes(Ink.WIRE, end, y - 9, end + 6, y - 9, end + 6, y + 9, end, y + 9);
            for (int i = 0; i < row.bands().size(); i++) {
                part(sheet, row.bands().get(i), left + 12, y - 9 + 18 * i, wide - 24);
            }
            return;
        }
        double each = wide / row.bands().size();
        for (int i = 0; i < row.bands().size(); i++) {
            part(sheet, row.bands().get(i), left + i * each, y, each);
        }
    }

    private void part(Sheet sheet, List<Bands.Colour> bands, double x, double y, double wide) {
        double bodyLeft = x + 10;
        double bodyWide = wide - 20;
        sheet.line(x, y, x + wide, y, Ink.WIRE);
        sheet.box(bodyLeft, y - 6.5, bodyWide, 13, 5, Ink.RESISTOR_BODY);
        if (bands.isEmpty()) {
            return;
        }
        int count = bands.size();
        double step = (bodyWide - 16) / count;
        for (int i = 0; i < count; i++) {
            // The last band, the tolerance, stands apart.
            double at = i == count - 1 ? bodyLeft + bodyWide - 11 : bodyLeft + 6 + i * step;
            sheet.box(at, y - 6.5, Math.min(5, step * 0.6), 13, 0, Ink.valueOf("BAND_" + bands.get(i)));
        }
    }

    private String named(Row row) {
        String sign = words.of("picture.resistors." + row.arrangement().id());
        return row.values().stream().map(Display::ohms).collect(Collectors.joining(" " + sign + " "));
    }

    private String colours(Row row) {
        List<String> each = new ArrayList<>();
        for (List<Bands.Colour> bands : row.bands()) {
            each.add(
                    bands.isEmpty()
                            ? words.of("picture.resistors.printed")
                            : bands.stream()
                                    .map(colour -> words.of(
                                            "picture.band." + colour.name().toLowerCase(Locale.ROOT)))
                                    .collect(Collectors.joining(" ")));
        }
        return String.join("; ", each);
    }

    private void interval(Sheet sheet, Row row, double y, Across across) {
        double low = across.at(row.lowest());
        double high = across.at(row.highest());
        data.atLeast().ifPresent(volts -> sheet.line(across.at(volts), y - 9, across.at(volts), y + 9, Ink.BAD));
        data.target().ifPresent(volts -> sheet.line(across.at(volts), y - 9, across.at(volts), y + 9, Ink.GHOST));
        sheet.line(low, y, high, y, Ink.WIRE);
        sheet.line(low, y - 5, low, y + 5, Ink.WIRE);
        sheet.line(high, y - 5, high, y + 5, Ink.WIRE);
        sheet.disc(across.at(row.voltage()), y, 4, Ink.PART);
        double middle = (across.left() + across.right()) / 2;
        sheet.write(Display.volts(row.voltage()), middle, y - 17, Align.CENTRE, Type.STRONG, Ink.TEXT);
        String range = words.of(
                "picture.resistors.range",
                String.format(Locale.ROOT, "%.3f", row.lowest()),
                String.format(Locale.ROOT, "%.3f", row.highest()));
        sheet.write(range, middle, y + 17, Align.CENTRE, Type.SMALL, Ink.QUIET);
    }

    @Override
    public String says() {
        if (data.rows().isEmpty()) {
            return words.of("picture.resistors.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.resistors.says"));
        for (Row row : data.rows()) {
            said.append(' ')
                    .append(words.of(
                            row.picked() ? "picture.resistors.says.picked" : "picture.resistors.says.row",
                            named(row),
                            colours(row),
                            Display.volts(row.voltage()),
                            Display.volts(row.lowest()),
                            Display.volts(row.highest())));
        }
        return said.toString();
    }
}
