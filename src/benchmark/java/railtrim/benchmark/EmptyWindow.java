package railtrim.benchmark;

import atlantafx.base.theme.PrimerLight;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The least that can be shown: a window of the same toolkit, theme and size, with nothing in it. */
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
            stage.setScene(new Scene(new StackPane(), 1240, 820));
            stage.setTitle("empty");
            stage.show();
        }
    }
}
