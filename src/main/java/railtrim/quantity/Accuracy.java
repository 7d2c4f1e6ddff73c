package railtrim.quantity;

/**
 * A meter's accuracy on one range: ±(percent of reading + digits × resolution).
 *
 * @param percent per cent of reading, 0 or more
 * @param digits counts of the last digit, 0 or more
 * @param resolution value of one count in SI units, more than 0
 */
public record Accuracy(double percent, double digits, double resolution) {
    private static final double WITHIN_A_JOB = 0.57;

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

    /**
     * Standard uncertainty of the difference between two readings of nearly the same value, with one meter on one range within the days of one job.
     * What is in both falls out: the offset, and of the error in proportion all but what wanders meanwhile. That is 0.57 of the year's figure (Agilent
     * 34401A, 10 V range: 20 ppm of reading in 90 days, 35 ppm in a year; figures from memory); a hand meter is taken to do likewise, our own choice. Each reading
     * also stands within one count: half for rounding, half for a last digit that flickers. All rectangular.
     */
    public double differenceUncertainty(double reading) {
        double wanders = WITHIN_A_JOB * percent / 100 * reading;
        return Math.sqrt((wanders * wanders + 2 * resolution * resolution) / 3);
    }

    /** Whether a reading with this last digit, in the same unit, can be from here. */
    public boolean endsWith(double lastDigit) {
        return Math.abs(lastDigit - resolution) <= 1e-6 * resolution;
    }

    private static void require(boolean holds, double value) {
        if (!holds) {
            throw BadInput.of("quantity.accuracy-impossible", Double.toString(value));
        }
    }
}
