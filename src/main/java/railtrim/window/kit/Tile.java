package railtrim.window.kit;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A large button with a title and a line that says what it does; the words lie over the button, so that they may wrap. */
public final class Tile {
    private final Button button;
    private final StackPane pane;

    public Tile(String id, String title, String about, Runnable pressed, Node... signs) {
        button = Build.dress(new Button(), id, title + ". " + about, pressed, "tile-button");
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        VBox words = Build.column("tile-words", Build.prose(title, "tile-title"), Build.prose(about, "tile-about"));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = Build.row("tile-row", signs);
        row.getChildren().add(words);
        row.setMouseTransparent(true);
        pane = new StackPane(button, row);
        pane.getStyleClass().add("tile");
    }

    /** As the one to take first. */
    public Tile first() {
        pane.getStyleClass().add("tile-first");
        return this;
    }

    public Node node() {
        return pane;
    }

    public Button button() {
        return button;
    }
}
