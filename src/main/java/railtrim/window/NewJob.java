package railtrim.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import railtrim.job.Journal;
import railtrim.job.JournalProblem;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** Asks what a new job is called and where its file goes. */
final class NewJob {
    private static final int LONGEST = 60;

    private final Shell shell;
    private final Words words;
    private final TextField name = new TextField();
    private final TextField folder = new TextField();
    private final Label file = Build.prose("", "help");
    private final Label problem = Build.prose("", "verdict-bad");

    NewJob(Shell shell) {
        this.shell = shell;
        this.words = shell.words();
    }

    void ask() {
        name.setId("job-name");
        name.getStyleClass().add("first-focus");
        name.setPromptText(words.of("window.new.name.prompt"));
        folder.setId("job-folder");
        folder.setText(shell.surroundings().jobFolder().toString());
        problem.setId("job-problem");
        problem("");
        Button browse = Build.button("job-browse", words.of("window.new.browse"), this::browse, "plain");
        HBox.setHgrow(folder, Priority.ALWAYS);
        VBox body = Build.column(
                "sheet-body",
                named("window.new.name", name),
                name,
                named("window.new.folder", folder),
                Build.row("entry", folder, browse),
                file,
                problem);
        name.textProperty().addListener((of, was, is) -> showFile());
        folder.textProperty().addListener((of, was, is) -> showFile());
        showFile();
        Button cancel = Build.button("job-cancel", words.of("window.cancel"), shell.sheet()::close, "plain");
        Button create = Build.button("job-create", words.of("window.new.create"), this::create, "primary");
        name.setOnAction(event -> create());
        folder.setOnAction(event -> create());
        shell.sheet().ask(words.of("window.new.title"), body, cancel, create);
    }

    private Label named(String key, TextField field) {
        Label label = Build.prose(words.of(key), "field-label");
        label.setLabelFor(field);
        field.setAccessibleText(words.of(key));
        return label;
    }

    private void browse() {
        shell.surroundings()
                .askForFolder(shell.stage(), Path.of(folder.getText()))
                .ifPresent(chosen -> folder.setText(chosen.toString()));
    }

    private void showFile() {
        file.setText(words.of("window.new.file", fileName()));
        problem("");
    }

    /** Only letters, digits, space, _ and - of the name go into the name of the file, so that every system takes it. */
    private String fileName() {
        String plain = name.getText().replaceAll("[^A-Za-z0-9 _-]+", "").strip();
        String cut = plain.substring(0, Math.min(LONGEST, plain.length()));
        return (cut.isEmpty() ? words.of("window.new.unnamed") : cut) + Journal.ENDING;
    }

    private void create() {
        String called = name.getText().strip();
        if (called.isEmpty()) {
            problem(words.of("window.new.name.missing"));
            name.requestFocus();
            return;
        }
        try {
            Path into = Path.of(folder.getText().strip());
            Files.createDirectories(into);
            shell.create(into.resolve(fileName()), called);
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
