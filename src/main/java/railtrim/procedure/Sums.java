package railtrim.procedure;

import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import railtrim.circuit.Circuit;
import railtrim.procedure.Field.Expected;
import railtrim.quantity.Unit;

/**
 * The sum behind each expected range, as {@link Ranges} works it out. Ranges that are a fixed choice, such as a room’s temperature, have none:
 * their reason stands beside them.
 */
public final class Sums {
    private final Figures figures;
    private final Expected range;

    private Sums(Figures figures, Expected range) {
        this.figures = figures;
        this.range = range;
    }

    /** The sum behind what is expected of a field; empty where nothing is expected or nothing was worked out. */
    public static Optional<Sum> expected(Field field, Figures figures) {
        if (!(field instanceof Field.Number number) || number.again().isPresent()) {
            return Optional.empty();
        }
        return Judge.expected(figures, number)
                .map(range -> new Sums(figures, unsigned(range)))
                .flatMap(sums -> known(() -> sums.of(number.id())))
                .map(Working::done);
    }

    /** A file made by hand can hold an answer without what it rests on. Then there is no sum to show. */
    static Optional<Working> known(Supplier<Optional<Working>> sum) {
        try {
            return sum.get();
        } catch (NoSuchElementException missing) {
            return Optional.empty();
        }
    }

    /** Sums are in magnitudes; the meter shows a negative rail with its sign. */
    private static Expected unsigned(Expected range) {
        return range.high() < 0 ? new Expected(-range.high(), -range.low(), range.because()) : range;
    }

    private Optional<Working> of(String field) {
        return switch (field) {
            case "ref.volts" -> reference();
            case "leg.reversed" -> like(figures.readLeg(), 0.03, "sum.given.leg-read");
            case "other.ohms" -> otherLeg();
            case "base.rail" -> stock();
            case "stock.volts" ->
                figures.magnitude("base.rail").isPresent()
                        ? share("base.rail", "0.95", "1.02", "sum.given.rail-up")
                        : stock();
            case "aim.lowest" -> lowest();
            case "trimmer.max" -> trimmer("0.88 · P + 0.95 · S", "1.12 · P + 1.05 · S");
            case "proof.total", "down.max", "set.max" -> total("trimmer.max", "sum.given.trimmer-most");
            case "fit.total" -> total("hand.ohms", "sum.given.hand");
            case "smooth.low" -> lowEnd();
            case "setting.total" -> settingTotal();
            case "proof.other" -> ohmShare(figures.readOther(), "0.75", "1.1", "sum.given.other-read");
            case "fit.other" -> otherWhenFitted();
            case "proof.rail", "fit.rail" -> railOhms();
            case "first.volts", "first.loaded" -> first();
            case "down.start", "set.start" -> asStart();
            case "down.volts" -> down();
            case "target.volts" -> StepSums.recommended(figures);
            case "set.volts" -> set();
            case "soak.volts", "cold.volts" -> near(figures.magnitude("set.volts"), 0.015, "sum.given.set");
            case "fit.volts", "fit.loaded" -> fitted();
            case "setting.trimmer" -> settingTrimmer();
            case "hand.ohms" -> hand();
            case "fit.temp.chip" -> chipAfter();
            default -> Optional.empty();
        };
    }

    // ---- ends ----

    private Working ends(Working working, String low, String high, Unit unit) {
        working.line("low", low, range.low(), unit);
        working.line("high", high, range.high(), unit);
        if (figures.negative() && unit == Unit.VOLT) {
            working.from("sum.from.negative");
        }
        return working;
    }

    private static Working range() {
        return new Working("sum.what.range");
    }

    // ---- the board as it is ----

