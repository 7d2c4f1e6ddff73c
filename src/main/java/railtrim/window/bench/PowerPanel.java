package railtrim.window.bench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** Power, load, time and warmth. */
final class PowerPanel implements BenchView.Panel {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss");

    private final Words words;
    private final Bench bench;
    private final Button power;
    private final Button load;
    private final Button otherLoad;
    private final Label seen = Build.prose("", "bench-seen");
    private final Label warmth = Build.prose("", "help");
    private final VBox box;

    PowerPanel(Words words, Workbench work, Consumer<Runnable> deed) {
        this.words = words;
        this.bench = work.bench();
        power = Build.button(
                "bench-power", "", () -> deed.accept(() -> work.power(!bench.isOn())), "plain", "bench-small");
        load = Build.button(
                "bench-load", "", () -> deed.accept(() -> work.load(!bench.isLoaded())), "plain", "bench-small");
        Button minute = Build.button(
                "bench-minute",
                words.of("window.bench.minute"),
                () -> deed.accept(() -> work.pass(60)),
                "plain",
                "bench-small");
        otherLoad = Build.button(
                "bench-other-load",
                words.of("window.bench.load.other"),
                () -> deed.accept(work::otherLoad),
                "plain",
                "bench-small");
        Build.present(otherLoad, bench.board().load().other().isPresent());
        FlowPane row = new FlowPane(power, load, otherLoad, minute);
        row.getStyleClass().add("bench-flow");
        Handle.give(seen, "bench-seen");
        Handle.give(warmth, "bench-warmth");
        box = Build.column("bench-panel", row, seen, warmth);
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show() {
        power.setText(words.of(bench.isOn() ? "window.bench.power.off" : "window.bench.power.on"));
        power.setAccessibleText(power.getText());
        load.setText(words.of(bench.isLoaded() ? "window.bench.load.stop" : "window.bench.load.start"));
        load.setAccessibleText(load.getText());
        load.setDisable(!bench.isOn());
        otherLoad.setDisable(!bench.isOn() || bench.work() == Board.Work.OTHER);
        seen.setText(seen());
        warmth.setText(words.of(
                "window.bench.warmth",
                degrees(bench.chipTemperature()),
                degrees(bench.regulatorTemperature()),
                degrees(bench.roomTemperature()),
                CLOCK.format(bench.now().atZone(ZoneId.of("UTC")))));
    }

    private String seen() {
        if (!bench.isOn()) {
            return words.of("window.bench.seen.off");
        }
        String state = words.of("option.seen." + bench.seen().id());
        return words.of(
                switch (bench.work()) {
                    case IDLE -> "window.bench.seen.idle";
                    case NAMED -> "window.bench.seen.loaded";
                    case OTHER -> "window.bench.seen.other";
                },
                state);
    }

    private static String degrees(double celsius) {
        return Display.of(celsius, Unit.CELSIUS);
    }
}
