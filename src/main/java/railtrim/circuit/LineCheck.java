package railtrim.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import railtrim.circuit.LineSolve.Point;
import railtrim.quantity.BadInput;

/**
 * Whether readings lie on one line, and if not, which of them is to be measured again.
 *
 * <p>Each reading is held against the line through the others; the distance counts in standard uncertainties of the two together. With three
 * readings all three distances come out alike, whichever is wrong, so that none can be blamed; with four or more one can.
 *
 * @param off distance of each reading from the line through the others, in standard uncertainties, with sign; NaN where the others give no line
 * @param suspect the reading to measure again, empty where all fit
 */
public record LineCheck(List<Double> off, Optional<Suspect> suspect) {
    /** Rectangular errors reach 1.73 standard uncertainties and never more; two together hardly ever three. */
    public static final double LIMIT = 3;

    /**
     * @param index of the reading, 0 for the first
     * @param off how many standard uncertainties it lies off the line through the others
     * @param sure whether it alone is to blame: the others fit each other without it, and leaving out any other one mends nothing
     */
    public record Suspect(int index, double off, boolean sure) {}

    /** @param points as for {@link LineSolve#solve}, with their uncertainties; with fewer than three, or an uncertainty of 0, nothing can be said */
    public static LineCheck of(Place place, double reference, List<Point> points) {
        return of(place, reference, points, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * As above, with what is known of the leg from elsewhere: a reading is not cleared where that would take a leg outside these bounds. So one
     * of two readings close together, or of three, can be told to be the wrong one.
     *
     * @param legLow ohms; {@code legHigh} likewise, at least {@code legLow}
     */
    public static LineCheck of(Place place, double reference, List<Point> points, double legLow, double legHigh) {
        boolean known = points.stream().allMatch(point -> point.uncertainty() > 0);
        if (points.size() < 3 || !known) {
            return new LineCheck(points.stream().map(point -> Double.NaN).toList(), Optional.empty());
        }
        List<Double> off = distances(place, reference, points);
        List<Integer> apart = IntStream.range(0, points.size())
                .filter(i -> !(Math.abs(off.get(i)) <= LIMIT))
                .boxed()
                .toList();
        return new LineCheck(
                off,
                apart.isEmpty() ? Optional.empty() : suspect(place, reference, points, off, apart, legLow, legHigh));
    }

    private static Optional<Suspect> suspect(
            Place place,
            double reference,
            List<Point> points,
            List<Double> off,
            List<Integer> apart,
            double legLow,
            double legHigh) {
        boolean bounded = legLow > 0 && Double.isFinite(legHigh);
        List<Integer> mends = points.size() == 3 && !bounded
                ? List.of()
                : apart.stream()
                        .filter(i -> fits(place, reference, without(points, i), legLow, legHigh))
                        .toList();
        if (mends.size() == 1) {
            return Optional.of(new Suspect(mends.get(0), Math.abs(off.get(mends.get(0))), true));
        }
        // Not to be told: the one furthest from the line through all, in its own uncertainties, is worth measuring
        // first.
        List<Double> residuals = residuals(place, reference, points);
        return apart.stream()
                .max(Comparator.comparingDouble(
                        i -> Math.abs(residuals.get(i)) / points.get(i).uncertainty()))
                .map(i -> new Suspect(i, Math.abs(off.get(i)), false));
    }

    private static boolean fits(Place place, double reference, List<Point> points, double legLow, double legHigh) {
        try {
            var leg = Doubt.leg(place, reference, 0, points);
            boolean known = leg.value() >= legLow - 2 * leg.standard() && leg.value() <= legHigh + 2 * leg.standard();
            boolean straight = points.size() == 2
                    || distances(place, reference, points).stream().allMatch(off -> Math.abs(off) <= LIMIT);
            return known && straight;
        } catch (BadInput noLine) {
            return false;
        }
    }

    private static List<Double> distances(Place place, double reference, List<Point> points) {
        List<Double> off = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            off.add(distance(place, reference, points.get(i), without(points, i)));
        }
        return off;
    }

    private static double distance(Place place, double reference, Point point, List<Point> others) {
        try {
            // The reference moves all voltages of the line together; between readings it hardly matters.
            var line = Doubt.voltage(place, reference, 0, others, point.added(), point.addedUncertainty());
            return (point.volts() - line.value()) / Math.hypot(point.uncertainty(), line.standard());
        } catch (BadInput noLine) {
            return Double.NaN;
        }
    }

    private static List<Double> residuals(Place place, double reference, List<Point> points) {
        try {
            return LineSolve.solve(place, reference, points).residuals();
        } catch (BadInput noLine) {
            return points.stream().map(point -> 0.0).toList();
        }
    }

    private static List<Point> without(List<Point> points, int which) {
        List<Point> others = new ArrayList<>(points);
        others.remove(which);
        return others;
    }
}