    private Optional<Working> reference() {
        return figures.family()
                .map(family -> ends(
                                range().given("Vmin", family.referenceLow(), Unit.VOLT, "sum.given.reference-low")
                                        .given("Vmax", family.referenceHigh(), Unit.VOLT, "sum.given.reference-high")
                                        .given(
                                                "u",
                                                figures.voltUncertainty(family.reference()),
                                                Unit.VOLT,
                                                "sum.given.u"),
                                "Vmin − 2 · u",
                                "Vmax + 2 · u",
                                Unit.VOLT)
                        .from("sum.from.sheet"));
    }

    private Optional<Working> otherLeg() {
        return figures.family()
                .filter(family -> !Double.isNaN(family.otherLegHigh()))
                .map(family -> ends(
                                range().given("Rmin", family.otherLegLow(), Unit.OHM, "sum.given.other-low")
                                        .given("Rmax", family.otherLegHigh(), Unit.OHM, "sum.given.other-high"),
                                "0.3 · Rmin",
                                "1.2 · Rmax",
                                Unit.OHM)
                        .from("sum.from.sheet-bent"));
    }

    private Optional<Working> stock() {
        Working working = range().given("Vref", figures.reference().orElseThrow(), Unit.VOLT, vref());
        working.given("Vmax", figures.number("rail.highest").orElseThrow(), Unit.VOLT, "sum.given.rail-highest");
        String top = "Vmax";
        if (figures.input().isPresent()) {
            working.given("Vin", figures.input().getAsDouble(), Unit.VOLT, "sum.given.input");
            top = "min(Vmax; Vin)";
        }
        return Optional.of(
                ends(working, "1.02 · Vref", "1.02 · " + top, Unit.VOLT).from("sum.from.between"));
    }

    private String vref() {
        return figures.magnitude("ref.volts").isPresent() ? "sum.given.vref-measured" : "sum.given.vref-sheet";
    }

    private Optional<Working> share(String field, String low, String high, String says) {
        return Optional.of(ends(
                        range().given("V", figures.magnitude(field).orElseThrow(), Unit.VOLT, says),
                        low + " · V",
                        high + " · V",
                        Unit.VOLT)
                .from("sum.from.choice"));
    }

    private Optional<Working> ohmShare(OptionalDouble ohms, String low, String high, String says) {
        return Optional.of(
                ends(range().given("R", ohms.orElseThrow(), Unit.OHM, says), low + " · R", high + " · R", Unit.OHM)
                        .from("sum.from.choice"));
    }

    private Optional<Working> otherWhenFitted() {
        double leg = figures.readLeg().orElseThrow();
        double hand = figures.ohms("hand.ohms").orElseThrow();
        Working working = range().given("Ro", figures.readOther().orElseThrow(), Unit.OHM, "sum.given.other-read")
                .given("R", leg, Unit.OHM, "sum.given.leg-read")
                .given("Ra", hand, Unit.OHM, "sum.given.hand")
                .line("Re", "R ∥ Ra", Ranges.parallel(leg, hand), Unit.OHM);
        return Optional.of(ends(working, "min(0.75; 0.9 · Re / R) · Ro", "1.1 · Ro", Unit.OHM)
                .from("sum.from.parallel"));
    }

    private Optional<Working> railOhms() {
        return Optional.of(ends(
                        range().given("R", figures.ohms("rail.ohms").orElseThrow(), Unit.OHM, "sum.given.rail-ohms"),
                        "0.7 · R − 0.3 Ω",
                        "1.4 · R + 0.5 Ω",
                        Unit.OHM)
                .from("sum.from.choice"));
    }

    /** The same thing read once more: a few per cent, and twice what the meter leaves open. */
    private Optional<Working> like(OptionalDouble ohms, double part, String says) {
        double value = ohms.orElseThrow();
        Working working = range().given("R", value, Unit.OHM, says);
        return Optional.of(around(working, "R", value, part).from("sum.from.choice"));
    }

