package railtrim.window.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.picture.Detail.Area;
import railtrim.window.picture.LineData.Fit;
import railtrim.window.picture.LineData.Reading;

/**
 * The line check. Both scales are stretched so that a circuit that behaves gives a straight line; they are marked with the readings themselves, in
 * volts and ohms, and the voltage falls downwards.
 */
record LineDrawing(LineData data, Words words) implements Drawing {
    private static final double LEFT = 66;
    private static final double TOP = 54;
    private static final double TICK_GAP = 16;

    /** From siemens and 1/volt to places on the sheet. */
    private record Plot(double right, double bottom, double most, double low, double high) {
        double x(double across) {
            return LEFT + 14 + across / most * (right - LEFT - 28);
        }

        /** @param inverse 1/(|V| − Vref) */
        double y(double inverse) {
            double within = Math.max(low, Math.min(high, inverse));
            return TOP + 10 + (within - low) / (high - low) * (bottom - TOP - 20);
        }
    }

    @Override
    public void drawOn(Sheet sheet) {
        sheet.write(words.of("picture.line.title"), 8, 13, Align.LEFT, Type.STRONG, Ink.TEXT);
        List<Reading> readings = data.drawable();
        if (readings.isEmpty()) {
            sheet.writeLines(
                    words.of("picture.line.empty"), 8, 38, sheet.width() - 16, 4, Align.LEFT, Type.PLAIN, Ink.QUIET);
            return;
        }
        String verdict = verdict();
        int lines = sheet.linesOf(verdict, sheet.width() - 16, 3, Type.PLAIN);
        double verdictTop = sheet.height() - 6 - lines * Type.PLAIN.lead();
        Plot plot = plot(sheet, readings, verdictTop - 48);
        sheet.writeLines(
                words.of("picture.line.down"), 8, TOP - 20, sheet.width() - 16, 1, Align.LEFT, Type.SMALL, Ink.QUIET);
        frame(sheet, plot);
        data.fit().ifPresent(fit -> line(sheet, plot, fit));
        readings.forEach(reading -> point(sheet, plot, reading));
        voltTicks(sheet, plot, readings);
        ohmTicks(sheet, plot, readings);
        sheet.writeLines(
                words.of("picture.line.right"),
                plot.right(),
                plot.bottom() + 32,
                sheet.width() - 16,
                1,
                Align.RIGHT,
                Type.SMALL,
                Ink.QUIET);
        sheet.writeLines(
                verdict,
                8,
                verdictTop + Type.PLAIN.lead() / 2,
                sheet.width() - 16,
                3,
                Align.LEFT,
                Type.PLAIN,
                Ink.TEXT);
    }

    private Plot plot(Sheet sheet, List<Reading> readings, double bottom) {
        double most = readings.stream().mapToDouble(Reading::across).max().orElse(0);
        most = most > 0 ? most : 1;
        List<Double> heights = new ArrayList<>();
        for (Reading reading : readings) {
            heights.add(inverse(reading.volts()));
            heights.add(inverse(reading.volts() + 2 * reading.uncertainty()));
            heights.add(inverse(Math.max(
                    reference() + (reading.volts() - reference()) / 2, reading.volts() - 2 * reading.uncertainty())));
        }
        double last = most;
        data.fit().ifPresent(fit -> {
            heights.add(1 / fit.above(0));
            heights.add(1 / fit.above(last));
        });
        double low = heights.stream().min(Comparator.naturalOrder()).orElseThrow();
        double high = heights.stream().max(Comparator.naturalOrder()).orElseThrow();
        double room = Math.max(0, 0.02 * high - (high - low));
        return new Plot(sheet.width() - 10, bottom, most, low - room / 2 - 1e-12, high + room / 2 + 1e-12);
    }

    private double reference() {
        return data.reference().orElse(0);
    }

    private double inverse(double volts) {
        return 1 / (volts - reference());
    }

    private static void frame(Sheet sheet, Plot plot) {
        sheet.strokes(Ink.WIRE, LEFT, TOP, LEFT, plot.bottom(), plot.right(), plot.bottom());
    }

