package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import railtrim.circuit.RegulatorFamily;
import railtrim.heat.Heat;
import railtrim.job.Origin;
import railtrim.procedure.Figures;
import railtrim.procedure.State.Card;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Pair;
import railtrim.threshold.MarginBudget;

/** The first page, for someone who was not there: what was done, whether it may be switched on, and what it gained. */
final class GlancePart {
    private final Source source;
    private final Figures figures;

    GlancePart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Says(new SummaryPart(source).changed()));
        if (figures.negative()) {
            blocks.add(new Block.Says(source.say("report.negative")));
        }
        blocks.add(new Block.Pairs(pairs()));
        new DividerDrawing(source).picture().ifPresent(blocks::add);
        if (figures.choice("fit.left").equals(Optional.of("resistor-only"))) {
            new ResistorPart(source).bandsOfAll().ifPresent(blocks::add);
        }
        return blocks;
    }

    private List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(pair("report.glance.safe", safe()));
        pairs.add(pair("report.board", source.text(figures.text("board.name"))));
        pairs.add(pair("report.chip", source.text(figures.text("chip.name"))));
        pairs.add(pair("report.regulator", regulator()));
        pairs.add(pair("report.stock", source.rail(figures.stock())));
        pairs.add(pair("report.fitted", fitted()));
        pairs.add(pair("report.fail", new SummaryPart(source).fail()));
        pairs.add(pair("report.glance.margin", margin()));
        pairs.add(pair("report.glance.power", power()));
        pairs.add(pair("report.glance.temperature", temperature()));
        pairs.add(pair("report.ended", ended()));
        return pairs;
    }

    private String safe() {
        if (source.state().complete()) {
            boolean elsewhere = source.state().job().origin() == Origin.ELSEWHERE;
            return source.say(
                    elsewhere ? "report.glance.safe.elsewhere" : "report.glance.safe.yes",
                    source.rail(figures.fitted()));
        }
        boolean untouched = figures.history("solder.pair").isEmpty();
        if (source.state().card().orElse(null) instanceof Card.Stop stop) {
            return source.say(
                    untouched ? "report.glance.safe.stopped-untouched" : "report.glance.safe.stopped",
                    source.say(stop.reason()));
        }
        return source.say(untouched ? "report.glance.safe.untouched" : "report.glance.safe.no");
    }

    private String regulator() {
        String marking = source.text(figures.text("reg.marking"));
        return figures.family()
                .map(RegulatorFamily::name)
                .filter(family -> !family.equals(marking))
                .map(family -> source.say("report.glance.regulator", marking, PlainText.of(family)))
                .orElse(marking);
    }

    private String fitted() {
        return figures.stock().isEmpty() || figures.fitted().isEmpty()
                ? source.notKnown()
                : source.say("report.glance.fitted", source.rail(figures.fitted()), new SummaryPart(source).lowered());
    }

    /** How far the board's new voltage is above the fault, and what that is made of. */
    private String margin() {
        OptionalDouble now = figures.fitted().isPresent() ? figures.fitted() : figures.target();
        Optional<MarginBudget> budget = figures.budget();
        if (now.isEmpty() || budget.isEmpty()) {
            return source.notKnown();
        }
        return source.say(
                "report.glance.margin.why",
                Display.volts(now.getAsDouble() - budget.get().fail()),
                Display.volts(budget.get().sum()),
                source.say("report.part.margin"));
    }

    private String power() {
        if (figures.fitted().isEmpty() || figures.powers().isEmpty()) {
            return source.notKnown();
        }
        Heat.Powers powers = figures.powers().get();
        double saved = 100 * (1 - powers.loadAfter() / powers.loadBefore());
        String less = Display.of(Math.round(saved), Unit.PERCENT);
        return powers.relative()
                ? source.say("report.glance.power.relative", less)
                : source.say(
                        "report.glance.power.watts",
                        Display.of(powers.loadBefore(), Unit.WATT),
                        Display.of(powers.loadAfter(), Unit.WATT),
                        less);
    }

    private String temperature() {
        boolean both = Stream.of("temp.chip", "fit.temp.chip")
                .allMatch(field -> figures.reading(field).isPresent());
        if (!both) {
            return source.say("report.glance.temperature.none");
        }
        return source.say("report.glance.temperature.both", celsius("temp.chip"), celsius("fit.temp.chip"));
    }

    private String celsius(String field) {
        return Display.of(figures.reading(field).orElseThrow().value(), Unit.CELSIUS);
    }

    private String ended() {
        return source.ended().map(source::when).orElseGet(source::notKnown);
    }

    private Pair pair(String key, String value) {
        return new Pair(source.say(key), value);
    }
}
