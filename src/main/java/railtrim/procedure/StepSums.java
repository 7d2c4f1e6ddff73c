package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import railtrim.circuit.Circuit;
import railtrim.circuit.LineSolve;
import railtrim.heat.Heat;
import railtrim.parts.Resistors;
import railtrim.quantity.Unit;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.Trial;

/** The sums behind the numbers a step shows besides its ranges: in its findings, its marks and its picture. */
public final class StepSums {
    private StepSums() {}

    /** In the order in which they build on one another; empty where the step works nothing out yet. */
    public static List<Sum> at(String step, Figures figures) {
        try {
            return workings(step, figures)
                    .flatMap(Optional::stream)
                    .map(Working::done)
                    .toList();
        } catch (NoSuchElementException missing) {
            // A file made by hand can hold an answer without what it rests on.
            return List.of();
        }
    }

    private static Stream<Optional<Working>> workings(String step, Figures figures) {
        return switch (step) {
            case "agree" -> Stream.of(current(figures), other(figures));
            case "aim" -> Stream.of(step(figures));
            case "ends", "solder", "first.on" -> Stream.of(start(figures));
            case "first.load" -> Stream.of(legFromTwo(figures));
            case "warm" -> Stream.of(heatBefore(figures));
            case "down.on", "down.set", "down.watch" -> Stream.of(step(figures), next(figures));
            case "budget" -> Stream.of(recommended(figures), heatAfter(figures));
            case "set.down", "fit.soak", "record" -> Stream.of(heatAfter(figures));
            case "choose" -> Stream.of(wanted(figures), chosen(figures));
            case "hand", "fit.on" -> Stream.of(inHand(figures));
            default -> Stream.empty();
        };
    }

    private static boolean known(OptionalDouble... values) {
        return Stream.of(values).allMatch(OptionalDouble::isPresent);
    }

    // ---- the board ----

    private static Optional<Working> current(Figures figures) {
        return figures.circuit()
                .filter(circuit -> figures.agreement().isPresent())
                .map(circuit -> new Working("sum.what.current")
                        .given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock")
                        .given("Vref", circuit.reference(), Unit.VOLT, "sum.given.vref")
                        .given("R", circuit.leg(), Unit.OHM, "sum.given.leg")
                        .line("x", "(Vstock − Vref) / R", circuit.legCurrent(), Unit.AMPERE)
                        .from("sum.from.law"));
    }

    private static Optional<Working> other(Figures figures) {
        return figures.circuit()
                .filter(circuit -> figures.agreement().isPresent() && Double.isFinite(circuit.other()))
                .map(circuit -> new Working("sum.what.other")
                        .given("Vref", circuit.reference(), Unit.VOLT, "sum.given.vref")
                        .given("x", circuit.legCurrent(), Unit.AMPERE, "sum.given.x")
                        .given("Ib", circuit.bias(), Unit.AMPERE, "sum.given.bias")
                        .line("Rother", "Vref / (x − Ib)", circuit.other(), Unit.OHM)
                        .from("sum.from.law"));
    }

    private static Optional<Working> step(Figures figures) {
        return figures.stock().stream()
                .mapToObj(stock -> new Working("sum.what.step")
                        .given("Vstock", stock, Unit.VOLT, "sum.given.stock")
                        .given("d", figures.voltResolution(stock), Unit.VOLT, "sum.given.digit")
                        .line("step", "to5mV(max(0.01 · Vstock; 2 · d))", figures.stepVolts(), Unit.VOLT)
                        .from("sum.from.step"))
                .findFirst();
    }

    private static Optional<Working> start(Figures figures) {
        OptionalDouble most = figures.ohms("trimmer.max");
        if (most.isEmpty()
                || figures.circuit().isEmpty()
                || figures.number("first.loaded").isPresent()) {
            return Optional.empty();
        }
        return Optional.of(new Sums.Law(figures)
                .voltage(new Working("sum.what.start"), most.getAsDouble(), "sum.given.trimmer-most")
                .from("sum.from.law"));
    }

