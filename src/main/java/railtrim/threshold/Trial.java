package railtrim.threshold;

/**
 * One voltage held under load.
 *
 * @param run 1 for the first way down, 2 for the next …
 * @param volts magnitude
 * @param cold whether this run began with the chip at room temperature
 * @param dwell how long it was held, seconds; NaN where not noted
 */
public record Trial(int run, double volts, boolean fault, boolean cold, String load, double dwell) {
    /** Without the time it was held. */
    public Trial(int run, double volts, boolean fault, boolean cold, String load) {
        this(run, volts, fault, cold, load, Double.NaN);
    }
}
