package railtrim.procedure;

import static railtrim.procedure.Figures.anyEmpty;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Accuracy;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/**
 * Whether the trimmer, and later the fixed resistor, is across the leg it was chosen for, told by what the leg read bare and with the trimmer. One meter on one range
 * repeats far better than its accuracy says, so that a resistor that is large beside its leg still shows. A high reading counts only where both
 * earlier ones say so: one of them typed wrongly cannot be taken again any more and must not hold up a sound joint.
 */
final class LegProof {
    /** What a meter repeats to within an hour, a fraction of the reading, beside two counts; our own choice, as for volts. */
    private static final double SOON = 0.002;

    /** The same over a whole job, hours apart and in a room that has warmed. */
    private static final double LATER = 0.005;

    /** What two ranges of one meter differ by, a fraction of the reading: those of the plainest one promise 0.8 and 1 % and three counts. */
    private static final double RANGES = 0.03;

    /** So many ohms the end of a trimmer's travel may come out otherwise the next time; our own choice. */
    private static final double END = 3;

    /** Proven by ohms each time and each time not what the sums allow: then a reading before it is wrong, and this joint is not. */
    private static final int MOST_POWERS = 3;

    private LegProof() {}

    /**
     * The trimmer turned right down has to take its own leg down as far as the two in parallel say. On the other leg it takes this one down as well,
     * through the board's load, but not as far.
     */
    static List<Finding> lowEnd(Figures figures) {
        OptionalDouble low = figures.ohms("smooth.low");
        OptionalDouble least = figures.ohms("trimmer.min");
        if (anyEmpty(low, least, figures.readLeg())) {
            return List.of();
        }
        double expected = Ranges.parallel(figures.readLeg().getAsDouble(), least.getAsDouble());
        double ofEnd = END + 2 * figures.ohmUncertainty(least.getAsDouble());
        double slack = RANGES * expected
                + ofEnd * Math.pow(expected / least.getAsDouble(), 2)
                + figures.reading("smooth.low")
                        .map(read -> 2 * figures.accuracy(read).resolution())
                        .orElse(0.0);
        return low.getAsDouble() - expected <= slack
                ? List.of()
                : List.of(Findings.blocks(
                        "verdict.low-end-high",
                        "solder",
                        Display.of(low.getAsDouble(), Unit.OHM),
                        Display.of(expected, Unit.OHM)));
    }

    /** How often the board came up outside what the sums allow at a step, since a reading was taken; 0 where it was not. */
    static long timesOutside(Figures figures, String step, String since) {
        long read = figures.entry(since).map(Entry::sequence).orElse(Long.MAX_VALUE);
        return figures.job().entries().stream()
                .filter(entry -> entry.sequence() > read
                        && entry.fact() instanceof Fact.Alarm alarm
                        && alarm.step().equals(step)
                        && alarm.reason().equals("outside"))
                .count();
    }

    /** Told before the iron is used once more: the joint has been mended often enough. */
    static List<Finding> oftenInVain(Figures figures) {
        long outside = timesOutside(figures, "fit.on", "hand.ohms");
        return outside < MOST_POWERS ? List.of() : List.of(Findings.stops("stop.fit-power", "solder"));
    }

    static List<Finding> of(Figures figures) {
        OptionalDouble total = figures.ohms("fit.total");
        OptionalDouble hand = figures.ohms("hand.ohms");
        OptionalDouble trimmer = figures.ohms("setting.trimmer");
        OptionalDouble setting = figures.ohms("setting.total");
        if (anyEmpty(total, hand, trimmer, setting, figures.readLeg())) {
            return List.of();
        }
        double fromBare = Ranges.parallel(figures.readLeg().getAsDouble(), hand.getAsDouble());
        double withoutTrimmer = Ranges.parallel(setting.getAsDouble(), -trimmer.getAsDouble());
        double fromSetting = Ranges.parallel(withoutTrimmer, hand.getAsDouble());
        double doubt = 2 * total.getAsDouble() * total.getAsDouble();
        double ofHand = doubt * part(figures, hand.getAsDouble());
        double ofBoth = doubt * Math.hypot(part(figures, hand.getAsDouble()), part(figures, trimmer.getAsDouble()));
        boolean high = total.getAsDouble() - fromBare > repeats(figures, "leg.ohms", LATER) + ofHand
                && total.getAsDouble() - fromSetting > repeats(figures, "setting.total", SOON) + ofBoth;
        return high
                ? List.of(Findings.blocks(
                        "verdict.fit-not-across",
                        "fit",
                        Display.of(total.getAsDouble(), Unit.OHM),
                        Display.of(setting.getAsDouble(), Unit.OHM),
                        Display.of(fromSetting, Unit.OHM)))
                : List.of();
    }

    /** What the meter leaves open of a resistance, standard, in siemens. */
    private static double part(Figures figures, double ohms) {
        return figures.ohmUncertainty(ohms) / (ohms * ohms);
    }

    /** What the reading in place and an earlier one across the same pins may differ by with nothing changed, ohms. */
    private static double repeats(Figures figures, String earlier, double part) {
        Optional<Fact.Reading> before = figures.reading(earlier);
        Optional<Fact.Reading> now = figures.reading("fit.total");
        if (before.isEmpty() || now.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Accuracy range = figures.accuracy(now.get());
        double value = Math.abs(now.get().value());
        double counts = 2 * range.resolution() + part * value;
        boolean oneRange = range.equals(figures.accuracy(before.get()));
        return oneRange
                ? counts
                : Math.max(
                        counts,
                        2
                                * (figures.ohmUncertainty(value)
                                        + figures.ohmUncertainty(before.get().value())));
    }
}