    private Working around(Working working, String symbol, double value, double part) {
        double u = figures.ohmUncertainty(value);
        working.given("u", u, Unit.OHM, "sum.given.u-ohms");
        working.line("s", part + " · " + symbol + " + 2 · u", part * value + 2 * u, Unit.OHM);
        return ends(working, symbol + " − s", symbol + " + s", Unit.OHM);
    }

    // ---- side by side ----

    private Optional<Working> total(String added, String says) {
        double leg = figures.readLeg().orElseThrow();
        double across = figures.ohms(added).orElseThrow();
        double total = Ranges.parallel(leg, across);
        Working working = range().given("R", leg, Unit.OHM, "sum.given.leg-read")
                .given("Ra", across, Unit.OHM, says)
                .line("Re", "R ∥ Ra", total, Unit.OHM);
        return Optional.of(around(working, "Re", total, 0.02).from("sum.from.parallel"));
    }

    private Optional<Working> lowEnd() {
        double leg = figures.readLeg().orElseThrow();
        double least = figures.ohms("trimmer.min").orElseThrow();
        return Optional.of(ends(
                        range().given("R", leg, Unit.OHM, "sum.given.leg-read")
                                .given("Ra", least, Unit.OHM, "sum.given.trimmer-least")
                                .line("Re", "R ∥ Ra", Ranges.parallel(leg, least), Unit.OHM),
                        "0.9 · Re − 1 Ω",
                        "1.1 · Re + 2 Ω",
                        Unit.OHM)
                .from("sum.from.parallel"));
    }

    private Optional<Working> settingTotal() {
        return Optional.of(ends(
                        range().given("R", figures.readLeg().orElseThrow(), Unit.OHM, "sum.given.leg-read")
                                .given(
                                        "Rmost",
                                        figures.ohms("trimmer.max").orElseThrow(),
                                        Unit.OHM,
                                        "sum.given.trimmer-most")
                                .given(
                                        "Rleast",
                                        figures.ohms("trimmer.min").orElseThrow(),
                                        Unit.OHM,
                                        "sum.given.trimmer-least"),
                        "0.97 · (R ∥ Rleast)",
                        "1.03 · (R ∥ Rmost)",
                        Unit.OHM)
                .from("sum.from.parallel"));
    }

    // ---- trimmer and aim ----

    private Optional<Working> lowest() {
        Working working = range().given("Vref", figures.reference().orElseThrow(), Unit.VOLT, vref())
                .given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock")
                .given("step", figures.stepVolts(), Unit.VOLT, "sum.given.step");
        return Optional.of(ends(working, "max(1.05 · Vref; 0.6 · Vstock)", "Vstock − 2 · step", Unit.VOLT)
                .from("sum.from.choice"));
    }

    private Optional<Working> trimmer(String low, String high) {
        return figures.trimmerPicked().map(candidate -> {
            double stop = figures.chose("trimmer.stop", "fitted") ? candidate.stopResistor() : 0;
            return ends(
                            range().given("P", candidate.total(), Unit.OHM, "sum.given.trimmer-printed")
                                    .given("S", stop, Unit.OHM, "sum.given.stop-resistor"),
                            low,
                            high,
                            Unit.OHM)
                    .from("sum.from.trimmer");
        });
    }

    // ---- voltages by the law ----

    /** What one meter on one range repeats to; see {@link Ranges#repeat}. */
    private Working repeat(Working working) {
        return working.given("r", Ranges.repeat(figures), Unit.VOLT, "sum.given.repeat");
    }

    /** The same for a reading that may lie on another range than stock. */
    private Working repeat(Working working, double volts) {
        double both = Ranges.repeat(figures, volts);
        return both == Ranges.repeat(figures)
                ? repeat(working)
                : working.given("r", both, Unit.VOLT, "sum.given.repeat-ranges");
    }

