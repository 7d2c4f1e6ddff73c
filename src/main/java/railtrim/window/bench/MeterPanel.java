package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** What the two probes are held to: the board, a fresh cell, each other, or a part in the hand. */
final class MeterPanel implements BenchView.Panel {
    /** Small drawings of our own, 30 by 18. */
    private static final Map<Workbench.Held, String> DRAWN = new EnumMap<>(Map.of(
            Workbench.Held.BOARD,
            "M2 1 H28 V17 H2 Z M7 5 h8 v8 h-8 Z M15 9 h5 M23 9 m-3 0 a3 3 0 1 0 6 0 a3 3 0 1 0 -6 0",
            Workbench.Held.CELL,
            "M2 3 H24 V15 H2 Z M24 6 h4 v6 h-4 M6 9 h4 M16 9 h5 M18.5 6.5 v5",
            Workbench.Held.TOGETHER,
            "M1 2 L11 8 L15 9 L19 8 L29 2 M1 2 L3 0 L12 6 M29 2 L27 0 L18 6 M15 12 v5",
            Workbench.Held.TRIMMER,
            "M7 1 H23 V15 H7 Z M15 8 m-4 0 a4 4 0 1 0 8 0 a4 4 0 1 0 -8 0 M12.5 10.5 L17.5 5.5 M10 15 v3 M15 15 v3 M20 15 v3",
            Workbench.Held.RESISTOR,
            "M0 9 H7 M23 9 H30 M7 4 H23 V14 H7 Z M11 4 v10 M14 4 v10 M19 4 v10"));

    private final Words words;
    private final Workbench work;
    private final Consumer<Runnable> deed;
    private final Map<Workbench.Held, ToggleButton> places = new EnumMap<>(Workbench.Held.class);
    private final FlowPane box = new FlowPane();

    MeterPanel(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.deed = deed;
        box.getStyleClass().add("bench-flow");
        for (Workbench.Held place : Workbench.Held.values()) {
            ToggleButton button = place(place);
            places.put(place, button);
            box.getChildren().add(button);
        }
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show() {
        places.forEach((place, button) -> button.setSelected(place == work.held()));
        places.get(Workbench.Held.TRIMMER).setDisable(work.trimmer().isEmpty());
        places.get(Workbench.Held.RESISTOR).setDisable(work.resistor().isEmpty());
    }

    private ToggleButton place(Workbench.Held place) {
        String name = place.name().toLowerCase(Locale.ROOT);
        ToggleButton button = Build.dress(
                new ToggleButton(words.of("window.bench.hold.short." + name)),
                "hold-" + name,
                words.of("window.bench.hold." + name),
                () -> deed.accept(() -> work.hold(place)),
                "hold");
        SVGPath drawn = new SVGPath();
        drawn.setContent(DRAWN.get(place));
        drawn.getStyleClass().add("hold-drawn");
        button.setGraphic(drawn);
        button.setContentDisplay(ContentDisplay.TOP);
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }
}
