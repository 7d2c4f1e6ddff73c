package railtrim.window;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import railtrim.procedure.Field;
import railtrim.procedure.Labels;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.QuantityReader;
import railtrim.window.kit.Build;
import railtrim.window.kit.Handle;

/** A reading to type, read back in words while it is typed. */
final class NumberView implements FieldView {
    /** Stands for a reading that must not be seen. */
    private static final String HIDDEN = "•••";

    private final Words words;
    private final Desk desk;
    private final Field.Number field;
    private final TextField entry = new TextField();
    private final Button enter;
    private final FieldFrame frame;
    private boolean open;
    private boolean answered;
    private boolean questioned;
    private boolean showing;

    NumberView(Words words, Desk desk, Field.Number field) {
        this.words = words;
        this.desk = desk;
        this.field = field;
        Handle.give(entry, Ids.field(field.id()));
        entry.getStyleClass().add("reading");
        entry.setPromptText(words.of("window.prompt." + field.unit().name().toLowerCase(java.util.Locale.ROOT)));
        enter = Build.button(Ids.enter(field.id()), words.of("window.enter"), this::offer, "take");
        enter.setAccessibleText(words.of("window.enter.say", Labels.of(words, field.id())));
        HBox line = Build.row("entry", entry, enter);
        frame = new FieldFrame(words, field, line, entry, () -> desk.type(field.id(), entry.getText(), true));
        entry.setText(desk.draft(field.id()));
        entry.setOnAction(event -> offer());
        entry.textProperty().addListener((of, was, is) -> typed());
        typed();
    }

    @Override
    public Node node() {
        return frame.node();
    }

    @Override
    public void show(Standing standing) {
        showing = true;
        open = standing.open();
        frame.show(standing, field.unit());
        frame.proposed(desk.proposed(field, words)
                .filter(says -> standing.open() && standing.answer().isEmpty()));
        boolean unsent = !desk.draft(field.id()).isEmpty();
        answered = standing.answer().isPresent() && !unsent;
        questioned = standing.verdict()
                .filter(said -> !(said instanceof Verdict.Accept))
                .isPresent();
        if (standing.hidden()) {
            entry.setText(HIDDEN);
        } else if (answered) {
            entry.setText(standing.answer().orElseThrow());
        } else if (!unsent) {
            // Asked again after a break: the reading of before would only lead astray.
            entry.clear();
        }
        entry.setEditable(open && !standing.hidden());
        entry.setDisable(!open && standing.answer().isEmpty());
        entry.setAccessibleText(frame.spoken());
        enter.setDisable(!open || standing.hidden());
        Build.present(enter, open && !answered && !standing.hidden());
        readBack(standing.hidden());
        showing = false;
    }

    @Override
    public void focus() {
        entry.requestFocus();
        entry.selectAll();
    }

    private void offer() {
        if (open && entry.isEditable()) {
            desk.type(field.id(), entry.getText(), false);
        }
    }

    private void typed() {
        if (showing) {
            return;
        }
        if (open && entry.isEditable()) {
            desk.draft(field.id(), entry.getText());
            answered = false;
            Build.present(enter, true);
        }
        questioned = false;
        readBack(false);
    }

    /** The digits in words. While the text is not yet a number there is nothing to read back, and no fuss; once it was sent, its verdict speaks. */
    private void readBack(boolean hidden) {
        String text = entry.getText().strip();
        if (hidden || text.isEmpty()) {
            frame.readBack(hidden ? words.of("window.hidden") : "");
            return;
        }
        try {
            frame.readBack(words.of(readBackKey(), Display.inWords(QuantityReader.read(text, field.unit()))));
        } catch (BadInput notYet) {
            frame.readBack(questioned ? "" : words.of("window.read-back.not-yet"));
        }
    }

    private String readBackKey() {
        return answered ? "window.read-back.taken" : questioned ? "window.read-back.questioned" : "window.read-back";
    }
}
