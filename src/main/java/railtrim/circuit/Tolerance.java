package railtrim.circuit;

import railtrim.quantity.BadInput;

/**
 * How far an output may lie from its nominal value when every part is only known to its tolerance.
 *
 * @param nominal magnitude, volts; {@code lowest} and {@code highest} the exact worst corners
 * @param linear worst case of the two resistors alone, first order, as a fraction of the output: 2kT with k = 1 − Vref/Vout (and not 2T: the
 *     misconception is treated in SLVA423, June 2010)
 * @param rootSumSquare the same with the errors added as squares, √2·kT with nothing added
 * @param standard standard uncertainty with each part uniform over its tolerance, first order, volts
 */
public record Tolerance(
        double nominal, double lowest, double highest, double linear, double rootSumSquare, double standard) {

    /** As below with nothing added. */
    public static Tolerance of(Circuit circuit, double referenceLow, double referenceHigh, double resistors) {
        return of(circuit, Double.POSITIVE_INFINITY, referenceLow, referenceHigh, resistors);
    }

    /**
     * For a circuit given by its resistors. The bias current is taken as it is.
     *
     * @param added ohms across the leg, of the same tolerance; infinity for nothing
     * @param referenceLow least reference, volts, at most the circuit's own; {@code referenceHigh} most
     * @param resistors tolerance of the resistors, a fraction from 0 to below 1
     * @throws BadInput outside these ranges
     */
    public static Tolerance of(
            Circuit circuit, double added, double referenceLow, double referenceHigh, double resistors) {
        boolean holds = referenceLow > 0
                && referenceLow <= circuit.reference()
                && referenceHigh >= circuit.reference()
                && resistors >= 0
                && resistors < 1;
        if (!holds) {
            throw BadInput.of("circuit.tolerance-impossible");
        }
        double total = circuit.total(added);
        double nominal = circuit.magnitude(added);
        double share = 1 - circuit.reference() / nominal;
        // Of the total's relative error the leg gives total/leg and the added part total/added: together one.
        double ofLeg = total / circuit.leg();
        double ofAdded = 1 - ofLeg;
        double squares = 1 + ofLeg * ofLeg + ofAdded * ofAdded;
        double ofReference = nominal / circuit.reference() * (referenceHigh - referenceLow) / 2;
        double ofResistors = share * resistors * nominal;
        // Each part is uniform over its width: half width / √3.
        double standard = Math.sqrt((ofReference * ofReference + squares * ofResistors * ofResistors) / 3);
        return new Tolerance(
                nominal,
                corner(circuit, total, referenceLow, -resistors),
                corner(circuit, total, referenceHigh, resistors),
                2 * share * resistors,
                Math.sqrt(squares) * share * resistors,
                standard);
    }

    /** Vref + total·(1+t)·(Vref / (other·(1−t)) + bias): all in the leg off one way and the other resistor the opposite way. */
    private static double corner(Circuit circuit, double total, double reference, double part) {
        return reference + total * (1 + part) * (reference / (circuit.other() * (1 - part)) + circuit.bias());
    }
}
