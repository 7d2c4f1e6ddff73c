package railtrim.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import railtrim.circuit.LineSolve.Point;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Propagation;
import railtrim.quantity.Propagation.Input;

/** How sure the sums of this package are: the uncertainty of each reading carried through. Standard uncertainties, SI units. */
public final class Doubt {
    /** Ids of the inputs, for naming the one that leaves most open. Points are numbered from 1: "volts.1", "added.1". */
    public static final String REFERENCE = "reference";

    public static final String TOTAL = "total";
    public static final String LEG = "leg";

    private Doubt() {}

    /** The true leg by {@link LineSolve}, ohms. @throws BadInput as {@link LineSolve#solve} */
    public static Propagation.Result leg(Place place, double reference, double uncertainty, List<Point> points) {
        return solved(place, reference, uncertainty, points, LineSolve.Solution::leg);
    }

    /** The current into the leg, amperes. @throws BadInput as {@link LineSolve#solve} */
    public static Propagation.Result legCurrent(Place place, double reference, double uncertainty, List<Point> points) {
        return solved(place, reference, uncertainty, points, LineSolve.Solution::legCurrent);
    }

    /**
     * The output magnitude with {@code added} ohms across the leg, by the line through the readings, volts.
     *
     * @param addedUncertainty of the part to be fitted, ohms
     */
    public static Propagation.Result voltage(
            Place place,
            double reference,
            double uncertainty,
            List<Point> points,
            double added,
            double addedUncertainty) {
        List<Input> inputs = new ArrayList<>(inputs(reference, uncertainty, points));
        inputs.add(new Input("added", added, addedUncertainty));
        int last = inputs.size() - 1;
        return Propagation.of(
                values -> solve(place, values, points).circuit(0).magnitude(Math.max(0, values[last])), inputs);
    }

    /** The resistance that gives {@code target}, by the line through the readings, ohms. @throws BadInput as {@link Circuit#addedFor} */
    public static Propagation.Result addedFor(
            Place place, double reference, double uncertainty, List<Point> points, double target) {
        return solved(
                place,
                reference,
                uncertainty,
                points,
                solution -> solution.circuit(0).addedFor(target));
    }

    /**
     * What lies across the leg, from the total and the leg alone: 1/added = 1/total − 1/leg. Where the two are near each other little is left
     * of the difference, and its uncertainty may be as large as itself or without end.
     *
     * @throws BadInput where the total is not below the leg
     */
    public static Propagation.Result addedFromTotal(
            double total, double totalUncertainty, double leg, double legUncertainty) {
        return Propagation.of(
                values -> difference(values[0], values[1]),
                List.of(new Input(TOTAL, total, totalUncertainty), new Input(LEG, leg, legUncertainty)));
    }

    private static double difference(double total, double leg) {
        if (!(total > 0) || !(leg > total)) {
            throw BadInput.of("circuit.total-not-below-leg", Display.ohms(total), Display.ohms(leg));
        }
        return 1 / (1 / total - 1 / leg);
    }

    private static Propagation.Result solved(
            Place place,
            double reference,
            double uncertainty,
            List<Point> points,
            ToDoubleFunction<LineSolve.Solution> what) {
        return Propagation.of(
                values -> what.applyAsDouble(solve(place, values, points)), inputs(reference, uncertainty, points));
    }

    private static List<Input> inputs(double reference, double uncertainty, List<Point> points) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input(REFERENCE, reference, uncertainty));
        for (int i = 0; i < points.size(); i++) {
            inputs.add(new Input(
                    "volts." + (i + 1), points.get(i).volts(), points.get(i).uncertainty()));
            inputs.add(new Input(
                    "added." + (i + 1), points.get(i).added(), points.get(i).addedUncertainty()));
        }
        return inputs;
    }

    /** The readings moved to {@code values}, each with the weight it had. */
    private static LineSolve.Solution solve(Place place, double[] values, List<Point> points) {
        List<Point> moved = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            moved.add(new Point(values[2 + 2 * i], values[1 + 2 * i], point.uncertainty(), point.addedUncertainty()));
        }
        return LineSolve.solve(place, values[0], moved);
    }
}
