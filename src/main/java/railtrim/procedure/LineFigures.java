package railtrim.procedure;

import static railtrim.procedure.Figures.anyEmpty;
import static railtrim.procedure.Figures.attempt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.circuit.Doubt;
import railtrim.circuit.InCircuit;
import railtrim.circuit.Leg;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamily;
import railtrim.circuit.Supply;
import railtrim.quantity.Propagation;

/** The law through the readings: the straight line, the true leg, the circuit that follows, and what each slip would do to it. */
final class LineFigures {
    /** Volts; our own line between the two kinds of pass transistor, from the dropouts in the makers' data sheets. */
    private static final double LEAST_LASTING_DROPOUT = 1;

    private static final LineCheck NO_LINE = new LineCheck(List.of(), Optional.empty());

    private final Figures figures;
    private final Recall recall;

    LineFigures(Figures figures, Recall recall) {
        this.figures = figures;
        this.recall = recall;
    }

    List<LineSolve.Point> points() {
        return List.copyOf(pointsByName().values());
    }

    List<String> pointNames() {
        return List.copyOf(pointsByName().keySet());
    }

    private Map<String, LineSolve.Point> pointsByName() {
        Map<String, LineSolve.Point> points = new LinkedHashMap<>();
        figures.stock().ifPresent(stock -> points.put("stock", point(Double.POSITIVE_INFINITY, stock)));
        addPoint(points, "first", "trimmer.max", "first.loaded");
        addPoint(points, "soak", "setting.trimmer", "soak.volts");
        addPoint(points, "fitted", "hand.ohms", "fit.loaded");
        return points;
    }

    private void addPoint(Map<String, LineSolve.Point> points, String name, String added, String volts) {
        if (figures.ohms(added).isPresent() && figures.magnitude(volts).isPresent()) {
            points.put(
                    name,
                    point(
                            figures.ohms(added).getAsDouble(),
                            figures.magnitude(volts).getAsDouble()));
        }
    }

    private LineSolve.Point point(double added, double volts) {
        double ofAdded = Double.isInfinite(added) ? 0 : figures.ohmUncertainty(added);
        return new LineSolve.Point(added, volts, figures.voltUncertainty(volts), ofAdded);
    }

    Optional<LineSolve.Solution> solution() {
        return figures.memo("solution", () -> solved(points()));
    }

    /** Without the resistor that is fitted in the end: what it was chosen by stays what it was. */
    private Optional<LineSolve.Solution> solutionOfTheTrimmer() {
        Map<String, LineSolve.Point> points = pointsByName();
        points.remove("fitted");
        return solved(List.copyOf(points.values()));
    }

    private Optional<LineSolve.Solution> solved(List<LineSolve.Point> points) {
        if (points.size() < 2
                || figures.place().isEmpty()
                || figures.reference().isEmpty()) {
            return Optional.empty();
        }
        Place place = figures.place().get();
        double reference = figures.reference().getAsDouble();
        return recall.once(
                List.of("line", place, reference, points),
                () -> attempt(() -> LineSolve.solve(place, reference, points)));
    }

    LineCheck lineCheck() {
        return figures.memo("lineCheck", () -> {
            if (figures.place().isEmpty() || figures.reference().isEmpty()) {
                return NO_LINE;
            }
            Place place = figures.place().get();
            double reference = figures.reference().getAsDouble();
            List<LineSolve.Point> points = points();
            double low = figures.agreement().map(InCircuit.Agreement::legLow).orElse(0.0);
            double high = figures.agreement().map(InCircuit.Agreement::legHigh).orElse(Double.POSITIVE_INFINITY);
            return recall.once(
                    List.of("lineCheck", place, reference, points, low, high),
                    () -> attempt(() -> LineCheck.of(place, reference, points, low, high))
                            .orElse(NO_LINE));
        });
    }

    Optional<Propagation.Result> legByOhms() {
        OptionalDouble rail = figures.ohms("rail.ohms");
        if (figures.place().isEmpty() || anyEmpty(figures.readLeg(), figures.readOther(), rail)) {
            return Optional.empty();
        }
        double leg = figures.readLeg().getAsDouble();
        double other = figures.readOther().getAsDouble();
        boolean upper = figures.place().get().loweringLeg() == Leg.UPPER;
        return attempt(() -> {
            InCircuit.DeltaKnown known = InCircuit.solve(
                    new double[] {upper ? leg : other, upper ? other : leg, rail.getAsDouble()}, new double[] {
                        figures.ohmUncertainty(upper ? leg : other),
                        figures.ohmUncertainty(upper ? other : leg),
                        figures.ohmUncertainty(rail.getAsDouble())
                    });
            return upper
                    ? new Propagation.Result(known.delta().outAdjust(), known.outAdjustUncertainty(), List.of())
                    : new Propagation.Result(known.delta().adjustGround(), known.adjustGroundUncertainty(), List.of());
        });
    }

