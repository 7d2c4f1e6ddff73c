package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import railtrim.job.Job;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Phase;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Entry;
import railtrim.report.Checklist.Section;

/** The whole way as a form to print: each step with its cautions, its boxes for readings, what to expect, and the sums to do by hand. */
final class Worksheet {
    /** More answers than this are written, not ticked. */
    private static final int MOST_CHOICES = 7;

    /** Enough for a way down by 1 % steps to two thirds of stock, and two more runs. */
    private static final int ROWS_DOWN = 45;

    private static final List<String> ROUNDS = List.of("run", "aim", "read", "seen", "time");

    private final Procedure procedure;
    private final Source source;
    private final Figures nothing;

    Worksheet(Procedure procedure, Words words) {
        this.procedure = procedure;
        State empty = procedure.state(Job.empty(""));
        this.source = new Source(empty, procedure, words, new Replay(procedure, empty.job()));
        this.nothing = empty.figures();
    }

    Checklist build() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section(2, source.say("worksheet.how"), "", how()));
        for (Phase phase : Phase.values()) {
            List<Block> aim = List.of(new Block.Says(source.say("phase." + phase.id() + ".aim")));
            sections.add(new Section(2, source.say("phase." + phase.id()), "", aim));
            procedure.steps().stream()
                    .filter(step -> step.phase() == phase)
                    .map(this::section)
                    .forEach(sections::add);
        }
        return new Checklist(source.say("worksheet.title"), "", List.of(), sections);
    }

    private List<Block> how() {
        List<String> rules = numbered("worksheet.rule.");
        List<String> law = numbered("worksheet.law.");
        return List.of(
                new Block.Form(List.of(
                        new Entry(source.say("worksheet.board"), "", List.of()),
                        new Entry(source.say("worksheet.who"), "", List.of()))),
                new Block.Points(rules),
                new Block.Says(source.say("worksheet.law")),
                new Block.Points(law));
    }

    private Section section(Step step) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Says(source.sayOr("step." + step.id() + ".action", step.id())));
        if (!step.cautions().isEmpty()) {
            blocks.add(new Block.Form(step.cautions().stream()
                    .map(id -> new Entry(source.caution(id), "", List.of(source.say("worksheet.read"))))
                    .toList()));
        }
        longLists(step)
                .forEach(list -> blocks.add(new Block.Says(source.say("worksheet.one-of", String.join("; ", list)))));
        blocks.add(new Block.Form(step.fields().stream().map(this::entry).toList()));
        if (step.dwellSeconds() > 0) {
            blocks.add(new Block.Form(List.of(new Entry(
                    source.say("worksheet.wait", Display.of(step.dwellSeconds(), Unit.SECOND)),
                    source.say("worksheet.from-to"),
                    List.of()))));
        }
        List<String> sums = numbered("worksheet.sum." + step.id() + ".");
        if (!sums.isEmpty()) {
            blocks.add(new Block.Points(sums));
        }
        if (step.id().equals("down.watch")) {
            List<String> head = ROUNDS.stream()
                    .map(id -> source.say("worksheet.round." + id))
                    .toList();
            blocks.add(new Block.Blank(head, ROWS_DOWN));
        }
        if (source.words().has("step." + step.id() + ".outside")) {
            blocks.add(new Block.Says(source.say("worksheet.outside", source.say("step." + step.id() + ".outside"))));
        }
        return new Section(3, source.title(step.id()), power(step), blocks);
    }

    private String power(Step step) {
        String power = source.say(
                "report.power." + step.power().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        return step.hold() ? source.say("worksheet.hold", power) : power;
    }

    private Entry entry(Field field) {
        String label = source.label(field.id());
        boolean always = asked(field);
        String name = always ? label : source.say("worksheet.if-needed", label);
        if (field instanceof Field.Number number) {
            return new Entry(name, expected(number), List.of());
        } else if (field instanceof Field.Choice choice) {
            List<String> options = options(choice);
            return new Entry(name, "", options.size() > MOST_CHOICES ? List.of() : options);
        } else if (field instanceof Field.Switch) {
            return new Entry(name, "", List.of(source.say("worksheet.did")));
        }
        return new Entry(name, "", List.of());
    }

    /** Answers too many to tick, each list once. */
    private List<List<String>> longLists(Step step) {
        return step.fields().stream()
                .filter(Field.Choice.class::isInstance)
                .map(field -> options((Field.Choice) field))
                .filter(options -> options.size() > MOST_CHOICES)
                .distinct()
                .toList();
    }

    private boolean asked(Field field) {
        try {
            return field.asked().test(nothing);
        } catch (BadInput e) {
            return false;
        }
    }

    private List<String> options(Field.Choice choice) {
        try {
            return choice.options().apply(nothing).stream()
                    .map(option -> source.say(option.label()))
                    .toList();
        } catch (BadInput e) {
            return List.of();
        }
    }

    /** Only what holds for every board; the rest is worked out on the way. */
    private String expected(Field.Number number) {
        Optional<Field.Expected> range;
        try {
            range = number.expected().apply(nothing);
        } catch (BadInput e) {
            range = Optional.empty();
        }
        return range.map(found -> expected(found, Display.ends(found.low(), found.high(), number.unit())))
                .orElse("");
    }

    private String expected(Field.Expected range, Display.Ends ends) {
        return source.say("worksheet.expected", ends.low(), ends.high(), source.say(range.because()));
    }

    /** The key with 1, 2 and so on behind it, as many as there are. */
    private List<String> numbered(String key) {
        List<String> texts = new ArrayList<>();
        for (int i = 1; source.words().has(key + i); i++) {
            texts.add(source.say(key + i));
        }
        return texts;
    }
}
