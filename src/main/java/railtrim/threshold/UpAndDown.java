package railtrim.threshold;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Up-and-down runs after Dixon and Mood (Journal of the American Statistical Association 43, 1948, 109–126): after a fault one step back, after a
 * good trial one step further. The trials gather round the stress at which half of them fail.
 *
 * <p>Of the two outcomes the rarer one is counted, n of it at each level i from the lowest of its own, N in all, with A = Σi·n and B = Σi²·n:
 * middle = lowest + d·(A/N ∓ ½), minus where faults are counted, and spread = 1.620·d·((N·B − A²)/N² + 0.029). The spread is linear in that
 * expression; a square root, as in some public code, is wrong. Where (N·B − A²)/N² is below 0.3 the expression does not hold, and 0.53·d is taken.
 *
 * @param middle the stress at which half fail; {@code spread} the standard deviation of the thresholds, in the unit of the stress
 * @param counted how many of the rarer outcome there were; below about 20 the result is rough
 * @param spreadFromTable false where the few levels allow no more than 0.53·d
 */
public record UpAndDown(double middle, double spread, double step, int counted, boolean spreadFromTable) {
    private static final double LEAST_DISPERSION = 0.3;

    /** Levels may be off an even step by this part of it: a voltage is set by hand. */
    private static final double UNEVEN = 0.25;

    private static final int LEAST_TURNS = 3;

    /** @param stress more of it makes a fault likelier */
    public record Shot(double stress, boolean fault) {}

    /**
     * @param shots in any order
     * @param step distance of the levels, more than 0
     * @return empty where there is no fault or nothing good, or a level is off the steps
     */
    public static Optional<UpAndDown> of(List<Shot> shots, double step) {
        long faults = shots.stream().filter(Shot::fault).count();
        long good = shots.size() - faults;
        if (faults == 0 || good == 0 || !(step > 0)) {
            return Optional.empty();
        }
        boolean countFaults = faults <= good;
        Predicate<Shot> rarer = shot -> shot.fault() == countFaults;
        double lowest =
                shots.stream().filter(rarer).mapToDouble(Shot::stress).min().orElseThrow();
        double sum = 0;
        double squares = 0;
        int count = 0;
        for (Shot shot : shots) {
            double exact = (shot.stress() - lowest) / step;
            long level = Math.round(exact);
            if (Math.abs(exact - level) > UNEVEN) {
                return Optional.empty();
            }
            if (rarer.test(shot)) {
                sum += level;
                squares += (double) level * level;
                count++;
            }
        }
        double half = countFaults ? -0.5 : 0.5;
        double dispersion = (count * squares - sum * sum) / ((double) count * count);
        boolean tabled = dispersion >= LEAST_DISPERSION;
        return Optional.of(new UpAndDown(
                lowest + step * (sum / count + half),
                tabled ? 1.620 * step * (dispersion + 0.029) : 0.53 * step,
                step,
                count,
                tabled));
    }

    /**
     * The same from trials, in the order they were made, with the voltage’s drop as the stress; {@link #middle} is a voltage again.
     *
     * @return empty where the trials are no up-and-down: each next voltage one even step up after a fault and one down after a good one, and
     *     the way turned at least three times
     */
    public static Optional<UpAndDown> of(List<Trial> trials) {
        int turns = 0;
        for (int i = 1; i < trials.size(); i++) {
            turns += trials.get(i).fault() != trials.get(i - 1).fault() ? 1 : 0;
        }
        if (turns < LEAST_TURNS) {
            return Optional.empty();
        }
        double step = IntStream.range(1, trials.size())
                .mapToDouble(
                        i -> Math.abs(trials.get(i).volts() - trials.get(i - 1).volts()))
                .average()
                .orElseThrow();
        for (int i = 1; i < trials.size(); i++) {
            double up = trials.get(i).volts() - trials.get(i - 1).volts();
            double wanted = trials.get(i - 1).fault() ? step : -step;
            if (Math.abs(up - wanted) > UNEVEN * step) {
                return Optional.empty();
            }
        }
        List<Shot> shots = trials.stream()
                .map(trial -> new Shot(-trial.volts(), trial.fault()))
                .toList();
        return of(shots, step)
                .map(found -> new UpAndDown(
                        -found.middle(), found.spread(), found.step(), found.counted(), found.spreadFromTable()));
    }
}
