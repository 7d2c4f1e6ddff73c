package railtrim.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.BiConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.job.Journal;
import railtrim.job.JournalProblem;
import railtrim.procedure.Words;
import railtrim.report.FileName;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** Asks what a job is called and where its file goes. */
final class FileSheet {
    private final Shell shell;
    private final Words words;
    private final String keys;
    private final BiConsumer<Path, String> make;
    private final VBox said = Build.column("sheet-body");
    private final TextField name = new TextField();
    private final TextField folder = new TextField();
    private final Label file = Build.prose("", "help");
    private final Label problem = Build.prose("", "verdict-bad");

    /**
     * @param keys where its words are: {@code .title}, {@code .name}, {@code .create}, and {@code .text} where there is something to say first
     * @param suggested a name to begin with, may be empty
     * @param make makes the file, which is not there yet, for a job of this name
     */
    FileSheet(Shell shell, String keys, String suggested, BiConsumer<Path, String> make) {
        this.shell = shell;
        this.words = shell.words();
        this.keys = keys;
        this.make = make;
        name.setText(suggested);
        if (words.has(keys + ".text")) {
            saying(words.of(keys + ".text"));
        }
    }

    /** To be read before anything is asked. */
    FileSheet saying(String... paragraphs) {
        for (String paragraph : paragraphs) {
            said.getChildren().add(Build.prose(paragraph, "sheet-text"));
        }
        return this;
    }

    void ask() {
        Handle.give(name, "job-name");
        name.getStyleClass().add("first-focus");
        name.setPromptText(words.of("window.new.name.prompt"));
        Handle.give(folder, "job-folder");
        folder.setText(shell.surroundings().jobFolder().toString());
        Handle.give(problem, "job-problem");
        problem("");
        Button browse = Build.button("job-browse", words.of("window.new.browse"), this::browse, "plain");
        HBox.setHgrow(folder, Priority.ALWAYS);
        VBox body = Build.column(
                "sheet-body",
                said,
                named(keys + ".name", name),
                name,
                named("window.new.folder", folder),
                Build.row("entry", folder, browse),
                file,
                problem);
        name.textProperty().addListener((of, was, is) -> showFile());
        folder.textProperty().addListener((of, was, is) -> showFile());
        showFile();
        Build.present(said, !said.getChildren().isEmpty());
        Button cancel = Build.button("job-cancel", words.of("window.cancel"), shell.sheet()::close, "plain");
        Button create = Build.button("job-create", words.of(keys + ".create"), this::create, "primary");
        name.setOnAction(event -> create());
        folder.setOnAction(event -> create());
        shell.sheet().ask(words.of(keys + ".title"), body, cancel, create);
    }

    private Label named(String key, TextField field) {
        Label label = Build.prose(words.of(key), "field-label");
        label.setLabelFor(field);
        field.setAccessibleText(words.of(key));
        return label;
    }

    private void browse() {
        Path from = shell.surroundings().jobFolder();
        try {
            from = into();
        } catch (InvalidPathException bad) {
            problem(words.of("window.new.folder.refused", folder.getText()));
        }
        shell.surroundings().askForFolder(shell.stage(), from).ifPresent(chosen -> folder.setText(chosen.toString()));
    }

    /** A folder without a root lies in the one that was offered, not where the program happened to be started. */
    private Path into() {
        return shell.surroundings().jobFolder().resolve(folder.getText().strip());
    }

    private void showFile() {
        file.setText(words.of("window.new.file", fileName()));
        problem("");
    }

    /** Only what every system takes goes into the name of the file. */
    private String fileName() {
        return FileName.of(name.getText(), words.of("window.new.unnamed")) + Journal.ENDING;
    }

    private void create() {
        String called = name.getText().strip();
        if (called.isEmpty()) {
            problem(words.of("window.new.name.missing"));
            name.requestFocus();
            return;
        }
        try {
            Path into = into();
            Files.createDirectories(into);
            make.accept(into.resolve(fileName()), called);
            shell.sheet().close();
        } catch (JournalProblem refused) {
            problem(words.of(refused.told()));
        } catch (IOException | InvalidPathException refused) {
            problem(words.of("window.new.folder.refused", folder.getText()));
        }
    }

    private void problem(String text) {
        problem.setText(text);
        Build.present(problem, !text.isEmpty());
    }
}
