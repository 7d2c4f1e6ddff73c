package railtrim.window.bench;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** The meter: its display, volts or ohms, and what the probes are held to. */
final class MeterPanel implements BenchView.Panel {
    private final Words words;
    private final Workbench work;
    private final Consumer<Runnable> deed;
    private final Label display = Build.label("", "meter-display");
    private final Map<Workbench.Mode, ToggleButton> modes = new EnumMap<>(Workbench.Mode.class);
    private final Map<Workbench.Held, ToggleButton> places = new EnumMap<>(Workbench.Held.class);
    private final Button range;
    private final VBox box;

    MeterPanel(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        this.deed = deed;
        Handle.give(display, "meter-display");
        display.setMaxWidth(Double.MAX_VALUE);
        FlowPane dial = flow();
        for (Workbench.Mode mode : Workbench.Mode.values()) {
            ToggleButton button =
                    toggle("meter-" + lower(mode), "window.bench.mode.", lower(mode), () -> work.mode(mode));
            modes.put(mode, button);
            dial.getChildren().add(button);
        }
        range = Build.button("meter-range", "", () -> deed.accept(work::nextRange), "plain");
        dial.getChildren()
                .add(Build.button(
                        "meter-again", words.of("window.bench.again"), () -> deed.accept(work::measure), "plain"));
        dial.getChildren().add(range);
        FlowPane held = flow();
        for (Workbench.Held place : Workbench.Held.values()) {
            ToggleButton button =
                    toggle("hold-" + lower(place), "window.bench.hold.", lower(place), () -> work.hold(place));
            places.put(place, button);
            held.getChildren().add(button);
        }
        box = Build.column("bench-panel", display, dial, held);
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show() {
        display.setText(work.display());
        display.setAccessibleText(words.of("window.bench.display", work.display()));
        range.setText(work.bench()
                .meter()
                .rangeByHand(work.unit())
                .map(chosen -> words.of("window.bench.range.to", Display.of(chosen.fullScale(), work.unit())))
                .orElseGet(() -> words.of("window.bench.range.itself")));
        range.setAccessibleText(range.getText());
        modes.forEach((mode, button) -> button.setSelected(mode == work.mode()));
        places.forEach((place, button) -> button.setSelected(place == work.held()));
        places.get(Workbench.Held.TRIMMER).setDisable(work.trimmer().isEmpty());
        places.get(Workbench.Held.RESISTOR).setDisable(work.resistor().isEmpty());
    }

    private ToggleButton toggle(String id, String keys, String name, Runnable work) {
        String text = words.of(keys + name);
        ToggleButton button = Build.dress(new ToggleButton(text), id, text, () -> deed.accept(work), "chip");
        button.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        return button;
    }

    private static String lower(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT);
    }

    private static FlowPane flow() {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("bench-flow");
        return flow;
    }
}
