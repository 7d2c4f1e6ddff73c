package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.procedure.Figures;
import railtrim.procedure.Slip;
import railtrim.procedure.State.Status;
import railtrim.report.Checklist.Block;
import railtrim.threshold.Trial;

/** For whoever has the board next: how to undo the change, what to beware of, and what nobody tried. */
final class HandoverPart {
    private final Source source;
    private final Figures figures;

    HandoverPart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> undo() {
        if (!fitted() && !trimmerOn()) {
            return List.of(new Block.Says(source.say("report.undo.nothing")));
        }
        String ohms = figures.reading("leg.ohms").map(source::withMeter).orElseGet(source::notKnown);
        return List.of(new Block.Deeds(List.of(
                source.say("report.undo.off"),
                source.say("report.undo.dead"),
                source.say(takeOff(), source.leg()),
                source.say("report.undo.leave"),
                source.say("report.undo.measure", ohms),
                source.say("report.undo.on", source.rail(figures.stock())))));
    }

    private String takeOff() {
        if (!fitted()) {
            return "report.undo.take-trimmer-off";
        }
        return new ResistorPart(source).several() ? "report.undo.take-off-two" : "report.undo.take-off";
    }

    private boolean fitted() {
        return figures.choice("fit.left").filter("resistor-only"::equals).isPresent();
    }

    private boolean trimmerOn() {
        return !figures.history("solder.pair").isEmpty();
    }

    List<Block> nextPerson() {
        List<String> points = new ArrayList<>();
        if (fitted()) {
            points.add(source.say("report.next.lowered", source.rail(figures.fitted()), source.rail(figures.stock())));
        } else if (trimmerOn()) {
            points.add(source.say("report.next.trimmer"));
        }
        points.add(source.say("report.next.leave-leg"));
        points.add(source.say("report.next.dead-first"));
        points.add(source.say("report.next.hot"));
        points.add(source.say("report.next.copy"));
        for (String caution : List.of("closed-supply", "static", "low-voltage-data")) {
            points.add(source.caution(caution));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Points(points));
        if (!figures.slips().isEmpty()) {
            blocks.add(new Block.Says(source.say("report.next.faults")));
            blocks.add(new Block.Grid(
                    List.of(
                            source.say("report.fault.what"),
                            source.say("report.fault.output"),
                            source.say("report.fault.harm")),
                    figures.slips().stream().map(this::fault).toList()));
        }
        return blocks;
    }

    private List<String> fault(Slip slip) {
        String output = slip.output(source.words())
                .orElseGet(() -> source.rail(slip.volts().getAsDouble()));
        return List.of(
                slip.told(source.words()),
                output,
                source.say(slip.harmful() ? "report.fault.harmful" : "report.fault.harmless"));
    }

    /** Only what follows from the job itself is claimed here. */
    List<Block> untested() {
        List<String> points = new ArrayList<>();
        source.state().steps().stream()
                .filter(step -> step.status() == Status.SKIPPED)
                .forEach(step -> points.add(source.say(
                        "report.untested.skipped", source.title(step.step().id()))));
        List<Trial> trials = figures.trials();
        if (trials.isEmpty()) {
            points.add(source.say("report.untested.no-fail"));
        } else if (trials.stream().noneMatch(Trial::fault)) {
            points.add(source.say("report.untested.no-fault"));
        }
        if (trials.stream().map(Trial::run).distinct().count() == 1) {
            points.add(source.say("report.untested.one-run"));
        }
        if (!trials.isEmpty() && trials.stream().noneMatch(Trial::cold)) {
            points.add(source.say("report.untested.no-cold-run"));
        }
        if (trials.stream().map(Trial::load).distinct().count() == 1) {
            points.add(source.say("report.untested.one-load", source.text(figures.text("load.name"))));
        }
        if (figures.reading("temp.chip").isEmpty()
                || figures.reading("fit.temp.chip").isEmpty()) {
            points.add(source.say("report.untested.temperature"));
        }
        if (figures.reading("load.current").isEmpty()) {
            points.add(source.say("report.untested.current"));
        }
        if (figures.choice("cold.seen").equals(Optional.empty())) {
            points.add(source.say("report.untested.no-cold-start"));
        }
        points.add(source.say("report.untested.always"));
        return List.of(new Block.Points(points));
    }
}
