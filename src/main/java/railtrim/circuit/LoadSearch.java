package railtrim.circuit;

import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
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
    private static final int LOADS = 400;

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
        DoubleFunction<Fit> at = share -> Fit.at(share, ratio, readLeg, legSpread, readOther, otherSpread);
        Fit[] fits = IntStream.rangeClosed(0, LOADS)
                .mapToObj(i -> at.apply((double) i / LOADS))
                .toArray(Fit[]::new);
        return of(fits, best(fits, at));
    }

    /** The load at which the two readings agree, found between two neighbours that disagree the opposite way; else the nearest one tried. */
    private static Fit best(Fit[] fits, DoubleFunction<Fit> at) {
        Fit best = fits[0];
        for (int i = 1; i < fits.length; i++) {
            double before = fits[i - 1].apart();
            double here = fits[i].apart();
            if (before * here < 0) {
                return at.apply((i - 1 + before / (before - here)) / LOADS);
            }
            best = Math.abs(here) < Math.abs(best.apart()) ? fits[i] : best;
        }
        return best;
    }

    private static LoadSearch of(Fit[] fits, Fit best) {
        double worst = Math.abs(best.apart());
        Span like = Span.of(best, 0);
        Span fitting = Span.of(best, COVER);
        for (int i = 0; i < fits.length; i++) {
            if (Math.abs(fits[i].apart()) <= worst + ALIKE) {
                like = like.and(Span.of(fits[i], 0));
            }
            // A neighbour counts too: the last load that fits lies somewhere between the two.
            double nearest = Math.min(apart(fits, i - 1), Math.min(apart(fits, i), apart(fits, i + 1)));
            if (nearest <= COVER) {
                fitting = fitting.and(Span.of(fits[i], COVER));
            }
        }
        return new LoadSearch(worst, (like.low() + like.high()) / 2, fitting.low(), fitting.high());
    }

    private static double apart(Fit[] fits, int i) {
        return i < 0 || i >= fits.length ? Double.POSITIVE_INFINITY : Math.abs(fits[i].apart());
    }

    /** Smallest and largest leg, ohms. */
    private record Span(double low, double high) {
        static Span of(Fit fit, double widened) {
            return new Span(fit.leg() * (1 - widened * fit.spread()), fit.leg() * (1 + widened * fit.spread()));
        }

        Span and(Span other) {
            return new Span(Math.min(low, other.low), Math.max(high, other.high));
        }
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
