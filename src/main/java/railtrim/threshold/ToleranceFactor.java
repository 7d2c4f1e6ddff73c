package railtrim.threshold;

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
    /** Of w; Simpson's rule, even. Fine enough for the steepest case, two values. */
    private static final int INTERVALS = 4_000;

    private ToleranceFactor() {}

    /**
     * @param values n, from 2 to 1,000
     * @param confidence from 0.5 to 0.999; {@code coverage} likewise
     */
    static double oneSided(int values, double confidence, double coverage) {
        if (values < 2 || values > 1_000 || !inside(confidence) || !inside(coverage)) {
            throw new IllegalArgumentException(
                    "tolerance factor of " + values + " values at " + confidence + ", " + coverage);
        }
        double z = NORMAL.inverseCumulativeProbability(coverage);
        double low = 0;
        double high = 1;
        while (reached(values, high, z) < confidence) {
            high *= 2;
        }
        while (high - low > 1e-9 * high) {
            double middle = (low + high) / 2;
            if (reached(values, middle, z) < confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static boolean inside(double probability) {
        return probability >= 0.5 && probability <= 0.999;
    }

    private static double reached(int values, double k, double z) {
        int freedom = values - 1;
        double spread = 1 / Math.sqrt(2.0 * freedom);
        double from = Math.max(0, 1 - 9 * spread);
        double to = 1 + 9 * spread;
        double step = (to - from) / INTERVALS;
        double sum = 0;
        for (int i = 0; i <= INTERVALS; i++) {
            double w = from + i * step;
            int weight = i == 0 || i == INTERVALS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * density(w, freedom) * NORMAL.cumulativeProbability(Math.sqrt(values) * (k * w - z));
        }
        return sum * step / 3;
    }

    /** Of w = √(χ²/ν): 2·(ν/2)^(ν/2)·w^(ν−1)·exp(−ν·w²/2) / Γ(ν/2). */
    private static double density(double w, int freedom) {
        double half = freedom / 2.0;
        double powerOfW = freedom == 1 ? 0 : (freedom - 1) * Math.log(w);
        return 2 * Math.exp(half * Math.log(half) + powerOfW - half * w * w - LogGamma.value(half));
    }
}
