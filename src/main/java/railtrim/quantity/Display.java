package railtrim.quantity;

/** Writes SI numbers for people: 3.555 V, 4.70 kΩ, 60.0 µA, 3.555 V ± 0.038 V. */
public final class Display {
    private Display() {}

    /** Four significant digits with an engineering prefix: {@code 1769.553 Ω} is "1.770 kΩ"; temperatures one decimal; per cent up to two decimals. */
    public static String of(double value, Unit unit) {
        throw new UnsupportedOperationException();
    }

    /** As {@link #of} for a voltage, always in volts to the millivolt: "3.555 V". */
    public static String volts(double volts) {
        throw new UnsupportedOperationException();
    }

    public static String ohms(double ohms) {
        return of(ohms, Unit.OHM);
    }

    /** Value and expanded uncertainty, both to the uncertainty's second significant digit: "3.555 V ± 0.038 V". */
    public static String withUncertainty(double value, double expanded, Unit unit) {
        throw new UnsupportedOperationException();
    }

    /** The read-back: "three point five five five volts", "four point seven kilo-ohms". Says the digits of the text as typed, not a rounded value. */
    public static String inWords(Quantity quantity) {
        throw new UnsupportedOperationException();
    }
}
