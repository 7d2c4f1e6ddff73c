package railtrim.window;

import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import org.controlsfx.control.SegmentedButton;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** Asks how the window shall look; each answer shows at once and is remembered. */
final class LookSheet {
    private final Shell shell;
    private final Words words;
    private final Theme theme;

    LookSheet(Shell shell) {
        this.shell = shell;
        this.words = shell.words();
        this.theme = shell.theme();
    }

    void ask() {
        Button close = Build.button("look-close", words.of("window.sheet.close"), shell.sheet()::close, "primary");
        VBox body = Build.column(
                "sheet-body",
                named("window.look.colours", colours()),
                named("window.look.text", sizes()),
                Build.label(words.of("window.look.sample"), "look-sample"),
                Build.prose(words.of("window.look.keys"), "help"));
        shell.sheet().ask(words.of("window.look.title"), body, close);
    }

    private Node named(String key, Node control) {
        Label label = Build.label(words.of(key), "field-label");
        label.setLabelFor(control);
        return Build.column("look-row", label, control);
    }

    private SegmentedButton colours() {
        ToggleButton[] buttons = Stream.of(Look.values()).map(this::colour).toArray(ToggleButton[]::new);
        SegmentedButton row = new SegmentedButton(buttons);
        Handle.give(row, "look-colours");
        return row;
    }

    private ToggleButton colour(Look look) {
        String text = words.of("window.look." + look.id());
        ToggleButton button = new ToggleButton(text);
        button.setSelected(theme.look() == look);
        if (button.isSelected()) {
            button.getStyleClass().add("first-focus");
        }
        String name = words.of("window.look.colours") + ": " + text;
        button.selectedProperty().addListener((of, was, is) -> {
            if (is) {
                theme.look(look);
            }
        });
        return Build.dress(button, "look-" + look.id(), name, () -> {});
    }

    private Node sizes() {
        return Build.row(
                "entry",
                Build.button("text-smaller", words.of("window.look.smaller"), theme::smaller, "plain"),
                Build.button("text-usual", words.of("window.look.usual"), theme::usual, "plain"),
                Build.button("text-bigger", words.of("window.look.bigger"), theme::bigger, "plain"));
    }
}
