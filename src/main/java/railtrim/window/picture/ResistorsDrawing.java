package railtrim.window.picture;

import java.util.List;
import java.util.stream.DoubleStream;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.ResistorsData.Row;

/** Candidates one below the other on the left, each with its bands; on the right the ladder with where each can come to at worst. */
record ResistorsDrawing(ResistorsData data, Words words) implements Drawing {
    private static final double TOP = 28;
    /** The least height of one candidate, and the most. */
    private static final double ROW = 74;

    private static final double MOST_ROW = 112;
    private static final double SPLIT = 0.58;
    private static final double LEFT = 10;
    private static final double NUMBER = 18;
    /** The thickness of one body. */
    private static final double BODY = 13;

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
                            78,
                            sheet.width() - 16,
                            1,
                            Align.LEFT,
                            Type.PLAIN,
                            Ink.TEXT));
            new BandGuide(words).drawOn(sheet, 108);
            return;
        }
        double bottom = sheet.height() - 10;
        int shown = (int) Math.min(data.rows().size(), Math.floor((bottom - TOP) / ROW));
        double high = Math.min(MOST_ROW, (bottom - TOP) / shown);
        double ladderBottom = sheet.height() - 74;
        VoltScale scale = scale(ladderBottom - NUMBER);
        ladder(sheet, scale);
        for (int i = 0; i < shown; i++) {
            row(sheet, i, TOP + i * high, high);
            Area interval = interval(sheet, i, shown, scale);
            Area part = new Area(4, TOP + i * high + 1, sheet.width() * SPLIT - 5, high - 6);
            sheet.detail(said(data.rows().get(i)), part, interval);
        }
        legend(sheet, ladderBottom + 26);
    }

    private ResistorArt art() {
        return new ResistorArt(words);
    }

    private VoltScale scale(double bottom) {
        DoubleStream volts = DoubleStream.concat(
                data.rows().stream().flatMapToDouble(row -> DoubleStream.of(row.lowest(), row.highest())),
                DoubleStream.concat(data.target().stream(), data.atLeast().stream()));
        return VoltScale.near(volts, TOP + 8, bottom);
    }

    private static double axis(Sheet sheet) {
        return sheet.width() * SPLIT + 46;
    }

    /** The scale, and across it what is aimed at and what none may fall below. */
    private void ladder(Sheet sheet, VoltScale scale) {
        double axis = axis(sheet);
        double right = sheet.width() - 8;
        sheet.box(axis, scale.top() - 4, 6, scale.bottom() - scale.top() + 8, 3, Ink.PART);
        List<Double> ticks = Ticks.between(scale.low(), scale.high(), (int) ((scale.bottom() - scale.top()) / 34));
        String form = "%." + Ticks.decimals(ticks) + "f";
        for (double tick : ticks) {
            double y = scale.at(tick);
            sheet.line(axis - 5, y, axis, y, Ink.FINE);
            sheet.write(Ticks.written(form, data.sign().shown(tick)), axis - 8, y, Align.RIGHT, Type.SMALL, Ink.QUIET);
        }
        data.target().ifPresent(volts -> sheet.line(axis, scale.at(volts), right, scale.at(volts), Ink.GHOST));
        data.atLeast().ifPresent(volts -> sheet.line(axis, scale.at(volts), right, scale.at(volts), Ink.BAD));
    }

    /** What the two level lines are. */
    private void legend(Sheet sheet, double top) {
        double y = top;
        if (data.target().isPresent()) {
            legend(sheet, "picture.resistors.target", data.target().getAsDouble(), y, Ink.GHOST);
            y += Type.SMALL.lead() * 2 - 6;
        }
        if (data.atLeast().isPresent()) {
            legend(sheet, "picture.resistors.least", data.atLeast().getAsDouble(), y, Ink.BAD);
        }
    }

    private void legend(Sheet sheet, String key, double volts, double y, Ink ink) {
        double left = sheet.width() * SPLIT + 8;
        sheet.line(left, y, left + 16, y, ink);
        sheet.writeWithin(
                words.of(key, data.sign().volts(volts)),
                left + 22,
                y,
                sheet.width() - left - 26,
                Align.LEFT,
                Type.SMALL,
                Ink.TEXT);
    }

    private void row(Sheet sheet, int index, double top, double high) {
        Row row = data.rows().get(index);
        double right = sheet.width() * SPLIT;
        if (row.picked()) {
            sheet.box(3, top, right - 3, high - 4, 4, Ink.ADDED_WIRE);
        }
        double start = top + 3;
        number(sheet, index, LEFT + 7, start + 20);
        art().draw(sheet, row, LEFT + NUMBER, start + 20, right - LEFT - NUMBER - 6, BODY);
        double room = right - LEFT - 6;
        sheet.writeWithin(art().named(row), LEFT, start + 48, room, Align.LEFT, Type.STRONG, Ink.TEXT);
        sheet.write(data.sign().volts(row.voltage()), LEFT, start + 62, Align.LEFT, Type.SMALL, Ink.TEXT);
        sheet.write(range(row), right - 6, start + 62, Align.RIGHT, Type.SMALL, Ink.QUIET);
        int lines = (int) ((high - ROW - 6) / Type.SMALL.lead());
        String colours = art().colours(row);
        // Names that would be cut are left to the detail.
        if (lines > 0 && sheet.linesOf(colours, room, lines + 1, Type.SMALL) <= lines) {
            sheet.writeLines(colours, LEFT, start + 77, room, lines, Align.LEFT, Type.SMALL, Ink.QUIET);
        }
    }

    private static void number(Sheet sheet, int index, double x, double y) {
        sheet.disc(x, y, 8, Ink.PART);
        sheet.write(String.valueOf(index + 1), x, y, Align.CENTRE, Type.SMALL, Ink.TEXT);
    }

    /** From the lowest to the highest the tolerance can bring, with the number of its candidate below it. */
    private Area interval(Sheet sheet, int index, int count, VoltScale scale) {
        Row row = data.rows().get(index);
        double step = (sheet.width() - 8 - axis(sheet) - 8) / count;
        double x = axis(sheet) + 8 + step * (index + 0.5);
        Ink ink = row.picked() ? Ink.ADDED_WIRE : Ink.WIRE;
        double low = scale.at(row.lowest());
        double high = scale.at(row.highest());
        sheet.line(x, low, x, high, ink);
        sheet.line(x - 5, low, x + 5, low, ink);
        sheet.line(x - 5, high, x + 5, high, ink);
        sheet.disc(x, scale.at(row.voltage()), 4, row.picked() ? Ink.ADDED_FILL : Ink.PART);
        number(sheet, index, x, scale.bottom() + NUMBER);
        return new Area(x - 9, high - 4, 18, low - high + 8);
    }

    private String range(Row row) {
        return words.of(
                "picture.resistors.range",
                Ticks.written("%.3f", data.sign().shown(row.lowest())),
                Ticks.written("%.3f", data.sign().shown(row.highest())));
    }

    private String said(Row row) {
        return words.of(
                row.picked() ? "picture.resistors.says.picked" : "picture.resistors.says.row",
                art().named(row),
                art().colours(row),
                data.sign().volts(row.voltage()),
                data.sign().volts(row.lowest()),
                data.sign().volts(row.highest()));
    }

    @Override
    public String says() {
        if (data.rows().isEmpty()) {
            return words.of("picture.resistors.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.resistors.says"));
        for (Row row : data.rows()) {
            said.append(' ').append(said(row));
        }
        return said.toString();
    }
}
