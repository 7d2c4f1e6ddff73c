package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.circuit.Doubt;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Propagation;
import railtrim.quantity.Unit;

/** What the meter leaves open, said with the results: "3.555 V ± 0.038 V", what is too coarse to use, and which reading would help. */
final class Doubts {
    /** A leg less sure than this is not worth calculating with; our own limit. */
    private static final double COARSE = 0.25;
    /** A resistor less sure than this cannot be bought by; our own limit: the tolerance of a cheap resistor. */
    private static final double COARSE_PART = 0.05;

    private Doubts() {}

    /** A voltage as read, with the meter's U. */
    static String reading(Figures figures, double volts) {
        return figures.sign().volts(volts, 2 * figures.voltUncertainty(volts));
    }

    /** A voltage worked out for so many ohms across the leg, with U where the readings allow it. */
    static String volts(Figures figures, double added, double volts) {
        return figures.voltageDoubt(added)
                .map(result -> figures.sign().volts(volts, result.expanded()))
                .orElseGet(() -> figures.sign().volts(volts));
    }

    /** The true leg from the voltages so far; where it is too coarse, the reading that would help most and what it would reach. */
    static List<Finding> leg(Figures figures) {
        Optional<Propagation.Result> leg = figures.legDoubt();
        if (leg.isEmpty()) {
            return List.of();
        }
        double value = leg.get().value();
        double doubt = leg.get().expanded();
        String onTheBoard = Display.ohms(figures.readLeg().orElse(Double.NaN));
        if (doubt <= COARSE * value) {
            return List.of(
                    Findings.says("verdict.leg-solved", Display.withUncertainty(value, doubt, Unit.OHM), onTheBoard));
        }
        Optional<Propagation.Result> further = furtherDown(figures);
        if (further.isEmpty() || further.get().expanded() >= doubt) {
            return List.of(Findings.says("verdict.leg-unsolved"));
        }
        return List.of(Findings.says(
                "verdict.leg-solved-coarse",
                figures.sign().volts(figures.floor().orElseThrow()),
                width(further.get())));
    }

    /** U alone, to its second digit. */
    private static String width(Propagation.Result result) {
        String whole = Display.withUncertainty(result.value(), result.expanded(), Unit.OHM);
        return whole.substring(whole.indexOf('±') + 1).strip();
    }

    /** What the leg's uncertainty would be with one more reading, at the lowest voltage that is to be explored. */
    private static Optional<Propagation.Result> furtherDown(Figures figures) {
        OptionalDouble floor = figures.floor();
        Optional<Circuit> circuit = figures.circuit();
        if (floor.isEmpty() || circuit.isEmpty()) {
            return Optional.empty();
        }
        try {
            double volts = floor.getAsDouble();
            double added = circuit.get().addedFor(volts);
            // As the circuit would read, so that the readings there are do not pull the sum out of true.
            List<LineSolve.Point> points = new ArrayList<>();
            for (LineSolve.Point point : figures.points()) {
                points.add(new LineSolve.Point(
                        point.added(),
                        circuit.get().magnitude(point.added()),
                        point.uncertainty(),
                        point.addedUncertainty()));
            }
            points.add(
                    new LineSolve.Point(added, volts, figures.voltUncertainty(volts), figures.ohmUncertainty(added)));
            return figures.legDoubt(points);
        } catch (BadInput outOfReach) {
            return Optional.empty();
        }
    }

    /** Conductances subtract, errors do not: what the total across the leg alone would say of the trimmer. */
    static List<Finding> difference(Figures figures) {
        double total = figures.ohms("setting.total").orElseThrow();
        double leg = figures.readLeg().orElseThrow();
        double trimmer = figures.ohms("setting.trimmer").orElseThrow();
        String alone = Display.withUncertainty(trimmer, 2 * figures.ohmUncertainty(trimmer), Unit.OHM);
        try {
            Propagation.Result result =
                    Doubt.addedFromTotal(total, figures.ohmUncertainty(total), leg, figures.ohmUncertainty(leg));
            if (result.expanded() <= COARSE_PART * result.value()) {
                return List.of();
            }
            boolean open = !(result.expanded() < result.value());
            return List.of(
                    open
                            ? Findings.says("verdict.difference-open", alone)
                            : Findings.says(
                                    "verdict.difference-coarse",
                                    Display.withUncertainty(result.value(), result.expanded(), Unit.OHM),
                                    alone));
        } catch (BadInput totalNotBelowLeg) {
            return List.of(Findings.says("verdict.difference-open", alone));
        }
    }

    /** The reading that does not lie on the line of the others. */
    static List<Finding> offTheLine(Figures figures) {
        Optional<LineCheck.Suspect> suspect = figures.lineCheck().suspect();
        if (suspect.isEmpty()) {
            return List.of();
        }
        String off = Double.isNaN(suspect.get().off())
                ? "?"
                : String.format(Locale.ROOT, "%.1f", suspect.get().off());
        String name = figures.pointNames().get(suspect.get().index());
        return List.of(Findings.warns("verdict.off-the-line." + (suspect.get().sure() ? name : "unsure"), off));
    }
}
