package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import railtrim.parts.Bands;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.ResistorsData.Row;

/** Candidates one below the other: the part with its bands and their names on the left, where the output can come to on the right. */
record ResistorsDrawing(ResistorsData data, Words words) implements Drawing {
    private static final double TOP = 40;
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
        double bottom = sheet.height() - 36;
        double high = Math.min(104, (bottom - TOP) / data.rows().size());
        Across across = across(sheet.width());
        double end = TOP + high * data.rows().size();
        limits(sheet, across, end);
        for (int i = 0; i < data.rows().size(); i++) {
            row(sheet, data.rows().get(i), TOP + i * high, high, across);
        }
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

    private void limits(Sheet sheet, Across across, double bottom) {
        double words1 = bottom + 10;
        double words2 = bottom + 10 + Type.SMALL.lead();
        data.atLeast().ifPresent(volts -> {
            double x = across.at(volts);
            sheet.line(x, TOP - 4, x, bottom, Ink.BAD);
            sheet.write(
                    words.of("picture.resistors.least", Display.volts(volts)),
                    sheet.width() - 8,
                    words2,
                    Align.RIGHT,
                    Type.SMALL,
                    Ink.TEXT);
            mark(
                    sheet,
                    sheet.width()
                            - 8
                            - sheet.widthOf(words.of("picture.resistors.least", Display.volts(volts)), Type.SMALL),
                    words2,
                    Ink.BAD);
        });
        data.target().ifPresent(volts -> {
            double x = across.at(volts);
            sheet.line(x, TOP - 4, x, bottom, Ink.GHOST);
            String said = words.of("picture.resistors.target", Display.volts(volts));
            sheet.write(said, sheet.width() - 8, words1, Align.RIGHT, Type.SMALL, Ink.TEXT);
            mark(sheet, sheet.width() - 8 - sheet.widthOf(said, Type.SMALL), words1, Ink.GHOST);
        });
    }

    private static void mark(Sheet sheet, double x, double y, Ink ink) {
        sheet.line(x - 22, y, x - 6, y, ink);
    }

    private void row(Sheet sheet, Row row, double top, double high, Across across) {
        double left = 8;
        double right = sheet.width() * SPLIT;
        double middle = top + high / 2;
        if (row.picked()) {
            sheet.box(3, top + 2, sheet.width() - 6, high - 4, 4, Ink.ADDED_WIRE);
        }
        double partY = middle - 14;
        int parts = row.values().size();
        double partWidth = (right - left - 8) / parts;
        boolean parallel = row.arrangement() == railtrim.parts.Resistors.Arrangement.PARALLEL;
        for (int i = 0; i < parts; i++) {
            if (parallel) {
                part(sheet, row.bands().get(i), left + 16, partY - 9 + 18 * i, right - left - 40);
            } else {
                part(sheet, row.bands().get(i), left + 4 + i * partWidth, partY, partWidth - 4);
            }
        }
        if (parallel) {
            sheet.strokes(
                    Ink.WIRE, left + 16, partY - 9, left + 10, partY - 9, left + 10, partY + 9, left + 16, partY + 9);
            double end = right - 24;
            sheet.strokes(Ink.WIRE, end, partY - 9, end + 6, partY - 9, end + 6, partY + 9, end, partY + 9);
        }
        double next =
                sheet.writeLines(named(row), left + 4, middle + 12, right - left, 1, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (high >= 70) {
            sheet.writeLines(
                    colours(row), left + 4, next, right - left, high >= 84 ? 2 : 1, Align.LEFT, Type.SMALL, Ink.QUIET);
        }
        interval(sheet, row, middle, across);
    }

    private void part(Sheet sheet, List<Bands.Colour> bands, double x, double y, double wide) {
        double bodyLeft = x + 10;
        double bodyWide = wide - 20;
        sheet.line(x, y, x + wide, y, Ink.WIRE);
        sheet.box(bodyLeft, y - 7.5, bodyWide, 15, 6, Ink.RESISTOR_BODY);
        if (bands.isEmpty()) {
            return;
        }
        int count = bands.size();
        double step = (bodyWide - 16) / count;
        for (int i = 0; i < count; i++) {
            // The last band, the tolerance, stands apart.
            double at = i == count - 1 ? bodyLeft + bodyWide - 11 : bodyLeft + 6 + i * step;
            sheet.box(at, y - 7.5, Math.min(5, step * 0.6), 15, 0, Ink.valueOf("BAND_" + bands.get(i)));
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
        return Stream.of(String.join("; ", each)).collect(Collectors.joining());
    }

    private void interval(Sheet sheet, Row row, double y, Across across) {
        double low = across.at(row.lowest());
        double high = across.at(row.highest());
        sheet.line(low, y, high, y, Ink.WIRE);
        sheet.line(low, y - 5, low, y + 5, Ink.WIRE);
        sheet.line(high, y - 5, high, y + 5, Ink.WIRE);
        sheet.disc(across.at(row.voltage()), y, 4, Ink.PART);
        double middle = (across.left() + across.right()) / 2;
        sheet.write(Display.volts(row.voltage()), middle, y - 18, Align.CENTRE, Type.STRONG, Ink.TEXT);
        String range = words.of(
                "picture.resistors.range",
                String.format(Locale.ROOT, "%.3f", row.lowest()),
                String.format(Locale.ROOT, "%.3f", row.highest()));
        sheet.write(range, middle, y + 18, Align.CENTRE, Type.SMALL, Ink.QUIET);
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
