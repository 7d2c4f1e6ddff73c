package railtrim.parts;

import java.util.List;
import railtrim.circuit.Circuit;

/** Turns a setting into resistors that can be bought: one, or two in series or parallel, with the worst case counted. */
public final class Resistors {
    private Resistors() {}

    public enum Arrangement {
        SINGLE("single"),
        SERIES("series"),
        PARALLEL("parallel");

        private final String id;

        Arrangement(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }
    }

    /**
     * @param target magnitude wished for, volts
     * @param atLeast magnitude no corner of the tolerance may fall below, volts
     * @param tolerance fraction, e.g. 0.01
     * @param most 1 or 2 resistors
     */
    public record Wish(double target, double atLeast, double tolerance, int most) {}

    /**
     * @param added ohms of the combination
     * @param voltage nominal magnitude; {@code lowest} and {@code highest} over the tolerance corners (and the leg's own uncertainty)
     * @param power in the part that takes most, watts
     */
    public record Candidate(
            List<Double> values,
            Arrangement arrangement,
            double added,
            double voltage,
            double lowest,
            double highest,
            double power) {}

    /** Resistance that gives the target exactly, ohms. */
    public static double exact(Circuit circuit, double target) {
        return circuit.addedFor(target);
    }

    /**
     * Only candidates with {@code lowest ≥ atLeast} and {@code highest ≤ stock}; nearest to the target on the safe (upper) side first; at most 20.
     *
     * @param legUncertainty expanded, ohms, 0 where not known
     */
    public static List<Candidate> choose(Circuit circuit, double legUncertainty, Wish wish, Series series) {
        throw new UnsupportedOperationException();
    }

    /** The same from the values in a parts box, each with its own tolerance. */
    public static List<Candidate> choose(Circuit circuit, double legUncertainty, Wish wish, PartsBox box) {
        throw new UnsupportedOperationException();
    }
}
