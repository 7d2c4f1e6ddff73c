package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import railtrim.practice.Node;
import railtrim.practice.Part;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;

/**
 * The board from above: the regulator, the two resistors of its divider, what was soldered across them, and pads to put the probes on.
 * Pressing a pad puts the chosen probe there.
 */
final class BoardPanel implements BenchView.Panel {
    private static final double WIDTH = 370;
    private static final double HEIGHT = 216;

    /** From here on nothing is touched, °C: the limit for held parts in IEC 62368-1, from memory. */
    private static final double HANDS_OFF = 48;

    /** Metal that burns in about a second, °C (Perkins, time to serious burn). */
    private static final double BURNS = 68;

    private static final PseudoClass WARM = PseudoClass.getPseudoClass("warm");
    private static final PseudoClass HOT = PseudoClass.getPseudoClass("hot");

    /** Where a pad lies. */
    private record Spot(double x, double y) {}

    private static final Map<Node, Spot> SPOTS = new EnumMap<>(Map.of(
            Node.INPUT, new Spot(50, 52),
            Node.OUTPUT, new Spot(330, 52),
            Node.ADJUST, new Spot(250, 110),
            Node.GROUND, new Spot(330, 168),
            Node.CONTROL, new Spot(50, 120)));

    private final Words words;
    private final Workbench work;
    private final Consumer<Runnable> deed;
    private final Pane board = new Pane();
    private final Map<Node, Button> pads = new EnumMap<>(Node.class);
    private final CubicCurve redLead = lead("lead-red", 150);
    private final CubicCurve blackLead = lead("lead-black", 110);
    private final ToggleButton redNext;
    private final ToggleButton blackNext;
    private final Label added = Build.label("", "board-print");
    private final Rectangle regulator = box(92, 24, 96, 62, "board-chip");
    private final Rectangle chip = box(92, 104, 84, 52, "board-chip");
    private final Label regulatorWarmth = Build.label("", "board-print");
    private final Label chipWarmth = Build.label("", "board-print");
    private final Rectangle addedBody = box(0, 0, 16, 30, "board-added");
    private final VBox box;
    private boolean placeRed = true;

    BoardPanel(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.deed = deed;
        redNext = probe("probe-red", "window.bench.probe.red", true);
        blackNext = probe("probe-black", "window.bench.probe.black", false);
        board.setMinSize(WIDTH, HEIGHT);
        board.setPrefSize(WIDTH, HEIGHT);
        board.setMaxSize(WIDTH, HEIGHT);
        board.getStyleClass().add("board");
        drawBoard();
        for (Node node : Node.values()) {
            if (node != Node.CONTROL
                    || work.bench().board().divider().controlSupply().isPresent()) {
                pad(node);
            }
        }
        board.getChildren().addAll(addedBody, added, blackLead, redLead);
        FlowPane probes = new FlowPane(Build.label(words.of("window.bench.probe"), "help"), redNext, blackNext);
        probes.getStyleClass().add("bench-flow");
        box = Build.column("bench-panel", probes, new Fitted(board, WIDTH, HEIGHT));
    }

    @Override
    public javafx.scene.Node node() {
        return box;
    }

    @Override
    public void show() {
        redNext.setSelected(placeRed);
        blackNext.setSelected(!placeRed);
        boolean held = work.held() == Workbench.Held.BOARD;
        lead(redLead, held ? work.red() : Optional.empty(), -6);
        lead(blackLead, held ? work.black() : Optional.empty(), 6);
        pads.forEach((node, pad) -> pad.setAccessibleText(said(node)));
        showAdded();
        warm(regulator, regulatorWarmth, work.bench().regulatorTemperature());
        warm(chip, chipWarmth, work.bench().chipTemperature());
    }

    private String said(Node node) {
        String name = words.of("window.bench.node." + lower(node));
        if (work.red().filter(node::equals).isPresent()) {
            return words.of("window.bench.pad.red", name);
        }
        return work.black().filter(node::equals).isPresent() ? words.of("window.bench.pad.black", name) : name;
    }

