package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Field;
import railtrim.procedure.Phase;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/** One step as it was done: what was asked, read, expected and seen, what was read and replaced, and what was acknowledged. */
final class StepPart {
    private final Source source;

    StepPart(Source source) {
        this.source = source;
    }

    static String id(Status status) {
        return status.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Section section(StepState state) {
        Step step = state.step();
        List<Entry> entries = source.entries().stream()
                .filter(entry -> entry.fact().step().equals(step.id()))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Says(source.say(
                step.hold() ? "report.step.hold" : "report.step.plain",
                source.sayOr("step." + step.id() + ".action", step.id()),
                source.say("report.power." + id(step.power())))));
        List<String> cautions = acknowledged(entries);
        if (!cautions.isEmpty()) {
            blocks.add(new Block.Points(cautions));
        }
        List<List<String>> rows =
                entries.stream().flatMap(entry -> row(state, entry).stream()).toList();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Grid(head(), rows));
        }
        List<String> remarks = remarks(state, entries);
        if (!remarks.isEmpty()) {
            blocks.add(new Block.Points(remarks));
        }
        return new Section(3, source.title(step.id()), source.say("report.status." + id(state.status())), blocks);
    }

    private static String id(PowerNeed power) {
        return power.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private List<String> acknowledged(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.fact() instanceof Fact.Acknowledged)
                .map(entry -> source.say(
                        "report.step.acknowledged",
                        source.when(entry.time()),
                        source.caution(((Fact.Acknowledged) entry.fact()).caution())))
                .toList();
    }

    private List<String> head() {
        return Stream.of("asked", "entered", "read-back", "meter", "expected", "time", "remark")
                .map(column -> source.say("report.step." + column))
                .toList();
    }

    private Optional<List<String>> row(StepState state, Entry entry) {
        Fact fact = entry.fact();
        String time = source.time(entry.time());
        String remark = state.entries().contains(entry) ? "" : source.say(replaced(state.step(), entry));
        if (fact instanceof Fact.Reading reading) {
            RailSign sign = source.figures().sign(reading.field());
            String expected = source.expected(entry, reading)
                    .map(range -> range(range, sign, reading.unit()))
                    .orElseGet(() -> source.say("report.step.no-range"));
            return Optional.of(List.of(
                    source.label(reading.field()),
                    PlainText.of(reading.typed()),
                    source.readBack(reading),
                    source.withMeter(reading),
                    expected,
                    time,
                    remark));
        } else if (fact instanceof Fact.Choice choice) {
            return Optional.of(
                    List.of(source.label(choice.field()), source.option(entry, choice), "", "", "", time, remark));
        } else if (fact instanceof Fact.Note note) {
            return Optional.of(
                    List.of(source.label(note.field()), PlainText.of(note.text()), "", "", "", time, remark));
        } else if (fact instanceof Fact.Power power) {
            String said = source.say(power.on() ? "report.step.switched-on" : "report.step.switched-off");
            return Optional.of(List.of(source.label(power.step() + ".switch"), said, "", "", "", time, remark));
        }
        return Optional.empty();
    }

    private String range(Field.Expected range, RailSign sign, Unit unit) {
        Display.Ends ends = Display.ends(sign.shown(range.low()), sign.shown(range.high()), unit);
        return source.say("report.step.range", ends.low(), ends.high(), source.say(range.because()));
    }

    /** The way down is a loop: an earlier round's reading was not replaced. */
    private String replaced(Step step, Entry entry) {
        if (source.state().takenBack(entry)) {
            return "report.step.taken-back";
        }
        boolean loop = step.phase() == Phase.STEP_DOWN || step.phase() == Phase.FAULT;
        return loop ? "report.step.earlier-round" : "report.step.replaced";
    }

    private List<String> remarks(StepState state, List<Entry> entries) {
        List<String> remarks = new ArrayList<>();
        for (Entry entry : entries) {
            if (entry.fact() instanceof Fact.Skipped skipped) {
                remarks.add(source.say("report.event.skipped", PlainText.of(skipped.reason())));
            } else if (entry.fact() instanceof Fact.Reopened again) {
                remarks.add(source.say("report.event.reopened", PlainText.of(again.reason())));
            }
        }
        state.findings()
                .forEach(finding -> remarks.add(source.say(
                        "report.finding." + finding.kind().name().toLowerCase(Locale.ROOT),
                        source.say(finding.message()))));
        return remarks;
    }
}
