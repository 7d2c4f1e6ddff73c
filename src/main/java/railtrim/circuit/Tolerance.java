package railtrim.circuit;

import railtrim.quantity.BadInput;

/**
 * How far an output may lie from its nominal value when every part is only known to its tolerance.
 *
 * @param nominal magnitude, volts; {@code lowest} and {@code highest} the exact worst corners
 * @param linear worst case of the two resistors alone, first order, as a fraction of the output: 2kT with k = 1 − Vref/Vout (and not 2T: the
 *     misconception is treated in SLVA423, June 2010)
 * @param rootSumSquare the same with the two errors added as squares, √2·kT
 * @param standard standard uncertainty with each part uniform over its tolerance, first order, volts
 */
public record Tolerance(
        double nominal, double lowest, double highest, double linear, double rootSumSquare, double standard) {

    /**
     * For a circuit given by its resistors. The bias current is taken as it is.
     *
     * @param referenceLow least reference, volts, at most the circuit's own; {@code referenceHigh} most
     * @param resistors tolerance of both resistors, a fraction from 0 to below 1
     * @throws BadInput outside these ranges
     */
    public static Tolerance of(Circuit circuit, double referenceLow, double referenceHigh, double resistors) {
        boolean holds = referenceLow > 0
                && referenceLow <= circuit.reference()
                && referenceHigh >= circuit.reference()
                && resistors >= 0
                && resistors < 1;
        if (!holds) {
            throw BadInput.of("circuit.tolerance-impossible");
        }
        double nominal = circuit.stock();
        double share = 1 - circuit.reference() / nominal;
        double ofReference = nominal / circuit.reference() * (referenceHigh - referenceLow) / 2;
        double ofResistor = share * resistors * nominal;
        // Each part is uniform over its width: half width / √3.
        double standard = Math.sqrt((ofReference * ofReference + 2 * ofResistor * ofResistor) / 3);
        return new Tolerance(
                nominal,
                corner(circuit, referenceLow, -resistors),
                corner(circuit, referenceHigh, resistors),
                2 * share * resistors,
                Math.sqrt(2) * share * resistors,
                standard);
    }

    /** Vref + leg·(1+t)·(Vref / (other·(1−t)) + bias): the leg off one way and the other resistor the opposite way. */
    private static double corner(Circuit circuit, double reference, double part) {
        return reference + circuit.leg() * (1 + part) * (reference / (circuit.other() * (1 - part)) + circuit.bias());
    }
}
