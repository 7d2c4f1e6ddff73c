package railtrim.circuit;

/**
 * A regulator with its divider, by the one law |Vout| = Vref + x·Re, with Re the adjusted leg in parallel with what was added and
 * x = Vref/Rother + Ibias the current forced into it. Ohms, volts (magnitudes) and amperes.
 *
 * @param leg the adjusted leg, the one that lowers the output, ohms, more than 0
 * @param legCurrent x, amperes, more than 0
 * @param bias adjust or feedback pin current in its data-sheet sense, amperes, 0 where not known
 */
public record Circuit(Place place, double reference, double leg, double legCurrent, double bias) {
    /** From what was measured: x = (|Vstock| − Vref) / leg. @throws railtrim.quantity.BadInput where stock is not above the reference */
    public static Circuit fromStock(Place place, double reference, double stockMagnitude, double leg, double bias) {
        throw new UnsupportedOperationException();
    }

    /** From both resistors and the bias current: x = Vref/Rother + Ibias. */
    public static Circuit fromResistors(Place place, double reference, double upper, double lower, double bias) {
        throw new UnsupportedOperationException();
    }

    /** The divider's other resistor, Vref / (x − Ibias), ohms. */
    public double other() {
        throw new UnsupportedOperationException();
    }

    /** Magnitude of the output as it left the maker, volts. */
    public double stock() {
        throw new UnsupportedOperationException();
    }

    /** Magnitude of the output with {@code added} ohms across the leg; {@link Double#POSITIVE_INFINITY} for nothing added. */
    public double magnitude(double added) {
        throw new UnsupportedOperationException();
    }

    /** Magnitude with the leg's total resistance known. */
    public double magnitudeOfTotal(double total) {
        throw new UnsupportedOperationException();
    }

    /** A magnitude with the sign of this kind of regulator. */
    public double signed(double magnitude) {
        return place.negative() ? -magnitude : magnitude;
    }

    /** The leg's total with {@code added} across it, ohms. */
    public double total(double added) {
        throw new UnsupportedOperationException();
    }

    /** Ohms to add for a target magnitude: 1/(x/(target − Vref) − 1/R). @throws railtrim.quantity.BadInput unless Vref &lt; target &lt; stock */
    public double addedFor(double targetMagnitude) {
        throw new UnsupportedOperationException();
    }

    /** Change of the output for one more ohm added, x·R²/(R+Radded)², volts per ohm. */
    public double sensitivity(double added) {
        throw new UnsupportedOperationException();
    }
}
