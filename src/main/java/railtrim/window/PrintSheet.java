package railtrim.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.report.Paper;
import railtrim.report.Printed;
import railtrim.window.kit.Aside;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;
import railtrim.window.print.PdfPages;
import railtrim.window.print.Preview;
import railtrim.window.print.Printing;

/** What to put on paper, on which paper, and how it will look. */
final class PrintSheet {
    private final Shell shell;
    private final Words words;
    private final Procedure procedure = Procedure.builtIn();
    private final Optional<State> state;
    private final Path folder;
    private final Preview preview;
    private final HBox choices = Build.row("print-choices");
    private final Label told = Build.prose("", "help");
    private final Button print;
    private final Button save;
    private final Button close;
    /** Asked of the system beside the window's own thread. */
    private volatile boolean printer;

    private Printed what;
    private Paper paper = Paper.usual(Locale.getDefault());

    /** @param state of the job, without one there is the blank worksheet only; @param folder where files go */
    PrintSheet(Shell shell, Optional<State> state, Path folder, Printed first) {
        this.shell = shell;
        this.words = shell.words();
        this.state = state;
        this.folder = folder;
        this.what = first;
        this.preview = new Preview(words);
        this.print = Build.button("print-go", words.of("window.print.go"), this::print, "primary");
        this.save = Build.button("print-save", words.of("window.print.save"), this::save, "plain");
        this.close = Build.button("print-close", words.of("window.sheet.close"), this::close, "plain");
        Handle.give(told, "print-told");
    }

    void ask() {
        List<Printed> documents = state.isPresent() ? List.of(Printed.values()) : List.of(Printed.WORKSHEET);
        choices.getChildren().addAll(radios("window.print.", documents, what, this::what));
        choices.getChildren().add(Build.spring());
        choices.getChildren().addAll(radios("window.print.", List.of(Paper.values()), paper, this::paper));
        VBox body = Build.column("print-body", choices, told, preview.node());
        shell.sheet().askWide(words.of("window.print.title"), body, close, save, print);
        make();
    }

    private <E extends Enum<E>> List<RadioButton> radios(String keys, List<E> values, E first, Consumer<E> picked) {
        ToggleGroup group = new ToggleGroup();
        return values.stream()
                .map(value -> {
                    String id = value.name().toLowerCase(Locale.ROOT);
                    String text = words.of(keys + id);
                    RadioButton radio =
                            Build.dress(new RadioButton(text), "print-" + id, text, () -> picked.accept(value));
                    radio.setToggleGroup(group);
                    radio.setSelected(value == first);
                    return radio;
                })
                .toList();
    }

    private void what(Printed picked) {
        what = picked;
        make();
    }

    private void paper(Paper picked) {
        paper = picked;
        make();
    }

    private void make() {
        print.setDisable(true);
        told.setText("");
        Printed wanted = what;
        Paper on = paper;
        Supplier<byte[]> document = () -> {
            printer = shell.surroundings().printing().ready();
            return wanted.pdf(afresh(), procedure, words, on);
        };
        preview.show(document, this::made);
    }

    /** Away from the window’s thread with a state of its own: what is worked out for one is not meant for two threads. */
    private Optional<State> afresh() {
        return state.map(shown -> procedure.state(shown.job()));
    }

    private void made(PdfPages pages) {
        print.setDisable(!printer);
        told.setText(printer ? "" : words.of("window.print.none"));
    }

    /** Into the job's folder, for printing elsewhere. */
    private void save() {
        Printed wanted = what;
        Paper on = paper;
        save.setDisable(true);
        Aside.run("writing", () -> saved(wanted, on), said -> {
            told.setText(said);
            save.setDisable(false);
        });
    }

    private String saved(Printed wanted, Paper on) {
        try {
            Path file = wanted.write(afresh(), procedure, words, folder, on);
            return words.of("window.print.saved", file.toString());
        } catch (BadInput refused) {
            return words.of(refused.told());
        }
    }

    private void print() {
        preview.pages().ifPresent(pages -> {
            printing(true);
            shell.surroundings().printing().print(shell.stage(), pages, this::printed);
        });
    }

    private void printed(Printing.Outcome outcome) {
        printing(false);
        told.setText(words.of("window.print." + outcome.name().toLowerCase(Locale.ROOT)));
    }

    /** The printer takes the pages one by one from the document in view: it has to stay. */
    private void printing(boolean is) {
        print.setDisable(is);
        close.setDisable(is);
        choices.setDisable(is);
    }

    private void close() {
        preview.leave();
        shell.sheet().close();
    }
}
