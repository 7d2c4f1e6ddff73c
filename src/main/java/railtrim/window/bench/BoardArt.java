package railtrim.window.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.effect.GaussianBlur;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Ellipse;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.Shape;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.practice.Seen;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/**
 * The board as its maker left it, seen from above: tracks, the regulator with its pins in their true order, the hot chip, the two resistors of the
 * divider. Shows what eyes and nose can tell: how warm, whether on, solder that ran too far, smoke.
 */
final class BoardArt {
    /** From here on nothing is touched, °C: the limit for held parts in IEC 62368-1, from memory. */
    private static final double HANDS_OFF = 48;

    /** Metal that burns in about a second, °C (Perkins, time to serious burn). */
    private static final double BURNS = 68;

    private static final PseudoClass WARM = PseudoClass.getPseudoClass("warm");
    private static final PseudoClass HOT = PseudoClass.getPseudoClass("hot");
    private static final PseudoClass LIT = PseudoClass.getPseudoClass("lit");

    private static final Rectangle REGULATOR = new Rectangle(112, 42, 96, 50);
    private static final Rectangle CHIP = new Rectangle(92, 132, 84, 64);

    private final Words words;
    private final Bench bench;
    private final Pane board;
    private final List<Shape> pins = new ArrayList<>();
    private final Body regulator;
    private final Body chip;
    private final Circle lamp = new Circle(42, 22, 5);
    private final Ellipse blob = new Ellipse(11, 7);
    private final Group smoke = smoke();
    private final Label dead;

    /** A part that gets warm. */
    private record Body(Rectangle body, Shape glow, Label says, SVGPath waves) {}

    BoardArt(Words words, Bench bench, Pane board) {
        this.words = words;
        this.bench = bench;
        this.board = board;
        ground();
        regulator = body(REGULATOR, "regulator-warmth");
        pins();
        chip = body(CHIP, "chip-warmth");
        chipLegs();
        resistor(326, 96, "R1");
        resistor(326, 156, "R2");
        Board truth = bench.board();
        print(REGULATOR.getX() + 10, REGULATOR.getY() + 6, truth.regulator().marking(), "board-mark");
        // The first word of its name is what is printed on it.
        print(CHIP.getX() + 10, CHIP.getY() + 3, words.of("window.bench.chip"), "board-tiny");
        print(CHIP.getX() + 10, CHIP.getY() + 13, truth.chip().name().split(" ")[0], "board-mark");
        print(12, 206, truth.label().name(), "board-print");
        print(52, 14, words.of("window.bench.lamp"), "board-print");
        dead = print(CHIP.getX() + 10, CHIP.getY() + 44, words.of("window.bench.chip.dead"), "board-mark");
        lamp.getStyleClass().add("board-lamp");
        blob.getStyleClass().add("board-blob");
        board.getChildren().addAll(lamp, blob, smoke);
    }

    void show() {
        warm(regulator, bench.regulatorTemperature());
        warm(chip, bench.chipTemperature());
        lamp.pseudoClassStateChanged(LIT, bench.isOn());
        Optional<int[]> between = bench.bridged().flatMap(this::pinsOf);
        blob.setVisible(between.isPresent());
        between.ifPresent(pair -> {
            blob.setCenterX((middle(pair[0]) + middle(pair[1])) / 2);
            blob.setCenterY(pins.get(pair[0]).getLayoutBounds().getCenterY());
        });
        boolean smoked = bench.seen() == Seen.SMOKE;
        smoke.setVisible(smoked);
        dead.setVisible(smoked);
    }

    // ---- what never changes ----

    private void ground() {
        for (double x : new double[] {16, Spots.WIDTH - 16}) {
            hole(x, 16);
        }
        hole(Spots.WIDTH - 16, Spots.HEIGHT - 16);
        Rectangle jack = box(0, 86, 34, 34, "board-jack");
        board.getChildren()
                .addAll(
                        track(17, 86, 17, 66, 66, 66),
                        track(66, 66, 326, 66),
                        track(226, 66, 226, 150, 160, 150),
                        track(250, 126, 326, 126),
                        track(326, 66, 326, 186),
                        track(326, 186, 160, 186),
                        track(17, 118, 17, 186, 100, 186),
                        jack);
        if (bench.board().divider().controlSupply().isPresent()) {
            board.getChildren().add(track(66, 126, 66, 104, 130, 104, 130, 80));
        }
    }

    /** The pins of the regulator in their order: one row below, or round both sides. */
    private void pins() {
        Board.Regulator truth = bench.board().regulator();
        int many = truth.pins().size();
        int below = truth.outline().twoSides() ? (many + 1) / 2 : many;
        for (int pin = 0; pin < many; pin++) {
            boolean top = pin >= below;
            int inRow = top ? many - below : below;
            int place = top ? many - 1 - pin : pin;
            double x = REGULATOR.getX() + REGULATOR.getWidth() * (place + 0.5) / inRow - 5;
            Rectangle leg = box(x, top ? REGULATOR.getY() - 9 : 92, 10, 10, "board-pin");
            pins.add(leg);
            board.getChildren().add(leg);
            if (!top) {
                print(x + 1, 101, Integer.toString(pin + 1), "board-tiny");
            }
        }
    }

