package railtrim.circuit;

import java.util.function.ToDoubleFunction;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/**
 * Resistances read on the board: the load sits across the output, so each leg reads at or below its true value
 * (R2 alone reads R2 ∥ (R1 + RL)). With the powered ratio k = (Vstock − Vref)/Vref, which no load disturbs, the true legs can be bounded and the
 * readings tested for whether they belong together.
 */
public final class InCircuit {
    /** Largest relative standard uncertainty of a leg from {@link #solve} that is still of use. */
    private static final double COARSEST = 0.15;

    /** Standard uncertainties beyond which readings do not belong together; rectangular errors hardly ever add up to more. */
    private static final double LIMIT = 3;

    private InCircuit() {}

    /** The three in-circuit readings solved for the two resistors and the load (delta to its three sides), ohms. */
    public record Delta(double outAdjust, double adjustGround, double outGround) {}

    /**
     * A delta with what the readings leave open.
     *
     * @param outAdjustUncertainty standard, ohms; likewise the others; infinite for a load that cannot be told from open
     */
    public record DeltaKnown(
            Delta delta, double outAdjustUncertainty, double adjustGroundUncertainty, double outGroundUncertainty) {
        /** Relative standard uncertainty of the worse of the two resistors. */
        public double worstSpread() {
            return Math.max(outAdjustUncertainty / delta.outAdjust(), adjustGroundUncertainty / delta.adjustGround());
        }
    }

    /**
     * With star arms so = (Moa+Mog−Mag)/2 and likewise, P = so·sa + sa·sg + sg·so: R1 = P/sg, R2 = P/so, load = P/sa. A load too large to
     * be told from open is infinity.
     *
     * @throws railtrim.quantity.BadInput where the readings cannot come from three resistors, or where the reading error of a plain meter
     *     (±(0.8 % + 0.2 Ω)) would leave a leg uncertain by more than 15 %, as it does with a load of a few ohms
     */
    public static Delta solve(double readOutAdjust, double readAdjustGround, double readOutGround) {
        double[] readings = {readOutAdjust, readAdjustGround, readOutGround};
        double[] standards = new double[3];
        for (int i = 0; i < 3; i++) {
            standards[i] = error(readings[i]) / Math.sqrt(3);
        }
        return solve(readings, standards).delta();
    }

    /**
     * As above, with the readings' own uncertainties.
     *
     * @param readings out–adjust, adjust–ground, out–ground, ohms; {@code standards} their standard uncertainties in the same order
     */
    public static DeltaKnown solve(double[] readings, double[] standards) {
        Delta delta = sides(readings, standards);
        boolean sound = delta.outAdjust() > 0
                && delta.adjustGround() > 0
                && Double.isFinite(delta.outAdjust())
                && Double.isFinite(delta.adjustGround());
        if (!sound) {
            throw BadInput.of(
                    "circuit.delta-impossible",
                    Display.ohms(readings[0]),
                    Display.ohms(readings[1]),
                    Display.ohms(readings[2]));
        }
        DeltaKnown known = new DeltaKnown(
                delta,
                spread(readings, standards, Delta::outAdjust),
                spread(readings, standards, Delta::adjustGround),
                spread(readings, standards, Delta::outGround));
        if (!(known.worstSpread() <= COARSEST)) {
            throw BadInput.of("circuit.delta-too-coarse");
        }
        return known;
    }

    private static Delta sides(double[] readings, double[] standards) {
        double armOut = (readings[0] + readings[2] - readings[1]) / 2;
        double armAdjust = (readings[0] + readings[1] - readings[2]) / 2;
        double armGround = (readings[1] + readings[2] - readings[0]) / 2;
        double noise = Math.sqrt(3) * (standards[0] + standards[1] + standards[2]);
        // An open load makes this arm exactly 0; reading errors may push it a little below.
        double adjust = armAdjust < 0 && armAdjust > -noise ? 0 : armAdjust;
        double products = armOut * adjust + adjust * armGround + armGround * armOut;
        boolean star = armOut > 0 && adjust >= 0 && armGround > 0;
        return star
                ? new Delta(products / armGround, products / armOut, products / adjust)
                : new Delta(Double.NaN, Double.NaN, Double.NaN);
    }

    /** Standard uncertainty of one side, carried over from the readings one by one. */
    private static double spread(double[] readings, double[] standards, ToDoubleFunction<Delta> side) {
        double found = side.applyAsDouble(sides(readings, standards));
        if (Double.isInfinite(found)) {
            return Double.POSITIVE_INFINITY;
        }
        double squares = 0;
        for (int i = 0; i < 3; i++) {
            // A small part of the reading, not its whole uncertainty: near a short the sides bend sharply.
            double step = readings[i] * 1e-6;
            double[] moved = readings.clone();
            moved[i] += step;
            squares += square((side.applyAsDouble(sides(moved, standards)) - found) * standards[i] / step);
        }
        return Math.sqrt(squares);
    }

    private static double error(double ohms) {
        return 0.008 * ohms + 0.2;
    }

    private static double square(double value) {
        return value * value;
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
     * Tries every load from 0 Ω to open. For each, the powered ratio and the two readings leave one number over, their disagreement, which
     * is weighed with the uncertainty of all four readings; loads that fit within two standard uncertainties bound the leg. The readings
     * agree where some load leaves three or less. Leg and other leg swapped fit only where their readings are nearly the same.
     *
     * <p>The readings are of both legs with the load across the pair: leg ∥ (other + load) and other ∥ (leg + load). That holds wherever the
     * reference sits.
     *
     * @param referenceHalfWidth half the published spread of the reference, volts, 0 where it was measured
     * @param readLeg the leg that lowers, as read on the board, lead zero taken off, ohms
     * @param readOther the other leg, as read on the board, ohms
     * @param legUncertainty standard, ohms; likewise {@code otherUncertainty}; {@code stockUncertainty} volts
     * @throws railtrim.quantity.BadInput for a reading that is not above 0 Ω, or a stock voltage not above the reference
     */
    public static Agreement check(
            double reference,
            double referenceHalfWidth,
            double bias,
            double stock,
            double stockUncertainty,
            double readLeg,
            double legUncertainty,
            double readOther,
            double otherUncertainty) {
        double half = Math.sqrt(3);
        LoadSearch.Ratio ratio =
                LoadSearch.Ratio.of(reference, referenceHalfWidth / half, bias, stock, stockUncertainty);
        LoadSearch asRead = LoadSearch.of(ratio, readLeg, legUncertainty, readOther, otherUncertainty);
        LoadSearch swapped = LoadSearch.of(ratio, readOther, otherUncertainty, readLeg, legUncertainty);
        return new Agreement(
                asRead.worst() <= LIMIT,
                asRead.worst(),
                asRead.leg(),
                asRead.legLow(),
                asRead.legHigh(),
                swapped.worst() <= LIMIT);
    }
}
