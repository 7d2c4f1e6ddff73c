package railtrim.parts;

import java.util.Comparator;
import railtrim.circuit.Circuit;
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

    Bench(Circuit circuit, double legUncertainty, Wish wish) {
        if (!(wish.tolerance() >= 0 && wish.tolerance() < 1 && wish.drift() >= 0 && wish.drift() < 1)) {
            throw BadInput.of("parts.resistor.tolerance", String.valueOf(wish.tolerance()));
        }
        if (wish.most() < 1 || wish.most() > 3) {
            throw BadInput.of("parts.resistor.most", String.valueOf(wish.most()));
        }
        if (!(legUncertainty >= 0 && legUncertainty < circuit.leg())) {
            throw BadInput.of("parts.resistor.leg", Display.ohms(circuit.leg()), String.valueOf(legUncertainty));
        }
        this.circuit = circuit;
        this.legLow = withLeg(circuit, circuit.leg() - legUncertainty);
        this.legHigh = withLeg(circuit, circuit.leg() + legUncertainty);
        this.wish = wish;
    }

    /** The stock voltage was measured, so it stays; the current in the leg follows from it. */
    private static Circuit withLeg(Circuit circuit, double leg) {
        return leg == circuit.leg()
                ? circuit
                : Circuit.fromStock(circuit.place(), circuit.reference(), circuit.stock(), leg, circuit.bias());
    }

    /** Ohms that give the target exactly. */
    double exact() {
        return Resistors.exact(circuit, wish.target());
    }

    /** Fewer ohms than this at the low end of the tolerance, and with the largest leg, fall below what is asked of every corner. */
    double leastOhms() {
        if (wish.atLeast() >= circuit.stock()) {
            return Double.POSITIVE_INFINITY;
        }
        return wish.atLeast() > circuit.reference() ? legHigh.addedFor(wish.atLeast()) : 0;
    }

    int most() {
        return wish.most();
    }

    /** The output rises with the added resistance and falls with the leg's, so the worst cases are two corners and no more. */
    Candidate candidate(Net net) {
        double voltage = circuit.magnitude(net.ohms());
        double across = voltage - circuit.reference();
        return new Candidate(
                net.values(),
                net.arrangement(),
                net.ohms(),
                voltage,
                legHigh.magnitude(net.least()),
                legLow.magnitude(net.greatest()),
                across * across * net.load());
    }

    boolean safe(Candidate candidate) {
        return candidate.lowest() >= wish.atLeast() && candidate.highest() <= circuit.stock() + NOTHING;
    }

    boolean above(Candidate candidate) {
        return candidate.voltage() >= wish.target() - NOTHING;
    }

    double distance(Candidate candidate) {
        return Math.abs(candidate.voltage() - wish.target());
    }

    /** How far from the target, with what each part after the first has to bring added, volts. */
    double rank(Candidate candidate) {
        return distance(candidate) + handicap(candidate.values().size());
    }

    private double handicap(int parts) {
        return (parts - 1) * Resistors.WORTH_OF_A_PART * circuit.stock();
    }

    /** The most and the fewest ohms that so many parts may have to rank as well as this one. */
    double mostOhms(Candidate candidate, int parts) {
        double volts = wish.target() + rank(candidate) - handicap(parts);
        return volts < wish.target() - NOTHING
                ? 0
                : volts >= circuit.stock() ? Double.POSITIVE_INFINITY : circuit.addedFor(volts);
    }

    double fewestOhms(Candidate candidate, int parts) {
        double volts = wish.target() - rank(candidate) + handicap(parts);
        return volts > wish.target() + NOTHING
                ? Double.POSITIVE_INFINITY
                : volts <= circuit.reference() ? 0 : circuit.addedFor(volts);
    }

    /**
     * Best first: above the target, nearest, where each part more has to be worth its joint; narrowest worst case; then by values so that the
     * order is always the same.
     */
    Comparator<Candidate> order() {
        return Comparator.comparing((Candidate c) -> !above(c))
                .thenComparingDouble(this::rank)
                .thenComparingInt(c -> c.values().size())
                .thenComparingDouble(c -> c.highest() - c.lowest())
                .thenComparing(Candidate::arrangement)
                .thenComparingDouble(c -> c.values().get(0))
                .thenComparingDouble(c -> c.values().get(c.values().size() - 1))
                .thenComparingDouble(c -> c.values().get(c.values().size() / 2));
    }
}
