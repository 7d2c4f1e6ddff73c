package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.Trial;

/** {@code margin}: where the chip fails, how sure that is, and how far to stay away. */
@Command(name = "margin", description = "${bundle:command.margin.about}")
final class Margin implements Asked {
    private static final String FILE = "TRIALS.csv";

    private final Words words;

    @Parameters(index = "0", paramLabel = FILE, description = "${bundle:command.option.trials}")
    private String file;

    @Option(names = "--stock", paramLabel = "3.555V", description = "${bundle:command.option.margin-stock}")
    private String stock;

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.meter}")
    private String meter;

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
        MarginBudget budget = MarginBudget.of(MarginBudget.Given.usual(
                fail,
                stockVolts,
                fail.bracketHigh() - fail.bracketLow(),
                meter().voltsAt(fail.fail()).standardUncertainty(fail.fail()),
                trials.stream().anyMatch(Trial::cold),
                trials.stream().map(Trial::load).distinct().count() > 1));
        return Answer.of(budget.worthDoing(), json(fail, budget).map(), sheet(fail, budget));
    }

    private Meter meter() {
        Map<String, Meter> known = Map.of("basic", Meter.basic(), "middle", Meter.middle(), "fine", Meter.fine());
        String wanted = meter == null ? "basic" : meter.strip();
        if (!known.containsKey(wanted)) {
            throw new BadOption("--meter", Message.of("command.wrong.meter", Typed.shown(wanted)));
        }
        return known.get(wanted);
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
                .put("spread", fail.spread())
                .put("runs", fail.runs())
                .put("budget", lines)
                .put("sum", budget.sum())
                .put("recommended", budget.recommended())
                .put("worthDoing", budget.worthDoing());
    }

    private Sheet sheet(FailVoltage fail, MarginBudget budget) {
        Sheet sheet = new Sheet()
                .pair(
                        words.of(fail.faultSeen() ? "command.margin.fail" : "command.margin.lowest-good"),
                        Display.volts(fail.fail()))
                .pair(words.of("command.margin.runs"), Integer.toString(fail.runs()))
                .blank();
        for (MarginBudget.Line line : budget.lines()) {
            sheet.pair("+ " + Display.volts(line.volts()), words.of(line.basis()));
        }
        sheet.blank().pair(words.of("command.margin.recommended"), Display.volts(budget.recommended()));
        return budget.worthDoing() ? sheet : sheet.say(words.of("command.margin.not-worth"));
    }
}
