package railtrim.report.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.PlainText;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;
import railtrim.report.Axis;
import railtrim.report.Checklist.Block;
import railtrim.report.Drawing;
import railtrim.report.Drawing.Shape;
import railtrim.threshold.FailVoltage;

/** Fail voltages with their brackets, against the clock where all are known, else against the load's current, else one beside the other. */
final class ComparisonDrawing {
    private static final int WIDTH = 680;
    private static final int HEIGHT = 312;
    private static final double LEFT = 76;
    private static final double RIGHT = 640;
    private static final double TOP = 30;
    private static final double BOTTOM = 236;
    private static final double CAP = 8;
    private static final double BESIDE = 24;

    private final List<Piece> pieces;
    private final Words words;
    private final List<Shape> shapes = new ArrayList<>();

    ComparisonDrawing(List<Piece> pieces, Words words) {
        this.pieces = pieces;
        this.words = words;
    }

    Block.Picture picture() {
        double lowest = pieces.stream()
                .mapToDouble(piece -> piece.fail().orElseThrow().fail())
                .min()
                .orElseThrow();
        double highest = pieces.stream()
                .mapToDouble(piece -> Math.max(
                        piece.fail().orElseThrow().bracketHigh(), piece.fitted().orElse(0)))
                .max()
                .orElseThrow();
        Axis volts = Axis.around(lowest, highest, BOTTOM, TOP);
        frame(volts);
        String across = across(volts);
        shapes.add(new Shape.Label((LEFT + RIGHT) / 2, BOTTOM + 38, across, "plain", "middle"));
        key();
        String said = pieces.stream().map(this::said).collect(Collectors.joining("; "));
        return new Block.Picture(
                new Drawing(WIDTH, HEIGHT, words.of("shelf.compare.picture"), shapes),
                words.of("shelf.compare.in-words", said));
    }

    /** What each mark stands for, beside the mark itself; only those that are in the picture. */
    private void key() {
        List<String> marks = new ArrayList<>();
        if (pieces.stream().anyMatch(piece -> piece.fail().orElseThrow().faultSeen())) {
            marks.add("fault");
            marks.add("good");
        }
        if (!pieces.stream().allMatch(piece -> piece.fail().orElseThrow().faultSeen())) {
            marks.add("tried");
        }
        if (pieces.stream().anyMatch(piece -> piece.fitted().isPresent())) {
            marks.add("left");
        }
        for (int i = 0; i < marks.size(); i++) {
            double x = LEFT + i * (RIGHT - LEFT) / marks.size();
            double y = HEIGHT - 14.0;
            sign(marks.get(i), x, y);
            shapes.add(new Shape.Label(
                    x + CAP + 6, y + 4, words.of("shelf.compare.key." + marks.get(i)), "plain", "start"));
        }
    }

    private void sign(String mark, double x, double y) {
        switch (mark) {
            case "fault" -> cross(x, y);
            case "good" -> shapes.add(new Shape.Line(x - CAP, y, x + CAP, y, "thin"));
            case "tried" -> shapes.add(new Shape.Line(x - CAP, y, x + CAP, y, "thick"));
            default -> shapes.add(new Shape.Dot(x, y));
        }
    }

    private void cross(double x, double y) {
        shapes.add(new Shape.Line(x - 5, y - 5, x + 5, y + 5, "thick"));
        shapes.add(new Shape.Line(x - 5, y + 5, x + 5, y - 5, "thick"));
    }

    private void frame(Axis volts) {
        shapes.add(new Shape.Line(LEFT, TOP, LEFT, BOTTOM, "thin"));
        shapes.add(new Shape.Line(LEFT, BOTTOM, RIGHT, BOTTOM, "thin"));
        for (double tick : volts.ticks(6)) {
            shapes.add(new Shape.Line(LEFT - 5, volts.at(tick), LEFT, volts.at(tick), "thin"));
            shapes.add(new Shape.Label(LEFT - 9, volts.at(tick) + 4, sign().volts(tick), "plain", "end"));
        }
    }

