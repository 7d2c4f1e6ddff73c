package railtrim.quantity;

/**
 * A meter's accuracy on one range: ±(percent of reading + digits × resolution).
 *
 * @param percent per cent of reading, 0 or more
 * @param digits counts of the last digit, 0 or more
 * @param resolution value of one count in SI units, more than 0
 */
public record Accuracy(double percent, double digits, double resolution) {
    /** Half width a of the interval in the reading's unit. */
    public double halfWidth(double reading) {
        throw new UnsupportedOperationException();
    }

    /** u = a/√3 (rectangular distribution, GUM 4.3.7). */
    public double standardUncertainty(double reading) {
        throw new UnsupportedOperationException();
    }
}