    private static void line(Sheet sheet, Plot plot, Fit fit) {
        sheet.line(
                plot.x(0),
                plot.y(1 / fit.above(0)),
                plot.x(plot.most()),
                plot.y(1 / fit.above(plot.most())),
                Ink.ADDED_WIRE);
    }

    private void point(Sheet sheet, Plot plot, Reading reading) {
        double x = plot.x(reading.across());
        double y = plot.y(inverse(reading.volts()));
        double reach = 2 * reading.uncertainty();
        if (reach > 0) {
            double above = plot.y(inverse(reading.volts() + reach));
            double below = plot.y(inverse(Math.max(reading.volts() - reach, reference() + 1e-6)));
            sheet.line(x, above, x, below, Ink.WIRE);
            sheet.line(x - 4, above, x + 4, above, Ink.WIRE);
            sheet.line(x - 4, below, x + 4, below, Ink.WIRE);
        }
        sheet.disc(x, y, 4, Ink.PART);
        if (data.suspect().equals(Optional.of(reading))) {
            sheet.disc(x, y, 10, Ink.BAD);
            boolean left = x > sheet.width() / 2;
            sheet.write(
                    words.of("picture.line.suspect"),
                    x + (left ? -15 : 15),
                    y,
                    left ? Align.RIGHT : Align.LEFT,
                    Type.STRONG,
                    Ink.TEXT);
        }
        sheet.detail(detail(reading), Area.around(x, y, 10));
    }

    private String detail(Reading reading) {
        String volts = data.sign().volts(reading.volts(), 2 * reading.uncertainty());
        String said = words.of("picture.line.says.reading", added(reading), volts);
        return data.fit()
                .map(fit -> reference() + fit.above(reading.across()))
                .map(line -> said + " "
                        + words.of("picture.line.detail.line", data.sign().volts(line)))
                .orElse(said);
    }

    private String added(Reading reading) {
        return Double.isInfinite(reading.added()) ? words.of("picture.line.none") : Display.ohms(reading.added());
    }

    private void voltTicks(Sheet sheet, Plot plot, List<Reading> readings) {
        List<Reading> order = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::volts).reversed())
                .toList();
        double last = Double.NEGATIVE_INFINITY;
        for (Reading reading : order) {
            double y = plot.y(inverse(reading.volts()));
            if (y - last < TICK_GAP) {
                continue;
            }
            sheet.line(LEFT - 4, y, LEFT, y, Ink.WIRE);
            sheet.write(data.sign().volts(reading.volts()), LEFT - 7, y, Align.RIGHT, Type.SMALL, Ink.TEXT);
            last = y;
        }
    }

    private void ohmTicks(Sheet sheet, Plot plot, List<Reading> readings) {
        List<Reading> order = readings.stream()
                .sorted(Comparator.comparingDouble(Reading::across))
                .toList();
        double free = 0;
        for (Reading reading : order) {
            String said = added(reading);
            double wide = sheet.widthOf(said, Type.SMALL);
            double x = plot.x(reading.across());
            double left = Math.min(x - wide / 2, plot.right() - wide);
            if (left < free) {
                continue;
            }
            sheet.line(x, plot.bottom(), x, plot.bottom() + 4, Ink.WIRE);
            sheet.write(said, left, plot.bottom() + 14, Align.LEFT, Type.SMALL, Ink.TEXT);
            free = left + wide + 8;
        }
    }

    private String verdict() {
        if (data.fit().isEmpty()) {
            return words.of("picture.line.one");
        }
        if (data.suspect().isPresent()) {
            return words.of("picture.line.suspect.says", added(data.suspect().get()));
        }
        return data.readings().size() == 2
                ? words.of("picture.line.two")
                : words.of("picture.line.worst", millivolts(data.fit().get().worst()));
    }

    private static String millivolts(double volts) {
        return String.format(Locale.ROOT, "%.1f mV", volts * 1000);
    }

    @Override
    public String says() {
        if (data.drawable().isEmpty()) {
            return words.of("picture.line.empty");
        }
        StringBuilder said = new StringBuilder(words.of("picture.line.says"));
        for (Reading reading : data.drawable()) {
            said.append(' ')
                    .append(words.of(
                            "picture.line.says.reading",
                            added(reading),
                            data.sign().volts(reading.volts())));
        }
        return said.append(' ').append(verdict()).toString();
    }
}
