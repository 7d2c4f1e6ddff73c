package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.quantity.Display;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing.Shape;
import railtrim.threshold.MarginBudget;

/** The margin budget as bars, each beginning where the one before it ended, from the fault up to the voltage recommended. */
final class BudgetDrawing {
    private static final int WIDTH = 680;
    private static final double LEFT = 230;
    private static final double RIGHT = 480;
    private static final double TOP = 30;
    private static final double ROW = 24;
    private static final double BAR = 14;

    private final Source source;
    private final List<Shape> shapes = new ArrayList<>();

    BudgetDrawing(Source source) {
        this.source = source;
    }

    Optional<Block.Picture> picture() {
        return source.figures().budget().filter(budget -> budget.sum() > 0).map(this::draw);
    }

    private Block.Picture draw(MarginBudget budget) {
        OptionalDouble chosen = source.figures().target();
        double highest = Math.max(budget.recommended(), chosen.orElse(0));
        Axis volts = new Axis(budget.fail(), highest, LEFT, RIGHT);
        double foot = TOP + ROW * budget.lines().size();
        upright(volts.at(budget.fail()), foot, source.say("report.budget.fault", source.rail(budget.fail())), "start");
        double reached = budget.fail();
        double y = TOP;
        for (MarginBudget.Line line : budget.lines()) {
            double next = reached + line.volts();
            shapes.add(new Shape.Label(LEFT - 10, y + BAR - 2, name(line), "plain", "end"));
            shapes.add(new Shape.Box(
                    volts.at(reached),
                    y,
                    Math.max(0.5, volts.at(next) - volts.at(reached)),
                    BAR,
                    line.measured() ? "part band-grey-dark" : "part band-grey-light"));
            shapes.add(new Shape.Label(RIGHT + 12, y + BAR - 2, value(line), "plain", "start"));
            reached = next;
            y += ROW;
        }
        String recommended = source.say("report.budget.recommended", source.rail(budget.recommended()));
        shapes.add(new Shape.Line(
                volts.at(budget.recommended()), TOP - 8, volts.at(budget.recommended()), foot, "dashed"));
        shapes.add(new Shape.Label(volts.at(budget.recommended()), foot + 16, recommended, "strong", "end"));
        String inWords =
                source.say("report.budget.in-words", source.rail(budget.fail()), source.rail(budget.recommended()));
        return new Block.Picture(new Drawing(WIDTH, (int) foot + 26, source.say("report.budget"), shapes), inWords);
    }

    private void upright(double x, double foot, String name, String anchor) {
        shapes.add(new Shape.Line(x, TOP - 8, x, foot, "thick"));
        shapes.add(new Shape.Label(x, TOP - 14, name, "strong", anchor));
    }

    private String name(MarginBudget.Line line) {
        return source.say("threshold.line." + line.id());
    }

    private String value(MarginBudget.Line line) {
        return source.say(
                "report.budget.line",
                Display.volts(line.volts()),
                source.say(line.measured() ? "report.margin.measured" : "report.margin.allowance"));
    }
}
