package railtrim.quantity;

import java.util.List;

/**
 * A multimeter: its count and the accuracy of its DC volt and ohm ranges. A reading is taken to be made on the smallest range that holds it.
 *
 * @param id "basic", "middle", "fine" or "typed"
 */
public record Meter(String id, List<Range> volts, List<Range> ohms) {
    /** @param fullScale the largest value the range can show, SI units */
    public record Range(double fullScale, Accuracy accuracy) {}

    /** 2000 counts: DC volts ±(0.5 % + 2), ohms ±(0.8 % + 2) (200 Ω range ±(1.0 % + 3)); sources with the values. */
    public static Meter basic() {
        throw new UnsupportedOperationException();
    }

    /** 6000 counts: DC volts ±(0.5 % + 3), ohms ±(0.9 % + 2), from memory. */
    public static Meter middle() {
        throw new UnsupportedOperationException();
    }

    /** 50,000 counts: DC volts ±(0.05 % + 5), ohms ±(0.1 % + 5), from memory. */
    public static Meter fine() {
        throw new UnsupportedOperationException();
    }

    /** A meter of 6000 counts whose accuracies were typed from its manual. */
    public static Meter typed(double voltPercent, double voltDigits, double ohmPercent, double ohmDigits) {
        throw new UnsupportedOperationException();
    }

    /** Accuracy of the smallest range that holds the magnitude of the reading (the largest range when none does). */
    public Accuracy voltsAt(double reading) {
        throw new UnsupportedOperationException();
    }

    public Accuracy ohmsAt(double reading) {
        throw new UnsupportedOperationException();
    }
}