    /** That of the scale; boards of both kinds side by side are compared by how far they are from zero. */
    private RailSign sign() {
        return new RailSign(pieces.stream().allMatch(piece -> piece.sign().negative()));
    }

    /** @return what the axis from left to right stands for */
    private String across(Axis volts) {
        List<OptionalDouble> clocks = pieces.stream().map(Piece::clock).toList();
        List<OptionalDouble> currents = pieces.stream().map(Piece::current).toList();
        if (spread(clocks)) {
            marks(clocks, hertz -> Comparison.clock(OptionalDouble.of(hertz)), volts);
            return words.of("shelf.compare.clock");
        } else if (spread(currents)) {
            marks(currents, amperes -> Display.of(amperes, Unit.AMPERE), volts);
            return words.of("shelf.compare.current");
        }
        Axis axis = new Axis(0, pieces.size() + 1.0, LEFT, RIGHT);
        for (int i = 0; i < pieces.size(); i++) {
            mark(i, axis.at(i + 1), volts);
        }
        return words.of("shelf.compare.order");
    }

    private void marks(List<OptionalDouble> values, DoubleFunction<String> named, Axis volts) {
        Axis axis = axis(values);
        List<Double> places =
                values.stream().map(value -> axis.at(value.getAsDouble())).toList();
        for (int i = 0; i < places.size(); i++) {
            mark(i, places.get(i) + aside(places, i), volts);
        }
        for (double value :
                values.stream().map(OptionalDouble::getAsDouble).distinct().toList()) {
            double x = axis.at(value);
            shapes.add(new Shape.Line(x, BOTTOM, x, BOTTOM + 5, "thin"));
            shapes.add(new Shape.Label(x, BOTTOM + 18, named.apply(value), "plain", "middle"));
        }
    }

    /** Jobs at the same place stand beside each other. */
    private static double aside(List<Double> places, int index) {
        double place = places.get(index);
        long together = places.stream().filter(each -> each == place).count();
        long before =
                places.subList(0, index).stream().filter(each -> each == place).count();
        return (before - (together - 1) / 2.0) * BESIDE;
    }

    /** Whether all are known and not all the same. */
    private static boolean spread(List<OptionalDouble> values) {
        return values.stream().allMatch(OptionalDouble::isPresent)
                && values.stream().distinct().count() > 1;
    }

    private static Axis axis(List<OptionalDouble> values) {
        return Axis.around(
                values.stream().mapToDouble(OptionalDouble::getAsDouble).min().orElseThrow(),
                values.stream().mapToDouble(OptionalDouble::getAsDouble).max().orElseThrow(),
                LEFT + 40,
                RIGHT - 40);
    }

    /** The bracket as an upright with caps, a cross where it failed, a dot where it was left at, and on top its number in the table. */
    private void mark(int index, double x, Axis volts) {
        Piece piece = pieces.get(index);
        FailVoltage fail = piece.fail().orElseThrow();
        double low = volts.at(fail.bracketLow());
        double high = volts.at(fail.bracketHigh());
        shapes.add(new Shape.Line(x, low, x, high, "thin"));
        shapes.add(new Shape.Line(x - CAP, high, x + CAP, high, "thin"));
        if (fail.faultSeen()) {
            cross(x, low);
        } else {
            shapes.add(new Shape.Line(x - CAP, low, x + CAP, low, "thick"));
        }
        piece.fitted().ifPresent(left -> shapes.add(new Shape.Dot(x, volts.at(left))));
        double top = Math.max(fail.bracketHigh(), piece.fitted().orElse(0));
        shapes.add(new Shape.Label(x, volts.at(top) - 9, Integer.toString(index + 1), "strong", "middle"));
    }

    private String said(Piece piece) {
        FailVoltage fail = piece.fail().orElseThrow();
        return words.of(
                fail.faultSeen() ? "shelf.compare.said" : "shelf.compare.said-below",
                PlainText.of(piece.name()),
                piece.sign().volts(fail.bracketLow()),
                piece.sign().volts(fail.bracketHigh()));
    }
}
