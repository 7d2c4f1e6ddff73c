package railtrim.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import railtrim.procedure.Figures;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;

/** The voltage ladder: every voltage that matters on one vertical scale, highest on top. */
final class LadderDrawing {
    private static final int WIDTH = 560;
    private static final int TOP = 24;
    private static final int RUNG = 22;
    private static final int AXIS = 60;
    private static final int VOLTS = 130;
    private static final int NAMES = 210;

    private final Source source;

    LadderDrawing(Source source) {
        this.source = source;
    }

    private record Rung(double volts, String name, String style) {}

    /** Empty where there are not two voltages to compare. */
    Optional<Block.Picture> picture() {
        List<Rung> rungs = rungs();
        if (rungs.size() < 2) {
            return Optional.empty();
        }
        String inWords = source.say(
                "report.ladder.in-words",
                rungs.stream()
                        .map(rung -> rung.name() + " " + source.rail(rung.volts()))
                        .collect(Collectors.joining("; ")));
        return Optional.of(new Block.Picture(draw(rungs), inWords));
    }

    private List<Rung> rungs() {
        Figures figures = source.figures();
        List<Rung> rungs = new ArrayList<>();
        add(rungs, figures.ratedHigh(), "rated-high", "thin");
        add(rungs, figures.stock(), "stock", "thick");
        add(rungs, figures.start(), "start", "thin");
        add(rungs, figures.fitted(), "fitted", "thick");
        add(rungs, figures.target(), "target", "thin");
        figures.budget()
                .ifPresent(budget -> add(rungs, OptionalDouble.of(budget.recommended()), "recommended", "thin"));
        add(rungs, figures.ratedLow(), "rated-low", "thin");
        add(rungs, figures.goodToShow(), "last-good", "thin");
        add(rungs, figures.fault(), "fault", "dashed");
        add(rungs, figures.floor(), "floor", "dashed");
        rungs.sort(Comparator.comparingDouble(Rung::volts).reversed());
        return rungs;
    }

    private void add(List<Rung> rungs, OptionalDouble volts, String id, String style) {
        volts.ifPresent(value -> rungs.add(new Rung(value, source.say("report.ladder." + id), style)));
    }

    private Drawing draw(List<Rung> rungs) {
        int height = 2 * TOP + RUNG * rungs.size();
        double highest = rungs.get(0).volts();
        double lowest = rungs.get(rungs.size() - 1).volts();
        double perVolt = highest > lowest ? (height - 2 * TOP) / (highest - lowest) : 0;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Line(AXIS, TOP - 8, AXIS, height - TOP + 8, "thick"));
        double free = TOP;
        for (int i = 0; i < rungs.size(); i++) {
            Rung rung = rungs.get(i);
            double rail = Math.round(10 * (TOP + (highest - rung.volts()) * perVolt)) / 10.0;
            // Names keep apart and leave room for those below; the slanted line leads from the voltage's own place to
            // its name.
            double lowestPlace = height - TOP - RUNG * (rungs.size() - 1.0 - i);
            double place = Math.max(free, Math.min(rail, lowestPlace));
            free = place + RUNG;
            shapes.add(new Shape.Line(AXIS - 22, rail, AXIS + 22, rail, rung.style()));
            shapes.add(new Shape.Line(AXIS + 22, rail, VOLTS - 6, place, "leader"));
            shapes.add(new Shape.Label(VOLTS, place + 4, source.rail(rung.volts()), "strong", "start"));
            shapes.add(new Shape.Label(NAMES, place + 4, rung.name(), "plain", "start"));
        }
        return new Drawing(WIDTH, height + 8, source.say("report.ladder"), shapes);
    }
}
