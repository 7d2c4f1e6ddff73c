package railtrim.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import railtrim.practice.Outcome;
import railtrim.practice.Slip;
import railtrim.practice.Tally;
import railtrim.procedure.Words;
import railtrim.quantity.Display;

/** How one rehearsal went, or many: tables for people and values for programs. */
final class OutcomeSheet {
    private static final int MOST_QUESTIONS = 20;

    private final Words words;

    OutcomeSheet(Words words) {
        this.words = words;
    }

    // ---- one ----

    Sheet of(Outcome outcome) {
        Sheet sheet = new Sheet()
                .pair(words.of("command.rehearse.board"), outcome.board())
                .pair(
                        words.of("command.rehearse.ending"),
                        words.of("command.rehearse." + Named.word(outcome.ending())));
        volts(sheet, "command.rehearse.stock", OptionalDouble.of(outcome.stock()));
        volts(sheet, "command.rehearse.fail", OptionalDouble.of(outcome.fail()));
        volts(sheet, "command.rehearse.fitted", outcome.fitted());
        volts(sheet, "command.rehearse.lowest", outcome.lowest());
        volts(sheet, "command.rehearse.expert", outcome.expert());
        outcome.share().ifPresent(share -> sheet.pair(words.of("command.rehearse.share"), percent(share)));
        if (outcome.highestSeen() > 0) {
            volts(sheet, "command.rehearse.highest-seen", OptionalDouble.of(outcome.highestSeen()));
        }
        sheet.pair(
                words.of("command.check.facts"),
                Integer.toString(outcome.job().entries().size()));
        if (!outcome.reason().isEmpty()) {
            sheet.say(outcome.reason());
        }
        if (!outcome.slips().isEmpty()) {
            List<List<String>> rows = new ArrayList<>();
            outcome.slips()
                    .forEach(made -> rows.add(List.of(
                            name(made.slip()),
                            made.field(),
                            words.of(
                                    "command.rehearse.noticed." + made.noticed().id()),
                            told(made.key()))));
            sheet.blank().table(4, heads("slip", "field", "noticed", "by"), rows);
        }
        warn(sheet, outcome.aboveStock(), outcome.belowFail());
        return sheet;
    }

    private void volts(Sheet sheet, String key, OptionalDouble magnitude) {
        magnitude.ifPresent(volts -> sheet.pair(words.of(key), Display.volts(volts)));
    }

    // ---- many ----

    Answer of(Tally tally) {
        Map<String, Object> json = tally.values();
        Sheet sheet = new Sheet();
        json.forEach(
                (name, figure) -> sheet.pair(words.of("command.rehearse.many." + name), shown(name, (Number) figure)));
        if (!tally.rows().isEmpty()) {
            sheet.blank().table(1, heads("slip", "made", "before", "after", "never", "harmful"), rows(tally));
        }
        if (!tally.caughtAt().isEmpty()) {
            sheet.blank().table(1, heads("at-field", "caught-there"), caughtAt(tally));
        }
        json.put("slipTable", slipTable(tally));
        json.put("caughtAt", tally.caughtAt());
        json.put("bad", tally.bad());
        warn(sheet, tally.aboveStock() > 0, tally.belowFail() > 0);
        boolean well = tally.stuck() == 0 && tally.aboveStock() == 0 && tally.belowFail() == 0;
        return Answer.of(well, json, sheet);
    }

    private static String shown(String name, Number figure) {
        return name.startsWith("share")
                ? percent(figure.doubleValue())
                : Long.toString(Math.round(figure.doubleValue()));
    }

    private List<List<String>> rows(Tally tally) {
        List<List<String>> rows = new ArrayList<>();
        tally.rows()
                .forEach((slip, row) -> rows.add(List.of(
                        name(slip),
                        Integer.toString(row.made()),
                        Integer.toString(row.before()),
                        Integer.toString(row.after()),
                        Integer.toString(row.never()),
                        Integer.toString(row.harmful()))));
        return rows;
    }

    /** The questions that brought most slips to light, most first; all of them are in the values for programs. */
    private List<List<String>> caughtAt(Tally tally) {
        return tally.caughtAt().entrySet().stream()
                .filter(each -> !each.getKey().isEmpty())
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(MOST_QUESTIONS)
                .map(each -> List.of(each.getKey(), each.getValue().toString()))
                .toList();
    }

    private static List<Map<String, Object>> slipTable(Tally tally) {
        List<Map<String, Object>> table = new ArrayList<>();
        tally.rows().forEach((slip, row) -> {
            Map<String, Object> values = new LinkedHashMap<>();
            values.put("slip", slip.id());
            values.put("made", row.made());
            values.put("caughtBeforeHarm", row.before());
            values.put("caughtAfter", row.after());
            values.put("notCaught", row.never());
            values.put("harmful", row.harmful());
            values.put("by", row.keys());
            table.add(values);
        });
        return table;
    }

    // ---- both ----

    private String name(Slip slip) {
        return words.of("command.rehearse.slip." + slip.id());
    }

    /** The check that caught it, by its key: its words hold values of their own. */
    private static String told(String key) {
        return key.isEmpty() ? "–" : key;
    }

    private List<String> heads(String... names) {
        return java.util.Arrays.stream(names)
                .map(name -> words.of("command.rehearse.head." + name))
                .toList();
    }

    private static String percent(double share) {
        return Math.round(1000 * share) / 10.0 + " %";
    }

    private void warn(Sheet sheet, boolean aboveStock, boolean belowFail) {
        if (aboveStock) {
            sheet.say(words.of("command.rehearse.above-stock"));
        }
        if (belowFail) {
            sheet.say(words.of("command.rehearse.below-fail"));
        }
    }
}