    Optional<Propagation.Result> legDoubt() {
        return figures.memo("legDoubt", () -> legDoubt(points()));
    }

    Optional<Propagation.Result> legDoubt(List<LineSolve.Point> points) {
        if (figures.place().isEmpty() || figures.reference().isEmpty()) {
            return Optional.empty();
        }
        Place place = figures.place().get();
        double reference = figures.reference().getAsDouble();
        double ofReference = referenceUncertainty();
        return recall.once(
                List.of("legDoubt", place, reference, ofReference, points),
                () -> attempt(() -> Doubt.leg(place, reference, ofReference, points)));
    }

    Optional<Propagation.Result> voltageDoubt(double added) {
        if (figures.place().isEmpty()
                || figures.reference().isEmpty()
                || solution().isEmpty()) {
            return Optional.empty();
        }
        Place place = figures.place().get();
        double reference = figures.reference().getAsDouble();
        double ofReference = referenceUncertainty();
        double ofAdded = figures.ohmUncertainty(added);
        List<LineSolve.Point> points = points();
        return recall.once(
                List.of("voltageDoubt", place, reference, ofReference, points, added, ofAdded),
                () -> attempt(() -> Doubt.voltage(place, reference, ofReference, points, added, ofAdded)));
    }

    /** Standard, volts: the meter's where the reference was measured, else that of the published spread. */
    private double referenceUncertainty() {
        if (figures.magnitude("ref.volts").isPresent()) {
            return figures.voltUncertainty(figures.magnitude("ref.volts").getAsDouble());
        }
        return figures.family()
                .map(family -> (family.referenceHigh() - family.referenceLow()) / 2 / Math.sqrt(3))
                .filter(Double::isFinite)
                .orElse(0.0);
    }

    Optional<Circuit> circuit() {
        return figures.memo("circuit", () -> {
            if (figures.ohms("setting.trimmer").isPresent()
                    && figures.magnitude("soak.volts").isPresent()) {
                Optional<Circuit> solved =
                        solutionOfTheTrimmer().flatMap(line -> attempt(() -> line.circuit(figures.bias())));
                if (solved.isPresent()) {
                    return solved;
                }
            }
            OptionalDouble leg = figures.agreement()
                    .map(agreement -> OptionalDouble.of(agreement.leg()))
                    .orElse(figures.readLeg());
            return circuitWith(leg);
        });
    }

    Optional<Circuit> worstCircuit() {
        return figures.memo(
                "worstCircuit",
                () -> circuitWith(figures.agreement()
                        .map(agreement -> OptionalDouble.of(agreement.legHigh()))
                        .orElse(figures.readLeg())));
    }

    Optional<Circuit> bestCaseCircuit() {
        return figures.memo(
                "bestCaseCircuit",
                () -> circuitWith(figures.agreement()
                        .map(agreement -> OptionalDouble.of(agreement.legLow()))
                        .orElse(figures.readLeg())));
    }

    private Optional<Circuit> circuitWith(OptionalDouble leg) {
        if (figures.place().isEmpty() || anyEmpty(figures.reference(), figures.stock(), leg)) {
            return Optional.empty();
        }
        return attempt(() -> Circuit.fromStock(
                figures.place().get(),
                figures.reference().getAsDouble(),
                figures.stock().getAsDouble(),
                leg.getAsDouble(),
                figures.bias()));
    }

    List<Slip> slips() {
        return figures.memo(
                "slips",
                () -> circuit()
                        .map(circuit -> Slip.all(
                                circuit,
                                addedOrPlanned(),
                                leastAdded(),
                                supply(),
                                figures.ratedHigh(),
                                figures.outline(),
                                figures.pins()))
                        .orElse(List.of()));
    }

    private double addedOrPlanned() {
        double now = figures.addedNow().orElse(Double.POSITIVE_INFINITY);
        return Double.isFinite(now) ? now : figures.ohms("trimmer.max").orElse(now);
    }

    /** The trimmer turned right down, until a fixed resistor has its place. */
    private double leastAdded() {
        return figures.chose("fit.left", "resistor-only")
                ? addedOrPlanned()
                : Math.min(addedOrPlanned(), figures.ohms("trimmer.min").orElse(Double.POSITIVE_INFINITY));
    }

    /**
     * A Darlington pass transistor keeps about its whole dropout of a volt and more at any load; a low-dropout part drops next to nothing when its
     * load is light, and then the input comes through whole.
     */
    private Supply supply() {
        double dropout = figures.family()
                .map(RegulatorFamily::dropout)
                .filter(value -> value >= LEAST_LASTING_DROPOUT)
                .orElse(0.0);
        return figures.input().isPresent() ? new Supply(figures.input().getAsDouble(), dropout) : null;
    }
}
