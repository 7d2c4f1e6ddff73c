package railtrim.threshold;

import java.util.stream.IntStream;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * One-sided tolerance factor k of a normal population (Owen 1963; NIST/SEMATECH e-Handbook 7.2.6.3): with n values of mean m and standard
 * deviation s, at least the share {@code coverage} of the population lies below m + k·s, in {@code confidence} of all such samples.
 *
 * <p>k·√n is a quantile of the non-central t distribution with n − 1 degrees of freedom and non-centrality z·√n, z the normal quantile of the
 * coverage. Here its distribution function is the chance that m + k·s reaches z: the mean's chance Φ(√n·(k·w − z)) averaged over w = s/σ,
 * whose density is that of √(χ²/ν). Good to six digits for 2 to 1,000 values.
 */
final class ToleranceFactor {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    /** Of w; Simpson's rule, even. Two values are the steepest case, and three the next. */
    private static int intervals(int values) {
        return values == 2 ? 2_000 : values == 3 ? 1_000 : 400;
    }

    private final int values;
    /** The normal quantile of the coverage. */
    private final double quantile;

    private final double confidence;
    /** Points of w, and what each weighs in the average over w. */
    private final double[] points;

    private final double[] weights;

    private ToleranceFactor(int values, double confidence, double coverage) {
        this.values = values;
        this.confidence = confidence;
        this.quantile = NORMAL.inverseCumulativeProbability(coverage);
        double spread = 1 / Math.sqrt(2.0 * (values - 1));
        double from = Math.max(0, 1 - 9 * spread);
        int intervals = intervals(values);
        this.points = new double[intervals + 1];
        this.weights = new double[intervals + 1];
        double step = (1 + 9 * spread - from) / intervals;
        for (int i = 0; i <= intervals; i++) {
            int simpson = i == 0 || i == intervals ? 1 : i % 2 == 1 ? 4 : 2;
            points[i] = from + i * step;
            weights[i] = simpson * density(points[i], values - 1) * step / 3;
        }
    }

    /**
     * @param values n, from 2 to 1,000
     * @param confidence from 0.5 to 0.999; {@code coverage} likewise
     */
    static double oneSided(int values, double confidence, double coverage) {
        if (values < 2 || values > 1_000 || !inside(confidence) || !inside(coverage)) {
            throw new IllegalArgumentException(
                    "tolerance factor of " + values + " values at " + confidence + ", " + coverage);
        }
        return confidence == Usual.CONFIDENCE && coverage == Usual.COVERAGE && values <= Usual.MOST
                ? Usual.FACTORS[values]
                : new ToleranceFactor(values, confidence, coverage).solve();
    }

    /** The factors of the few runs a person makes, worked out once: a budget is asked for after every reading. */
    private static final class Usual {
        static final double CONFIDENCE = 0.95;
        static final double COVERAGE = 0.99;
        static final int MOST = 12;
        static final double[] FACTORS = IntStream.rangeClosed(0, MOST)
                .mapToDouble(
                        values -> values < 2 ? Double.NaN : new ToleranceFactor(values, CONFIDENCE, COVERAGE).solve())
                .toArray();
    }

    /** False position, halving the end that stays (Illinois): the confidence reached rises with k. */
    private double solve() {
        double low = 0;
        double tooLittle = excess(low);
        double high = 1;
        double tooMuch = excess(high);
        while (tooMuch < 0) {
            low = high;
            tooLittle = tooMuch;
            high *= 2;
            tooMuch = excess(high);
        }
        int keptLast = 0;
        while (high - low > 1e-9 * high) {
            double k = high - tooMuch * (high - low) / (tooMuch - tooLittle);
            double excess = excess(k);
            if (Math.abs(excess) < 1e-12) {
                return k;
            }
            if (excess > 0) {
                high = k;
                tooMuch = excess;
                tooLittle = keptLast < 0 ? tooLittle / 2 : tooLittle;
                keptLast = -1;
            } else {
                low = k;
                tooLittle = excess;
                tooMuch = keptLast > 0 ? tooMuch / 2 : tooMuch;
                keptLast = 1;
            }
        }
        return high;
    }

    /** How much more confidence than wished the factor gives. */
    private double excess(double k) {
        double root = Math.sqrt(values);
        double reached = 0;
        for (int i = 0; i < points.length; i++) {
            reached += weights[i] * NORMAL.cumulativeProbability(root * (k * points[i] - quantile));
        }
        return reached - confidence;
    }

    private static boolean inside(double probability) {
        return probability >= 0.5 && probability <= 0.999;
    }

    /** Of w = √(χ²/ν): 2·(ν/2)^(ν/2)·w^(ν−1)·exp(−ν·w²/2) / Γ(ν/2). */
    private static double density(double w, int freedom) {
        double half = freedom / 2.0;
        double powerOfW = freedom == 1 ? 0 : (freedom - 1) * Math.log(w);
        return 2 * Math.exp(half * Math.log(half) + powerOfW - half * w * w - LogGamma.value(half));
    }
}
