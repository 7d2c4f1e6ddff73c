package railtrim.threshold;

import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import railtrim.threshold.MarginBudget.Given;

/**
 * What one more run down to the fault would be expected to buy, from the runs so far: the budget as it would come out on average.
 *
 * <p>A further run is taken to scatter like those before. That makes the tolerance factor smaller, but the highest fault of all runs a little higher: by
 * s·(φ(z) − z·(1 − Φ(z))) with z how many deviations s the highest run lies above the mean (the unit normal loss). With one run nobody
 * knows the scatter; then the figures hold if later runs agree with it within a step, and whoever shows them has to say so.
 *
 * @param now fail voltage and margin as they stand, not rounded, volts; {@code warm} expected after one more warm run; {@code cold} after one more that begins
 *     cold; {@code load} after one more with another load; {@code five} after as many warm ones as make five in all
 * @param spreadKnown false after a single run
 */
public record NextRun(
        double stock,
        double now,
        double warm,
        double cold,
        double load,
        double five,
        int runs,
        Tried tried,
        boolean spreadKnown) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /** Less than this part of stock is not worth another run, our own choice: 0.6 % less power. */
    static final double LEAST_GAIN = 0.003;

    static final int ENOUGH_RUNS = 5;

    /** @return empty where no run ended in a fault: then there is nothing that could be known better by another */
    public static Optional<NextRun> after(Given given) {
        if (!given.fail().faultSeen()) {
            return Optional.empty();
        }
        int runs = given.fail().runs();
        Tried tried = given.tried();
        return Optional.of(new NextRun(
                given.stock(),
                level(given),
                level(with(given, 1, tried)),
                level(with(given, 1, new Tried(true, tried.otherLoad()))),
                level(with(given, 1, new Tried(tried.coldStart(), true))),
                level(with(given, Math.max(0, ENOUGH_RUNS - runs), tried)),
                runs,
                tried,
                runs > 1));
    }

    private static double level(Given given) {
        MarginBudget budget = MarginBudget.of(given);
        return budget.fail() + budget.sum();
    }

    private static Given with(Given given, int more, Tried tried) {
        FailVoltage fail = given.fail();
        double width = fail.bracketHigh() - fail.bracketLow();
        double least = width / Math.sqrt(12);
        double scatter = Math.max(1e-6, Math.max(least, fail.spreadKnown().orElse(least)));
        double highest = fail.bracketLow() + width / 2;
        double raised = highest;
        for (int i = 0; i < more; i++) {
            raised += scatter * loss((raised - fail.mean()) / scatter);
        }
        double up = raised - highest;
        FailVoltage expected = new FailVoltage(
                fail.fail() + up,
                true,
                fail.bracketLow() + up,
                fail.bracketHigh() + up,
                fail.mean(),
                more == 0 ? fail.spread() : scatter,
                fail.runs() + more);
        return given.with(expected, tried);
    }

    /** Mean of how far a standard normal value lies above z, 0 where it lies below. */
    static double loss(double z) {
        return NORMAL.density(z) - z * NORMAL.survivalProbability(z);
    }

    /** Volts the setting would come down. */
    public double warmGain() {
        return now - warm;
    }

    public double coldGain() {
        return now - cold;
    }

    public double loadGain() {
        return now - load;
    }

    public double fiveGain() {
        return now - five;
    }

    /** The part of the chip’s power at stock that so many volts less would save; power goes with the square of the voltage. */
    public double powerSaved(double volts) {
        return (now * now - (now - volts) * (now - volts)) / (stock * stock);
    }

    /** A condition that is still an allowance is worth a run of its own where that allowance is. */
    public boolean coldWorth() {
        return !tried.coldStart() && worth(coldGain());
    }

    public boolean loadWorth() {
        return !tried.otherLoad() && worth(loadGain());
    }

    /** Whether any further run is expected to bring the setting noticeably lower. */
    public boolean anyWorth() {
        return coldWorth() || loadWorth() || worth(warmGain()) || worth(fiveGain());
    }

    public boolean worth(double volts) {
        return volts >= LEAST_GAIN * stock;
    }
}
