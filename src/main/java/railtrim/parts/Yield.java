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
        double leg = circuit.leg() - legUncertainty;
        double legSpan = 2 * legUncertainty;
        Arrangement arrangement = candidate.arrangement();
        int parts = candidate.values().size();
        double a = candidate.values().get(0);
        double b = parts > 1 ? candidate.values().get(1) : 0;
        double c = parts > 2 ? candidate.values().get(2) : 0;
        double from = 1 - tolerance;
        double width = 2 * tolerance;
        double lowShare = (low - reference) / span;
        double highShare = (high - reference) / span;
        // Counted from the nominal share, so that a small spread is not lost in the squares.
        double nominal = (candidate.voltage() - reference) / span;
        double sum = 0;
        double squares = 0;
        int inside = 0;
        for (int i = 0; i < samples; i++) {
            double ra = a * (from + width * chance.nextDouble());
            double rb = parts > 1 ? b * (from + width * chance.nextDouble()) : 0;
            double rc = parts > 2 ? c * (from + width * chance.nextDouble()) : 0;
            double r = leg + legSpan * chance.nextDouble();
            // Added is top/bottom; one division serves for the whole share added/(leg + added).
            double top;
            double bottom;
            switch (arrangement) {
                case SINGLE -> {
                    top = ra;
                    bottom = 1;
                }
                case SERIES -> {
                    top = ra + rb + rc;
                    bottom = 1;
                }
                case PARALLEL -> {
                    top = parts > 2 ? ra * rb * rc : ra * rb;
                    bottom = parts > 2 ? ra * rb + rb * rc + rc * ra : ra + rb;
                }
                case SERIES_PARALLEL -> {
                    top = ra * (rb + rc) + rb * rc;
                    bottom = rb + rc;
                }
                default -> {
                    top = ra * (rb + rc);
                    bottom = ra + rb + rc;
                }
            }
            double share = top / (r * bottom + top);
            double off = share - nominal;
            sum += off;
            squares += off * off;
            inside += share >= lowShare && share <= highShare ? 1 : 0;
        }
        double mean = sum / samples;
        double variance = Math.max(0, squares / samples - mean * mean);
        return new Yield(
                reference + span * (nominal + mean), span * Math.sqrt(variance), (double) inside / samples, samples);
    }
}
