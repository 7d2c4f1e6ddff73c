package railtrim.parts;

import java.util.random.RandomGenerator;
import railtrim.circuit.Circuit;
import railtrim.parts.Resistors.Arrangement;

/**
 * How boards with this choice of resistors would come out, by drawing them: every part anywhere within its tolerance, the leg anywhere within what
 * is known of it, all alike likely and independent (uniform, as a tolerance says no more). Stock is held as measured.
 *
 * @param mean of the output’s magnitude, volts; {@code deviation} its standard deviation
 * @param inside share of the boards between the two voltages asked for
 */
public record Yield(double mean, double deviation, double inside, int samples) {
    /** Boards worked out together: few enough to stay near the processor. */
    private static final int BLOCK = 512;

    /**
     * @param tolerance of each part, fraction
     * @param legUncertainty half width, ohms
     * @param low magnitude, volts; {@code high} likewise
     * @param samples 1 or more
     */
    public static Yield of(
            Circuit circuit,
            double legUncertainty,
            Resistors.Candidate candidate,
            double tolerance,
            double low,
            double high,
            int samples,
            RandomGenerator chance) {
        double reference = circuit.reference();
        double span = circuit.stock() - reference;
        double nominal = (candidate.voltage() - reference) / span;
        double lowShare = (low - reference) / span;
        double highShare = (high - reference) / span;
        Drawn drawn = new Drawn(circuit.leg(), legUncertainty, candidate, tolerance);
        double sum = 0;
        double squares = 0;
        int inside = 0;
        for (int done = 0; done < samples; done += BLOCK) {
            int count = Math.min(BLOCK, samples - done);
            double[] share = drawn.shares(count, chance);
            for (int i = 0; i < count; i++) {
                // Counted from the nominal share, so that a small spread is not lost in the squares.
                double off = share[i] - nominal;
                sum += off;
                squares += off * off;
                inside += share[i] >= lowShare && share[i] <= highShare ? 1 : 0;
            }
        }
        double mean = sum / samples;
        double variance = Math.max(0, squares / samples - mean * mean);
        return new Yield(
                reference + span * (nominal + mean), span * Math.sqrt(variance), (double) inside / samples, samples);
    }

    /**
     * Boards by the block: first all numbers are drawn, then all shares added/(leg + added) are worked out. Plain loops over arrays, which the
     * machine does several at a time.
     */
    private static final class Drawn {
        private final double[][] parts;
        private final double[] values;
        private final double tolerance;
        private final double leg;
        private final double legUncertainty;
        private final Arrangement arrangement;
        private final double[] legs = new double[BLOCK];
        private final double[] shares = new double[BLOCK];

        Drawn(double leg, double legUncertainty, Resistors.Candidate candidate, double tolerance) {
            this.leg = leg;
            this.legUncertainty = legUncertainty;
            this.tolerance = tolerance;
            this.values =
                    candidate.values().stream().mapToDouble(Double::doubleValue).toArray();
            this.parts = new double[values.length][BLOCK];
            this.arrangement = candidate.arrangement();
        }

        double[] shares(int count, RandomGenerator chance) {
            for (int part = 0; part < parts.length; part++) {
                draw(parts[part], count, values[part], tolerance * values[part], chance);
            }
            draw(legs, count, leg, legUncertainty, chance);
            switch (arrangement) {
                case SINGLE, SERIES -> series(count);
                case PARALLEL -> parallel(count);
                case SERIES_PARALLEL -> seriesParallel(count);
                default -> parallelSeries(count);
            }
            return shares;
        }

        private static void draw(double[] into, int count, double middle, double half, RandomGenerator chance) {
            double low = middle - half;
            double width = 2 * half;
            for (int i = 0; i < count; i++) {
                into[i] = low + width * chance.nextDouble();
            }
        }

        private void series(int count) {
            double[] added = parts[0];
            for (int part = 1; part < parts.length; part++) {
                double[] next = parts[part];
                for (int i = 0; i < count; i++) {
                    added[i] += next[i];
                }
            }
            for (int i = 0; i < count; i++) {
                shares[i] = added[i] / (legs[i] + added[i]);
            }
        }

        /** One division for two parts: a·b/(leg·(a + b) + a·b). */
        private void parallel(int count) {
            double[] added = parts[0];
            for (int part = 1; part < parts.length - 1; part++) {
                double[] next = parts[part];
                for (int i = 0; i < count; i++) {
                    added[i] = added[i] * next[i] / (added[i] + next[i]);
                }
            }
            double[] last = parts[parts.length - 1];
            for (int i = 0; i < count; i++) {
                double product = added[i] * last[i];
                shares[i] = product / (legs[i] * (added[i] + last[i]) + product);
            }
        }

        /** a + b·c/(b + c) */
        private void seriesParallel(int count) {
            double[] a = parts[0];
            double[] b = parts[1];
            double[] c = parts[2];
            for (int i = 0; i < count; i++) {
                double both = b[i] + c[i];
                double top = a[i] * both + b[i] * c[i];
                shares[i] = top / (legs[i] * both + top);
            }
        }

        /** a·(b + c)/(a + b + c) */
        private void parallelSeries(int count) {
            double[] a = parts[0];
            double[] b = parts[1];
            double[] c = parts[2];
            for (int i = 0; i < count; i++) {
                double both = b[i] + c[i];
                double top = a[i] * both;
                shares[i] = top / (legs[i] * (a[i] + both) + top);
            }
        }
    }
}
