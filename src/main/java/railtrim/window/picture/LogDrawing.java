package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.LogData.Held;
import railtrim.window.picture.LogData.Warm;

/** The log of the way down: voltage, added resistance and temperatures one below the other over the same minutes, faults crossed in each. */
record LogDrawing(LogData data, Words words) implements Drawing {
    private static final double TOP = 34;
    private static final double LEFT = 58;
    private static final double FOOT = 68;
    private static final double BETWEEN = 26;
    /** With more readings than this only the faults and the last one get a mark of their own. */
    private static final int MANY = 30;

    /** One of the charts: values between {@code low} and {@code high} from {@code bottom} up to {@code top}. */
    private record Chart(double low, double high, double top, double bottom, double right, double minutes) {
        double x(double at) {
            return LEFT + 8 + at / minutes * (right - LEFT - 16);
        }

        double y(double value) {
            return bottom - 4 - (value - low) / (high - low) * (bottom - top - 8);
        }
    }

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.log.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        if (data.held().size() < 2) {
            sheet.writeLines(
                    words.of("picture.log.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        List<Held> known =
                data.held().stream().filter(each -> each.added().isPresent()).toList();
        boolean ohms = known.size() > 1;
        boolean warmth = !data.warm().isEmpty();
        int small = (ohms ? 1 : 0) + (warmth ? 1 : 0);
        double room = sheet.height() - TOP - FOOT - small * BETWEEN;
        double part = room / (2 + small);
        double top = TOP + 8;
        top = volts(sheet, top, room - part * small);
        if (ohms) {
            top = ohms(sheet, known, top + BETWEEN, part);
        }
        if (warmth) {
            top = warmth(sheet, top + BETWEEN, part);
        }
        minutes(sheet, top);
        legend(sheet);
    }

    private Chart chart(Sheet sheet, double low, double high, double top, double high2) {
        double space = Math.max((high - low) * 0.06, Math.abs(high) * 0.004);
        return new Chart(low - space, high + space, top, top + high2, sheet.width() - 8, data.end());
    }

    private double volts(Sheet sheet, double top, double high) {
        double least = data.held().stream().mapToDouble(Held::volts).min().orElseThrow();
        double most = data.held().stream().mapToDouble(Held::volts).max().orElseThrow();
        Chart chart = chart(sheet, least, most, top, high);
        frame(sheet, chart, "picture.log.volts");
        ticks(sheet, chart, Ticks.between(chart.low(), chart.high(), (int) (high / 26)), data.sign());
        data.stock().ifPresent(stock -> {
            if (stock < chart.high()) {
                sheet.line(LEFT, chart.y(stock), chart.right(), chart.y(stock), Ink.DASH);
            }
        });
        curve(sheet, chart, data.held(), Held::volts, true);
        return top + high;
    }

    private double ohms(Sheet sheet, List<Held> known, double top, double high) {
        ToDoubleFunction<Held> log = each -> Math.log10(each.added().getAsDouble());
        double least = known.stream().mapToDouble(log).min().orElseThrow();
        double most =
                Math.max(least + 0.1, known.stream().mapToDouble(log).max().orElseThrow());
        Chart chart = chart(sheet, least, most, top, high);
        frame(sheet, chart, "picture.log.ohms");
        end(sheet, chart, least);
        end(sheet, chart, most);
        curve(sheet, chart, known, log, false);
        return top + high;
    }

    private void end(Sheet sheet, Chart chart, double log) {
        sheet.line(LEFT - 4, chart.y(log), LEFT, chart.y(log), Ink.FINE);
        sheet.write(Display.ohms(Math.pow(10, log)), LEFT - 6, chart.y(log), Align.RIGHT, Type.SMALL, Ink.QUIET);
    }

    private double warmth(Sheet sheet, double top, double high) {
        double least = data.warm().stream().mapToDouble(Warm::celsius).min().orElseThrow();
        double most = data.warm().stream().mapToDouble(Warm::celsius).max().orElseThrow();
        Chart chart = chart(sheet, Math.min(20, least), Math.max(most, least + 10), top, high);
        frame(sheet, chart, "picture.log.warmth");
        List<Double> degrees = Ticks.between(chart.low(), chart.high(), Math.max(3, (int) (high / 26)));
        ticks(sheet, chart, degrees, new RailSign(false));
        for (boolean regulator : new boolean[] {false, true}) {
            List<Warm> row = data.warm().stream()
                    .filter(each -> each.regulator() == regulator)
                    .toList();
            Ink ink = regulator ? Ink.WIRE : Ink.WARM;
            line(
                    sheet,
                    row.stream()
                            .flatMap(each ->
                                    java.util.stream.Stream.of(chart.x(each.minutes()), chart.y(each.celsius())))
                            .toList(),
                    ink);
            row.forEach(each -> warm(sheet, chart, each, ink));
        }
        return top + high;
    }

    private void warm(Sheet sheet, Chart chart, Warm each, Ink ink) {
        double x = chart.x(each.minutes());
        double y = chart.y(each.celsius());
        if (each.regulator()) {
            sheet.box(x - 4, y - 4, 8, 8, 0, Ink.PART);
        } else {
            sheet.disc(x, y, 4, Ink.WARM_FILL);
        }
        String name = words.of(each.regulator() ? "picture.divider.regulator" : "picture.board.chip");
        sheet.detail(
                words.of(
                        "picture.log.detail.warm",
                        minutes(each.minutes()),
                        name,
                        Display.of(each.celsius(), Unit.CELSIUS)),
                Area.around(x, y, 8));
    }

    private void curve(Sheet sheet, Chart chart, List<Held> row, ToDoubleFunction<Held> value, boolean details) {
        List<Double> points = new ArrayList<>();
        for (Held each : row) {
            points.add(chart.x(each.minutes()));
            points.add(chart.y(value.applyAsDouble(each)));
        }
        line(sheet, points, Ink.ADDED_WIRE);
        for (int i = 0; i < row.size(); i++) {
            Held each = row.get(i);
            double x = chart.x(each.minutes());
            double y = chart.y(value.applyAsDouble(each));
            if (each.fault().isPresent()) {
                cross(sheet, x, y);
            } else if (details && row.size() <= MANY) {
                sheet.disc(x, y, 2.5, Ink.ADDED_FILL);
            }
            if (details) {
                sheet.detail(says(each), Area.around(x, y, 7));
            }
        }
    }

    private static void line(Sheet sheet, List<Double> points, Ink ink) {
        if (points.size() > 2) {
            sheet.strokes(ink, points.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    private static void cross(Sheet sheet, double x, double y) {
        sheet.line(x - 5, y - 5, x + 5, y + 5, Ink.BAD);
        sheet.line(x - 5, y + 5, x + 5, y - 5, Ink.BAD);
    }

    private void frame(Sheet sheet, Chart chart, String key) {
        sheet.writeWithin(words.of(key), LEFT, chart.top() - 9, chart.right() - LEFT, Align.LEFT, Type.SMALL, Ink.TEXT);
        sheet.strokes(Ink.FINE, LEFT, chart.top(), LEFT, chart.bottom(), chart.right(), chart.bottom());
    }

    private static void ticks(Sheet sheet, Chart chart, List<Double> ticks, RailSign sign) {
        String form = "%." + Ticks.decimals(ticks) + "f";
        for (double tick : ticks) {
            sheet.line(LEFT - 4, chart.y(tick), LEFT, chart.y(tick), Ink.FINE);
            sheet.write(
                    Ticks.written(form, sign.shown(tick)), LEFT - 6, chart.y(tick), Align.RIGHT, Type.SMALL, Ink.QUIET);
        }
    }

    private void minutes(Sheet sheet, double bottom) {
        Chart chart = new Chart(0, 1, 0, bottom, sheet.width() - 8, data.end());
        List<Double> ticks = Ticks.between(0, data.end(), 5);
        for (double tick : ticks) {
            sheet.line(chart.x(tick), bottom, chart.x(tick), bottom + 4, Ink.FINE);
            sheet.write(Display.of(tick, Unit.COUNT), chart.x(tick), bottom + 12, Align.CENTRE, Type.SMALL, Ink.QUIET);
        }
        sheet.writeWithin(
                words.of("picture.log.minutes"),
                chart.right(),
                bottom + 27,
                chart.right() - 8,
                Align.RIGHT,
                Type.SMALL,
                Ink.QUIET);
    }

    private void legend(Sheet sheet) {
        double y = sheet.height() - 9;
        double x = 12;
        if (data.held().stream().anyMatch(each -> each.fault().isPresent())) {
            cross(sheet, x + 2, y);
            x = named(sheet, "picture.log.fault", x + 13, y);
        }
        if (!data.warm().isEmpty()) {
            sheet.disc(x + 3, y, 4, Ink.WARM_FILL);
            x = named(sheet, "picture.board.chip", x + 12, y);
            sheet.box(x - 1, y - 4, 8, 8, 0, Ink.PART);
            named(sheet, "picture.divider.regulator", x + 12, y);
        }
    }

    private double named(Sheet sheet, String key, double x, double y) {
        String name = words.of(key);
        sheet.write(name, x, y, Align.LEFT, Type.SMALL, Ink.TEXT);
        return x + sheet.widthOf(name, Type.SMALL) + 16;
    }

    private String says(Held each) {
        String said = words.of(
                "picture.log.detail.held", minutes(each.minutes()), data.sign().volts(each.volts()));
        if (each.added().isPresent()) {
            said += " "
                    + words.of(
                            "picture.line.detail.added",
                            Display.ohms(each.added().getAsDouble()));
        }
        return each.fault().isPresent() ? said + " " + words.of("picture.log.detail.fault") : said;
    }

    private static String minutes(double minutes) {
        return Display.of(Math.round(minutes * 10) / 10.0, Unit.COUNT);
    }

    @Override
    public String says() {
        if (data.held().size() < 2) {
            return words.of("picture.log.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.log.says"));
        data.held().forEach(each -> said.append(' ').append(says(each)));
        return said.toString();
    }
}
