package railtrim.circuit;

import java.util.List;

/** Finds the leg and the current from two or more readings: 1/(|V| − Vref) is a straight line in 1/Radded. Weighted least squares. */
public final class LineSolve {
    private LineSolve() {}

    /** @param added ohms, infinity for open; @param volts magnitude; @param uncertainty standard, volts, 0 where not known */
    public record Point(double added, double volts, double uncertainty) {}

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

    /** @throws railtrim.quantity.BadInput for fewer than two different resistances, a voltage not above the reference, or a line that slopes the wrong way */
    public static Solution solve(Place place, double reference, List<Point> points) {
        throw new UnsupportedOperationException();
    }
}
