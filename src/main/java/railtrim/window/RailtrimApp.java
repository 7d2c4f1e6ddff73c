package railtrim.window;

import java.nio.file.Path;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import railtrim.job.OwnFolder;
import railtrim.window.kit.Aside;

/** The JavaFX application; started by {@link WindowStart}. */
public final class RailtrimApp extends Application {
    @Override
    public void start(Stage stage) {
        if (WindowStart.takenElsewhere()) {
            Platform.exit();
            return;
        }
        Shell shell = new Shell(stage, Surroundings.system(), HeadStart.words());
        shell.show(HeadStart.page());
        getParameters().getUnnamed().stream().findFirst().map(Path::of).ifPresent(shell::open);
        Aside.afterTheFirstPicture(() -> settle(shell));
    }

    private static void settle(Shell shell) {
        shell.complete();
        Aside.run(
                "door",
                () -> new Doorbell(OwnFolder.path(), System.getenv()).answer(new Summons(shell)),
                door -> door.ifPresent(shell::closeWithIt));
    }
}
