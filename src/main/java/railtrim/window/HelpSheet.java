package railtrim.window;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Words;
import railtrim.window.help.HelpText;
import railtrim.window.kit.Build;

/** Help on a whole page: every field of the step with what it is, and the keys. Also the list of the words of the trade. */
final class HelpSheet {
    /** Style class of the button beside a field that opens its help. */
    static final String ASK = "ask";

    private final Shell shell;
    private final Words words;
    private final HelpText help;

    HelpSheet(Shell shell) {
        this.shell = shell;
        this.words = shell.words();
        this.help = new HelpText(words);
    }

    /** The help button of the field a node is in. */
    static Optional<Button> ofField(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (each.getStyleClass().contains("field")) {
                return Optional.ofNullable((Button) each.lookup("." + ASK));
            }
        }
        return Optional.empty();
    }

    void step(Desk desk) {
        VBox body = Build.column("sheet-body");
        List<Field> fields = desk.fields();
        if (desk.state().card().isEmpty() && !desk.atEnd()) {
            String why = words.of("step." + desk.shown().step().id() + ".why");
            body.getChildren().add(Build.prose(why, "help-words"));
        }
        if (desk.state().card().isEmpty() && !desk.atEnd()) {
            String why = words.of("step." + desk.shown().step().id() + ".why");
            body.getChildren().add(Build.prose(why, "help-words"));
        }
        if (fields.isEmpty()) {
            body.getChildren().add(Build.prose(words.of("window.help.asks-nothing"), "help-words"));
        }
        for (Field field : fields) {
            body.getChildren().addAll(Build.prose(Labels.of(words, field.id()), "help-field"), help.of(field.id()));
        }
        body.getChildren()
                .addAll(
                        Build.prose(words.of("window.help.keys"), "help-field"),
                        Build.prose(words.of("window.help.keys.text"), "help-words"));
        Button all = Build.button("help-glossary", words.of("window.glossary"), this::glossary, "plain");
        ask(words.of("window.help.title", desk.title(words)), body, all);
    }

    void glossary() {
        ask(words.of("window.glossary.title"), help.glossary());
    }

    private void ask(String title, Node body, Button... others) {
        Button close = Build.button("help-close", words.of("window.sheet.close"), shell.sheet()::close, "primary");
        shell.sheet().ask(title, body, close, others);
    }
}
