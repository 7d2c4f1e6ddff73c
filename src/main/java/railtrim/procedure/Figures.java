package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import railtrim.circuit.Circuit;
import railtrim.circuit.Doubt;
import railtrim.circuit.InCircuit;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.circuit.Supply;
import railtrim.heat.Heat;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.parts.Resistors;
import railtrim.parts.Series;
import railtrim.parts.Trimmers;
import railtrim.quantity.BadInput;
import railtrim.quantity.Meter;
import railtrim.quantity.Propagation;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.Trial;

/**
 * Everything the facts so far say about the circuit, computed afresh; what is not known yet is empty. Voltages are magnitudes unless a
 * method says "as read".
 */
public final class Figures {
    private static final double START_TOLERANCE = 0.10;

    /** A common film resistor of 100 ppm/K, 40 K warmer than when it was measured. */
    private static final double DRIFT = 100e-6 * 40;

    private static final Set<String> SETTINGS = Set.of("down.volts", "set.volts");
    private static final Set<String> AT_MAXIMUM = Set.of("smooth.total", "down.max", "set.max");
    /** Volts; our own line between the two kinds of pass transistor, from the dropouts in the makers' data sheets. */
    private static final double LEAST_LASTING_DROPOUT = 1;

    private static final LineCheck NO_LINE = new LineCheck(List.of(), Optional.empty());
    private static final double CONFIDENCE = 0.95;
    private static final double COVERAGE = 0.99;

    private final Job job;
    private final RegulatorFamilies families;
    private final Recall recall;
    private final Map<String, Entry> live = new HashMap<>();
    private final Map<String, Object> computed = new HashMap<>();
    private State.Power power = State.Power.OFF;

    Figures(Job job, RegulatorFamilies families, Recall recall) {
        this.job = job;
        this.families = families;
        this.recall = recall;
    }

    /** Takes in the facts of one more step that count; what was computed before may change by them. */
    void take(List<Entry> entries) {
        for (Entry entry : entries) {
            fieldOf(entry.fact()).ifPresent(field -> live.put(field, entry));
        }
        if (!entries.isEmpty()) {
            computed.clear();
        }
    }

    void power(State.Power believed) {
        power = believed;
    }