    private Optional<Working> first() {
        double added = figures.ohms("trimmer.max").orElseThrow();
        Circuit least = figures.bestCaseCircuit().orElseThrow();
        Circuit most = figures.worstCircuit().orElseThrow();
        Working working = new Law(figures)
                .givens(range(), vref())
                .given("Ra", added, Unit.OHM, "sum.given.trimmer-most")
                .given("Rlow", least.leg(), Unit.OHM, "sum.given.leg-low")
                .given("Rhigh", most.leg(), Unit.OHM, "sum.given.leg-high");
        repeat(working, most.magnitude(added)).given("top", Ranges.ceiling(figures), Unit.VOLT, "sum.given.ceiling");
        working.line("Vlow", "Vref + (Vstock − Vref) / Rhigh · (Rhigh ∥ Ra)", most.magnitude(added), Unit.VOLT);
        working.line("Vhigh", "Vref + (Vstock − Vref) / Rlow · (Rlow ∥ Ra)", least.magnitude(added), Unit.VOLT);
        return Optional.of(ends(working, "Vlow − 2 · r", "min(Vhigh + 2 · r; top)", Unit.VOLT)
                .from("sum.from.law"));
    }

    private Optional<Working> asStart() {
        double start = figures.start().orElseThrow();
        Working working = repeat(range().given(
                                "V",
                                start,
                                Unit.VOLT,
                                figures.magnitude("first.loaded").isPresent()
                                        ? "sum.given.start-read"
                                        : "sum.given.start-foretold")
                        .given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock"))
                .line("s", "max(0.015 · V; 2 · r)", Math.max(0.015 * start, 2 * Ranges.repeat(figures)), Unit.VOLT);
        return Optional.of(
                ends(working, "V − s", "min(V + s; Vstock + r / 2)", Unit.VOLT).from("sum.from.choice"));
    }

    private Optional<Working> near(OptionalDouble volts, double part, String says) {
        double value = volts.orElseThrow();
        Working working = range().given("V", value, Unit.VOLT, says);
        return Optional.of(beside(working, value, part).from("sum.from.choice"));
    }

    private Working beside(Working working, double value, double part) {
        repeat(working).given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock");
        working.line(
                "s", "max(" + part + " · V; 2 · r)", Math.max(part * value, 2 * Ranges.repeat(figures)), Unit.VOLT);
        return ends(working, "V − s", "min(V + s; Vstock + r / 2)", Unit.VOLT);
    }

    private Optional<Working> fitted() {
        double hand = figures.ohms("hand.ohms").orElseThrow();
        Working working = new Law(figures).voltage(range(), hand, "sum.given.hand");
        double volts = figures.circuit().orElseThrow().magnitude(hand);
        return Optional.of(beside(working, volts, 0.01).from("sum.from.law"));
    }

    private Optional<Working> down() {
        double target = figures.descent().target().orElseThrow();
        double floor = figures.floor().orElseThrow();
        double step = figures.descent().step();
        double slack = Math.max(0.75 * step, figures.voltResolution(target));
        Working working = range().given("target", target, Unit.VOLT, "sum.given.next")
                .given("floor", floor, Unit.VOLT, "sum.given.floor")
                .given("step", step, Unit.VOLT, "sum.given.step")
                .given("whole", figures.stepVolts(), Unit.VOLT, "sum.given.whole-step")
                .given("dt", figures.voltResolution(target), Unit.VOLT, "sum.given.digit")
                .given("df", figures.voltResolution(floor), Unit.VOLT, "sum.given.digit")
                .line("s", "max(0.75 · step; dt)", slack, Unit.VOLT)
                .line("f", "max(s; 0.75 · whole)", Math.max(slack, 0.75 * figures.stepVolts()), Unit.VOLT);
        return Optional.of(ends(working, "max(floor − df; target − f)", "target + s", Unit.VOLT)
                .from("sum.from.choice"));
    }

    private Optional<Working> set() {
        double target = figures.target().orElseThrow();
        Working working = range().given("target", target, Unit.VOLT, "sum.given.target")
                .given("step", figures.stepVolts(), Unit.VOLT, "sum.given.step")
                .given("d", figures.voltResolution(target), Unit.VOLT, "sum.given.digit");
        return Optional.of(ends(working, "target − d / 2", "target + max(0.5 · step; 2 · d)", Unit.VOLT)
                .from("sum.from.choice"));
    }

    /** The law the other way round: ohms for a voltage. */
    private Optional<Working> settingTrimmer() {
        double volts = figures.magnitude("soak.volts").orElseThrow();
        double stock = figures.stock().orElseThrow();
        double reference = figures.reference().orElseThrow();
        double slack = 2 * Ranges.repeat(figures, volts);
        double low = Math.max(volts - slack, reference * 1.001);
        double high = Math.min(volts + slack, stock * 0.9999);
        Working working = new Law(figures)
                .givens(range(), vref())
                .given("V", volts, Unit.VOLT, "sum.given.soaked")
                .given("Rlow", figures.bestCaseCircuit().orElseThrow().leg(), Unit.OHM, "sum.given.leg-low")
                .given("Rhigh", figures.worstCircuit().orElseThrow().leg(), Unit.OHM, "sum.given.leg-high");
        repeat(working, volts)
                .line("V1", "max(V − 2 · r; 1.001 · Vref)", low, Unit.VOLT)
                .line("V2", "min(V + 2 · r; 0.9999 · Vstock)", high, Unit.VOLT);
        return Optional.of(ends(
                        working,
                        "0.95 · Rlow · (V1 − Vref) / (Vstock − V1)",
                        "1.05 · Rhigh · (V2 − Vref) / (Vstock − V2)",
                        Unit.OHM)
                .from("sum.from.law-back"));
    }

    private Optional<Working> hand() {
        return figures.chosen().map(candidate -> {
            double tolerance = 100 * figures.tolerance().orElse(0.05);
            double u = figures.ohmUncertainty(candidate.added());
            Working working = range().given("Ra", candidate.added(), Unit.OHM, "sum.given.chosen")
                    .given("t", tolerance, Unit.PERCENT, "sum.given.tolerance")
                    .given("u", u, Unit.OHM, "sum.given.u-ohms")
                    .line("s", "t · Ra + 2 · u", tolerance / 100 * candidate.added() + 2 * u, Unit.OHM);
            return ends(working, "Ra − s", "Ra + s", Unit.OHM).from("sum.from.tolerance");
        });
    }

    private Optional<Working> chipAfter() {
        OptionalDouble before = figures.number("temp.chip");
        return before.isEmpty()
                ? Optional.empty()
                : Optional.of(range().given("T", before.getAsDouble(), Unit.CELSIUS, "sum.given.chip-before")
                        .line("high", "T + 3 °C", range.high(), Unit.CELSIUS)
                        .from("sum.from.not-warmer"));
    }

    /** The one law with its givens, shared by the sums that foretell a voltage. */
    static final class Law {
        private final Figures figures;

        Law(Figures figures) {
            this.figures = figures;
        }

        Working givens(Working working, String vref) {
            return working.given("Vref", figures.reference().orElseThrow(), Unit.VOLT, vref)
                    .given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock");
        }

        /** The line for V, with {@code added} ohms across the leg of the best estimate. */
        Working voltage(Working working, double added, String says) {
            Circuit circuit = figures.circuit().orElseThrow();
            return working.given("Vref", circuit.reference(), Unit.VOLT, "sum.given.vref")
                    .given("R", circuit.leg(), Unit.OHM, "sum.given.leg")
                    .given("x", circuit.legCurrent(), Unit.AMPERE, "sum.given.x")
                    .given("Ra", added, Unit.OHM, says)
                    .line("Re", "R ∥ Ra", circuit.total(added), Unit.OHM)
                    .line("V", "Vref + x · Re", circuit.magnitude(added), Unit.VOLT);
        }
    }
}
