package railtrim.threshold;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import railtrim.quantity.BadInput;

/**
 * Where it fails and how sure that is, from the runs that ended in a fault.
 *
 * <p>A run says only that its threshold lies in a bracket: above the voltage that showed a fault, up to the lowest voltage above it that was good.
 *
 * @param fail highest voltage at which a fault was seen, or, where none was, the lowest voltage that was good
 * @param faultSeen false where the floor was reached without a fault
 * @param bracketLow same as {@code fail}
 * @param bracketHigh no run's threshold lies above: the highest upper end of the runs' brackets; same as {@code fail} where no fault was seen
 *     or nothing was good before it
 * @param mean of the runs' bracket middles, volts; same as {@code fail} where no fault was seen
 * @param spread standard deviation of the runs' bracket middles with the bracket's width counted (as a rectangular distribution), volts; NaN with fewer than
 *     two runs
 * @param runs number of runs that ended in a fault
 */
public record FailVoltage(
        double fail, boolean faultSeen, double bracketLow, double bracketHigh, double mean, double spread, int runs) {
    /** One run's fault voltage and the lowest good voltage above it. */
    private record Bracket(double low, double high) {
        double middle() {
            return (low + high) / 2;
        }

        double width() {
            return high - low;
        }
    }

    /**
     * @throws railtrim.quantity.BadInput for no trials, or a voltage that is not above zero
     */
    public static FailVoltage of(List<Trial> trials) {
        if (trials.isEmpty()) {
            throw BadInput.of("threshold.no-trials");
        }
        for (Trial trial : trials) {
            if (!(trial.volts() > 0) || Double.isInfinite(trial.volts())) {
                throw BadInput.of(
                        "threshold.not-above-zero", String.valueOf(trial.run()), String.valueOf(trial.volts()));
            }
        }
        List<Bracket> brackets = brackets(trials);
        return brackets.isEmpty() ? withoutFault(trials) : withFaults(brackets);
    }

    private static FailVoltage withoutFault(List<Trial> trials) {
        double lowestGood = trials.stream().mapToDouble(Trial::volts).min().orElseThrow();
        return new FailVoltage(lowestGood, false, lowestGood, lowestGood, lowestGood, Double.NaN, 0);
    }

    private static FailVoltage withFaults(List<Bracket> brackets) {
        double fail = brackets.stream().mapToDouble(Bracket::low).max().orElseThrow();
        double high = brackets.stream().mapToDouble(Bracket::high).max().orElseThrow();
        double mean = brackets.stream().mapToDouble(Bracket::middle).average().orElseThrow();
        return new FailVoltage(fail, true, fail, high, mean, spread(brackets, mean), brackets.size());
    }

    private static double spread(List<Bracket> brackets, double mean) {
        if (brackets.size() < 2) {
            return Double.NaN;
        }
        double squares = 0;
        double widths = 0;
        for (Bracket bracket : brackets) {
            squares += Math.pow(bracket.middle() - mean, 2);
            widths += Math.pow(bracket.width(), 2) / 12;
        }
        return Math.sqrt(squares / (brackets.size() - 1) + widths / brackets.size());
    }

    private static List<Bracket> brackets(List<Trial> trials) {
        TreeMap<Integer, List<Trial>> runs = new TreeMap<>();
        trials.forEach(trial ->
                runs.computeIfAbsent(trial.run(), run -> new ArrayList<>()).add(trial));
        List<Bracket> brackets = new ArrayList<>();
        for (List<Trial> run : runs.values()) {
            highestFault(run)
                    .ifPresent(fault -> brackets.add(new Bracket(
                            fault,
                            lowestGoodAbove(run, fault)
                                    .orElseGet(
                                            () -> lowestGoodAbove(trials, fault).orElse(fault)))));
        }
        return brackets;
    }

    private static OptionalDouble highestFault(List<Trial> run) {
        return run.stream().filter(Trial::fault).mapToDouble(Trial::volts).max();
    }

    private static OptionalDouble lowestGoodAbove(List<Trial> trials, double fault) {
        return trials.stream()
                .filter(trial -> !trial.fault())
                .mapToDouble(Trial::volts)
                .filter(volts -> volts > fault)
                .min();
    }

    public OptionalDouble spreadKnown() {
        return Double.isNaN(spread) ? OptionalDouble.empty() : OptionalDouble.of(spread);
    }
}
