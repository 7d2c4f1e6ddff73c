package railtrim.quantity;

/**
 * A meter's accuracy on one range: ±(percent of reading + digits × resolution).
 *
 * @param percent per cent of reading, 0 or more
 * @param digits counts of the last digit, 0 or more
 * @param resolution value of one count in SI units, more than 0
 */
public record Accuracy(double percent, double digits, double resolution) {
    /** @throws BadInput where a number is not finite or outside its range above */
    public Accuracy {
        require(percent >= 0 && percent <= 100, percent);
        require(digits >= 0 && digits < 1e6, digits);
        require(resolution > 0 && Double.isFinite(resolution), resolution);
    }

    /** Half width a of the interval in the reading's unit: percent of the reading's magnitude plus the counts. */
    public double halfWidth(double reading) {
        return percent / 100 * Math.abs(reading) + digits * resolution;
    }

    /** u = a/√3 (rectangular distribution, GUM 4.3.7). */
    public double standardUncertainty(double reading) {
        return halfWidth(reading) / Math.sqrt(3);
    }

    private static void require(boolean holds, double value) {
        if (!holds) {
            throw BadInput.of("quantity.accuracy-impossible", Double.toString(value));
        }
    }
}
