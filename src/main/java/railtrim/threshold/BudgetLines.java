package railtrim.threshold;

import java.util.List;
import java.util.Locale;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;
import railtrim.threshold.MarginBudget.Given;
import railtrim.threshold.MarginBudget.Line;

/** The lines of the margin budget, in the order a person would think of them. */
final class BudgetLines {
    /** Below this number of runs the table factor (37 for two runs) says how little they tell, not how far the board scatters. */
    private static final int ENOUGH_RUNS = 5;

    /** With fewer runs, at least this many times their spread: about the table factor of many runs with something to spare, our own choice. */
    private static final double FEW_RUNS_FACTOR = 4;

    private final Given given;
    private final FailVoltage fail;

    BudgetLines(Given given) {
        this.given = given;
        this.fail = given.fail();
    }

    List<Line> all() {
        return List.of(step(), spread(), meter(), drift(), load(), cold(), ageing());
    }

    /** The threshold lies somewhere between fault and last good. Counting from the last good voltage leaves no gap; all other lines come on top. */
    private Line step() {
        if (!fail.faultSeen()) {
            return new Line(
                    "step",
                    0,
                    true,
                    Message.of("threshold.basis.step.no-fault", given.sign().volts(fail.fail())));
        }
        double bracket = fail.bracketHigh() - fail.fail();
        if (bracket > 0) {
            return new Line(
                    "step",
                    bracket,
                    true,
                    Message.of(
                            "threshold.basis.step.bracket",
                            given.sign().volts(fail.fail()),
                            given.sign().volts(fail.bracketHigh())));
        }
        // Nothing was good above the fault: the last decrement is all that is known.
        return new Line(
                "step",
                given.step(),
                true,
                Message.of("threshold.basis.step.decrement", Display.millivolts(given.step())));
    }

    /**
     * How far later runs may fail above what was seen so far. From five runs on, the one-sided tolerance bound, counted from their mean; what the step line
     * holds already is not counted twice. With two to four runs that bound is mostly ignorance, so it is held to our allowance, or to four times
     * their spread where that is more. Never less than the allowance shared among the runs: few runs can agree by chance.
     */
    private Line spread() {
        double allowance = MarginBudget.SPREAD_ALLOWANCE * given.stock();
        if (fail.runs() < 2) {
            String key = fail.faultSeen() ? "threshold.basis.spread.one-run" : "threshold.basis.spread.no-fault";
            return new Line("spread", allowance, false, Message.of(key, percent(MarginBudget.SPREAD_ALLOWANCE)));
        }
        double factor = ToleranceFactor.oneSided(fail.runs(), given.confidence(), given.coverage());
        double bound = fail.mean() + factor * fail.spread() - fail.bracketHigh();
        double least = allowance / fail.runs();
        double most = fail.runs() < ENOUGH_RUNS
                ? Math.max(allowance, fail.mean() + FEW_RUNS_FACTOR * fail.spread() - fail.bracketHigh())
                : Double.POSITIVE_INFINITY;
        if (bound > most) {
            return new Line(
                    "spread",
                    most,
                    false,
                    Message.of(
                            "threshold.basis.spread.few-runs",
                            runs(),
                            Display.millivolts(fail.spread()),
                            percent(MarginBudget.SPREAD_ALLOWANCE)));
        }
        if (bound < least) {
            return new Line(
                    "spread",
                    least,
                    false,
                    Message.of(
                            "threshold.basis.spread.agree",
                            runs(),
                            Display.millivolts(fail.spread()),
                            Display.millivolts(allowance)));
        }
        return new Line(
                "spread",
                bound,
                true,
                Message.of(
                        "threshold.basis.spread.measured",
                        runs(),
                        Display.millivolts(fail.spread()),
                        String.format(Locale.ROOT, "%.2f", factor),
                        percent(given.confidence()),
                        percent(given.coverage())));
    }

    /**
     * Fault and target are read with the same meter on the same range a little apart, so what is the same in both falls out. What is left of the
     * difference is given as one standard uncertainty ({@link railtrim.quantity.Accuracy#differenceUncertainty}), doubled for 95 %. Two ranges have a
     * scale error of their own each, so nothing is taken to cancel.
     */
    private Line meter() {
        double expanded = 2 * given.meterUncertainty();
        String key = given.oneRange() ? "threshold.basis.meter" : "threshold.basis.meter.two-ranges";
        return new Line("meter", expanded, true, Message.of(key, Display.millivolts(expanded)));
    }

    /** A reference of 50 to 100 ppm per kelvin over 50 K comes to 0.25 to 0.5 %; from memory of data sheets, and our own choice. */
    private Line drift() {
        return allowance("drift", MarginBudget.DRIFT_ALLOWANCE, "threshold.basis.drift");
    }

    private Line load() {
        return given.tried().otherLoad()
                ? new Line("load", 0, true, Message.of("threshold.basis.load.tried"))
                : allowance("load", MarginBudget.LOAD_ALLOWANCE, "threshold.basis.load");
    }

    /** Old chips mostly fail hot first, newer ones cold; which one this is nobody knows before it is tried. */
    private Line cold() {
        return given.tried().coldStart()
                ? new Line("cold", 0, true, Message.of("threshold.basis.cold.tried"))
                : allowance("cold", MarginBudget.COLD_ALLOWANCE, "threshold.basis.cold");
    }

    /** Transistors slow down over the years; no figure in millivolts could be found. */
    private Line ageing() {
        return allowance("ageing", MarginBudget.AGEING_ALLOWANCE, "threshold.basis.ageing");
    }

    private Line allowance(String id, double fraction, String key) {
        return new Line(id, fraction * given.stock(), false, Message.of(key, percent(fraction)));
    }

    private String runs() {
        return String.valueOf(fail.runs());
    }

    private static String percent(double fraction) {
        return Display.of(100 * fraction, Unit.PERCENT);
    }
}
