package railtrim.procedure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import railtrim.circuit.Circuit;
import railtrim.circuit.InCircuit;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.heat.Heat;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.parts.Resistors;
import railtrim.parts.Trimmers;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Meter;
import railtrim.quantity.Propagation;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.Trial;

/**
 * Everything the facts so far say about the circuit, computed afresh; what is not known yet is empty. Voltages are magnitudes unless a
 * method says "as read".
 */
public final class Figures {
    private static final Pattern PERCENT = Pattern.compile("\\d{1,2}(\\.\\d{1,3})?");

    private final Job job;
    private final Map<String, Entry> live = new HashMap<>();
    private final Map<String, Object> computed = new HashMap<>();
    private final Recall recall;
    private final BoardFigures board;
    private final LineFigures line;
    private final TrimmerFigures trimmer;
    private final MarginFigures margin;
    private final ResistorFigures resistor;
    private State.Power power = State.Power.OFF;

    Figures(Job job, RegulatorFamilies families, Recall recall) {
        this.job = job;
        this.recall = recall;
        this.board = new BoardFigures(this, families, recall);
        this.line = new LineFigures(this, recall);
        this.trimmer = new TrimmerFigures(this, recall);
        this.margin = new MarginFigures(this, recall);
        this.resistor = new ResistorFigures(this, recall);
    }

    /** Takes in the facts of one more step that count; what was computed before may change by them. */
    void take(List<Entry> entries) {
        if (entries.isEmpty()) {
            return;
        }
        // The way down is read from all facts, by the stock voltage, the floor and the start: once those are taken in
        // it stays.
        Object way = live.containsKey("first.loaded") ? computed.get("descent") : null;
        computed.clear();
        if (way != null) {
            computed.put("descent", way);
        }
        for (Entry entry : entries) {
            String field = answered(entry.fact());
            if (field != null) {
                live.put(field, entry);
            }
        }
    }

    void power(State.Power believed) {
        power = believed;
    }

    static Optional<String> fieldOf(Fact fact) {
        return Optional.ofNullable(answered(fact));
    }

    /** The field a fact answers, null for none; asked of every fact of a job after each of them. */
    static String answered(Fact fact) {
        if (fact instanceof Fact.Reading reading) {
            return reading.field();
        }
        if (fact instanceof Fact.Choice choice) {
            return choice.field();
        }
        if (fact instanceof Fact.Note note) {
            return note.field();
        }
        return fact instanceof Fact.Power change ? change.step() + ".switch" : null;
    }

    // what was written

    /** The fact that answers a field; null for none. */
    Entry latest(String field) {
        return live.get(field);
    }

