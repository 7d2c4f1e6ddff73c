package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import railtrim.quantity.Accuracy;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/**
 * A meter as it lies on the bench: one of its kind, with its own errors, which stay inside the accuracy its maker promises. Every range
 * has one gain error and one offset, drawn once, as a real meter's do; the gain wanders a little with the hours, and the display rounds to whole
 * counts. On volts the meter itself draws a current.
 */
public final class VirtualMeter {
    /** A range with its errors: {@code gain} a fraction of the reading, {@code offset} in counts. */
    private static final class Row {
        private final Meter.Range range;
        private final double gain;
        private final double offset;
        private final double resolution;
        private final double perUnit;
        private final double full;
        private final double least;

        /** @param passed full scale of the range below, 0 for none */
        Row(Meter.Range range, double gain, double offset, double passed) {
            this.range = range;
            this.gain = gain;
            this.offset = offset;
            this.resolution = range.accuracy().resolution();
            this.perUnit = resolution < 1 ? Math.rint(1 / resolution) : 0;
            // Full scale itself is shown; the margin keeps it there after decimal rounding.
            this.full = range.fullScale() * (1 + 1e-9);
            this.least = passed == 0 ? 0 : Math.floor(passed / resolution) + 1;
        }

        boolean fits(double value) {
            return Math.abs(value) <= full && Double.isFinite(value);
        }

        /** @param passed whether it was too much for the range below */
        double read(double truth, double wander, boolean passed) {
            double off = (1 - WANDERS) * gain + WANDERS * range.accuracy().percent() / 100 * wander;
            double counts = Math.rint(truth * (1 + off) / resolution + offset);
            // What was too much for the smaller range is not shown as less than that range holds: the display tells the
            // range by its decimals.
            double shown = Math.copySign(Math.max(Math.abs(counts), passed ? least : 0), counts);
            // Dividing by a whole number hits the decimal the display shows; multiplying by 0.001 may miss it by a
            // hair.
            return resolution < 1 ? shown / perUnit : shown * resolution;
        }
    }

    /** Input resistance on volts, ohms, of nearly all digital meters. */
    public static final double INPUT_OHMS = 10e6;

    /**
     * So much of the promised error in proportion is not fixed but wanders over the day: for a bench meter the 24-hour figure is about 0.4 of the
     * one-year figure (Agilent 34401A, 10 V range: 15 and 35 ppm of reading; from memory).
     */
    private static final double WANDERS = 0.3;

    private static final int BY_ITSELF = -1;

    /** It wanders up and down once in so many seconds. */
    private static final double DAY = 8 * 3600;

    private final Meter meter;
    private final List<Row> volts;
    private final List<Row> ohms;
    private final double leadOhms;
    private final double phase;
    private double wander;
    private double wanderedAt = Double.NaN;
    private int byHand = BY_ITSELF;

    public VirtualMeter(Meter meter, RandomGenerator chance) {
        this.meter = meter;
        this.volts = rows(meter.volts(), chance);
        this.ohms = rows(meter.ohms(), chance);
        // Leads have 0.1 to 0.2 Ω (RS IDM71 manual p11); a little more for worn plugs.
        this.leadOhms = 0.1 + 0.15 * chance.nextDouble();
        this.phase = 2 * Math.PI * chance.nextDouble();
        at(0);
    }

    /** It is so many seconds later than when it was taken out. */
    void at(double seconds) {
        if (seconds != wanderedAt) {
            wanderedAt = seconds;
            wander = Math.sin(2 * Math.PI * seconds / DAY + phase);
        }
    }

    public Meter meter() {
        return meter;
    }

    public double leadOhms() {
        return leadOhms;
    }

    /** Turns the dial one range on, smallest first; after the largest one the meter chooses by itself again, as it does at first. */
    public void nextRange(Unit unit) {
        byHand = byHand + 1 < meter.ranges(unit).size() ? byHand + 1 : BY_ITSELF;
    }

    public void rangeByItself() {
        byHand = BY_ITSELF;
    }

