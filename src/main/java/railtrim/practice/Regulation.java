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
        return magnitude(divider, upper, lower, Pull.NONE);
    }

    /** The same where something else pulls at the adjust pin: its current joins the one that is forced into the adjusted leg, or takes from it. */
    static double magnitude(Board.Divider divider, double upper, double lower, Pull pull) {
        boolean acrossUpper = divider.place() == Place.OUT_ADJ || divider.place() == Place.NEGATIVE_OUT_ADJ;
        double held = acrossUpper ? upper : lower;
        double adjusted = acrossUpper ? lower : upper;
        double ceiling = divider.ceiling(0);
        // A short where the reference is held, or a break in the other leg, leaves the regulator nothing to hold on to.
        if (held <= 0 || Double.isInfinite(adjusted) && pull == Pull.NONE) {
            return ceiling;
        }
        double reference = divider.reference().value();
        double forced = reference / held + divider.bias();
        if (pull == Pull.NONE) {
            return Math.min(ceiling, reference + forced * adjusted);
        }
        double set = acrossUpper
                ? reference + (forced + pull.amperes()) / (1 / adjusted + pull.siemens())
                : reference + (forced - pull.amperes() + pull.siemens() * reference) * adjusted;
        return Math.max(0, Math.min(ceiling, set));
    }

    static double parallel(double one, double other) {
        if (one <= 0 || other <= 0) {
            return 0;
        }
        return 1 / (1 / one + 1 / other);
    }
}
