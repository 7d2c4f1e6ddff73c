package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import railtrim.job.Origin;
import railtrim.procedure.Phase;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Words;
import railtrim.quantity.PlainText;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/** Puts the parts of a checklist together in the order a reader needs them: what was done, how to undo it, then the whole way. */
final class ChecklistBuilder {
    private final Source source;
    private final State state;
    private final String mark;

    ChecklistBuilder(State state, Procedure procedure, Words words) {
        this.state = state;
        this.source = new Source(state, procedure, words, new Replay(procedure, state.job()));
        this.mark = state.complete() ? "" : source.say("report.mark");
    }

    Checklist build() {
        List<Section> sections = new ArrayList<>();
        HandoverPart handover = new HandoverPart(source);
        sections.add(part("report.part.summary", summary()));
        List<Block> undo = new ArrayList<>(handover.undo());
        undo.add(new Block.PageEnd());
        sections.add(part("report.part.undo", undo));
        sections.add(part("report.part.board", new SummaryPart(source).blocks()));
        sections.add(part("report.part.margin", new MarginPart(source).blocks()));
        sections.add(part("report.part.resistor", new ResistorPart(source).blocks()));
        sections.add(part("report.part.heat", new HeatPart(source).blocks()));
        sections.add(part("report.part.next", handover.nextPerson()));
        sections.add(part("report.part.untested", handover.untested()));
        FaultPart faults = new FaultPart(source);
        sections.add(part("report.part.down", faults.wayDown()));
        sections.add(part("report.part.events", faults.events()));
        for (Phase phase : Phase.values()) {
            sections.addAll(phase(phase));
        }
        String title = source.say("report.title", PlainText.of(state.job().name()));
        return new Checklist(title, mark, missing(), sections);
    }

    /** Whose word it is comes before what it says. */
    private List<Block> summary() {
        List<Block> blocks = new ArrayList<>();
        if (state.job().origin() == Origin.ELSEWHERE) {
            blocks.add(new Block.Says(source.say("report.elsewhere")));
        }
        blocks.addAll(new GlancePart(source).blocks());
        return blocks;
    }

    private Section part(String key, List<Block> blocks) {
        return new Section(2, source.say(key), mark, blocks);
    }

    private List<Section> phase(Phase phase) {
        List<Section> sections = new ArrayList<>();
        List<Block> aim = List.of(new Block.Says(source.say("phase." + phase.id() + ".aim")));
        sections.add(new Section(2, source.say("report.part.phase", source.say("phase." + phase.id())), mark, aim));
        StepPart steps = new StepPart(source);
        state.steps().stream()
                .filter(step -> step.step().phase() == phase)
                .map(steps::section)
                .forEach(sections::add);
        return sections;
    }

    /** The card that stands before everything else, each step under way or to be done again with the answers it lacks, then what was not reached. */
    private List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (state.complete()) {
            return missing;
        }
        state.card().ifPresent(card -> missing.add(told(card)));
        state.steps().stream()
                .filter(step -> step.status() == Status.CURRENT || step.status() == Status.STALE)
                .map(this::missing)
                .forEach(missing::add);
        Stream.of(Phase.values())
                .map(this::notReached)
                .filter(told -> !told.isEmpty())
                .forEach(missing::add);
        return missing;
    }

    /** The steps of a phase that are still to come, in one line; empty where there are none. */
    private String notReached(Phase phase) {
        String titles = state.steps().stream()
                .filter(step -> step.step().phase() == phase && step.status() == Status.LOCKED)
                .map(step -> source.title(step.step().id()))
                .collect(Collectors.joining("; "));
        return titles.isEmpty() ? "" : source.say("report.missing.phase", source.say("phase." + phase.id()), titles);
    }

    private String missing(StepState step) {
        String title = source.title(step.step().id());
        String phase = source.say("phase." + step.step().phase().id());
        String fields = step.missing().stream().map(source::label).collect(Collectors.joining("; "));
        String status = source.say("report.status." + StepPart.id(step.status()));
        return fields.isEmpty()
                ? source.say("report.missing.step", phase, title, status)
                : source.say("report.missing.fields", phase, title, status, fields);
    }

    private String told(Card card) {
        if (card instanceof Card.Stop stop) {
            return source.say("report.missing.stop", source.say(stop.reason()));
        } else if (card instanceof Card.MakeSafe safe) {
            return source.say("report.missing.safe", source.say(safe.reason()));
        }
        return source.say("report.missing.resume");
    }
}
