package railtrim.practice;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/** What is answered by looking rather than measuring: board, chip, meter, markings, pins, and the closing words. */
final class DeskSkills {
    private DeskSkills() {}

    static void teach(Map<String, Skill> skills, Workpiece piece) {
        Board board = piece.board();
        Board.Regulator regulator = board.regulator();

        skills.put("board.name", asked -> asked.typed(board.label().name()));
        skills.put("supply.kind", asked -> asked.picked(board.feed().kind()));
        skills.put("rail.highest", asked -> asked.typed(plain(board.feed().highestRail(), "V")));
        skills.put("chip.name", asked -> asked.typed(board.chip().name()));
        skills.put("rated.known", asked -> asked.picked(board.chip().rated().isPresent() ? "yes" : "no"));
        skills.put("rated.low", asked -> rated(asked, board, true));
        skills.put("rated.high", asked -> rated(asked, board, false));

        skills.put(
                "meter.class", asked -> asked.picked(piece.bench.meter().meter().id()));
        rows(skills, "range.volt.", piece.bench.meter().meter().volts(), Unit.VOLT);
        rows(skills, "range.ohm.", piece.bench.meter().meter().ohms(), Unit.OHM);
        skills.put("meter.proof", asked -> asked.typed(piece.bench.cell()));
        skills.put("meter.zero", asked -> asked.typed(piece.bench.leadsShorted()));

        skills.put("work.off", asked -> asked.picked("unplugged"));
        skills.put("work.ground", asked -> asked.picked("strap"));
        skills.put("iron.set", asked -> asked.typed("320 °C"));

        skills.put("reg.marking", asked -> asked.typed(regulator.marking()));
        skills.put("reg.control", asked -> asked.picked(regulator.control().id()));
        skills.put("reg.family", asked -> asked.picked(regulator.family()));
        skills.put("reg.outline", asked -> asked.picked(regulator.outline().id()));
        for (int pin = 1; pin <= regulator.pins().size(); pin++) {
            String role = regulator.pins().get(pin - 1).id();
            skills.put("pin." + pin, asked -> asked.picked(role));
        }
        skills.put(
                "pin.tab",
                asked -> regulator
                        .tab()
                        .map(role -> asked.picked(role.id()))
                        .orElseGet(() -> new Answer.Stuck("there is no tab")));

        skills.put("sheet.place", asked -> asked.picked(board.divider().place().id()));
        sheet(skills, "sheet.reference.low", regulator, sheet -> plain(sheet.referenceLow(), "V"));
        sheet(skills, "sheet.reference", regulator, sheet -> plain(sheet.reference(), "V"));
        sheet(skills, "sheet.reference.high", regulator, sheet -> plain(sheet.referenceHigh(), "V"));
        sheet(skills, "sheet.bias", regulator, sheet -> plain(sheet.bias() * 1e6, "µA"));
        sheet(skills, "sheet.dropout", regulator, sheet -> plain(sheet.dropout(), "V"));
        sheet(skills, "sheet.minimum-load", regulator, sheet -> plain(sheet.minimumLoad() * 1000, "mA"));
        sheet(skills, "sheet.input.highest", regulator, sheet -> plain(sheet.inputHighest(), "V"));

        skills.put("load.name", asked -> asked.typed(board.load().name()));
        skills.put(
                "run.load",
                asked -> board.load()
                        .other()
                        .map(other -> asked.typed(
                                other.name() + ", then " + board.load().name()))
                        .orElseGet(() -> new Answer.Stuck("run.load: the board has no other load")));
        skills.put("current.known", asked -> asked.picked("yes"));
        skills.put("load.current", asked -> asked.typed(plain(board.load().stockAmperes(), "A")));

        skills.put("record.undo", asked -> asked.picked("added-resistor"));
        skills.put("record.notes", asked -> asked.typed("Done on a practice board."));
    }

    /** As printed in the manual of the meter on the bench. */
    private static void rows(Map<String, Skill> skills, String field, List<Meter.Range> ranges, Unit unit) {
        for (int row = 1; row <= ranges.size(); row++) {
            String text = RangeRow.written(ranges.get(row - 1), unit);
            skills.put(field + row, asked -> asked.typed(text));
        }
    }

    private static Answer rated(Skill.Asked asked, Board board, boolean low) {
        OptionalDouble volts = board.chip()
                .rated()
                .map(range -> OptionalDouble.of(low ? range.low() : range.high()))
                .orElse(OptionalDouble.empty());
        return volts.isPresent()
                ? asked.typed(plain(volts.getAsDouble(), "V"))
                : new Answer.Stuck("the rated range is not known");
    }

    private static void sheet(
            Map<String, Skill> skills,
            String field,
            Board.Regulator regulator,
            java.util.function.Function<Board.Sheet, String> figure) {
        skills.put(field, asked -> {
            Optional<Board.Sheet> sheet = regulator.sheet();
            return sheet.isPresent()
                    ? asked.typed(figure.apply(sheet.get()))
                    : new Answer.Stuck("there is no data sheet to copy " + field + " from");
        });
    }

    /** At most four decimals, no trailing zeros: "12 V", "1.243 V". */
    static String plain(double value, String unit) {
        String text = String.format(Locale.ROOT, "%.4f", value);
        return text.replaceAll("\\.?0+$", "") + " " + unit;
    }
}
