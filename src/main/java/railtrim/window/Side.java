package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.practice.Bench;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.window.bench.BenchView;
import railtrim.window.bench.Papers;
import railtrim.window.kit.Build;

/** The picture beside the step: what to touch now. In practice the bench and the board's papers share its place. */
final class Side {
    private final Words words;
    private final PicturePane picture;
    private final StackPane shown;
    private final VBox side;
    private final FlowPane tabs = new FlowPane();
    private Optional<BenchView> bench = Optional.empty();
    private Optional<State> shownFor = Optional.empty();

    Side(Words words, PicturePane picture) {
        this.words = words;
        this.picture = picture;
        this.shown = new StackPane(picture.node());
        this.side = Build.column("side", shown);
        tabs.getStyleClass().add("bench-flow");
        shown.setMinSize(0, 0);
        VBox.setVgrow(shown, Priority.ALWAYS);
    }

    Parent node() {
        return side;
    }

    /** Puts a practice bench beside the picture. */
    void practice(BenchView view, Bench on) {
        bench = Optional.of(view);
        List<ToggleButton> buttons = new ArrayList<>();
        tab(buttons, "tab-bench", "window.tab.bench", view.node());
        tab(buttons, "tab-picture", "window.tab.picture", picture.node());
        tab(
                buttons,
                "tab-papers",
                "window.tab.papers",
                new Papers(words, on.board(), on.meter().meter().id()).node());
        tabs.getChildren().setAll(buttons);
        side.getChildren().add(0, tabs);
        buttons.get(0).fire();
    }

    /** Takes what room there is. */
    void anyWidth() {
        side.setMinWidth(0);
        side.setPrefWidth(Region.USE_COMPUTED_SIZE);
        side.setMaxWidth(Double.MAX_VALUE);
    }

    /** What it is called where it can be asked for by name. */
    String word() {
        return words.of(bench.isPresent() ? "window.tab.bench" : "window.tab.picture");
    }

    void width(double pixels) {
        side.setMinWidth(pixels);
        side.setPrefWidth(pixels);
        side.setMaxWidth(pixels);
    }

    /** @param state of the job; the bench shows by itself what is done on it */
    void show(State state) {
        if (shownFor.filter(each -> each == state).isEmpty()) {
            bench.ifPresent(BenchView::show);
            shownFor = Optional.of(state);
        }
        picture.show();
    }

    private void tab(List<ToggleButton> buttons, String id, String key, Node content) {
        ToggleButton button = new ToggleButton(words.of(key));
        Build.dress(
                button,
                id,
                words.of(key),
                () -> {
                    buttons.forEach(each -> each.setSelected(each == button));
                    shown.getChildren().setAll(content);
                },
                "chip");
        button.setMinWidth(Region.USE_PREF_SIZE);
        buttons.add(button);
    }
}
