package railtrim.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.picture.Answering;
import railtrim.window.picture.Pictures;

/** The picture of the step, or another that was asked for until the step changes; below it what can be done with it. */
final class PicturePane implements Answering {
    private final Shell shell;
    private final Words words;
    private final Desk desk;
    private final Path folder;
    private final StackPane place = new StackPane();
    private final MenuButton others;
    private final FlowPane foot;
    private final VBox pane;
    private Optional<State> drawn = Optional.empty();
    private String drawnStep = "";
    private Optional<Step.Picture> asked = Optional.empty();

    /** @param folder where a picture is kept unless the person says otherwise */
    PicturePane(Shell shell, Desk desk, Path folder) {
        this.shell = shell;
        this.words = shell.words();
        this.desk = desk;
        this.folder = folder;
        this.others = others();
        Handle.give(place, "picture");
        place.getStylesheets().add(Pictures.style());
        place.setMinSize(0, 0);
        VBox.setVgrow(place, Priority.ALWAYS);
        Button save = Build.button("picture-save", words.of("window.picture.save"), this::save, "quiet-button");
        save.setAccessibleText(words.of("window.picture.save.name"));
        foot = new FlowPane(others, save);
        foot.getStyleClass().add("picture-foot");
        pane = Build.column("picture-pane", place, foot);
        pane.setMinSize(0, 0);
        pane.sceneProperty().addListener((of, was, is) -> drawIfSeen());
    }

    Node node() {
        return pane;
    }

    void show() {
        foot.setDisable(desk.makingSafe());
        String step = desk.shown().step().id();
        if (!drawnStep.equals(step)) {
            asked = Optional.empty();
            drawn = Optional.empty();
            drawnStep = step;
        }
        drawIfSeen();
    }

    /** While the bench is shown in its place, nothing is drawn. */
    private void drawIfSeen() {
        boolean current = drawn.filter(state -> state == desk.state()).isPresent();
        if (pane.getScene() != null && !current) {
            draw();
        }
    }

    private void draw() {
        drawn = Optional.of(desk.state());
        Step.Picture kind =
                desk.makingSafe() ? Step.Picture.BOARD : asked.orElse(Pictures.beside(desk.shown(), desk.state()));
        place.getChildren().setAll(Pictures.of(kind, desk.shown(), desk.state(), words, this));
    }

    private MenuButton others() {
        MenuButton button = new MenuButton(words.of("window.picture.others"));
        Handle.give(button, "picture-others");
        button.setAccessibleText(words.of("window.picture.others"));
        button.getStyleClass().add("quiet-button");
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getItems().add(item("step", words.of("window.picture.step"), Optional.empty()));
        for (Step.Picture kind : Step.Picture.values()) {
            String id = kind.name().toLowerCase(Locale.ROOT);
            button.getItems().add(item(id, words.of("window.picture." + id), Optional.of(kind)));
        }
        return button;
    }

    private MenuItem item(String id, String name, Optional<Step.Picture> kind) {
        MenuItem item = new MenuItem(name);
        item.setId("picture-of-" + id);
        item.setOnAction(event -> {
            asked = kind;
            draw();
        });
        return item;
    }

    private void save() {
        shell.surroundings().askForPicture(shell.stage(), folder, words).ifPresent(this::save);
    }

    private void save(Path file) {
        try {
            Pictures.save(place.getChildren().get(0), file);
            shell.tell(words.of("window.picture.saved"), file.toString());
        } catch (IOException e) {
            shell.tell(
                    words.of("window.picture.not-saved"), words.of("window.picture.not-saved.text", file.toString()));
        }
    }

    @Override
    public List<Choice> choices(String field) {
        return desk
                .course()
                .field(field)
                .filter(desk::open)
                .filter(Field.Choice.class::isInstance)
                .map(each -> ((Field.Choice) each).options().apply(desk.state().figures()))
                .orElse(List.of())
                .stream()
                .map(option -> new Choice(option.id(), words.of(option.label())))
                .toList();
    }

    @Override
    public void choose(String field, String answer) {
        desk.choose(field, answer);
    }
}