    /** Two points make the line; with more of them the best line is laid through all, which is no sum for one row. */
    private static Optional<Working> legFromTwo(Figures figures) {
        List<LineSolve.Point> points = figures.points();
        if (points.size() != 2 || figures.solution().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Working("sum.what.leg")
                .given("Vref", figures.reference().orElseThrow(), Unit.VOLT, "sum.given.vref")
                .given("Vstock", points.get(0).volts(), Unit.VOLT, "sum.given.stock")
                .given("V", points.get(1).volts(), Unit.VOLT, "sum.given.start-read")
                .given("Ra", points.get(1).added(), Unit.OHM, "sum.given.trimmer-most")
                .line(
                        "R",
                        "Ra · (Vstock − V) / (V − Vref)",
                        figures.solution().get().leg(),
                        Unit.OHM)
                .from("sum.from.line"));
    }

    // ---- the way down and the margin ----

    private static Optional<Working> next(Figures figures) {
        OptionalDouble target = figures.nextTarget();
        if (target.isEmpty() || figures.floor().isEmpty()) {
            return Optional.empty();
        }
        Working working = new Working("sum.what.next")
                .given("floor", figures.floor().getAsDouble(), Unit.VOLT, "sum.given.floor")
                .given(
                        "step",
                        figures.descent().position().isPresent()
                                ? figures.descent().step()
                                : figures.stepVolts(),
                        Unit.VOLT,
                        "sum.given.step");
        String aim = from(figures, working);
        return Optional.of(working.line("target", "max(floor; " + aim + ")", target.getAsDouble(), Unit.VOLT)
                .from("sum.from.next"));
    }

    /** One step below where it stands; from the trimmer’s maximum, back to what was good before. */
    private static String from(Figures figures, Working working) {
        OptionalDouble position = figures.descent().position();
        if (position.isPresent()) {
            working.given("V", position.getAsDouble(), Unit.VOLT, "sum.given.held");
            return "V − step";
        }
        working.given("Vstart", figures.start().orElse(figures.stock().orElseThrow()), Unit.VOLT, "sum.given.start");
        OptionalDouble good = figures.lastGood();
        if (good.isPresent()) {
            working.given("V", good.getAsDouble(), Unit.VOLT, "sum.given.held");
            return "min(Vstart − step; V)";
        }
        OptionalDouble fault = figures.trials().stream()
                .filter(Trial::fault)
                .mapToDouble(Trial::volts)
                .max();
        if (fault.isEmpty()) {
            return "Vstart − step";
        }
        working.given("Vfault", fault.getAsDouble(), Unit.VOLT, "sum.given.fault");
        return "min(Vstart − step; Vfault + step)";
    }

    static Optional<Working> recommended(Figures figures) {
        return figures.budget().map(budget -> {
            Working working =
                    new Working("sum.what.recommended").given("fail", budget.fail(), Unit.VOLT, "sum.given.fail");
            List<String> parts = new ArrayList<>();
            for (MarginBudget.Line line : budget.lines()) {
                working.given(line.id(), line.volts(), Unit.VOLT, line.basis());
                parts.add(line.id());
            }
            return working.line("margin", String.join(" + ", parts), budget.sum(), Unit.VOLT)
                    .line("least", "up5mV(fail + margin)", budget.recommended(), Unit.VOLT)
                    .from("sum.from.margin");
        });
    }

    // ---- the resistor ----

