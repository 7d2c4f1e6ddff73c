package railtrim.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import railtrim.job.Journal;
import railtrim.job.OwnFolder;
import railtrim.job.Time;
import railtrim.procedure.Words;
import railtrim.window.print.Printing;
import railtrim.window.print.SystemPrinting;

/** What lies outside the window: the clocks, the folders, and the system's own dialogs. Tests hand in others. */
interface Surroundings {
    Time time();

    /** Where new jobs go unless the person says otherwise. */
    Path jobFolder();

    /** Where the window keeps which jobs were opened lately. */
    Path ownFolder();

    /** Asks in its own time whether the rest of the screen is dark; the answer may come on any thread. */
    void askForDark(Consumer<Boolean> answer);

    Optional<Path> askForJob(Stage stage, Words words);

    Optional<Path> askForFolder(Stage stage, Path start);

    /** Where a picture is to be kept; the name's ending says how. */
    Optional<Path> askForPicture(Stage stage, Path start, Words words);

    Printing printing();

    static Surroundings system() {
        Path home = Path.of(System.getProperty("user.home"));
        return new Surroundings() {
            @Override
            public Time time() {
                return Time.system();
            }

            @Override
            public Path jobFolder() {
                return home.resolve("Documents").resolve("Railtrim");
            }

            @Override
            public Path ownFolder() {
                return OwnFolder.path();
            }

            @Override
            public void askForDark(Consumer<Boolean> answer) {
                Thread asking = new Thread(() -> answer.accept(SystemLook.dark()), "system look");
                asking.setDaemon(true);
                asking.start();
            }

            @Override
            public Printing printing() {
                return new SystemPrinting();
            }

            @Override
            public Optional<Path> askForJob(Stage stage, Words words) {
                FileChooser chooser = new FileChooser();
                chooser.setTitle(words.of("window.open.title"));
                chooser.getExtensionFilters()
                        .add(new FileChooser.ExtensionFilter(words.of("window.open.kind"), "*" + Journal.ENDING));
                chooser.getExtensionFilters()
                        .add(new FileChooser.ExtensionFilter(
                                words.of("window.open.earlier"),
                                "*" + Journal.ENDING + ".kept-1",
                                "*" + Journal.ENDING + ".kept-2",
                                "*" + Journal.ENDING + ".kept-3"));
                if (jobFolder().toFile().isDirectory()) {
                    chooser.setInitialDirectory(jobFolder().toFile());
                }
                return Optional.ofNullable(chooser.showOpenDialog(stage)).map(java.io.File::toPath);
            }

            @Override
            public Optional<Path> askForPicture(Stage stage, Path start, Words words) {
                FileChooser chooser = new FileChooser();
                chooser.setTitle(words.of("window.picture.save.title"));
                chooser.setInitialFileName(words.of("window.picture.file"));
                chooser.getExtensionFilters()
                        .addAll(
                                new FileChooser.ExtensionFilter(words.of("window.picture.png"), "*.png"),
                                new FileChooser.ExtensionFilter(words.of("window.picture.svg"), "*.svg"));
                if (start.toFile().isDirectory()) {
                    chooser.setInitialDirectory(start.toFile());
                }
                return Optional.ofNullable(chooser.showSaveDialog(stage))
                        .map(file -> named(
                                file.toPath(),
                                chooser.getSelectedExtensionFilter()
                                        .getExtensions()
                                        .get(0)));
            }

            /** Some systems' dialogs do not add the ending that was picked. */
            private static Path named(Path file, String picked) {
                String name = file.getFileName().toString();
                String lower = name.toLowerCase(java.util.Locale.ROOT);
                return lower.endsWith(".png") || lower.endsWith(".svg")
                        ? file
                        : file.resolveSibling(name + picked.substring(1));
            }

            @Override
            public Optional<Path> askForFolder(Stage stage, Path start) {
                DirectoryChooser chooser = new DirectoryChooser();
                if (start.toFile().isDirectory()) {
                    chooser.setInitialDirectory(start.toFile());
                }
                return Optional.ofNullable(chooser.showDialog(stage)).map(java.io.File::toPath);
            }
        };
    }
}
