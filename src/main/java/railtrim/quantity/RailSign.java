package railtrim.quantity;

import java.util.OptionalDouble;

/**
 * How the meter shows the voltages of a rail. All sums work with magnitudes; whatever a person reads, on the screen or on paper, gets its sign back
 * here and nowhere else: of a negative rail each voltage against ground has its minus sign. A difference of two voltages has none.
 */
public record RailSign(boolean negative) {
    /** A magnitude in volts as the meter shows it. */
    public double shown(double magnitude) {
        return negative && magnitude != 0 ? -magnitude : magnitude;
    }

    public OptionalDouble shown(OptionalDouble magnitude) {
        return magnitude.isPresent() ? OptionalDouble.of(shown(magnitude.getAsDouble())) : magnitude;
    }

    /** "−5.127 V" of a negative rail, "5.127 V" of any other. */
    public String volts(double magnitude) {
        return Display.volts(shown(magnitude));
    }

    /** "−5.127 V ± 0.038 V". */
    public String volts(double magnitude, double expanded) {
        return Display.withUncertainty(shown(magnitude), expanded, Unit.VOLT);
    }

    /** Further from zero on a negative rail too: the sign between a voltage and what is added to its magnitude. */
    public String further() {
        return negative ? " − " : " + ";
    }
}
