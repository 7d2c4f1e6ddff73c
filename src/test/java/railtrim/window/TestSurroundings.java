package railtrim.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.stage.Stage;
import railtrim.job.Time;
import railtrim.procedure.Words;
import railtrim.window.print.Printing;

/** Everything below one folder of the test's own; the system's dialogs answer with nothing. */
record TestSurroundings(Path folder, Printing printing, Time time) implements Surroundings {
    /** A computer without a printer. */
    TestSurroundings(Path folder) {
        this(folder, new TestPrinting(false));
    }

    TestSurroundings(Path folder, Printing printing) {
        this(folder, printing, Time.system());
    }

    @Override
    public Path jobFolder() {
        return folder.resolve("jobs");
    }

    @Override
    public Path ownFolder() {
        return folder.resolve("own");
    }

    @Override
    public void askForDark(Consumer<Boolean> answer) {
        answer.accept(false);
    }

    @Override
    public Optional<Path> askForJob(Stage stage, Words words) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> askForFolder(Stage stage, Path start) {
        return Optional.empty();
    }

    @Override
    public Optional<Path> askForPicture(Stage stage, Path start, Words words) {
        return Optional.of(folder.resolve("picture.svg"));
    }
}
