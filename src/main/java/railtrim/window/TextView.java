package railtrim.window;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Words;
import railtrim.quantity.Unit;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** Free words. */
final class TextView implements FieldView {
    private final Words words;
    private final Desk desk;
    private final Field.Text field;
    private final TextField entry = new TextField();
    private final Button enter;
    private final FieldFrame frame;
    private boolean open;

    TextView(Words words, Desk desk, Field.Text field) {
        this.words = words;
        this.desk = desk;
        this.field = field;
        Handle.give(entry, Ids.field(field.id()));
        entry.setPromptText(words.of(field.required() ? "window.prompt.text" : "window.prompt.text.optional"));
        HBox.setHgrow(entry, Priority.ALWAYS);
        enter = Build.button(Ids.enter(field.id()), words.of("window.enter"), this::offer, "take");
        enter.setAccessibleText(words.of("window.enter.say", Labels.of(words, field.id())));
        frame = new FieldFrame(words, field, Build.row("entry", entry, enter), entry, () -> {});
        entry.setText(desk.draft(field.id()));
        entry.setOnAction(event -> offer());
        entry.textProperty().addListener((of, was, is) -> {
            if (open) {
                desk.draft(field.id(), is);
            }
        });
    }

    @Override
    public Node node() {
        return frame.node();
    }

    @Override
    public void show(Standing standing) {
        boolean unsent = !desk.draft(field.id()).isEmpty();
        open = false;
        if (!unsent) {
            entry.setText(standing.answer().orElse(""));
        }
        open = standing.open();
        frame.show(standing, Unit.COUNT);
        frame.proposed(desk.proposed(field, words)
                .filter(says -> standing.open() && standing.answer().isEmpty()));
        entry.setEditable(open);
        entry.setDisable(!open && standing.answer().isEmpty());
        entry.setAccessibleText(frame.spoken());
        Build.present(enter, open && (standing.answer().isEmpty() || unsent));
    }

    @Override
    public void focus() {
        entry.requestFocus();
        entry.selectAll();
    }

    private void offer() {
        if (open) {
            desk.type(field.id(), entry.getText(), false);
        }
    }
}
