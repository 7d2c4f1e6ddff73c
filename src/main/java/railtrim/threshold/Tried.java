package railtrim.threshold;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * What the runs covered besides the first one. A condition counts as tried where it was held as far down as the worst run was still good, or failed:
 * a look at it near stock shows nothing.
 *
 * @param coldStart a run that began with the chip at room temperature
 * @param otherLoad at least two loads told apart by their names; a run without a name for its load tells nothing
 */
public record Tried(boolean coldStart, boolean otherLoad) {
    /** A hair of a volt, so that the last binary digit decides nothing. */
    private static final double HAIR = 1e-9;

    /** @param fail of the same trials */
    public static Tried of(List<Trial> trials, FailVoltage fail) {
        Predicate<Trial> farDown = trial -> trial.fault() || trial.volts() <= fail.bracketHigh() + HAIR;
        long loads = trials.stream()
                .filter(farDown)
                .map(trial -> trial.load().strip().toLowerCase(Locale.ROOT))
                .filter(load -> !load.isEmpty())
                .distinct()
                .count();
        return new Tried(trials.stream().filter(Trial::cold).anyMatch(farDown), loads > 1);
    }
}
