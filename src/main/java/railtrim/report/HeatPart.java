package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import railtrim.heat.Heat;
import railtrim.procedure.Figures;
import railtrim.procedure.Warmth;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;

/** Power and temperature, before and after. */
final class HeatPart {
    private final Source source;
    private final Figures figures;

    HeatPart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        figures.powers()
                .ifPresentOrElse(
                        powers -> blocks.addAll(powers(powers)),
                        () -> blocks.add(new Block.Says(source.say("report.heat.no-power"))));
        List<List<String>> rows = new ArrayList<>();
        temperature(rows, "chip");
        temperature(rows, "reg");
        temperature(rows, "room");
        if (rows.isEmpty()) {
            blocks.add(new Block.Says(source.say("report.heat.no-temperature")));
        } else {
            Warmth warmth = Warmth.of(figures);
            derived(
                    rows,
                    "report.heat.resistance.chip",
                    warmth.chip().resistanceBefore(),
                    warmth.chip().resistanceAfter(),
                    " K/W");
            derived(
                    rows,
                    "report.heat.resistance.reg",
                    warmth.regulator().resistanceBefore(),
                    warmth.regulator().resistanceAfter(),
                    " K/W");
            derived(rows, "report.heat.junction", warmth.junctionBefore(), warmth.junctionAfter(), " °C");
            blocks.add(new Block.Grid(head(), rows));
            if (warmth.junctionBefore().isPresent()) {
                blocks.add(new Block.Says(source.say("report.heat.estimate")));
            }
            source.chosen("temp.how").ifPresent(how -> blocks.add(new Block.Says(source.say("report.heat.how", how))));
        }
        return blocks;
    }

    private List<Block> powers(Heat.Powers powers) {
        List<List<String>> rows = List.of(
                List.of(
                        source.say("report.heat.load"),
                        power(powers.loadBefore(), powers),
                        power(powers.loadAfter(), powers)),
                List.of(
                        source.say("report.heat.regulator"),
                        power(powers.regulatorBefore(), powers),
                        power(powers.regulatorAfter(), powers)));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(head(), rows));
        blocks.add(new Block.Says(source.say(powers.relative() ? "report.heat.relative" : "report.heat.absolute")));
        if (powers.regulatorGetsHotter()) {
            blocks.add(new Block.Says(source.say("report.heat.hotter")));
        }
        return blocks;
    }

    private String power(double power, Heat.Powers powers) {
        if (Double.isNaN(power)) {
            return source.notKnown();
        }
        return powers.relative() ? Display.of(100 * power, Unit.PERCENT) : Display.of(power, Unit.WATT);
    }

    private void temperature(List<List<String>> rows, String what) {
        if (figures.reading("temp." + what).isEmpty()
                && figures.reading("fit.temp." + what).isEmpty()) {
            return;
        }
        rows.add(List.of(source.say("report.heat.temp." + what), celsius("temp." + what), celsius("fit.temp." + what)));
    }

    /** What follows from temperature and power together; left out where it does not follow. */
    private void derived(
            List<List<String>> rows, String key, OptionalDouble before, OptionalDouble after, String unit) {
        if (before.isPresent() || after.isPresent()) {
            rows.add(List.of(source.say(key), oneDecimal(before, unit), oneDecimal(after, unit)));
        }
    }

    private String oneDecimal(OptionalDouble value, String unit) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.1f", value.getAsDouble()) + unit : source.notKnown();
    }

    private String celsius(String field) {
        return figures.reading(field)
                .map(reading -> Display.of(reading.value(), Unit.CELSIUS))
                .orElseGet(source::notKnown);
    }

    private List<String> head() {
        return List.of(
                source.say("report.heat.what"), source.say("report.heat.before"), source.say("report.heat.after"));
    }
}
