package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.RegulatorFamily;
import railtrim.procedure.Figures;
import railtrim.procedure.MeterRows;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Pair;

/** What board, what supply and meter, and the voltages that matter. */
final class SummaryPart {
    private final Source source;
    private final Figures figures;

    SummaryPart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Pairs(board()));
        blocks.add(new Block.Pairs(voltages()));
        new LadderDrawing(source).picture().ifPresent(blocks::add);
        new LineDrawing(source).picture().ifPresent(blocks::add);
        return blocks;
    }

    String changed() {
        if (!figures.choice("fit.left").equals(Optional.of("resistor-only"))) {
            boolean untouched = figures.history("solder.pair").isEmpty();
            return source.say(untouched ? "report.changed.untouched" : "report.changed.nothing");
        }
        ResistorPart resistor = new ResistorPart(source);
        String part = resistor.fittedInWords();
        return source.say(
                resistor.several() ? "report.changed.fitted-two" : "report.changed.fitted",
                part,
                source.leg(),
                source.rail(figures.stock()),
                source.rail(figures.fitted()));
    }

    private List<Pair> board() {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(pair("report.board", source.text(figures.text("board.name"))));
        pairs.add(pair("report.chip", source.text(figures.text("chip.name"))));
        pairs.add(pair("report.supply", source.text(source.chosen("supply.kind"))));
        pairs.add(pair("report.regulator", source.text(figures.text("reg.marking"))));
        pairs.add(pair("report.family", source.text(figures.family().map(RegulatorFamily::name))));
        pairs.add(pair("report.outline", source.text(figures.choice("reg.outline"))));
        pairs.add(pair("report.leg", source.leg()));
        pairs.add(pair("report.load", source.text(figures.text("load.name"))));
        pairs.add(pair("report.meter", source.text(source.chosen("meter.class"))));
        List<String> rows = MeterRows.written(figures);
        if (!rows.isEmpty()) {
            pairs.add(pair("report.meter-ranges", String.join("; ", rows)));
        }
        if (!source.entries().isEmpty()) {
            List<railtrim.job.Entry> entries = source.entries();
            pairs.add(pair("report.began", source.when(entries.get(0).time())));
            pairs.add(pair("report.ended", source.ended().map(source::when).orElseGet(source::notKnown)));
        }
        pairs.add(pair("report.entries", Integer.toString(source.entries().size())));
        return pairs;
    }

    private List<Pair> voltages() {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(pair("report.reference", source.volts(figures.reference())));
        pairs.add(pair("report.input", source.rail(figures.input())));
        pairs.add(pair("report.stock", source.rail(figures.stock())));
        pairs.add(pair("report.fitted", source.rail(figures.fitted())));
        pairs.add(pair("report.lowered", lowered()));
        pairs.add(pair("report.fail", fail()));
        pairs.add(pair(
                "report.recommended",
                source.rail(figures.budget()
                        .map(budget -> OptionalDouble.of(budget.recommended()))
                        .orElse(OptionalDouble.empty()))));
        pairs.add(pair("report.target", source.rail(figures.target())));
        return pairs;
    }

    String fail() {
        return figures.failVoltage()
                .map(fail -> source.say(
                        fail.faultSeen() ? "report.fail.seen" : "report.fail.none", source.rail(fail.fail())))
                .orElseGet(source::notKnown);
    }

    String lowered() {
        if (figures.stock().isEmpty() || figures.fitted().isEmpty()) {
            return source.notKnown();
        }
        double stock = figures.stock().getAsDouble();
        double drop = stock - figures.fitted().getAsDouble();
        return source.say("report.lowered.by", Display.volts(drop), Display.of(100 * drop / stock, Unit.PERCENT));
    }

    private Pair pair(String key, String value) {
        return new Pair(source.say(key), value);
    }
}
