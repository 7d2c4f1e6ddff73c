package railtrim.procedure;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;

/**
 * What an honest person would answer: what was answered in a rehearsal on the sound board where that is still expected, else the middle of what is
 * expected. The way down is kept short, so that it has a few decrements.
 */
final class GoodAnswers {
    /** Of a meter with 6000 counts. */
    private static final Map<String, String> ROWS = Map.of(
            "range.volt.1", "6 V 1 mV ±(0.5 % + 3)",
            "range.volt.2", "60 V 10 mV ±(0.5 % + 3)",
            "range.volt.3", "600 V 100 mV ±(0.8 % + 3)",
            "range.ohm.1", "600 Ω 0.1 Ω ±(0.9 % + 2)",
            "range.ohm.2", "6 kΩ 1 Ω ±(0.9 % + 2)",
            "range.ohm.3", "60 kΩ 10 Ω ±(0.9 % + 2)",
            "range.ohm.4", "600 kΩ 100 Ω ±(0.9 % + 2)");

    private final Map<String, String> rehearsed = new HashMap<>();

    private GoodAnswers() {}

    static GoodAnswers ofAWholeJob() {
        HalfDone job = HalfDone.upTo("record");
        if (!job.finish()) {
            throw new AssertionError("the rehearsal did not end");
        }
        GoodAnswers answers = new GoodAnswers();
        Job whole = job.log.job();
        for (Entry entry : whole.entries()) {
            Fact fact = entry.fact();
            if (fact instanceof Fact.Reading reading) {
                answers.rehearsed.putIfAbsent(reading.field(), reading.typed());
            } else if (fact instanceof Fact.Choice choice) {
                answers.rehearsed.put(choice.field(), choice.option());
            } else if (fact instanceof Fact.Note note) {
                answers.rehearsed.put(note.field(), note.text());
            }
        }
        answers.rehearsed.put("fault.again", "enough");
        answers.rehearsed.put("resume.where", "as-left");
        answers.rehearsed.put("resume.zero", "0.2 Ω");
        answers.rehearsed.put("resume.rail", "0 V");
        answers.rehearsed.put("safe.rail", "0 V");
        answers.rehearsed.put("target.reason", "a spare board");
        return answers;
    }

    String text(String field, Figures figures) {
        if (MeterRows.VOLTS.contains(field) || MeterRows.OHMS.contains(field)) {
            return ROWS.get(field);
        }
        return field.equals("resume.marking")
                ? figures.text("reg.marking").orElse("unknown")
                : rehearsed.getOrDefault(field, "nothing odd");
    }

    /** "well" until the way down is over. */
    String option(Field.Choice field, Figures figures) {
        if (field.id().endsWith(".seen")) {
            return "well";
        }
        String wanted = rehearsed.getOrDefault(field.id(), "");
        return field.options().apply(figures).stream()
                .map(Field.Option::id)
                .filter(id -> wanted.isEmpty() || wanted.equals(id))
                .findFirst()
                .or(() -> field.options().apply(figures).stream().findFirst().map(Field.Option::id))
                .orElse("nothing is offered");
    }

    String reading(Field.Number field, Figures figures) {
        Optional<Field.Expected> expected = Judge.expected(figures, field);
        if (field.id().equals("aim.lowest") && expected.isPresent()) {
            return written(expected.get().high() - 14 * figures.stepVolts(), field);
        }
        if (field.again().flatMap(figures::reading).isPresent()) {
            return figures.reading(field.again().get()).orElseThrow().typed();
        }
        double zero = figures.number("meter.zero").orElse(0);
        Optional<Field.Expected> trimmer = Ranges.settingTrimmer(figures);
        if (field.id().startsWith("setting.") && trimmer.isPresent()) {
            double alone = (trimmer.get().low() + trimmer.get().high()) / 2;
            double total = Ranges.parallel(figures.readLeg().orElseThrow(), alone);
            return written((field.id().equals("setting.total") ? total : alone) + zero, field);
        }
        String text = field.id().equals("down.volts") ? null : rehearsed.get(field.id());
        if (text != null && (expected.isEmpty() || isInside(field, figures, text))) {
            return text;
        }
        double leads = field.unit() == railtrim.quantity.Unit.OHM && !field.id().endsWith(".zero") ? zero : 0;
        return expected.map(range -> written((range.low() + range.high()) / 2 + leads, field))
                .orElseThrow(() -> new AssertionError("nothing is known of " + field.id()));
    }

    private static boolean isInside(Field.Number field, Figures figures, String text) {
        return Judge.number(figures, "any", field, text, false) instanceof Verdict.Accept accept
                && accept.says().isEmpty()
                && Judge.outside(figures, field, ((Fact.Reading) accept.fact()).value())
                        .isEmpty();
    }

    static String written(double value, Field.Number field) {
        return String.format(Locale.ROOT, "%.4f %s", value, field.unit().symbol());
    }
}
