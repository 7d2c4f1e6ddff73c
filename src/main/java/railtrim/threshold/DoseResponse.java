package railtrim.threshold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A curve of fault share over stress, fitted by maximum likelihood: share = F(intercept + slope·stress), F the logistic function or the normal
 * distribution function. For trials that scatter, where good and fault overlap; where one voltage parts them there is no such curve.
 *
 * <p>Fisher scoring (McCullagh and Nelder, Generalized Linear Models, 4.4): weighted least squares of z = η + (y − p)/F′(η) on the stress, with weights
 * n·F′(η)²/(p·(1 − p)), until nothing moves. Standard errors are those of the expected information; deviance is twice the log-likelihood short
 * of a perfect fit.
 */
public record DoseResponse(
        Link link, double intercept, double slope, double interceptError, double slopeError, double deviance) {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int MOST_ROUNDS = 100;

    /** Shares nearer to 0 or 1 than this are held there, so that no weight divides by zero. */
    private static final double EDGE = 1e-12;

    public enum Link {
        LOGIT(
                eta -> 1 / (1 + Math.exp(-eta)),
                eta -> 1 / (2 + Math.exp(eta) + Math.exp(-eta)),
                share -> Math.log(share / (1 - share))),
        PROBIT(NORMAL::cumulativeProbability, NORMAL::density, NORMAL::inverseCumulativeProbability);

        private final DoubleUnaryOperator share;
        private final DoubleUnaryOperator rise;
        private final DoubleUnaryOperator inverse;

        Link(DoubleUnaryOperator share, DoubleUnaryOperator rise, DoubleUnaryOperator inverse) {
            this.share = share;
            this.rise = rise;
            this.inverse = inverse;
        }
    }

    /** @param tried 1 or more; @param faults from 0 to {@code tried} */
    public record Group(double stress, int tried, int faults) {
        public Group {
            if (tried < 1 || faults < 0 || faults > tried || !Double.isFinite(stress)) {
                throw new IllegalArgumentException(faults + " faults of " + tried + " at " + stress);
            }
        }

        double share() {
            return (double) faults / tried;
        }
    }

    /** Trials at the same voltage taken together, with the voltage’s negative as the stress, least stress first. */
    public static List<Group> groups(List<Trial> trials) {
        Map<Double, int[]> counts = new TreeMap<>();
        for (Trial trial : trials) {
            int[] count = counts.computeIfAbsent(-trial.volts(), volts -> new int[2]);
            count[0]++;
            count[1] += trial.fault() ? 1 : 0;
        }
        List<Group> groups = new ArrayList<>();
        counts.forEach((stress, count) -> groups.add(new Group(stress, count[0], count[1])));
        return groups;
    }

    /** @return empty where good and fault do not overlap, where more stress does not mean more faults, or where the fit does not settle */
    public static Optional<DoseResponse> fit(Link link, List<Group> groups) {
        if (!overlap(groups)) {
            return Optional.empty();
        }
        double middle = groups.stream().mapToDouble(Group::stress).average().orElseThrow();
        double intercept = 0;
        double slope = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Sums sums = Sums.of(link, groups, middle, intercept, slope);
            double nextSlope = sums.slope();
            double nextIntercept = sums.intercept(nextSlope);
            if (!Double.isFinite(nextSlope) || !Double.isFinite(nextIntercept)) {
                return Optional.empty();
            }
            double moved = Math.abs(nextSlope - slope) / (1 + Math.abs(nextSlope))
                    + Math.abs(nextIntercept - intercept) / (1 + Math.abs(nextIntercept));
            slope = nextSlope;
            intercept = nextIntercept;
            if (moved < 1e-13) {
                break;
            }
        }
        Sums last = Sums.of(link, groups, middle, intercept, slope);
        return slope > 0
                ? Optional.of(new DoseResponse(
                        link,
                        intercept - slope * middle,
                        slope,
                        last.interceptError(middle),
                        last.slopeError(),
                        deviance(link, groups, middle, intercept, slope)))
                : Optional.empty();
    }

    /** The stress at which this share fails, above 0 and below 1. */
    public double stressAt(double share) {
        return (link.inverse.applyAsDouble(share) - intercept) / slope;
    }

    /** Some stress showed a fault although more stress was good: without that the likelihood has no greatest value. */
    private static boolean overlap(List<Group> groups) {
        double leastFault = groups.stream()
                .filter(group -> group.faults() > 0)
                .mapToDouble(Group::stress)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        double mostGood = groups.stream()
                .filter(group -> group.faults() < group.tried())
                .mapToDouble(Group::stress)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
        return leastFault < mostGood;
    }

    /** Weighted sums of one round; the stress is counted from {@code middle}, which keeps the two unknowns apart. */
    private record Sums(double w, double wx, double wxx, double wz, double wxz) {
        static Sums of(Link link, List<Group> groups, double middle, double intercept, double slope) {
            double w = 0;
            double wx = 0;
            double wxx = 0;
            double wz = 0;
            double wxz = 0;
            for (Group group : groups) {
                double x = group.stress() - middle;
                double eta = intercept + slope * x;
                double p = held(link.share.applyAsDouble(eta));
                double rise = Math.max(link.rise.applyAsDouble(eta), EDGE);
                double weight = group.tried() * rise * rise / (p * (1 - p));
                double z = eta + (group.share() - p) / rise;
                w += weight;
                wx += weight * x;
                wxx += weight * x * x;
                wz += weight * z;
                wxz += weight * x * z;
            }
            return new Sums(w, wx, wxx, wz, wxz);
        }

        private double determinant() {
            return w * wxx - wx * wx;
        }

        double slope() {
            return (w * wxz - wx * wz) / determinant();
        }

        double intercept(double slope) {
            return (wz - slope * wx) / w;
        }

        double slopeError() {
            return Math.sqrt(w / determinant());
        }

        /** Of the intercept counted from stress 0. */
        double interceptError(double middle) {
            return Math.sqrt((wxx + 2 * middle * wx + middle * middle * w) / determinant());
        }
    }

    private static double deviance(Link link, List<Group> groups, double middle, double intercept, double slope) {
        double sum = 0;
        for (Group group : groups) {
            double p = held(link.share.applyAsDouble(intercept + slope * (group.stress() - middle)));
            sum += part(group.faults(), group.tried() * p)
                    + part(group.tried() - group.faults(), group.tried() * (1 - p));
        }
        return 2 * sum;
    }

    private static double part(double seen, double fitted) {
        return seen == 0 ? 0 : seen * Math.log(seen / fitted);
    }

    private static double held(double share) {
        return Math.min(1 - EDGE, Math.max(EDGE, share));
    }

    /**
     * The middle without any curve, after Spearman and Kärber: Σ (p₍i+1₎ − p₍i₎)·(x₍i₎ + x₍i+1₎)/2 over levels in order. Shares that fall where they should
     * rise are averaged with their neighbours first (pool adjacent violators).
     *
     * @return empty unless the shares begin at 0 and end at 1
     */
    public static Optional<Double> spearmanKaerber(List<Group> groups) {
        List<double[]> blocks = new ArrayList<>();
        List<Group> sorted = groups.stream()
                .sorted(Comparator.comparingDouble(Group::stress))
                .toList();
        for (Group group : sorted) {
            blocks.add(new double[] {group.faults(), group.tried(), 1});
            while (blocks.size() > 1 && share(blocks, 2) > share(blocks, 1)) {
                double[] last = blocks.remove(blocks.size() - 1);
                double[] before = blocks.get(blocks.size() - 1);
                for (int i = 0; i < 3; i++) {
                    before[i] += last[i];
                }
            }
        }
        List<Double> shares = new ArrayList<>();
        blocks.forEach(block -> {
            for (int i = 0; i < block[2]; i++) {
                shares.add(block[0] / block[1]);
            }
        });
        if (shares.isEmpty() || shares.get(0) > 0 || shares.get(shares.size() - 1) < 1) {
            return Optional.empty();
        }
        double middle = 0;
        for (int i = 1; i < shares.size(); i++) {
            middle += (shares.get(i) - shares.get(i - 1))
                    * (sorted.get(i).stress() + sorted.get(i - 1).stress())
                    / 2;
        }
        return Optional.of(middle);
    }

    private static double share(List<double[]> blocks, int fromEnd) {
        double[] block = blocks.get(blocks.size() - fromEnd);
        return block[0] / block[1];
    }
}