    static Optional<String> fieldOf(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            return Optional.of(reading.field());
        }
        if (fact instanceof Fact.Choice choice) {
            return Optional.of(choice.field());
        }
        if (fact instanceof Fact.Note note) {
            return Optional.of(note.field());
        }
        if (fact instanceof Fact.Power change) {
            return Optional.of(change.step() + ".switch");
        }
        return Optional.empty();
    }

    // ---- what was written -------------------------------------------------------------------------------------------

    Optional<Entry> entry(String field) {
        return Optional.ofNullable(live.get(field));
    }

    Job job() {
        return job;
    }

    public State.Power power() {
        return power;
    }

    public Optional<Fact.Reading> reading(String field) {
        return entry(field)
                .map(Entry::fact)
                .filter(Fact.Reading.class::isInstance)
                .map(Fact.Reading.class::cast);
    }

    /** Latest value of a number field that still counts (not reopened since), as read, SI units. */
    public OptionalDouble number(String field) {
        return reading(field).map(reading -> OptionalDouble.of(reading.value())).orElse(OptionalDouble.empty());
    }

    /** As {@link #number}, without the sign. */
    public OptionalDouble magnitude(String field) {
        OptionalDouble value = number(field);
        return value.isPresent() ? OptionalDouble.of(Math.abs(value.getAsDouble())) : value;
    }

    /** As {@link #number} for a resistance, with the meter's lead zero taken off; never below a milliohm. */
    public OptionalDouble ohms(String field) {
        OptionalDouble value = number(field);
        return value.isPresent() ? OptionalDouble.of(lessLeads(value.getAsDouble())) : value;
    }

    /** A resistance as read, less what the leads themselves read when shorted. */
    double lessLeads(double read) {
        return Math.max(1e-3, read - number("meter.zero").orElse(0));
    }

    public Optional<String> choice(String field) {
        return entry(field)
                .map(Entry::fact)
                .filter(Fact.Choice.class::isInstance)
                .map(fact -> ((Fact.Choice) fact).option());
    }

    boolean chose(String field, String option) {
        return choice(field).filter(option::equals).isPresent();
    }

    public Optional<String> text(String field) {
        return entry(field).map(Entry::fact).filter(Fact.Note.class::isInstance).map(fact -> ((Fact.Note) fact).text());
    }

    /** What another job, taken over as a plan, says about a field. It answers nothing. */
    public Optional<String> proposed(String field) {
        return job.entries().stream()
                .map(Entry::fact)
                .filter(Fact.Proposed.class::isInstance)
                .map(Fact.Proposed.class::cast)
                .filter(proposed -> proposed.field().equals(field))
                .map(Fact.Proposed::value)
                .findFirst();
    }

    /** Every fact ever written for a field, oldest first, those that no longer count included. */
    public List<Entry> history(String field) {
        return job.entries().stream()
                .filter(entry -> fieldOf(entry.fact()).filter(field::equals).isPresent())
                .toList();
    }

    // ---- the board
    // ---------------------------------------------------------------------------------------------------

    public Meter meter() {
        return memo("meter", () -> switch (choice("meter.class").orElse("basic")) {
            case "middle" -> Meter.middle();
            case "fine" -> Meter.fine();
            case "typed" ->
                Meter.typed(
                        number("meter.volt.percent").orElse(1),
                        number("meter.volt.digits").orElse(5),
                        number("meter.ohm.percent").orElse(1),
                        number("meter.ohm.digits").orElse(5));
            default -> Meter.basic();
        });
    }

    double voltUncertainty(double volts) {
        return meter().voltsAt(volts).standardUncertainty(volts);
    }

    double voltResolution(double volts) {
        return meter().voltsAt(volts).resolution();
    }

    double ohmUncertainty(double ohms) {
        return meter().ohmsAt(ohms).standardUncertainty(ohms);
    }

    public Optional<RegulatorFamily> family() {
        return memo(
                "family",
                () -> chose("reg.family", "other")
                        ? typedFamily()
                        : choice("reg.family").flatMap(families::named));
    }

    private Optional<RegulatorFamily> typedFamily() {
        OptionalDouble reference = number("sheet.reference");
        Optional<Place> place = choice("sheet.place").flatMap(id -> attempt(() -> Place.of(id)));
        if (reference.isEmpty() || place.isEmpty()) {
            return Optional.empty();
        }
        double nominal = reference.getAsDouble();
        double bias = number("sheet.bias").orElse(0);
        return Optional.of(new RegulatorFamily(
                "other",
                text("reg.marking").orElse("other"),
                place.get(),
                number("sheet.reference.low").orElse(nominal),
                nominal,
                number("sheet.reference.high").orElse(nominal),
                bias,
                bias,
                number("sheet.minimum-load").orElse(Double.NaN),
                number("sheet.dropout").orElse(Double.NaN),
                number("sheet.input.highest").orElse(Double.NaN),
                Double.NaN,
                Double.NaN,
                Map.of(),
                null,
                List.of()));
    }

    public Optional<Place> place() {
        return family().map(RegulatorFamily::place);
    }

    public boolean negative() {
        return place().filter(Place::negative).isPresent();
    }

    public Optional<Outline> outline() {
        return choice("reg.outline").flatMap(id -> attempt(() -> Outline.of(id)));
    }

    /** Roles given so far, pin 1 first, then the tab where the outline has one; empty where not given yet. */
    public List<Optional<PinRole>> pins() {
        List<Optional<PinRole>> pins = new ArrayList<>();
        outline().ifPresent(outline -> {
            for (int pin = 1; pin <= outline.pins(); pin++) {
                pins.add(role("pin." + pin));
            }
            if (outline.hasTab()) {
                pins.add(role("pin.tab"));
            }
        });
        return pins;
    }

    private Optional<PinRole> role(String field) {
        return choice(field).flatMap(id -> attempt(() -> PinRole.of(id)));
    }

    /** The reference voltage: as measured between the clips once that was done, else the data sheet's. */
    public OptionalDouble reference() {
        OptionalDouble measured = magnitude("ref.volts");
        if (measured.isPresent()) {
            return measured;
        }
        return family().map(family -> OptionalDouble.of(family.reference())).orElse(OptionalDouble.empty());
    }

    public OptionalDouble stock() {
        return magnitude("stock.volts");
    }

    public OptionalDouble input() {
        return magnitude("input.volts");
    }

    public OptionalDouble ratedLow() {
        return magnitude("rated.low");
    }

    public OptionalDouble ratedHigh() {
        return magnitude("rated.high");
    }

    /** Lowest voltage the person wants to explore. */
    public OptionalDouble floor() {
        return magnitude("aim.lowest");
    }

    /** The leg as read on the board, lead zero taken off, ohms. */
    public OptionalDouble readLeg() {
        return ohms("leg.ohms");
    }

    public OptionalDouble readOther() {
        return ohms("other.ohms");
    }

    /** Whether legs, reference and stock voltage belong together, and the true leg that follows; empty until all were read. */
    public Optional<InCircuit.Agreement> agreement() {
        return memo("agreement", () -> {
            if (place().isEmpty() || anyEmpty(reference(), stock(), readLeg(), readOther())) {
                return Optional.empty();
            }
            double leg = readLeg().getAsDouble();
            double other = readOther().getAsDouble();
            double stock = stock().getAsDouble();
            double reference = reference().getAsDouble();
            if (stock <= reference) {
                return Optional.empty();
            }
            double referenceHalfWidth = 1.8 * voltUncertainty(reference);
            return recall.once(
                    List.of("agreement", reference, bias(), stock, leg, other, meter()),
                    () -> attempt(() -> InCircuit.check(
                            reference,
                            referenceHalfWidth,
                            bias(),
                            stock,
                            voltUncertainty(stock),
                            leg,
                            ohmUncertainty(leg),
                            other,
                            ohmUncertainty(other))));
        });
    }

    double bias() {
        return family().map(RegulatorFamily::biasOrZero).orElse(0.0);
    }

    // ---- the law
    // -----------------------------------------------------------------------------------------------------

    /** Readings that lie on the straight line, stock first, all under the named load. */
    public List<LineSolve.Point> points() {
        return List.copyOf(pointsByName().values());
    }

    /** What each of {@link #points} is: "stock", "first", "soak" or "fitted". */
    List<String> pointNames() {
        return List.copyOf(pointsByName().keySet());
    }

    private Map<String, LineSolve.Point> pointsByName() {
        Map<String, LineSolve.Point> points = new LinkedHashMap<>();
        stock().ifPresent(stock -> points.put("stock", point(Double.POSITIVE_INFINITY, stock)));
        addPoint(points, "first", "trimmer.max", "first.loaded");
        addPoint(points, "soak", "setting.trimmer", "soak.volts");
        addPoint(points, "fitted", "hand.ohms", "fit.loaded");
        return points;
    }

    private void addPoint(Map<String, LineSolve.Point> points, String name, String added, String volts) {
        if (ohms(added).isPresent() && magnitude(volts).isPresent()) {
            points.put(name, point(ohms(added).getAsDouble(), magnitude(volts).getAsDouble()));
        }
    }

    private LineSolve.Point point(double added, double volts) {
        double ofAdded = Double.isInfinite(added) ? 0 : ohmUncertainty(added);
        return new LineSolve.Point(added, volts, voltUncertainty(volts), ofAdded);
    }

    public Optional<LineSolve.Solution> solution() {
        return memo("solution", () -> solved(points()));
    }

    /** Without the resistor that is fitted in the end: what it was chosen by stays what it was. */
    private Optional<LineSolve.Solution> solutionOfTheTrimmer() {
        Map<String, LineSolve.Point> points = pointsByName();
        points.remove("fitted");
        return solved(List.copyOf(points.values()));
    }

    private Optional<LineSolve.Solution> solved(List<LineSolve.Point> points) {
        if (points.size() < 2 || place().isEmpty() || reference().isEmpty()) {
            return Optional.empty();
        }
        return attempt(() -> LineSolve.solve(place().get(), reference().getAsDouble(), points));
    }

    /** Whether the readings lie on one line, and which to measure again if not. */
    public LineCheck lineCheck() {
        return memo(
                "lineCheck",
                () -> place().isPresent() && reference().isPresent()
                        ? attempt(() -> LineCheck.of(
                                        place().get(),
                                        reference().getAsDouble(),
                                        points(),
                                        agreement()
                                                .map(InCircuit.Agreement::legLow)
                                                .orElse(0.0),
                                        agreement()
                                                .map(InCircuit.Agreement::legHigh)
                                                .orElse(Double.POSITIVE_INFINITY)))
                                .orElse(NO_LINE)
                        : NO_LINE);
    }

    /** The true leg with what the readings leave open, ohms; empty with fewer than two. */
    public Optional<Propagation.Result> legDoubt() {
        return memo("legDoubt", () -> legDoubt(points()));
    }

    Optional<Propagation.Result> legDoubt(List<LineSolve.Point> points) {
        if (place().isEmpty() || reference().isEmpty()) {
            return Optional.empty();
        }
        double reference = reference().getAsDouble();
        return attempt(() -> Doubt.leg(place().get(), reference, referenceUncertainty(), points));
    }

    /** The voltage that so many ohms across the leg will give, by the line through the readings, volts; empty with fewer than two. */
    Optional<Propagation.Result> voltageDoubt(double added) {
        if (place().isEmpty() || reference().isEmpty() || solution().isEmpty()) {
            return Optional.empty();
        }
        double reference = reference().getAsDouble();
        return attempt(() -> Doubt.voltage(
                place().get(), reference, referenceUncertainty(), points(), added, ohmUncertainty(added)));
    }

    /** Standard, volts: the meter's where the reference was measured, else that of the published spread. */
    private double referenceUncertainty() {
        if (magnitude("ref.volts").isPresent()) {
            return voltUncertainty(magnitude("ref.volts").getAsDouble());
        }
        return family().map(family -> (family.referenceHigh() - family.referenceLow()) / 2 / Math.sqrt(3))
                .filter(Double::isFinite)
                .orElse(0.0);
    }

    /** Best estimate of the true circuit so far: solved from the trimmer's setting where that is known, else from the readings on the board. */
    public Optional<Circuit> circuit() {
        return memo("circuit", () -> {
            if (ohms("setting.trimmer").isPresent() && magnitude("soak.volts").isPresent()) {
                Optional<Circuit> solved = solutionOfTheTrimmer().flatMap(line -> attempt(() -> line.circuit(bias())));
                if (solved.isPresent()) {
                    return solved;
                }
            }
            OptionalDouble leg = agreement()
                    .map(agreement -> OptionalDouble.of(agreement.leg()))
                    .orElse(readLeg());
            return circuitWith(leg);
        });
    }

    /** The circuit with the largest true leg that the readings allow: what the start voltage is judged by. */
    Optional<Circuit> worstCircuit() {
        return memo(
                "worstCircuit",
                () -> circuitWith(agreement()
                        .map(agreement -> OptionalDouble.of(agreement.legHigh()))
                        .orElse(readLeg())));
    }

    Optional<Circuit> bestCaseCircuit() {
        return memo(
                "bestCaseCircuit",
                () -> circuitWith(agreement()
                        .map(agreement -> OptionalDouble.of(agreement.legLow()))
                        .orElse(readLeg())));
    }

    private Optional<Circuit> circuitWith(OptionalDouble leg) {
        if (place().isEmpty() || anyEmpty(reference(), stock(), leg)) {
            return Optional.empty();
        }
        return attempt(() -> Circuit.fromStock(
                place().get(), reference().getAsDouble(), stock().getAsDouble(), leg.getAsDouble(), bias()));
    }

    /**
     * What each slip at the divider and at the pins would do, worst first; empty until the circuit is known. Before anything is soldered the
     * trimmer in hand counts as the part to be added.
     */
    public List<Slip> slips() {
        return memo(
                "slips",
                () -> circuit()
                        .map(circuit -> Slip.all(
                                circuit, addedOrPlanned(), leastAdded(), supply(), ratedHigh(), outline(), pins()))
                        .orElse(List.of()));
    }

    private double addedOrPlanned() {
        double now = addedNow().orElse(Double.POSITIVE_INFINITY);
        return Double.isFinite(now) ? now : ohms("trimmer.max").orElse(now);
    }

    /** The trimmer turned right down, until a fixed resistor has its place. */
    private double leastAdded() {
        return chose("fit.left", "resistor-only")
                ? addedOrPlanned()
                : Math.min(addedOrPlanned(), ohms("trimmer.min").orElse(Double.POSITIVE_INFINITY));
    }

    /**
     * A Darlington pass transistor keeps about its whole dropout of a volt and more at any load; a low-dropout part drops next to nothing when its
     * load is light, and then the input comes through whole.
     */
    private Supply supply() {
        double dropout = family().map(RegulatorFamily::dropout)
                .filter(value -> value >= LEAST_LASTING_DROPOUT)
                .orElse(0.0);
        return input().isPresent() ? new Supply(input().getAsDouble(), dropout) : null;
    }

    // ---- the trimmer
    // -------------------------------------------------------------------------------------------------

    private Optional<Trimmers.Wish> trimmerWish() {
        if (anyEmpty(floor(), number("aim.drop"))) {
            return Optional.empty();
        }
        return Optional.of(new Trimmers.Wish(
                number("aim.drop").getAsDouble() / 100, floor().getAsDouble(), START_TOLERANCE, List.of(25, 12, 1)));
    }

    public List<Trimmers.Candidate> trimmers() {
        return memo(
                "trimmers",
                () -> worstCircuit()
                        .flatMap(circuit -> trimmerWish()
                                .flatMap(wish -> attempt(() -> recall.once(
                                        List.of("trimmers", circuit, wish), () -> Trimmers.rank(circuit, wish)))))
                        .orElse(List.of()));
    }

    public Optional<Trimmers.Candidate> trimmerPicked() {
        return choice("trimmer.pick")
                .flatMap(id -> trimmers().stream()
                        .filter(candidate -> Choices.trimmerId(candidate).equals(id))
                        .findFirst());
    }

    public Optional<Trimmers.InHand> trimmerInHand() {
        return memo("trimmerInHand", () -> {
            OptionalDouble maximum = ohms("trimmer.max");
            OptionalDouble minimum = ohms("trimmer.min");
            if (anyEmpty(maximum, minimum)
                    || worstCircuit().isEmpty()
                    || trimmerWish().isEmpty()) {
                return Optional.empty();
            }
            double most = maximum.getAsDouble();
            double least = minimum.getAsDouble();
            return attempt(() -> Trimmers.judge(
                    worstCircuit().get(),
                    trimmerWish().get(),
                    most,
                    ohmUncertainty(most),
                    least,
                    ohmUncertainty(least)));
        });
    }

    /** Predicted voltage at power-up with the trimmer in hand at its maximum; once it was read, that reading. */
    public OptionalDouble start() {
        OptionalDouble read = magnitude("first.loaded");
        if (read.isPresent()) {
            return read;
        }
        OptionalDouble maximum = ohms("trimmer.max");
        return maximum.isPresent() && circuit().isPresent()
                ? OptionalDouble.of(circuit().get().magnitude(maximum.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** Ohms across the leg now: the trimmer's maximum, its setting, or the fixed resistor; infinity for none; empty where not known. */
    public OptionalDouble addedNow() {
        if (chose("fit.left", "resistor-only")) {
            return ohms("hand.ohms");
        }
        if (ohms("setting.trimmer").isPresent()) {
            return ohms("setting.trimmer");
        }
        if (choice("solder.pair").isPresent()) {
            return trimmerTurned() ? OptionalDouble.empty() : ohms("trimmer.max");
        }
        return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }

    /** Whether the trimmer was set to a voltage after it was last proven at its maximum. */
    private boolean trimmerTurned() {
        List<Entry> entries = job.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            String field = fieldOf(entries.get(i).fact()).orElse("");
            if (SETTINGS.contains(field)) {
                return true;
            }
            if (AT_MAXIMUM.contains(field)) {
                return false;
            }
        }
        return false;
    }

    // ---- the way down
    // ------------------------------------------------------------------------------------------------

    /** Last output reading since the board was switched on, empty while it is off. */
    public OptionalDouble now() {
        if (power != State.Power.ON) {
            return OptionalDouble.empty();
        }
        List<Entry> entries = job.entries();
        for (int i = entries.size() - 1; i >= 0 && !(entries.get(i).fact() instanceof Fact.Power); i--) {
            if (entries.get(i).fact() instanceof Fact.Reading reading
                    && RailFields.isRail(reading.field())
                    && !RailFields.isDead(reading.field())) {
                return OptionalDouble.of(Math.abs(reading.value()));
            }
        }
        return OptionalDouble.empty();
    }

    /** Last reading of the output of any kind, power on or off, as read. */
    public OptionalDouble rail() {
        List<Entry> entries = job.entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).fact() instanceof Fact.Reading reading && RailFields.isRail(reading.field())) {
                return OptionalDouble.of(reading.value());
            }
        }
        return OptionalDouble.empty();
    }

    Descent descent() {
        return memo("descent", () -> Descent.of(this));
    }

    /** Size of one decrement: 1 % of stock or two counts of the meter, whichever is more, in whole 5 mV; a choice of this program, no standard. */
    public double stepVolts() {
        double stock = stock().orElse(0);
        double least = Math.max(0.01 * stock, 2 * voltResolution(stock));
        return Math.max(0.005, Math.round(least / 0.005) * 0.005);
    }

    public OptionalDouble lastGood() {
        return descent().lastGood();
    }

    /** Highest voltage at which a fault was seen. */
    public OptionalDouble fault() {
        return trials().stream().filter(Trial::fault).mapToDouble(Trial::volts).max();
    }

    /** Where the next decrement should land, in the step-down; empty when no way down is under way. */
    public OptionalDouble nextTarget() {
        return descent().ended() ? OptionalDouble.empty() : descent().target();
    }

    public List<Trial> trials() {
        return descent().trials();
    }

    public Optional<FailVoltage> failVoltage() {
        return memo("fail", () -> trials().isEmpty() ? Optional.empty() : attempt(() -> FailVoltage.of(trials())));
    }

    public Optional<MarginBudget> budget() {
        return memo(
                "budget",
                () -> budgetGiven()
                        .flatMap(given ->
                                recall.once(List.of("budget", given), () -> attempt(() -> MarginBudget.of(given)))));
    }

    private Optional<MarginBudget.Given> budgetGiven() {
        return failVoltage()
                .map(fail -> new MarginBudget.Given(
                        fail,
                        stock().orElseThrow(),
                        stepVolts(),
                        voltUncertainty(fail.fail()),
                        trials().stream().anyMatch(Trial::cold),
                        false,
                        CONFIDENCE,
                        COVERAGE));
    }

    /** What one more run down to the fault would be expected to buy; empty where no run ended in a fault. */
    public Optional<NextRun> nextRun() {
        return memo(
                "nextRun",
                () -> budgetGiven()
                        .flatMap(given -> recall.once(
                                List.of("nextRun", given),
                                () -> attempt(() -> NextRun.after(given)).flatMap(next -> next))));
    }

    /** The voltage chosen after the margin. */
    public OptionalDouble target() {
        return magnitude("target.volts");
    }

    // ---- the resistor
    // ------------------------------------------------------------------------------------------------

    /** No corner of a resistor's tolerance may come below this: what the budget recommends, or less where that was chosen with a reason. */
    public OptionalDouble resistorFloor() {
        if (target().isEmpty() || budget().isEmpty()) {
            return target();
        }
        return OptionalDouble.of(Math.min(target().getAsDouble(), budget().get().recommended()));
    }

    /**
     * What the meter leaves open about the leg, ohms, expanded: the trimmer's setting and the resistor are read by the same meter, so its
     * relative error at the setting is all that stays.
     */
    private double legUncertainty(Circuit circuit) {
        double setting = ohms("setting.trimmer").orElse(Double.NaN);
        return Double.isNaN(setting) ? 0 : 2 * circuit.leg() * ohmUncertainty(setting) / setting;
    }

    public List<Resistors.Candidate> resistors() {
        return memo("resistors", () -> {
            Optional<Series> series = choice("res.series").flatMap(id -> attempt(() -> Series.valueOf(id)));
            Optional<Double> tolerance =
                    choice("res.tolerance").flatMap(percent -> attempt(() -> Double.parseDouble(percent) / 100));
            Optional<Integer> most = choice("res.most").flatMap(count -> attempt(() -> Integer.valueOf(count)));
            if (circuit().isEmpty()
                    || resistorFloor().isEmpty()
                    || series.isEmpty()
                    || tolerance.isEmpty()
                    || most.isEmpty()) {
                return List.of();
            }
            double target = Math.max(
                    magnitude("soak.volts").orElse(target().getAsDouble()),
                    resistorFloor().getAsDouble());
            Resistors.Wish wish =
                    new Resistors.Wish(target, resistorFloor().getAsDouble(), tolerance.get(), most.get(), DRIFT);
            Circuit circuit = circuit().get();
            double doubt = legUncertainty(circuit);
            return recall.once(
                    List.of("resistors", circuit, doubt, wish, series.get()),
                    () -> attempt(() -> Resistors.choose(circuit, doubt, wish, series.get()))
                            .orElse(List.of()));
        });
    }

    public Optional<Resistors.Candidate> chosen() {
        return choice("res.pick")
                .flatMap(id -> resistors().stream()
                        .filter(candidate -> Choices.resistorId(candidate).equals(id))
                        .findFirst());
    }

    /** Voltage with the fixed resistor fitted, as read. */
    public OptionalDouble fitted() {
        return magnitude("fit.loaded").isPresent() ? magnitude("fit.loaded") : magnitude("fit.volts");
    }

    public Optional<Heat.Powers> powers() {
        return powers(0);
    }

    /** @param leakage share of the current that does not follow the voltage, 0 to 1 */
    Optional<Heat.Powers> powers(double leakage) {
        OptionalDouble after = fitted().isPresent() ? fitted() : target();
        if (anyEmpty(input(), stock(), after)) {
            return Optional.empty();
        }
        return attempt(() -> {
            Heat.Powers powers = Heat.powers(
                    input().getAsDouble(),
                    stock().getAsDouble(),
                    after.getAsDouble(),
                    number("load.current").orElse(Double.NaN),
                    leakage);
            return linear()
                    ? powers
                    : new Heat.Powers(
                            powers.loadBefore(), powers.loadAfter(), Double.NaN, Double.NaN, powers.relative(), false);
        });
    }

    /** A series-pass regulator, whose loss is (Vin − V)·I; the data sheets of switching and shunt ones give no dropout. */
    boolean linear() {
        return family().filter(family -> family.place() == Place.OUT_ADJ
                        || family.place() == Place.NEGATIVE_OUT_ADJ
                        || !Double.isNaN(family.dropout()))
                .isPresent();
    }

    // ---- helpers
    // -----------------------------------------------------------------------------------------------------

    private static boolean anyEmpty(OptionalDouble... values) {
        for (OptionalDouble value : values) {
            if (value.isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /**
     * A sum that readings far outside any circuit cannot satisfy is "not known", the step's own checks say why. So is an answer that was never
     * offered, which only a file made by hand can hold.
     */
    private static <T> Optional<T> attempt(Supplier<T> sum) {
        try {
            return Optional.of(sum.get());
        } catch (BadInput | IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    @SuppressWarnings("unchecked")
    private <T> T memo(String key, Supplier<T> sum) {
        if (!computed.containsKey(key)) {
            T value = sum.get();
            computed.put(key, value);
        }
        return (T) computed.get(key);
    }
}
