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
import railtrim.practice.Shown;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** The meter itself: its glass, and the keys below it. It stays in sight while the bench below it is scrolled. */
final class MeterFace implements BenchView.Panel {
    private final Words words;
    private final Workbench work;
    private final Label display = Build.label("", "meter-display");
    private final Label range = Build.label("", "meter-small");
    private final Label where = Build.label("", "meter-small");
    private final Map<Workbench.Mode, ToggleButton> modes = new EnumMap<>(Workbench.Mode.class);
    private final Button next;
    private final VBox box;

    MeterFace(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.work = work;
        Handle.give(display, "meter-display");
        Handle.give(range, "meter-range-now");
        display.setMaxWidth(Double.MAX_VALUE);
        FlowPane keys = new FlowPane();
        keys.getStyleClass().add("meter-keys");
        for (Workbench.Mode mode : Workbench.Mode.values()) {
            String name = mode.name().toLowerCase(Locale.ROOT);
            String text = words.of("window.bench.mode." + name);
            ToggleButton key = Build.dress(
                    new ToggleButton(text),
                    "meter-" + name,
                    text,
                    () -> deed.accept(() -> work.mode(mode)),
                    "meter-key");
            modes.put(mode, key);
            keys.getChildren().add(key);
        }
        next = key("meter-range", "window.bench.range", () -> deed.accept(work::nextRange));
        keys.getChildren().addAll(next, key("meter-again", "window.bench.again", () -> deed.accept(work::measure)));
        VBox glass = Build.column("meter-glass", Build.row("meter-line", where, Build.spring(), range), display);
        box = Build.column("meter", glass, keys);
    }

    private Button key(String id, String text, Runnable pressed) {
        return Build.button(id, words.of(text), pressed, "meter-key");
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
                .map(chosen -> words.of(
                        work.display().equals(Shown.OVERLOAD)
                                ? "window.bench.range.too-small"
                                : "window.bench.range.to",
                        Display.of(chosen.fullScale(), work.unit())))
                .orElseGet(() -> words.of("window.bench.range.itself")));
        next.setAccessibleText(words.of("window.bench.range.now", range.getText()));
        where.setText(where());
        modes.forEach((mode, key) -> key.setSelected(mode == work.mode()));
    }

    private String where() {
        if (work.held() != Workbench.Held.BOARD) {
            return words.of("window.bench.hold." + work.held().name().toLowerCase(Locale.ROOT));
        }
        return work.red().isPresent() && work.black().isPresent()
                ? words.of(
                        "window.bench.probes",
                        Pads.print(words, work.red().get()),
                        Pads.print(words, work.black().get()))
                : words.of("window.bench.probes.none");
    }
}
