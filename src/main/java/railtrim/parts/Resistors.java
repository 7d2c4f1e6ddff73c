package railtrim.parts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import railtrim.circuit.Circuit;
import railtrim.quantity.Display;

/** Turns a setting into resistors that can be bought: one, two or three, with the worst case counted. */
public final class Resistors {
    private Resistors() {}

    public enum Arrangement {
        SINGLE("single"),
        SERIES("series"),
        PARALLEL("parallel"),
        /** The first in series with the other two, which are parallel. */
        SERIES_PARALLEL("series-parallel"),
        /** The first in parallel with the other two, which are in series. */
        PARALLEL_SERIES("parallel-series");

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
     * @param most 1 to 3 resistors
     * @param drift further change of each resistor with temperature, fraction: temperature coefficient times change, e.g. 100 ppm/K · 40 K = 0.004
     */
    public record Wish(double target, double atLeast, double tolerance, int most, double drift) {
        /** Without drift. */
        public Wish(double target, double atLeast, double tolerance, int most) {
            this(target, atLeast, tolerance, most, 0);
        }

        /** How far a part of this tolerance can be off when it is also warm or cold. */
        public double withDrift(double tolerance) {
            return tolerance + drift + tolerance * drift;
        }
    }

    /**
     * @param added ohms of the combination
     * @param voltage nominal magnitude; {@code lowest} and {@code highest} over the tolerance corners and the leg's own uncertainty
     * @param power in the part that takes most, at the nominal voltage, watts
     */
    public record Candidate(
            List<Double> values,
            Arrangement arrangement,
            double added,
            double voltage,
            double lowest,
            double highest,
            double power) {

        /** "680 Ω", "470 Ω + 220 Ω" for series, "1 kΩ ∥ 2.2 kΩ" for parallel, "1 kΩ + (2.2 kΩ ∥ 3.3 kΩ)" for both. */
        public String partsInWords() {
            return switch (arrangement) {
                case SINGLE, SERIES -> joined(values, " + ");
                case PARALLEL -> joined(values, " ∥ ");
                case SERIES_PARALLEL -> Display.part(values.get(0)) + " + (" + joined(rest(), " ∥ ") + ")";
                case PARALLEL_SERIES -> Display.part(values.get(0)) + " ∥ (" + joined(rest(), " + ") + ")";
            };
        }

        private List<Double> rest() {
            return values.subList(1, values.size());
        }

        private static String joined(List<Double> ohms, String joint) {
            return ohms.stream().map(Display::part).collect(Collectors.joining(joint));
        }
    }

    /** Resistance that gives the target exactly, ohms. */
    public static double exact(Circuit circuit, double target) {
        return circuit.addedFor(target);
    }

    /**
     * What each part after the first has to bring the output nearer to the target, as a fraction of stock; our own choice. It comes to 0.4 % of
     * the chip's power, which goes with the square of the voltage: less than that is not worth a part and a joint more.
     */
    public static final double WORTH_OF_A_PART = 0.002;

    /** The list is for reading, not for browsing. */
    static final int MOST_CANDIDATES = 20;

    /**
     * Only candidates with {@code lowest ≥ atLeast} and {@code highest ≤ stock}; nearest to the target on the safe (upper) side first, then those
     * below the target, nearest first; at most 20. A combination counts as {@link #WORTH_OF_A_PART} further away for each part after the first.
     * The nearest single resistor on either side is always among them: it is the simplest to buy and fit.
     * Values are taken from a hundredth to a hundred times the exact resistance; beyond, a partner would change less than one per cent.
     *
     * @param legUncertainty expanded, ohms, 0 where not known. The stock voltage is held as measured: a larger leg means less current in it,
     *     and a voltage further down with the same resistor added
     * @throws railtrim.quantity.BadInput for a target not between reference and stock, a tolerance not from 0 to below 1, other than one to three resistors, or a
     *     leg that its uncertainty could make zero
     */
    public static List<Candidate> choose(Circuit circuit, double legUncertainty, Wish wish, Series series) {
        double exact = exact(circuit, wish.target());
        List<Piece> pieces = DoubleStream.of(series.between(exact / 100, exact * 100))
                .mapToObj(ohms -> new Piece(ohms, wish.withDrift(wish.tolerance()), 3))
                .toList();
        return Choice.of(new Bench(circuit, legUncertainty, wish), pieces);
    }

    /** Of a list of {@link #choose}, the one with more parts that comes nearer than the first on the same side: what was not worth its joints. */
    public static Optional<Candidate> nearerWithMore(List<Candidate> best, double target) {
        double first = best.get(0).voltage() - target;
        return best.stream()
                .filter(other -> other.values().size() > best.get(0).values().size())
                .filter(other -> (other.voltage() - target) / first >= 0 && (other.voltage() - target) / first < 1)
                .findFirst();
    }

    /** Of such a list, the best with fewer parts than the first: what its joints are worth more than. */
    public static Optional<Candidate> bestWithFewer(List<Candidate> best) {
        return best.stream()
                .filter(other -> other.values().size() < best.get(0).values().size())
                .findFirst();
    }

    /** The same from the values in a parts box, each with its own tolerance and no limit on the value. */
    public static List<Candidate> choose(Circuit circuit, double legUncertainty, Wish wish, PartsBox box) {
        List<Piece> pieces = box.parts().stream()
                .map(part -> new Piece(part.ohms(), wish.withDrift(part.tolerance()), part.count()))
                .toList();
        return Choice.of(new Bench(circuit, legUncertainty, wish), pieces);
    }
}