    /** The range the dial was turned to; empty where the meter chooses. */
    public Optional<Meter.Range> rangeByHand(Unit unit) {
        return byHand == BY_ITSELF
                ? Optional.empty()
                : Optional.of(meter.ranges(unit).get(byHand));
    }

    public Shown volts(double truth) {
        return shown(truth, Unit.VOLT, volts);
    }

    /** @param truth between the probe tips; the leads' own resistance comes on top; infinity for open */
    public Shown ohms(double truth) {
        return shown(truth + leadOhms, Unit.OHM, ohms);
    }

    /** The same reading on a range so many steps too large: its last digits are gone. Empty where there is no such range, or no digit is left. */
    Optional<Shown> onLargerRange(Unit unit, double value, int up) {
        List<Meter.Range> ranges = meter.ranges(unit);
        int right = 0;
        while (right < ranges.size() - 1 && Math.abs(value) > ranges.get(right).fullScale() * (1 + 1e-9)) {
            right++;
        }
        if (right + up >= ranges.size()) {
            return Optional.empty();
        }
        Meter.Range range = ranges.get(right + up);
        double resolution = range.accuracy().resolution();
        double read = Math.rint(value / resolution) * resolution;
        return read == 0 ? Optional.empty() : Optional.of(written(read, unit, range));
    }

    private static List<Row> rows(List<Meter.Range> ranges, RandomGenerator chance) {
        List<Row> rows = new ArrayList<>();
        double passed = 0;
        for (Meter.Range range : ranges) {
            Accuracy accuracy = range.accuracy();
            // Rounding takes half a count of the digits the maker allows.
            double counts = Math.max(0, accuracy.digits() - 0.5);
            double gain = accuracy.percent() / 100 * (2 * chance.nextDouble() - 1);
            rows.add(new Row(range, gain, counts * (2 * chance.nextDouble() - 1), passed));
            passed = range.fullScale();
        }
        return rows;
    }

    /** The number that {@link #volts} would show, for an eye that only watches where it goes. NaN for overload. */
    double glance(double truth) {
        for (int i = 0; i < volts.size(); i++) {
            Row row = volts.get(i);
            double value = row.read(truth, wander, i > 0);
            if (row.fits(value)) {
                return value;
            }
        }
        return Double.NaN;
    }

    private Shown shown(double truth, Unit unit, List<Row> rows) {
        int first = Math.max(0, byHand);
        int last = byHand == BY_ITSELF ? rows.size() - 1 : byHand;
        for (int i = first; i <= last; i++) {
            Row row = rows.get(i);
            double value = row.read(truth, wander, i > first);
            if (row.fits(value)) {
                // No meter shows less than nothing on an ohms range.
                return written(unit == Unit.OHM ? Math.max(0, value) : value, unit, row.range);
            }
        }
        return new Shown(Shown.OVERLOAD, unit, Double.NaN);
    }

    private static Shown written(double value, Unit unit, Meter.Range range) {
        String prefix = "";
        double scale = 1;
        if (unit == Unit.OHM && range.fullScale() >= 1e6) {
            prefix = "M";
            scale = 1e6;
        } else if (unit == Unit.OHM && range.fullScale() >= 1e3) {
            prefix = "k";
            scale = 1e3;
        } else if (unit == Unit.VOLT && range.fullScale() < 1) {
            prefix = "m";
            scale = 1e-3;
        }
        int decimals = (int) Math.max(0, Math.round(-Math.log10(range.accuracy().resolution() / scale)));
        String text = decimal(value / scale, decimals);
        return new Shown(text + " " + prefix + unit.symbol(), unit, Double.parseDouble(text) * scale);
    }

    /** The digits of a display: so many decimals, and no sign before nothing. A rehearsal asks for a great many of these. */
    private static String decimal(double value, int decimals) {
        long counts = Math.round(Math.abs(value) * Math.pow(10, decimals));
        StringBuilder digits = new StringBuilder(Long.toString(counts));
        while (digits.length() <= decimals) {
            digits.insert(0, '0');
        }
        if (decimals > 0) {
            digits.insert(digits.length() - decimals, '.');
        }
        return (value < 0 && counts != 0 ? "-" : "") + digits;
    }
}
