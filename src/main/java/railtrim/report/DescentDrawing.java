package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;
import railtrim.threshold.Trial;

/** The way down: each voltage that was held, in order, with the faults crossed. */
final class DescentDrawing {
    private static final int WIDTH = 680;
    private static final int HEIGHT = 292;
    private static final double LEFT = 74;
    private static final double RIGHT = 540;
    private static final double TOP = 20;
    private static final double BOTTOM = 236;
    private static final double CROSS = 6;
    /** What "run 12" takes. */
    private static final double RUN_WIDTH = 44;

    private final Source source;
    private final List<Trial> trials;
    private final List<Shape> shapes = new ArrayList<>();
    /** Where the next name may begin, in each of two rows. */
    private final double[] free = new double[2];

    DescentDrawing(Source source) {
        this.source = source;
        this.trials = source.figures().trials();
    }

    /** Empty where there are not two voltages to join. */
    Optional<Block.Picture> picture() {
        return trials.size() < 2 ? Optional.empty() : Optional.of(draw());
    }

    private Block.Picture draw() {
        OptionalDouble stock = source.figures().stock();
        double lowest = trials.stream().mapToDouble(Trial::volts).min().orElseThrow();
        double highest =
                Math.max(trials.stream().mapToDouble(Trial::volts).max().orElseThrow(), stock.orElse(0));
        Axis volts = Axis.around(lowest, highest, BOTTOM, TOP);
        Axis order = new Axis(0, trials.size() + 1, LEFT, RIGHT);
        scale(volts);
        stock.ifPresent(value -> level(volts.at(value), source.say("report.ladder.stock")));
        source.figures()
                .budget()
                .filter(budget -> budget.recommended() <= volts.high())
                .ifPresent(budget -> level(volts.at(budget.recommended()), source.say("report.ladder.recommended")));
        for (int i = 0; i < trials.size(); i++) {
            held(volts, order, i);
        }
        shapes.add(new Shape.Label(
                (LEFT + RIGHT) / 2, BOTTOM + 50, source.say("report.descent.order"), "plain", "middle"));
        String inWords = source.say(
                "report.descent.in-words",
                Integer.toString(trials.size()),
                Long.toString(trials.stream().map(Trial::run).distinct().count()),
                Long.toString(trials.stream().filter(Trial::fault).count()));
        return new Block.Picture(new Drawing(WIDTH, HEIGHT, source.say("report.descent"), shapes), inWords);
    }

    private void scale(Axis volts) {
        shapes.add(new Shape.Line(LEFT, TOP, LEFT, BOTTOM, "thin"));
        shapes.add(new Shape.Line(LEFT, BOTTOM, RIGHT, BOTTOM, "thin"));
        for (double tick : volts.ticks(6)) {
            shapes.add(new Shape.Line(LEFT - 5, volts.at(tick), LEFT, volts.at(tick), "thin"));
            shapes.add(new Shape.Label(LEFT - 9, volts.at(tick) + 4, source.rail(tick), "plain", "end"));
        }
    }

    private void level(double y, String name) {
        shapes.add(new Shape.Line(LEFT, y, RIGHT, y, "leader"));
        shapes.add(new Shape.Label(RIGHT + 6, y + 4, name, "plain", "start"));
    }

    /** Where runs are short, their names stand in two rows; where there is no room in either, the table tells. */
    private void label(double x, int run) {
        int row = x >= free[0] ? 0 : 1;
        if (x < free[row]) {
            return;
        }
        free[row] = x + RUN_WIDTH;
        String name = source.say("report.descent.run", Integer.toString(run));
        shapes.add(new Shape.Label(x, BOTTOM + 16 + 14 * row, name, "plain", "start"));
    }

    private void held(Axis volts, Axis order, int index) {
        Trial trial = trials.get(index);
        double x = order.at(index + 1);
        double y = volts.at(trial.volts());
        boolean runBegins = index == 0 || trials.get(index - 1).run() != trial.run();
        if (runBegins) {
            label(x, trial.run());
            shapes.add(new Shape.Line(x, BOTTOM, x, BOTTOM + 6, "thin"));
        } else {
            shapes.add(new Shape.Line(
                    order.at(index), volts.at(trials.get(index - 1).volts()), x, y, "thin"));
        }
        if (trial.fault()) {
            shapes.add(new Shape.Line(x - CROSS, y - CROSS, x + CROSS, y + CROSS, "thick"));
            shapes.add(new Shape.Line(x - CROSS, y + CROSS, x + CROSS, y - CROSS, "thick"));
        } else {
            shapes.add(new Shape.Dot(x, y));
        }
    }
}