    private static Optional<Working> wanted(Figures figures) {
        OptionalDouble soaked = figures.magnitude("soak.volts");
        if (figures.circuit().isEmpty() || !known(soaked, figures.resistorFloor())) {
            return Optional.empty();
        }
        Circuit circuit = figures.circuit().get();
        double target = Math.max(soaked.getAsDouble(), figures.resistorFloor().getAsDouble());
        if (target <= circuit.reference() || target >= circuit.stock()) {
            return Optional.empty();
        }
        return Optional.of(new Working("sum.what.wanted")
                .given("Vref", circuit.reference(), Unit.VOLT, "sum.given.vref")
                .given("Vstock", circuit.stock(), Unit.VOLT, "sum.given.stock-line")
                .given("V", target, Unit.VOLT, "sum.given.target-soaked")
                .given("R", circuit.leg(), Unit.OHM, "sum.given.leg")
                .line("Ra", "R · (V − Vref) / (Vstock − V)", circuit.addedFor(target), Unit.OHM)
                .from("sum.from.law-back"));
    }

    private static Optional<Working> chosen(Figures figures) {
        Optional<Resistors.Candidate> chosen = figures.chosen();
        return chosen.flatMap(candidate -> figures.circuit()
                .map(circuit -> new Sums.Law(figures)
                        .voltage(new Working("sum.what.chosen"), candidate.added(), "sum.given.chosen")
                        .from("sum.from.law")
                        .from("sum.from.corners")));
    }

    private static Optional<Working> inHand(Figures figures) {
        OptionalDouble hand = figures.ohms("hand.ohms");
        return hand.isPresent() && figures.circuit().isPresent()
                ? Optional.of(new Sums.Law(figures)
                        .voltage(new Working("sum.what.in-hand"), hand.getAsDouble(), "sum.given.hand")
                        .from("sum.from.law"))
                : Optional.empty();
    }

    // ---- heat ----

    private static Optional<Working> heatBefore(Figures figures) {
        OptionalDouble amperes = figures.number("load.current");
        if (!known(amperes, figures.stock(), figures.input()) || !figures.linear()) {
            return Optional.empty();
        }
        double stock = figures.stock().getAsDouble();
        double input = figures.input().getAsDouble();
        return Optional.of(heatGivens(figures, new Working("sum.what.heat"))
                .line("chip", "Vstock · I", stock * amperes.getAsDouble(), Unit.WATT)
                .line("regulator", "(Vin − Vstock) · I", (input - stock) * amperes.getAsDouble(), Unit.WATT)
                .from("sum.from.heat"));
    }

    private static Working heatGivens(Figures figures, Working working) {
        return working.given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock")
                .given("Vin", figures.input().orElseThrow(), Unit.VOLT, "sum.given.input")
                .given("I", figures.number("load.current").orElseThrow(), Unit.AMPERE, "sum.given.amperes");
    }

    /** With a current that follows the voltage, as that of a digital chip at one clock. */
    private static Optional<Working> heatAfter(Figures figures) {
        OptionalDouble after = figures.fitted().isPresent() ? figures.fitted() : figures.target();
        Optional<Heat.Powers> powers = figures.powers();
        if (powers.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        if (powers.get().relative()) {
            return Optional.of(new Working("sum.what.heat-share")
                    .given("Vstock", figures.stock().orElseThrow(), Unit.VOLT, "sum.given.stock")
                    .given("V", after.getAsDouble(), Unit.VOLT, "sum.given.after")
                    .line(
                            "share",
                            "100 % · (V / Vstock) · (V / Vstock)",
                            100 * powers.get().loadAfter(),
                            Unit.PERCENT)
                    .from("sum.from.heat"));
        }
        Working working = heatGivens(figures, new Working("sum.what.heat-after"))
                .given("V", after.getAsDouble(), Unit.VOLT, "sum.given.after")
                .line("chipBefore", "Vstock · I", powers.get().loadBefore(), Unit.WATT)
                .line("chipAfter", "V · I · V / Vstock", powers.get().loadAfter(), Unit.WATT);
        if (figures.linear()) {
            working.line("regulatorBefore", "(Vin − Vstock) · I", powers.get().regulatorBefore(), Unit.WATT)
                    .line(
                            "regulatorAfter",
                            "(Vin − V) · I · V / Vstock",
                            powers.get().regulatorAfter(),
                            Unit.WATT);
        }
        return Optional.of(working.from("sum.from.heat"));
    }
}
