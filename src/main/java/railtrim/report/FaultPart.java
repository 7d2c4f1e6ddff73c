package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.threshold.Trial;

/** The way down, what the faults looked like, and everything that broke into the work. */
final class FaultPart {
    private final Source source;

    FaultPart(Source source) {
        this.source = source;
    }

    List<Block> wayDown() {
        List<Trial> trials = source.figures().trials();
        if (trials.isEmpty()) {
            return List.of(new Block.Says(source.say("report.down.none")));
        }
        List<Block> blocks = new ArrayList<>();
        List<String> head = List.of(
                source.say("report.down.run"),
                source.say("report.down.volts"),
                source.say("report.down.seen"),
                source.say("report.down.began"),
                source.say("report.down.held"),
                source.say("report.down.load"));
        new DescentDrawing(source).picture().ifPresent(blocks::add);
        blocks.add(new Block.Grid(head, trials.stream().map(this::row).toList()));
        List<String> notes = source.figures().history("fault.text").stream()
                .filter(entry -> entry.fact() instanceof Fact.Note)
                .map(entry -> source.say(
                        "report.down.fault-note",
                        source.when(entry.time()),
                        PlainText.of(((Fact.Note) entry.fact()).text())))
                .toList();
        if (!notes.isEmpty()) {
            blocks.add(new Block.Points(notes));
        }
        return blocks;
    }

    private List<String> row(Trial trial) {
        return List.of(
                Integer.toString(trial.run()),
                source.rail(trial.volts()),
                source.say(trial.fault() ? "report.down.fault" : "report.down.good"),
                source.say(trial.cold() ? "report.down.cold" : "report.down.warm"),
                Double.isNaN(trial.dwell()) ? "–" : Display.of(trial.dwell(), Unit.SECOND),
                PlainText.of(trial.load()));
    }

    List<Block> events() {
        List<List<String>> rows = new ArrayList<>();
        for (Entry entry : source.entries()) {
            event(entry)
                    .ifPresent(told -> rows.add(List.of(
                            source.time(entry.time()), title(entry.fact().step()), told)));
        }
        if (rows.isEmpty()) {
            return List.of(new Block.Says(source.say("report.event.none")));
        }
        return List.of(new Block.Grid(
                List.of(
                        source.say("report.event.when"),
                        source.say("report.event.step"),
                        source.say("report.event.what")),
                rows));
    }

    private String title(String step) {
        String card = "report.card." + step;
        return source.words().has(card) ? source.say(card) : source.title(step);
    }

    private Optional<String> event(Entry entry) {
        Fact fact = entry.fact();
        if (fact instanceof Fact.Alarm alarm) {
            return Optional.of(
                    source.say("report.event.alarm", source.sayOr("alarm." + alarm.reason(), alarm.reason())));
        } else if (fact instanceof Fact.Reopened again) {
            return Optional.of(source.say("report.event.reopened", reason(again.reason())));
        } else if (fact instanceof Fact.Withdrawn withdrawn) {
            return Optional.of(source.say("report.event.withdrawn", Long.toString(withdrawn.entry())));
        } else if (fact instanceof Fact.Skipped skipped) {
            return Optional.of(source.say("report.event.skipped", reason(skipped.reason())));
        } else if (fact instanceof Fact.Paused paused) {
            return Optional.of(source.say("report.event.paused", reason(paused.note())));
        } else if (fact instanceof Fact.Resumed resumed) {
            return Optional.of(
                    resumed.gapSeconds() < 0
                            ? source.say("report.event.clock-set-back")
                            : source.say("report.event.resumed", Display.of(resumed.gapSeconds(), Unit.SECOND)));
        } else if (fact instanceof Fact.Reading reading && outsideTheSteps(reading.step())) {
            return Optional.of(source.say(
                    "report.event.reading",
                    source.label(reading.field()),
                    PlainText.of(reading.typed()),
                    source.withMeter(reading)));
        }
        return Optional.empty();
    }

    /** The cards' readings, and what a step unknown here may hold. */
    private boolean outsideTheSteps(String id) {
        return source.procedure().steps().stream().noneMatch(step -> step.id().equals(id));
    }

    private String reason(String text) {
        String plain = PlainText.of(text);
        return plain.isEmpty() ? source.say("report.no-reason") : plain;
    }
}