    private void drawBoard() {
        board.getChildren()
                .addAll(
                        track(50, 52, 330, 52),
                        track(330, 52, 330, 168),
                        track(250, 110, 330, 110),
                        track(140, 168, 330, 168),
                        regulator,
                        chip,
                        box(321, 66, 18, 30, "board-resistor"),
                        box(321, 124, 18, 30, "board-resistor"));
        print(104, 46, work.bench().board().regulator().marking());
        print(104, 112, words.of("window.bench.chip"));
        lay(regulatorWarmth, 104, 64);
        lay(chipWarmth, 104, 132);
        print(14, 192, work.bench().board().label().name());
    }

    private void pad(Node node) {
        Spot spot = SPOTS.get(node);
        Button pad =
                Build.dress(new Button(), "pad-" + lower(node), "", () -> deed.accept(() -> place(node)), "board-pad");
        pad.setLayoutX(spot.x() - 14);
        pad.setLayoutY(spot.y() - 14);
        pads.put(node, pad);
        board.getChildren().add(pad);
        double above = node == Node.ADJUST ? 18 : node == Node.GROUND ? 16 : -34;
        double aside = node == Node.ADJUST ? -12 : -14;
        print(
                spot.x() - (node == Node.ADJUST ? 16 : 12),
                spot.y() + above,
                words.of("window.bench.pad." + lower(node)));
    }

    private void place(Node node) {
        if (placeRed) {
            work.red(node);
        } else {
            work.black(node);
        }
        placeRed = !placeRed;
    }

    private ToggleButton probe(String id, String key, boolean red) {
        return Build.dress(
                new ToggleButton(words.of(key)),
                id,
                words.of(key),
                () -> deed.accept(() -> placeRed = red),
                "chip",
                id);
    }

    /** What was soldered across a leg lies beside it; a lifted part hangs off. */
    private void showAdded() {
        Optional<Workbench.Mounted<? extends Part>> mounted = work.trimmer()
                .filter(each -> each.across().isPresent())
                .<Workbench.Mounted<? extends Part>>map(each -> each)
                .or(() -> work.resistor().filter(each -> each.across().isPresent()));
        addedBody.setVisible(mounted.isPresent());
        added.setVisible(mounted.isPresent());
        mounted.ifPresent(part -> {
            Node.Pair pair = part.across().orElseThrow();
            double y = pair.id().equals("out-adjust") ? 66 : pair.id().equals("adjust-ground") ? 124 : 95;
            addedBody.setX(286);
            addedBody.setY(y);
            addedBody.setRotate(part.lifted() ? 30 : 0);
            added.setText(part.name());
            added.setLayoutX(190);
            added.setLayoutY(y + 6);
        });
    }

    private static void lead(CubicCurve lead, Optional<Node> node, double aside) {
        lead.setVisible(node.isPresent());
        node.map(SPOTS::get).ifPresent(spot -> {
            lead.setEndX(spot.x() + aside);
            lead.setEndY(spot.y());
            lead.setControlX2(spot.x() + aside);
            lead.setControlY2(spot.y() + 60);
        });
    }

    private static CubicCurve lead(String styleClass, double from) {
        CubicCurve curve = new CubicCurve(from, HEIGHT, from, HEIGHT - 50, from, HEIGHT, from, HEIGHT);
        curve.getStyleClass().addAll("lead", styleClass);
        curve.setMouseTransparent(true);
        return curve;
    }

    private static Shape track(double x1, double y1, double x2, double y2) {
        Line line = new Line(x1, y1, x2, y2);
        line.getStyleClass().add("board-track");
        return line;
    }

    private static Rectangle box(double x, double y, double width, double height, String styleClass) {
        Rectangle rectangle = new Rectangle(x, y, width, height);
        rectangle.getStyleClass().add(styleClass);
        return rectangle;
    }

    /** A part glows as it gets warmer, and says how warm it is: colour alone says nothing. */
    private static void warm(Rectangle part, Label says, double celsius) {
        says.setText(Display.of(Math.rint(celsius), Unit.CELSIUS));
        part.pseudoClassStateChanged(WARM, celsius >= HANDS_OFF);
        part.pseudoClassStateChanged(HOT, celsius >= BURNS);
    }

    private void print(double x, double y, String text) {
        lay(Build.label(text, "board-print"), x, y);
    }

    private void lay(Label label, double x, double y) {
        label.setLayoutX(x);
        label.setLayoutY(y);
        label.setMouseTransparent(true);
        board.getChildren().add(label);
    }

    private static String lower(Node node) {
        return node.name().toLowerCase(Locale.ROOT);
    }
}
