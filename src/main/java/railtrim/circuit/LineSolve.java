package railtrim.circuit;

import java.util.List;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** Finds the leg and the current from two or more readings: 1/(|V| − Vref) is a straight line in 1/Radded. Weighted least squares. */
public final class LineSolve {
    private LineSolve() {}

    /**
     * @param added ohms, infinity for open
     * @param volts magnitude
     * @param uncertainty of the voltage, standard, volts, 0 where not known
     * @param addedUncertainty standard, ohms, 0 where exact or not known
     */
    public record Point(double added, double volts, double uncertainty, double addedUncertainty) {
        public Point(double added, double volts, double uncertainty) {
            this(added, volts, uncertainty, 0);
        }
    }

    /**
     * @param residuals volts, reading minus line, in the order of the points
     * @param legUncertainty standard, ohms, NaN where no uncertainties were given
     */
    public record Solution(
            Place place,
            double reference,
            double leg,
            double legCurrent,
            List<Double> residuals,
            double legUncertainty) {
        public Circuit circuit(double bias) {
            return new Circuit(place, reference, leg, legCurrent, bias);
        }

        public double worstResidual() {
            return residuals.stream().mapToDouble(Math::abs).max().orElse(0);
        }
    }

    /**
     * Fits 1/(|V| − Vref) = (1/x)·(1/R + 1/Radded): the slope is 1/x, the intercept 1/(x·R). Each point weighs as the inverse square of its
     * uncertainty carried over to the left side, u(V)/(|V| − Vref)², and that of the resistance, slope·u(Radded)/Radded²; where any
     * uncertainty of a voltage is not known, all are taken as equal in volts.
     *
     * @throws railtrim.quantity.BadInput for fewer than two different resistances, a voltage not above the reference, or a line that slopes the wrong way
     */
    public static Solution solve(Place place, double reference, List<Point> points) {
        points.forEach(point -> check(point, reference));
        if (points.stream().mapToDouble(Point::added).distinct().count() < 2) {
            throw BadInput.of("circuit.line-too-few");
        }
        boolean known = points.stream().allMatch(point -> point.uncertainty() > 0);
        // How much an error of a resistance moves its reading depends on the slope, so that is found in two rounds.
        Sums first = Sums.of(points, reference, known, 0);
        Sums sums = known ? Sums.of(points, reference, known, Math.max(0, first.slope())) : first;
        double slope = sums.slope();
        double intercept = sums.intercept();
        if (!(slope > 0)) {
            throw BadInput.of("circuit.line-rises");
        }
        if (!(intercept > 0)) {
            throw BadInput.of("circuit.line-no-leg");
        }
        double leg = slope / intercept;
        double legCurrent = 1 / slope;
        List<Double> residuals = points.stream()
                .map(point -> point.volts() - reference - 1 / (intercept + slope / point.added()))
                .toList();
        return new Solution(place, reference, leg, legCurrent, residuals, known ? sums.ratioUncertainty() : Double.NaN);
    }

    private static void check(Point point, double reference) {
        if (!(point.added() > 0)) {
            throw BadInput.of("circuit.line-short", Display.ohms(point.added()));
        }
        if (!(point.volts() > reference) || Double.isInfinite(point.volts())) {
            throw BadInput.of(
                    "circuit.line-not-above-reference", Display.volts(point.volts()), Display.volts(reference));
        }
        if (!(point.uncertainty() >= 0) || Double.isInfinite(point.uncertainty())) {
            throw BadInput.of("circuit.not-positive", Display.of(point.uncertainty(), Unit.VOLT));
        }
        if (!(point.addedUncertainty() >= 0) || Double.isInfinite(point.addedUncertainty())) {
            throw BadInput.of("circuit.not-positive", Display.ohms(point.addedUncertainty()));
        }
    }

    /** Weighted sums about the weighted means, so that far-apart magnitudes do not cancel. */
    private record Sums(double weight, double meanX, double meanY, double spreadX, double product) {
        static Sums of(List<Point> points, double reference, boolean known, double slope) {
            double weight = 0;
            double sumX = 0;
            double sumY = 0;
            for (Point point : points) {
                double w = weight(point, reference, known, slope);
                weight += w;
                sumX += w / point.added();
                sumY += w / (point.volts() - reference);
            }
            double meanX = sumX / weight;
            double meanY = sumY / weight;
            double spreadX = 0;
            double product = 0;
            for (Point point : points) {
                double w = weight(point, reference, known, slope);
                double fromMean = 1 / point.added() - meanX;
                spreadX += w * fromMean * fromMean;
                product += w * fromMean * (1 / (point.volts() - reference) - meanY);
            }
            return new Sums(weight, meanX, meanY, spreadX, product);
        }

        private static double weight(Point point, double reference, boolean known, double slope) {
            double above = point.volts() - reference;
            double ofVolts = (known ? point.uncertainty() : 1) / (above * above);
            double ofAdded = point.addedUncertainty() == 0
                    ? 0
                    : slope * point.addedUncertainty() / (point.added() * point.added());
            return 1 / (ofVolts * ofVolts + ofAdded * ofAdded);
        }

        double slope() {
            return product / spreadX;
        }

        double intercept() {
            return meanY - slope() * meanX;
        }

        /** Standard uncertainty of slope/intercept. Slope and the mean are independent, and intercept = mean − slope·meanX. */
        double ratioUncertainty() {
            double ofMean = -slope() / (intercept() * intercept());
            double ofSlope = meanY / (intercept() * intercept());
            return Math.sqrt(ofMean * ofMean / weight + ofSlope * ofSlope / spreadX);
        }
    }
}
