package railtrim.circuit;

import java.util.Arrays;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/**
 * The two legs of a divider as read on the board, tried against every load that may lie across the output.
 *
 * <p>With κ = leg/other known from the powered voltages and ρ = load/other, the legs read
 * {@code leg·(1+ρ)/(1+κ+ρ)} and {@code other·(κ+ρ)/(1+κ+ρ)}. Their ratio moves steadily from 1 (load 0 Ω) to κ (open), so it tells the load,
 * and nothing outside that span can come from this divider. The true leg lies between its reading (open) and (1+κ) times it (0 Ω).
 *
 * @param worst standard uncertainties between the two readings at the load that fits best
 * @param leg middle of the legs among the loads that fit as well as the best one, ohms
 * @param legLow smallest leg among the loads that fit, its own uncertainty (two standard) taken off, ohms; {@code legHigh} likewise
 */
record LoadSearch(double worst, double leg, double legLow, double legHigh) {
    private static final int LOADS = 4000;

    /** Loads within this many standard uncertainties count as fitting; legs are given that much either side. */
    private static final double COVER = 2;

    /** Loads this near to the best one, in standard uncertainties, fit as well as it does. Near κ = 1 those are all of them. */
    private static final double ALIKE = 0.1;

    /** No hand meter is better than this; keeps a stated uncertainty of 0 from ruling out every load but one. */
    private static final double FINEST = 1e-3;

    /** κ for an other leg of given ohms, and its relative standard uncertainty. */
    record Ratio(double reference, double stock, double bias, double spread) {
        static Ratio of(
                double reference, double referenceUncertainty, double bias, double stock, double stockUncertainty) {
            if (!(reference > 0) || !(stock > reference)) {
                throw BadInput.of("circuit.stock-not-above-reference", Display.volts(stock), Display.volts(reference));
            }
            double above = stock - reference;
            double ofReference = stock / (reference * above) * referenceUncertainty;
            double ofStock = stockUncertainty / above;
            return new Ratio(reference, stock, bias, Math.hypot(ofReference, ofStock));
        }

        /** Vstock = Vref + leg·(Vref/other + bias), solved for leg/other. */
        double at(double other) {
            return (stock - reference) / (reference + bias * other);
        }
    }

    static LoadSearch of(
            Ratio ratio, double readLeg, double legUncertainty, double readOther, double otherUncertainty) {
        double legSpread = relative(readLeg, legUncertainty);
        double otherSpread = relative(readOther, otherUncertainty);
        Fit[] fits = new Fit[LOADS + 1];
        for (int i = 0; i <= LOADS; i++) {
            double share = (double) i / LOADS;
            fits[i] = Fit.at(share, ratio, readLeg, legSpread, readOther, otherSpread);
        }
        return of(fits);
    }

    private static LoadSearch of(Fit[] fits) {
        double worst = worst(fits);
        double best = Arrays.stream(fits)
                .mapToDouble(fit -> Math.abs(fit.apart()))
                .min()
                .orElseThrow();
        Span like = Span.of(fits, best + ALIKE, 0);
        Span fitting = Span.of(fits, Math.max(COVER, best), COVER);
        return new LoadSearch(worst, (like.low() + like.high()) / 2, fitting.low(), fitting.high());
    }

    /** Smallest and largest leg among the loads that fit to within {@code apart}, widened by so many of its own uncertainties. */
    private record Span(double low, double high) {
        static Span of(Fit[] fits, double apart, double widened) {
            double low = Double.POSITIVE_INFINITY;
            double high = 0;
            for (Fit fit : fits) {
                if (Math.abs(fit.apart()) <= apart) {
                    low = Math.min(low, fit.leg() * (1 - widened * fit.spread()));
                    high = Math.max(high, fit.leg() * (1 + widened * fit.spread()));
                }
            }
            return new Span(low, high);
        }
    }

    /** Least distance over all loads; 0 where it changes sign between two neighbours, since some load between them fits exactly. */
    private static double worst(Fit[] fits) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < fits.length; i++) {
            least = Math.min(least, Math.abs(fits[i].apart()));
            if (i > 0 && fits[i].apart() * fits[i - 1].apart() < 0) {
                return 0;
            }
        }
        return least;
    }

    private static double relative(double reading, double uncertainty) {
        if (!(reading > 0) || Double.isInfinite(reading)) {
            throw BadInput.of("circuit.not-positive", Display.of(reading, Unit.OHM));
        }
        return Math.max(uncertainty / reading, FINEST);
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * One load.
     *
     * @param apart how far the two readings disagree about it, in standard uncertainties, with sign
     * @param leg the leg both readings together give, ohms; {@code spread} its relative standard uncertainty
     */
    private record Fit(double apart, double leg, double spread) {
        /** @param share ρ/(1+ρ): 0 for a load of 0 Ω, 1 for open */
        static Fit at(
                double share, Ratio ratio, double readLeg, double legSpread, double readOther, double otherSpread) {
            double kappa = ratio.at(readOther);
            double otherFactor = 1;
            // The bias current ties κ weakly to the ohms of the other leg: a few rounds settle it far below any reading
            // error.
            for (int round = 0; round < 4; round++) {
                otherFactor = (kappa * (1 - share) + share) / (1 + kappa * (1 - share));
                kappa = ratio.at(readOther / otherFactor);
            }
            double legFactor = 1 / (1 + kappa * (1 - share));
            double fromLeg = readLeg / legFactor;
            double fromOther = kappa * readOther / otherFactor;
            // How each estimate of the leg moves, in per cent per per cent, when κ does.
            double legMoves = kappa * (1 - share) * legFactor;
            double otherMoves = 1 + legMoves - kappa * (1 - share) * legFactor / otherFactor;
            double legVariance = square(legSpread) + square(legMoves * ratio.spread());
            double otherVariance = square(otherSpread) + square(otherMoves * ratio.spread());
            double shared = legMoves * otherMoves * square(ratio.spread());
            double apart = Math.log(fromLeg / fromOther) / Math.sqrt(legVariance + otherVariance - 2 * shared);
            double weight = otherVariance / (legVariance + otherVariance);
            double rest = 1 - weight;
            double leg = Math.exp(weight * Math.log(fromLeg) + rest * Math.log(fromOther));
            double variance = square(weight) * legVariance + square(rest) * otherVariance + 2 * weight * rest * shared;
            return new Fit(apart, leg, Math.sqrt(variance));
        }
    }
}
