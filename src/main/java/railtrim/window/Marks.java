package railtrim.window;

import java.util.OptionalDouble;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import railtrim.procedure.Figures;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.RailSign;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** The voltages to keep in sight while the trimmer is turned: last good, next target and floor; or the target to settle at. */
final class Marks {
    private static final Set<String> GOING_DOWN = Set.of("down.on", "down.set", "down.watch");
    private static final Set<String> SETTING = Set.of("set.on", "set.down", "soak", "cold");

    private final Words words;
    private final FlowPane row = new FlowPane();

    Marks(Words words) {
        this.words = words;
        Handle.give(row, "marks");
        row.getStyleClass().add("marks");
    }

    Node node() {
        return row;
    }

    void show(String step, Figures figures) {
        row.getChildren().clear();
        RailSign sign = figures.sign();
        if (GOING_DOWN.contains(step)) {
            mark("window.mark.last-good", sign.shown(figures.lastGood()), "");
            mark("window.mark.next", sign.shown(figures.nextTarget()), "mark-next");
            mark("window.mark.floor", sign.shown(figures.floor()), "");
        } else if (SETTING.contains(step)) {
            mark("window.mark.target", sign.shown(figures.target()), "mark-next");
            mark("window.mark.fault", sign.shown(figures.fault()), "");
        }
        Build.present(row, !row.getChildren().isEmpty());
    }

    private void mark(String key, OptionalDouble volts, String styleClass) {
        if (volts.isPresent()) {
            Label value = Build.label(words.number(Display.volts(volts.getAsDouble())), "mark-value");
            Label name = Build.label(words.of(key), "band-label");
            name.setLabelFor(value);
            Node mark = Build.column("mark", name, value);
            if (!styleClass.isEmpty()) {
                mark.getStyleClass().add(styleClass);
            }
            row.getChildren().add(mark);
        }
    }
}
