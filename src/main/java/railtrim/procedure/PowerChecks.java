package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.SuccessRun;

/** What the readings with the board on say together, and what they allow. */
final class PowerChecks {
    private PowerChecks() {}

    static List<Finding> firstLoad(Figures figures) {
        return figures.magnitude("first.loaded").isPresent() ? Doubts.leg(figures) : List.of();
    }

    /** The rail did not come down as far as asked: either the trimmer was not turned far enough, or it is at its end. */
    static boolean perhapsAtTheEnd(Figures figures) {
        if (figures.chose("down.end", "at-end")) {
            return true;
        }
        OptionalDouble read = figures.magnitude("down.volts");
        return read.isPresent()
                && Ranges.down(figures)
                        .filter(expected ->
                                read.getAsDouble() > Math.max(Math.abs(expected.low()), Math.abs(expected.high())))
                        .isPresent();
    }

    static List<Finding> downSet(Figures figures) {
        return figures.chose("down.end", "not-yet") && perhapsAtTheEnd(figures)
                ? List.of(Findings.blocks("verdict.turn-further", ""))
                : List.of();
    }

    static List<Finding> seenWell(Figures figures, String field) {
        return figures.choice(field).filter(Descent.FAULTS::contains).isPresent()
                ? List.of(Findings.blocks("verdict.fault-after-margin", "budget"))
                : List.of();
    }

    /** A run with another program shows nothing new if it is the program of the first run. */
    static List<Finding> otherLoad(Figures figures) {
        String first = figures.text("load.name").orElse("").strip();
        return figures.text("run.load")
                        .filter(now -> now.strip().equalsIgnoreCase(first))
                        .isPresent()
                ? List.of(Findings.blocks("verdict.same-load", ""))
                : List.of();
    }

    /** What another run would be expected to buy, so that nobody stops too early or goes on for nothing. */
    static List<Finding> nextRun(Figures figures) {
        return figures.nextRun().map(PowerChecks::nextRun).orElse(List.of());
    }

    private static List<Finding> nextRun(NextRun next) {
        List<Finding> findings = new ArrayList<>();
        if (!next.spreadKnown()) {
            findings.add(Findings.says("verdict.next.one-run"));
        }
        boolean warm = next.worth(next.warmGain());
        boolean five = !warm && next.worth(next.fiveGain());
        if (next.coldWorth()) {
            findings.add(Findings.says("verdict.next.cold", gain(next.coldGain()), saved(next, next.coldGain())));
        }
        if (next.loadWorth()) {
            findings.add(Findings.says("verdict.next.load", gain(next.loadGain()), saved(next, next.loadGain())));
        }
        if (warm) {
            findings.add(Findings.says("verdict.next.warm", gain(next.warmGain()), saved(next, next.warmGain())));
        }
        if (five) {
            findings.add(Findings.says(
                    next.spreadKnown() ? "verdict.next.five" : "verdict.next.five-if",
                    gain(next.fiveGain()),
                    saved(next, next.fiveGain())));
        }
        if (!next.anyWorth() && next.spreadKnown()) {
            findings.add(Findings.says("verdict.next.enough"));
        }
        return findings;
    }

    /** It is an estimate: to 5 mV. */
    private static String gain(double volts) {
        return 5 * Math.round(200 * volts) + " mV";
    }

    private static String saved(NextRun next, double volts) {
        return Math.max(1, Math.round(100 * next.powerSaved(volts))) + " %";
    }

    /** The soak began with one start, the cold start is the second: what so few show by themselves. */
    static List<Finding> cold(Figures figures) {
        List<Finding> findings = new ArrayList<>(seenWell(figures, "cold.seen"));
        if (figures.chose("cold.seen", "well")) {
            long shown = Math.round(100 * SuccessRun.reliability(2, 0.95));
            findings.add(Findings.says("verdict.clean-starts", shown + " %"));
        }
        return findings;
    }

    static List<Finding> budget(Figures figures) {
        Optional<MarginBudget> budget = figures.budget();
        if (budget.isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(Findings.says(
                figures.descent().faulted() ? "verdict.recommended" : "verdict.recommended.unfailed",
                figures.sign().volts(budget.get().fail()),
                Display.volts(budget.get().sum()),
                figures.sign().volts(budget.get().recommended())));
        if (!budget.get().worthDoing() || outOfReach(figures, budget.get())) {
            String backTo = figures.descent().faulted() ? "fault.next" : "aim";
            findings.add(Findings.stops("stop.not-worth-doing", backTo));
        }
        boolean above = figures.target().orElse(0) > figures.stock().orElse(Double.POSITIVE_INFINITY);
        if (above) {
            findings.add(Findings.blocks("verdict.target-above-stock", ""));
        } else {
            findings.addAll(HeatFindings.outlook(figures));
        }
        return findings;
    }

    /** The trimmer at its maximum already lies below what the budget allows. */
    private static boolean outOfReach(Figures figures, MarginBudget budget) {
        return budget.recommended() > figures.start().orElse(Double.POSITIVE_INFINITY);
    }

    static boolean belowBudget(Figures figures) {
        return figures.target().isPresent()
                && figures.budget().isPresent()
                && figures.target().getAsDouble() < figures.budget().get().recommended() - 1e-9;
    }

    static List<Finding> cool(Figures figures) {
        return figures.chose("cool.how", "still-warm") ? List.of(Findings.blocks("verdict.still-warm", "")) : List.of();
    }
}
