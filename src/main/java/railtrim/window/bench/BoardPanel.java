package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import railtrim.practice.Node;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** The board from above, with pads to put the probes on: pressing a pad puts the chosen probe there, and then it is the other one's turn. */
final class BoardPanel implements BenchView.Panel {
    private final Words words;
    private final Workbench work;
    private final Consumer<Runnable> deed;
    private final Pane board = new Pane();
    private final BoardArt art;
    private final Group parts = new Group();
    private final Map<Node, Button> pads = new EnumMap<>(Node.class);
    private final ProbeArt red = new ProbeArt("lead-red", 0.55);
    private final ProbeArt black = new ProbeArt("lead-black", -0.55);
    private final ToggleButton redNext;
    private final ToggleButton blackNext;
    private final Button swap;
    private final VBox box;
    private boolean placeRed = true;

    BoardPanel(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.deed = deed;
        redNext = probe("probe-red", "window.bench.probe.red", true);
        blackNext = probe("probe-black", "window.bench.probe.black", false);
        board.setMinSize(Spots.WIDTH, Spots.HEIGHT);
        board.setPrefSize(Spots.WIDTH, Spots.HEIGHT);
        board.setMaxSize(Spots.WIDTH, Spots.HEIGHT);
        board.getStyleClass().add("board");
        art = new BoardArt(words, work.bench(), board);
        Pads.of(work.bench().board()).forEach(this::pad);
        board.getChildren().addAll(parts, black.node(), red.node());
        swap = Build.button(
                "probes-swap", words.of("window.bench.swap"), () -> deed.accept(work::swap), "plain", "bench-small");
        FlowPane probes = new FlowPane(Build.label(words.of("window.bench.probe"), "help"), redNext, blackNext, swap);
        probes.getStyleClass().add("bench-flow");
        box = Build.column("bench-panel", probes, new Fitted(board, Spots.WIDTH, Spots.HEIGHT));
    }

    @Override
    public javafx.scene.Node node() {
        return box;
    }

    @Override
    public void show() {
        redNext.setSelected(placeRed);
        blackNext.setSelected(!placeRed);
        swap.setDisable(work.red().isEmpty() || work.black().isEmpty());
        boolean held = work.held() == Workbench.Held.BOARD;
        red.show(held ? work.red() : Optional.empty());
        black.show(held ? work.black() : Optional.empty());
        pads.forEach((node, pad) -> pad.setAccessibleText(said(node)));
        parts.getChildren()
                .setAll(work.mounted().stream()
                        .map(part -> PartArt.of(part, work.bench()))
                        .toList());
        art.show();
    }

    private String said(Node node) {
        String name = words.of("window.bench.node." + Pads.id(node));
        if (work.red().filter(node::equals).isPresent()) {
            return words.of("window.bench.pad.red", name);
        }
        return work.black().filter(node::equals).isPresent() ? words.of("window.bench.pad.black", name) : name;
    }

    private void pad(Node node) {
        Point2D spot = Spots.of(node);
        Button pad = Build.dress(
                new Button(), "pad-" + Pads.id(node), "", () -> deed.accept(() -> place(node)), "board-pad");
        pad.setLayoutX(spot.getX() - 14);
        pad.setLayoutY(spot.getY() - 14);
        pads.put(node, pad);
        Label print = Build.label(Pads.print(words, node), "board-print");
        print.setLayoutX(spot.getX() - 13);
        boolean below = node == Node.GROUND || node == Node.CONTROL;
        print.setLayoutY(spot.getY() + (below ? 15 : -34));
        print.setMouseTransparent(true);
        board.getChildren().addAll(pad, print);
    }

    private void place(Node node) {
        if (placeRed) {
            work.red(node);
        } else {
            work.black(node);
        }
        placeRed = !placeRed;
    }

    private ToggleButton probe(String id, String key, boolean first) {
        return Build.dress(
                new ToggleButton(words.of(key)),
                id,
                words.of(key + ".name"),
                () -> deed.accept(() -> placeRed = first),
                "chip",
                id);
    }
}
