package railtrim.circuit;

import java.util.Optional;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/**
 * Tells from two powered readings between which pins the reference sits: the voltage there is the reference's, the other is whatever the divider
 * makes of it. Floating and feedback types have references so alike (1.25 V, 1.24 V) that the value alone tells nothing.
 */
public enum PlaceTelling {
    OUT_ADJUST,
    ADJUST_GROUND,
    /** The output is about twice the reference: both voltages fit, and nothing may be decided from them. */
    BOTH,
    NEITHER;

    /** Standard uncertainties within which a reading fits. */
    private static final double COVER = 2;

    /**
     * @param outAdjust volts from output to adjust pin, magnitude; {@code adjustGround} likewise from adjust pin to ground
     * @param outAdjustUncertainty standard, volts; likewise {@code adjustGroundUncertainty}
     * @param referenceLow least of the published spread, volts; {@code referenceHigh} most
     * @throws BadInput for a reading that is not a finite number of 0 or more, or a spread upside down
     */
    public static PlaceTelling of(
            double outAdjust,
            double outAdjustUncertainty,
            double adjustGround,
            double adjustGroundUncertainty,
            double referenceLow,
            double referenceHigh) {
        if (!(referenceLow > 0) || !(referenceHigh >= referenceLow)) {
            throw BadInput.of("circuit.reference-spread", Display.volts(referenceLow), Display.volts(referenceHigh));
        }
        boolean upper = fits(outAdjust, outAdjustUncertainty, referenceLow, referenceHigh);
        boolean lower = fits(adjustGround, adjustGroundUncertainty, referenceLow, referenceHigh);
        return upper && lower ? BOTH : upper ? OUT_ADJUST : lower ? ADJUST_GROUND : NEITHER;
    }

    private static boolean fits(double volts, double uncertainty, double low, double high) {
        if (!(volts >= 0) || Double.isInfinite(volts)) {
            throw BadInput.of("circuit.reading-impossible", Display.volts(volts));
        }
        return volts >= low - COVER * uncertainty && volts <= high + COVER * uncertainty;
    }

    /**
     * The place this stands for; empty where it was not told. A shunt reference reads like feedback to ground: whether the part passes the load's
     * current or only hangs across it has to be seen on the board.
     */
    public Optional<Place> place(boolean negative) {
        return switch (this) {
            case OUT_ADJUST -> Optional.of(negative ? Place.NEGATIVE_OUT_ADJ : Place.OUT_ADJ);
            case ADJUST_GROUND -> negative ? Optional.empty() : Optional.of(Place.FB_GND);
            case BOTH, NEITHER -> Optional.empty();
        };
    }
}
