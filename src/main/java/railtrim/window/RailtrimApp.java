package railtrim.window;

import java.nio.file.Path;
import java.util.Locale;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import railtrim.job.OwnFolder;
import railtrim.procedure.Words;
import railtrim.window.kit.Aside;

/** The JavaFX application; started by {@link WindowStart}. */
public final class RailtrimApp extends Application {
    @Override
    public void start(Stage stage) {
        if (WindowStart.takenElsewhere()) {
            Platform.exit();
            return;
        }
        Shell shell = new Shell(
                stage, Surroundings.system(), Words.english().numbersOf(Locale.getDefault(Locale.Category.FORMAT)));
        shell.show();
        getParameters().getUnnamed().stream().findFirst().map(Path::of).ifPresent(shell::open);
        Aside.afterTheFirstPicture(() -> settle(shell));
    }

    private static void settle(Shell shell) {
        shell.askForDark();
        Aside.run(
                "door",
                () -> new Doorbell(OwnFolder.path(), System.getenv()).answer(new Summons(shell)),
                door -> door.ifPresent(shell::closeWithIt));
    }
}
