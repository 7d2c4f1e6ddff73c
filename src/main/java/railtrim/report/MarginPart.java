package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import railtrim.procedure.Figures;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.report.Checklist.Block;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;

/** How far the setting stays away from the fault, line by line, and why. */
final class MarginPart {
    private final Source source;
    private final Figures figures;

    MarginPart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        figures.failVoltage().ifPresent(fail -> blocks.add(new Block.Says(howSure(fail))));
        figures.budget().ifPresent(budget -> blocks.addAll(lines(budget)));
        if (blocks.isEmpty()) {
            blocks.add(new Block.Says(source.say("report.margin.none")));
        }
        figures.target().ifPresent(target -> blocks.add(new Block.Says(chosen(target))));
        return blocks;
    }

    private String howSure(FailVoltage fail) {
        if (!fail.faultSeen()) {
            return source.say("report.margin.no-fault", source.rail(fail.fail()));
        }
        return source.say(
                "report.margin.fault",
                source.rail(fail.bracketLow()),
                source.rail(fail.bracketHigh()),
                Integer.toString(fail.runs()));
    }

    private List<Block> lines(MarginBudget budget) {
        List<List<String>> rows = budget.lines().stream()
                .map(line -> List.of(
                        source.say("threshold.line." + line.id()),
                        Display.volts(line.volts()),
                        source.say(line.measured() ? "report.margin.measured" : "report.margin.allowance"),
                        source.say(line.basis())))
                .toList();
        List<String> head = List.of(
                source.say("report.margin.line"),
                source.say("report.margin.volts"),
                source.say("report.margin.kind"),
                source.say("report.margin.why"));
        String further = figures.sign().further();
        String terms = budget.lines().stream()
                .map(line -> further + Display.volts(line.volts()))
                .collect(Collectors.joining());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(head, rows));
        new BudgetDrawing(source).picture().ifPresent(blocks::add);
        blocks.add(new Block.Says(source.say(
                "report.margin.sum",
                source.rail(budget.fail()),
                terms,
                source.rail(budget.fail() + budget.sum()),
                source.rail(budget.recommended()))));
        return blocks;
    }

    private String chosen(double target) {
        return figures.text("target.reason")
                .map(reason -> source.say("report.margin.chosen-because", source.rail(target), PlainText.of(reason)))
                .orElseGet(() -> source.say("report.margin.chosen", source.rail(target)));
    }
}
