package railtrim.practice;

import railtrim.circuit.Place;

/**
 * The practice board's own sum for its output. Written apart from {@link railtrim.circuit.Circuit} on purpose: a rehearsal compares two
 * independent sums, and a slip in one of them shows.
 */
final class Regulation {
    private Regulation() {}

    /**
     * The regulator holds its reference across the leg that is not adjusted and so forces Vref/Rother + Ibias into the adjusted one,
     * until it runs out of input voltage.
     */
    static double magnitude(Board.Divider divider, double upper, double lower) {
        boolean acrossUpper = divider.place() == Place.OUT_ADJ || divider.place() == Place.NEGATIVE_OUT_ADJ;
        double held = acrossUpper ? upper : lower;
        double adjusted = acrossUpper ? lower : upper;
        double ceiling = divider.ceiling(0);
        // A short where the reference is held, or a break in the other leg, leaves the regulator nothing to hold on to.
        if (held <= 0 || Double.isInfinite(adjusted)) {
            return ceiling;
        }
        double reference = divider.reference().value();
        double forced = reference / held + divider.bias();
        return Math.min(ceiling, reference + forced * adjusted);
    }

    static double parallel(double one, double other) {
        if (one <= 0 || other <= 0) {
            return 0;
        }
        return 1 / (1 / one + 1 / other);
    }
}
