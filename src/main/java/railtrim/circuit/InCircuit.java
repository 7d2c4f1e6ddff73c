package railtrim.circuit;

/**
 * Resistances read on the board: the load sits across the output, so each leg reads at or below its true value
 * (R2 alone reads R2 ∥ (R1 + RL)). With the powered ratio k = (Vstock − Vref)/Vref, which no load disturbs, the true legs can be bounded and the
 * readings tested for whether they belong together.
 */
public final class InCircuit {
    private InCircuit() {}

    /** The three in-circuit readings solved for the two resistors and the load (delta to its three sides), ohms. */
    public record Delta(double outAdjust, double adjustGround, double outGround) {}

    /** @throws railtrim.quantity.BadInput where the readings cannot come from three resistors or the answer is too coarse to use */
    public static Delta solve(double readOutAdjust, double readAdjustGround, double readOutGround) {
        throw new UnsupportedOperationException();
    }

    /**
     * Do the readings and the stock voltage belong together for some load from 0 Ω to open?
     *
     * @param worst how many standard uncertainties the best fitting load leaves between reading and sum
     * @param leg best estimate of the true adjusted leg, ohms
     * @param legLow smallest true leg that fits, ohms
     * @param legHigh largest true leg that fits, ohms
     * @param swappedFits whether the two readings, swapped, would fit (the likely slip)
     */
    public record Agreement(
            boolean agrees, double worst, double leg, double legLow, double legHigh, boolean swappedFits) {}

    /**
     * @param readLeg the leg that lowers, as read on the board, lead zero taken off, ohms
     * @param readOther the other leg, as read on the board, ohms
     * @param legUncertainty standard, ohms; likewise {@code otherUncertainty}; {@code stockUncertainty} volts
     */
    public static Agreement check(
            Place place,
            double reference,
            double referenceHalfWidth,
            double bias,
            double stock,
            double stockUncertainty,
            double readLeg,
            double legUncertainty,
            double readOther,
            double otherUncertainty) {
        throw new UnsupportedOperationException();
    }
}
