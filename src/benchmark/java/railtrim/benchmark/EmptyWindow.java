package railtrim.benchmark;

import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.Background;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;

/**
 * The least that can be shown: a window of the same toolkit, theme and size, with nothing in it. Its paper has a colour of its own: the system puts
 * up a white window before anything is painted, and white on white could not be told from it.
 */
public final class EmptyWindow {
    private EmptyWindow() {}

    public static void main(String[] arguments) {
        java.util.logging.Logger.getLogger("javafx").setLevel(java.util.logging.Level.SEVERE);
        Application.launch(Empty.class, arguments);
    }

    /** What the toolkit starts. */
    public static final class Empty extends Application {
        @Override
        public void start(Stage stage) {
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            StackPane paper = new StackPane();
            paper.setBackground(Background.fill(Color.LIGHTGRAY));
            stage.setScene(new Scene(paper, 1240, 820));
            stage.setTitle("empty");
            stage.show();
        }
    }
}