    private void chipLegs() {
        for (int i = 0; i < 7; i++) {
            double along = CHIP.getX() + 10 + i * 10;
            board.getChildren()
                    .addAll(
                            box(along, CHIP.getY() - 5, 5, 5, "board-pin"),
                            box(along, CHIP.getY() + CHIP.getHeight(), 5, 5, "board-pin"));
        }
        for (int i = 0; i < 5; i++) {
            double along = CHIP.getY() + 9 + i * 10;
            board.getChildren()
                    .addAll(
                            box(CHIP.getX() - 5, along, 5, 5, "board-pin"),
                            box(CHIP.getX() + CHIP.getWidth(), along, 5, 5, "board-pin"));
        }
    }

    private void resistor(double x, double y, String name) {
        board.getChildren()
                .addAll(
                        box(x - 9, y - 15, 18, 30, "board-resistor"),
                        box(x - 9, y - 15, 18, 5, "board-pin"),
                        box(x - 9, y + 10, 18, 5, "board-pin"));
        print(x + 13, y - 8, name, "board-tiny");
    }

    private Body body(Rectangle at, String id) {
        Rectangle glow = box(at.getX() - 10, at.getY() - 10, at.getWidth() + 20, at.getHeight() + 20, "board-glow");
        glow.setEffect(new GaussianBlur(18));
        Rectangle body = box(at.getX(), at.getY(), at.getWidth(), at.getHeight(), "board-chip");
        SVGPath waves = new SVGPath();
        waves.setContent("M0 14 q-4 -4 0 -7 t0 -7 M9 14 q-4 -4 0 -7 t0 -7 M18 14 q-4 -4 0 -7 t0 -7");
        waves.getStyleClass().add("board-waves");
        waves.setLayoutX(at.getX() + at.getWidth() - 26);
        waves.setLayoutY(at.getY() + at.getHeight() - 20);
        board.getChildren().addAll(glow, body, waves);
        Label says = print(at.getX() + 10, at.getY() + 28, "", "board-mark");
        Handle.give(says, id);
        return new Body(body, glow, says, waves);
    }

    private static Group smoke() {
        Group cloud = new Group();
        double[][] puffs = {{138, 146, 9}, {148, 128, 13}, {134, 110, 16}, {152, 92, 20}};
        for (double[] puff : puffs) {
            Circle circle = new Circle(puff[0], puff[1], puff[2]);
            circle.getStyleClass().add("board-smoke");
            cloud.getChildren().add(circle);
        }
        cloud.setEffect(new GaussianBlur(6));
        cloud.setMouseTransparent(true);
        return cloud;
    }

    // ---- what does ----

    /** A part glows as it gets warmer, and says how warm it is: colour alone says nothing. */
    private static void warm(Body part, double celsius) {
        part.says().setText(Display.of(celsius, Unit.CELSIUS));
        part.glow().setOpacity(Math.max(0, Math.min(0.9, (celsius - 30) / 50)));
        part.waves().setVisible(celsius >= HANDS_OFF);
        for (Shape each : List.of(part.body(), part.glow(), part.waves())) {
            each.pseudoClassStateChanged(WARM, celsius >= HANDS_OFF);
            each.pseudoClassStateChanged(HOT, celsius >= BURNS);
        }
    }

    /** The two pins beside each other that lead to these places. */
    private Optional<int[]> pinsOf(Node.Pair pair) {
        List<Optional<Node>> leads =
                bench.board().regulator().pins().stream().map(Node::of).toList();
        for (int pin = 0; pin + 1 < leads.size(); pin++) {
            Optional<Node> one = leads.get(pin);
            Optional<Node> next = leads.get(pin + 1);
            if (one.isPresent() && next.isPresent() && pair.joins(one.get(), next.get())) {
                return Optional.of(new int[] {pin, pin + 1});
            }
        }
        return Optional.empty();
    }

    private double middle(int pin) {
        return pins.get(pin).getLayoutBounds().getCenterX();
    }

    // ---- marks ----

    private void hole(double x, double y) {
        Circle hole = new Circle(x, y, 6);
        hole.getStyleClass().add("board-hole");
        board.getChildren().add(hole);
    }

    private static Shape track(double... points) {
        Polyline line = new Polyline(points);
        line.getStyleClass().add("board-track");
        return line;
    }

    static Line line(double x1, double y1, double x2, double y2, String styleClass) {
        Line line = new Line(x1, y1, x2, y2);
        line.getStyleClass().add(styleClass);
        line.setMouseTransparent(true);
        return line;
    }

    private static Rectangle box(double x, double y, double width, double height, String styleClass) {
        Rectangle rectangle = new Rectangle(x, y, width, height);
        rectangle.getStyleClass().add(styleClass);
        return rectangle;
    }

    private Label print(double x, double y, String text, String styleClass) {
        Label label = Build.label(text, styleClass);
        label.setLayoutX(x);
        label.setLayoutY(y);
        label.setMouseTransparent(true);
        board.getChildren().add(label);
        return label;
    }
}