    Optional<Entry> entry(String field) {
        return Optional.ofNullable(latest(field));
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

    public boolean chose(String field, String option) {
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

    /** Sequence of the last answer to a question, whether it still counts or not; 0 for none. */
    long lastOf(String field) {
        List<Entry> all = history(field);
        return all.isEmpty() ? 0 : all.get(all.size() - 1).sequence();
    }

    // the board

    public Meter meter() {
        return board.meter();
    }

    /**
     * Accuracy of the range a voltage was read on, as its last digit tells where the ranges of the meter were copied from its manual; of a voltage that was
     * not read, of the smallest range that holds it.
     */
    Accuracy voltAccuracy(double volts) {
        OptionalDouble lastDigit = lastDigit(volts, Unit.VOLT);
        return lastDigit.isPresent() ? meter().voltsAt(volts, lastDigit.getAsDouble()) : meter().voltsAt(volts);
    }

    private Accuracy ohmAccuracy(double ohms) {
        double asRead = ohms + number("meter.zero").orElse(0);
        OptionalDouble lastDigit = lastDigit(asRead, Unit.OHM);
        return lastDigit.isPresent() ? meter().ohmsAt(asRead, lastDigit.getAsDouble()) : meter().ohmsAt(ohms);
    }

    private OptionalDouble lastDigit(double asRead, Unit unit) {
        return MeterRows.chosen(this) ? recall.lastDigits(job).of(asRead, unit) : OptionalDouble.empty();
    }

    /** Accuracy of the range a reading in volts or ohms was taken on. */
    public Accuracy accuracy(Fact.Reading reading) {
        OptionalDouble lastDigit = lastDigit(reading.value(), reading.unit());
        return meter().at(reading.unit(), reading.value(), lastDigit.orElse(0));
    }

    /** Whether a reading with this last digit was taken before on a larger range than it needs. */
    boolean onLargerRange(Unit unit, double lastDigit) {
        return live.values().stream()
                .map(Entry::fact)
                .filter(Fact.Reading.class::isInstance)
                .map(Fact.Reading.class::cast)
                .filter(reading -> reading.unit() == unit)
                .anyMatch(reading -> {
                    Accuracy smallest = meter().at(unit, reading.value());
                    Accuracy taken = accuracy(reading);
                    return taken.endsWith(lastDigit) && !smallest.endsWith(lastDigit);
                });
    }

    double voltUncertainty(double volts) {
        return voltAccuracy(volts).standardUncertainty(volts);
    }

    double voltResolution(double volts) {
        return voltAccuracy(volts).resolution();
    }

    double ohmUncertainty(double ohms) {
        return ohmAccuracy(ohms).standardUncertainty(ohms);
    }

    public Optional<RegulatorFamily> family() {
        return board.family();
    }

    public Optional<Place> place() {
        return family().map(RegulatorFamily::place);
    }

    /** How the meter shows this rail; before the regulator is known, as a positive one. */
    public RailSign sign() {
        return new RailSign(negative());
    }

    /** How a value typed into a field is shown: a voltage of the rail that was typed without a sign gets the rail's. */
    public RailSign sign(String field) {
        return new RailSign(negative() && RailFields.isWished(field));
    }

    public boolean negative() {
        return place().filter(Place::negative).isPresent();
    }

    public Optional<Outline> outline() {
        return choice("reg.outline").flatMap(id -> attempt(() -> Outline.of(id)));
    }

    /** Roles given so far, pin 1 first, then the tab where the outline has one; empty where not given yet. */
    public List<Optional<PinRole>> pins() {
        return board.pins();
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
        return board.agreement();
    }

    double bias() {
        return family().map(RegulatorFamily::biasOrZero).orElse(0.0);
    }

    // the law

    /** Readings that lie on the straight line, stock first, all under the named load. */
    public List<LineSolve.Point> points() {
        return line.points();
    }

    /** What each of {@link #points} is: "stock", "first", "soak" or "fitted". */
    List<String> pointNames() {
        return line.pointNames();
    }

    public Optional<LineSolve.Solution> solution() {
        return line.solution();
    }

    /** Whether the readings lie on one line, and which to measure again if not. */
    public LineCheck lineCheck() {
        return line.lineCheck();
    }

    /** The leg by the three resistances read on the board alone, ohms; empty where they cannot tell it, as with a load of a few ohms. */
    Optional<Propagation.Result> legByOhms() {
        return line.legByOhms();
    }

    /** The true leg with what the readings leave open, ohms; empty with fewer than two. */
    public Optional<Propagation.Result> legDoubt() {
        return line.legDoubt();
    }

    Optional<Propagation.Result> legDoubt(List<LineSolve.Point> points) {
        return line.legDoubt(points);
    }

    /** The voltage that so many ohms across the leg will give, by the line through the readings, volts; empty with fewer than two. */
    Optional<Propagation.Result> voltageDoubt(double added) {
        return line.voltageDoubt(added);
    }

    /** Best estimate of the true circuit so far: solved from the trimmer's setting where that is known, else from the readings on the board. */
    public Optional<Circuit> circuit() {
        return line.circuit();
    }

    /** The circuit with the largest true leg that the readings allow: what the start voltage is judged by. */
    Optional<Circuit> worstCircuit() {
        return line.worstCircuit();
    }

    Optional<Circuit> bestCaseCircuit() {
        return line.bestCaseCircuit();
    }

    /**
     * What each slip at the divider and at the pins would do, worst first; empty until the circuit is known. Before anything is soldered the
     * trimmer in hand counts as the part to be added.
     */
    public List<Slip> slips() {
        return line.slips();
    }

    // the trimmer

    public List<Trimmers.Candidate> trimmers() {
        return trimmer.trimmers();
    }

    public Optional<Trimmers.Candidate> trimmerPicked() {
        return trimmer.trimmerPicked();
    }

    public Optional<Trimmers.InHand> trimmerInHand() {
        return trimmer.trimmerInHand();
    }

    /** Predicted voltage at power-up with the trimmer in hand at its maximum; once it was read, that reading. */
    public OptionalDouble start() {
        return trimmer.start();
    }

    /** Ohms across the leg now: the trimmer's maximum, its setting, or the fixed resistor; infinity for none; empty where not known. */
    public OptionalDouble addedNow() {
        return trimmer.addedNow();
    }

    // the way down

    /** Last output reading since the board was switched on, empty while it is off. */
    public OptionalDouble now() {
        return margin.now();
    }

    /** Last reading of the output of any kind, power on or off, as read; empty while there is none since the board was last switched on. */
    public OptionalDouble rail() {
        return margin.rail();
    }

    Descent descent() {
        return memo("descent", () -> Descent.of(this, recall));
    }

    /** Size of one decrement: 1 % of stock or two counts of the meter, whichever is more, in whole 5 mV; a choice of this program, no standard. */
    public double stepVolts() {
        return margin.stepVolts();
    }

    /** Size of one decrement where the fault is measured once more: 0.3 % of stock or two counts of the meter; a choice of this program. */
    double fineStepVolts() {
        return margin.fineStepVolts();
    }

    public OptionalDouble lastGood() {
        return descent().lastGood();
    }

    /**
     * The last good voltage, for pictures: while the way down goes on, and after it where it lies above the highest fault. Below that another run failed,
     * and “good” would be believed.
     */
    public OptionalDouble goodToShow() {
        OptionalDouble good = lastGood();
        OptionalDouble fault = fault();
        boolean below = good.isPresent() && fault.isPresent() && good.getAsDouble() <= fault.getAsDouble();
        return below && descent().ended() ? OptionalDouble.empty() : good;
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
        return margin.failVoltage();
    }

    public Optional<MarginBudget> budget() {
        return margin.budget();
    }

    /** What one more run down to the fault would be expected to buy; empty where no run ended in a fault. */
    public Optional<NextRun> nextRun() {
        return margin.nextRun();
    }

    /** The voltage chosen after the margin. */
    public OptionalDouble target() {
        return magnitude("target.volts");
    }

    // the resistor

    /** No corner of a resistor's tolerance may come below this: what the budget recommends, or less where that was chosen with a reason. */
    public OptionalDouble resistorFloor() {
        return resistor.resistorFloor();
    }

    /** What the resistors are ranked by, volts; there is one as soon as there is a {@link #resistorFloor}. */
    double resistorTarget() {
        return resistor.resistorTarget();
    }

    public List<Resistors.Candidate> resistors() {
        return resistor.resistors();
    }

    public Optional<Resistors.Candidate> chosen() {
        return resistor.chosen();
    }

    /** Tolerance of the resistors to choose from, a fraction; empty also for an answer that was never offered, which only a file made by hand can hold. */
    public Optional<Double> tolerance() {
        return choice("res.tolerance")
                .filter(percent -> PERCENT.matcher(percent).matches())
                .map(percent -> Double.parseDouble(percent) / 100);
    }

    /** Voltage with the fixed resistor fitted, as read. */
    public OptionalDouble fitted() {
        return resistor.fitted();
    }

    public Optional<Heat.Powers> powers() {
        return powers(0);
    }

    /** @param leakage share of the current that does not follow the voltage, 0 to 1 */
    Optional<Heat.Powers> powers(double leakage) {
        return resistor.powers(leakage);
    }

    /** A series-pass regulator, whose loss is (Vin − V)·I; the data sheets of switching and shunt ones give no dropout. */
    boolean linear() {
        return resistor.linear();
    }

    // helpers

    static boolean anyEmpty(OptionalDouble... values) {
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
    static <T> Optional<T> attempt(Supplier<T> sum) {
        try {
            return Optional.of(sum.get());
        } catch (BadInput | IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    @SuppressWarnings("unchecked")
    <T> T memo(String key, Supplier<T> sum) {
        if (!computed.containsKey(key)) {
            T value = sum.get();
            computed.put(key, value);
        }
        return (T) computed.get(key);
    }
}
