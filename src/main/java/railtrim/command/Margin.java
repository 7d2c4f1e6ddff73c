package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.SuccessRun;
import railtrim.threshold.Trial;
import railtrim.threshold.Tried;

/** {@code margin}: where the chip fails, how sure that is, and how far to stay away. */
@Command(name = "margin", description = "${bundle:command.margin.about}")
final class Margin implements Asked {
    private static final String FILE = "TRIALS.csv";
    private static final double USUAL_CONFIDENCE = 0.95;
    private static final double USUAL_COVERAGE = 0.99;

    /** Below this a slow fault may be missed, seconds; our own choice. */
    private static final double SHORT_DWELL = 60;

    private final Words words;

    @Parameters(index = "0", paramLabel = FILE, description = "${bundle:command.option.trials}")
    private String file;

    @Option(names = "--stock", paramLabel = "3.555V", description = "${bundle:command.option.margin-stock}")
    private String stock;

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.meter}")
    private String meter;

    @Option(names = "--confidence", paramLabel = "95%", description = "${bundle:command.option.confidence}")
    private String confidence;

    @Option(names = "--coverage", paramLabel = "99%", description = "${bundle:command.option.coverage}")
    private String coverage;

    @Option(names = "--starts", paramLabel = "10", description = "${bundle:command.option.starts}")
    private String starts;

    Margin(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        List<Trial> trials = TrialFile.read(FILE, file);
        FailVoltage fail = FailVoltage.of(trials);
        double highest = trials.stream().mapToDouble(Trial::volts).max().orElseThrow();
        double stockVolts = stock == null ? highest : Typed.railVolts("--stock", stock, true);
        if (stockVolts < highest || stockVolts <= fail.fail()) {
            throw new BadOption(
                    stock == null ? FILE : "--stock",
                    Message.of(
                            "command.wrong.stock-below-trials",
                            Display.volts(stockVolts),
                            Display.volts(Math.max(highest, fail.fail()))));
        }
        MarginBudget.Given known = new MarginBudget.Given(
                        fail,
                        stockVolts,
                        fail.bracketHigh() - fail.bracketLow(),
                        0,
                        true,
                        Tried.of(trials, fail),
                        confidence == null ? USUAL_CONFIDENCE : Typed.fraction("--confidence", confidence, 50, 99.9),
                        coverage == null ? USUAL_COVERAGE : Typed.fraction("--coverage", coverage, 50, 99.9))
                .readOn(meter()::voltsAt);
        MarginBudget budget = MarginBudget.of(known);
        Optional<NextRun> next = NextRun.after(known);
        List<Estimates.Estimate> estimates = Estimates.of(trials);
        OptionalDouble dwell = trials.stream()
                .mapToDouble(Trial::dwell)
                .filter(seconds -> !Double.isNaN(seconds))
                .min();
        Json json = json(fail, budget).put("shortestDwell", dwell).put("estimates", Estimates.json(estimates));
        next.ifPresent(each -> json.put("nextRun", json(each)));
        Sheet sheet = sheet(fail, budget);
        next.ifPresent(each -> say(each, sheet));
        dwell.ifPresent(seconds -> say(seconds, sheet));
        Estimates.onto(sheet, estimates, words);
        if (starts != null) {
            successRun(known.confidence(), json, sheet);
        }
        return Answer.of(budget.worthDoing(), json.map(), sheet);
    }

    private static Map<String, Object> json(NextRun next) {
        return Json.object()
                .put("warm", next.warmGain())
                .put("cold", next.coldGain())
                .put("load", next.loadGain())
                .put("five", next.fiveGain())
                .put("warmPowerSaved", next.powerSaved(next.warmGain()))
                .put("coldPowerSaved", next.powerSaved(next.coldGain()))
                .put("loadPowerSaved", next.powerSaved(next.loadGain()))
                .put("fivePowerSaved", next.powerSaved(next.fiveGain()))
                .put("worth", next.anyWorth())
                .map();
    }

    private void say(NextRun next, Sheet sheet) {
        sheet.blank();
        if (!next.spreadKnown()) {
            sheet.say(words.of("command.margin.one-run"));
        }
        if (!next.anyWorth() && next.spreadKnown()) {
            sheet.say(words.of("command.margin.next-none"));
        }
        if (next.coldWorth()) {
            sheet.say(gain("command.margin.next-cold", next, next.coldGain()));
        }
        if (next.loadWorth()) {
            sheet.say(gain("command.margin.next-load", next, next.loadGain()));
        }
        if (next.worth(next.warmGain())) {
            sheet.say(gain("command.margin.next-warm", next, next.warmGain()));
        } else if (next.worth(next.fiveGain())) {
            String key = next.spreadKnown() ? "command.margin.next-five" : "command.margin.next-five-if";
            sheet.say(gain(key, next, next.fiveGain()));
        }
    }

    private String gain(String key, NextRun next, double volts) {
        return words.of(
                key, Display.millivolts(volts), String.format(Locale.ROOT, "%.1f", 100 * next.powerSaved(volts)));
    }

    private void say(double dwell, Sheet sheet) {
        if (dwell < SHORT_DWELL) {
            sheet.say(words.of("command.margin.short-dwell", Display.of(dwell, Unit.SECOND)));
        }
    }

    private void successRun(double sure, Json json, Sheet sheet) {
        int count = (int) Typed.whole("--starts", starts, 1, 100_000);
        double shown = SuccessRun.reliability(count, sure);
        int needed = SuccessRun.needed(0.95, sure);
        json.put(
                "starts",
                Json.object()
                        .put("clean", count)
                        .put("confidence", sure)
                        .put("reliability", shown)
                        .put("neededFor95", needed)
                        .map());
        sheet.blank()
                .say(words.of(
                        "command.margin.starts",
                        Integer.toString(count),
                        // rounded down: it is a lower bound
                        Long.toString((long) Math.floor(100 * shown)),
                        String.format(Locale.ROOT, "%.3g", 100 * sure).replaceFirst("\\.?0+$", ""),
                        Integer.toString(needed)));
    }

    private Meter meter() {
        return NamedMeter.of("--meter", meter == null ? "basic" : meter);
    }

    private Json json(FailVoltage fail, MarginBudget budget) {
        List<Object> lines = new ArrayList<>();
        for (MarginBudget.Line line : budget.lines()) {
            lines.add(Json.object()
                    .put("id", line.id())
                    .put("volts", line.volts())
                    .put("measured", line.measured())
                    .put("basis", words.of(line.basis()))
                    .map());
        }
        return Json.object()
                .put("fail", fail.fail())
                .put("faultSeen", fail.faultSeen())
                .put("bracketHigh", fail.bracketHigh())
                .put("mean", fail.mean())
                .put("spread", fail.spread())
                .put("runs", fail.runs())
                .put("budget", lines)
                .put("sum", budget.sum())
                .put("rootSumSquare", budget.rootSumSquare())
                .put("recommended", budget.recommended())
                .put("worthDoing", budget.worthDoing());
    }

    private Sheet sheet(FailVoltage fail, MarginBudget budget) {
        Sheet sheet = new Sheet()
                .pair(
                        words.of(fail.faultSeen() ? "command.margin.fail" : "command.margin.lowest-good"),
                        Display.volts(fail.fail()))
                .pair(words.of("command.margin.runs"), Integer.toString(fail.runs()));
        fail.spreadKnown()
                .ifPresent(spread -> sheet.pair(words.of("command.margin.middle"), Display.volts(fail.mean()))
                        .pair(words.of("command.margin.spread"), Display.volts(spread)));
        sheet.blank();
        for (MarginBudget.Line line : budget.lines()) {
            sheet.pair("+ " + Display.volts(line.volts()), words.of(line.basis()));
        }
        sheet.blank()
                .pair(words.of("command.margin.squares"), Display.volts(budget.rootSumSquare()))
                .pair(words.of("command.margin.recommended"), Display.volts(budget.recommended()));
        return budget.worthDoing() ? sheet : sheet.say(words.of("command.margin.not-worth"));
    }
}
