package railtrim.parts;

import java.util.Comparator;
import java.util.List;
import railtrim.circuit.Circuit;
import railtrim.parts.Resistors.Arrangement;
import railtrim.parts.Resistors.Candidate;
import railtrim.parts.Resistors.Wish;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/** Tries a combination of resistors on the circuit: its voltage, its worst cases, its power, whether it is safe and which of two comes first. */
final class Bench {
    /** A billionth of a volt: the target hit exactly is not to fall on the wrong side by the last binary digit. */
    private static final double NOTHING = 1e-9;

    private final Circuit circuit;
    private final Circuit legLow;
    private final Circuit legHigh;
    private final Wish wish;
    private final double start;

    Bench(Circuit circuit, double legUncertainty, Wish wish) {
        if (!(wish.tolerance() >= 0 && wish.tolerance() < 1)) {
            throw BadInput.of("parts.resistor.tolerance", String.valueOf(wish.tolerance()));
        }
        if (wish.most() != 1 && wish.most() != 2) {
            throw BadInput.of("parts.resistor.most", String.valueOf(wish.most()));
        }
        if (!(legUncertainty >= 0 && legUncertainty < circuit.leg())) {
            throw BadInput.of("parts.resistor.leg", Display.ohms(circuit.leg()), String.valueOf(legUncertainty));
        }
        this.circuit = circuit;
        this.legLow = withLeg(circuit, circuit.leg() - legUncertainty);
        this.legHigh = withLeg(circuit, circuit.leg() + legUncertainty);
        this.wish = wish;
        this.start = Math.max(Resistors.exact(circuit, wish.target()), leastFor(circuit, wish.atLeast()));
    }

    /** The stock voltage was measured, so it stays; the current in the leg follows from it. */
    private static Circuit withLeg(Circuit circuit, double leg) {
        return leg == circuit.leg()
                ? circuit
                : Circuit.fromStock(circuit.place(), circuit.reference(), circuit.stock(), leg, circuit.bias());
    }

    private static double leastFor(Circuit circuit, double atLeast) {
        if (atLeast >= circuit.stock()) {
            return Double.POSITIVE_INFINITY;
        }
        return atLeast > circuit.reference() ? circuit.addedFor(atLeast) : 0;
    }

    /** Ohms where a search starts: the target, or where what is asked of every corner is met at all. */
    double start() {
        return start;
    }

    boolean pairsToo() {
        return wish.most() == 2;
    }

    Candidate single(Piece piece) {
        double voltage = circuit.magnitude(piece.ohms());
        double across = voltage - circuit.reference();
        return candidate(
                List.of(piece.ohms()),
                Arrangement.SINGLE,
                piece.ohms(),
                piece.least(),
                piece.greatest(),
                across * across / piece.ohms());
    }

    /** The larger value is written first. */
    Candidate series(Piece larger, Piece smaller) {
        double added = larger.ohms() + smaller.ohms();
        double current = (circuit.magnitude(added) - circuit.reference()) / added;
        return candidate(
                List.of(larger.ohms(), smaller.ohms()),
                Arrangement.SERIES,
                added,
                larger.least() + smaller.least(),
                larger.greatest() + smaller.greatest(),
                current * current * larger.ohms());
    }

    Candidate parallel(Piece larger, Piece smaller) {
        double added = parallel(larger.ohms(), smaller.ohms());
        double across = circuit.magnitude(added) - circuit.reference();
        return candidate(
                List.of(larger.ohms(), smaller.ohms()),
                Arrangement.PARALLEL,
                added,
                parallel(larger.least(), smaller.least()),
                parallel(larger.greatest(), smaller.greatest()),
                across * across / smaller.ohms());
    }

    /** The output rises with the added resistance and falls with the leg's, so the worst cases are two corners and no more. */
    private Candidate candidate(
            List<Double> values, Arrangement arrangement, double added, double least, double greatest, double power) {
        return new Candidate(
                values,
                arrangement,
                added,
                circuit.magnitude(added),
                legHigh.magnitude(least),
                legLow.magnitude(greatest),
                power);
    }

    boolean safe(Candidate candidate) {
        return candidate.lowest() >= wish.atLeast() && candidate.highest() <= circuit.stock() + NOTHING;
    }

    /** Even without any tolerance this is too low, and so is everything further down. */
    boolean tooLow(Candidate candidate) {
        return candidate.voltage() < wish.atLeast() - NOTHING;
    }

    boolean above(Candidate candidate) {
        return candidate.voltage() >= wish.target() - NOTHING;
    }

    double distance(Candidate candidate) {
        return Math.abs(candidate.voltage() - wish.target());
    }

    /** Best first: above the target, nearest, fewest parts, narrowest worst case; then by values so that the order is always the same. */
    Comparator<Candidate> order() {
        return Comparator.comparing((Candidate c) -> !above(c))
                .thenComparingDouble(this::distance)
                .thenComparingInt(c -> c.values().size())
                .thenComparingDouble(c -> c.highest() - c.lowest())
                .thenComparing(Candidate::arrangement)
                .thenComparingDouble(c -> c.values().get(0))
                .thenComparingDouble(c -> c.values().get(c.values().size() - 1));
    }

    private static double parallel(double a, double b) {
        return a * b / (a + b);
    }
}
