package railtrim.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A multimeter: its count and the accuracy of its DC volt and ohm ranges. A reading is taken to be made on the smallest range that holds it,
 * unless its last digit tells another.
 *
 * @param id "basic", "middle", "fine", "typed" or "rows"
 * @param volts smallest range first, at least one; likewise {@code ohms}
 */
public record Meter(String id, List<Range> volts, List<Range> ohms) {
    private static final Meter BASIC = makeBasic();
    private static final Meter MIDDLE = ofCounts("middle", 6000, 0.5, 3, 0.9, 2);
    private static final Meter FINE = ofCounts("fine", 50_000, 0.05, 5, 0.1, 5);

    /** No board for this work has more volts, and none more ohms in a leg. */
    private static final double MOST_VOLTS = 100;

    private static final double MOST_OHMS = 1e7;

    /** @param fullScale the largest value the range can show, SI units */
    public record Range(double fullScale, Accuracy accuracy) {
        /** A reading of exactly full scale belongs to the range; the margin keeps it there after decimal rounding. */
        boolean holds(double reading) {
            return Math.abs(reading) <= fullScale * (1 + 1e-9);
        }

        private Range next() {
            return new Range(
                    10 * fullScale, new Accuracy(accuracy.percent(), accuracy.digits(), 10 * accuracy.resolution()));
        }
    }

    public Meter {
        volts = List.copyOf(volts);
        ohms = List.copyOf(ohms);
        if (volts.isEmpty() || ohms.isEmpty()) {
            throw new IllegalArgumentException("a meter has at least one range of each kind");
        }
    }

    /**
     * 2000 counts. Ohms ±(0.8 % + 2), 2 MΩ range ±(1 % + 2): Elenco M-1000D manual. 200 Ω range ±(1.0 % + 3): Holdpeak 39B manual 6-5, the
     * wider of the two. DC volts ±(0.5 % + 2): from memory.
     */
    public static Meter basic() {
        return BASIC;
    }

    private static Meter makeBasic() {
        List<Range> ohms = new ArrayList<>();
        ohms.addAll(ranges(2000, 200, 1, 1.0, 3));
        ohms.addAll(ranges(2000, 2e3, 3, 0.8, 2));
        ohms.addAll(ranges(2000, 2e6, 1, 1.0, 2));
        return new Meter("basic", ranges(2000, 0.2, 4, 0.5, 2), ohms);
    }

    /** 6000 counts: DC volts ±(0.5 % + 3), ohms ±(0.9 % + 2), from memory. */
    public static Meter middle() {
        return MIDDLE;
    }

    /** 50,000 counts: DC volts ±(0.05 % + 5), ohms ±(0.1 % + 5), from memory. */
    public static Meter fine() {
        return FINE;
    }

    /**
     * A meter whose accuracies were typed from its manual.
     *
     * @param counts what it can show and one more: 2000, 6000, 50,000; its ranges begin with the same figure
     * @throws BadInput for a negative or impossible accuracy
     */
    public static Meter typed(int counts, double voltPercent, double voltDigits, double ohmPercent, double ohmDigits) {
        return ofCounts("typed", counts, voltPercent, voltDigits, ohmPercent, ohmDigits);
    }

    /**
     * A meter whose ranges were copied from its manual, each with its own accuracy.
     *
     * @param volts in any order; where there is none a plain meter is taken, which errs on the wide side; {@code ohms} likewise
     */
    public static Meter ofRanges(List<Range> volts, List<Range> ohms) {
        return new Meter(
                "rows",
                ascending(volts.isEmpty() ? BASIC.volts : volts, MOST_VOLTS),
                ascending(ohms.isEmpty() ? BASIC.ohms : ohms, MOST_OHMS));
    }

    /** Smallest first. Above the largest that was copied the next ranges are taken to be as it is, each with a last digit ten times as large. */
    private static List<Range> ascending(List<Range> copied, double largest) {
        List<Range> ranges = new ArrayList<>(copied);
        ranges.sort(Comparator.comparingDouble(Range::fullScale));
        while (ranges.get(ranges.size() - 1).fullScale() < largest) {
            ranges.add(ranges.get(ranges.size() - 1).next());
        }
        return ranges;
    }

    /** Accuracy of the smallest range that holds the magnitude of the reading (the largest range when none does). */
    public Accuracy voltsAt(double reading) {
        return at(volts, reading);
    }

    /** As {@link #voltsAt} for ohms. */
    public Accuracy ohmsAt(double reading) {
        return at(ohms, reading);
    }

    /**
     * Accuracy of the range that shows the reading with this last digit: 1.50 V with 10 mV was read on a 20 V range, though one of 2 V holds it. Where
     * none does, as {@link #voltsAt(double)}.
     *
     * @param lastDigit of the reading as the meter showed it, volts
     */
    public Accuracy voltsAt(double reading, double lastDigit) {
        return at(volts, reading, lastDigit);
    }

    /** As {@link #voltsAt(double, double)} for ohms. */
    public Accuracy ohmsAt(double reading, double lastDigit) {
        return at(ohms, reading, lastDigit);
    }

    /**
     * As {@link #voltsAt(double)} or {@link #ohmsAt(double)}, whichever the unit says.
     *
     * @throws IllegalArgumentException for a unit other than volts and ohms
     */
    public Accuracy at(Unit unit, double reading) {
        return at(ranges(unit), reading);
    }

    /** As {@link #voltsAt(double, double)} or {@link #ohmsAt(double, double)}; errors as {@link #at(Unit, double)}. */
    public Accuracy at(Unit unit, double reading, double lastDigit) {
        return at(ranges(unit), reading, lastDigit);
    }

    /** Ranges for volts or ohms, smallest first; errors as {@link #at(Unit, double)}. */
    public List<Range> ranges(Unit unit) {
        return switch (unit) {
            case VOLT -> volts;
            case OHM -> ohms;
            default -> throw new IllegalArgumentException("a meter has no ranges here for " + unit);
        };
    }

    /** Four DC volt ranges, from tenths of a volt, and six ohm ranges, from hundreds of ohms. */
    private static Meter ofCounts(
            String id, int counts, double voltPercent, double voltDigits, double ohmPercent, double ohmDigits) {
        double leading = counts / Math.pow(10, Math.floor(Math.log10(counts)));
        return new Meter(
                id,
                ranges(counts, leading / 10, 4, voltPercent, voltDigits),
                ranges(counts, leading * 100, 6, ohmPercent, ohmDigits));
    }

    /** Decade ranges: {@code first} is the name of the smallest, which shows up to one count less. */
    private static List<Range> ranges(int counts, double first, int howMany, double percent, double digits) {
        List<Range> ranges = new ArrayList<>();
        double name = first;
        for (int i = 0; i < howMany; i++) {
            double resolution = name / counts;
            ranges.add(new Range((counts - 1) * resolution, new Accuracy(percent, digits, resolution)));
            name *= 10;
        }
        return ranges;
    }

    // Plain loops: while a way down is read again these are asked for thousands of times.

    private static Accuracy at(List<Range> ranges, double reading) {
        int i = 0;
        while (i < ranges.size() - 1 && !ranges.get(i).holds(reading)) {
            i++;
        }
        return ranges.get(i).accuracy();
    }

    private static Accuracy at(List<Range> ranges, double reading, double lastDigit) {
        for (int i = 0; i < ranges.size(); i++) {
            Range range = ranges.get(i);
            if (range.holds(reading) && range.accuracy().endsWith(lastDigit)) {
                return range.accuracy();
            }
        }
        return at(ranges, reading);
    }
}
