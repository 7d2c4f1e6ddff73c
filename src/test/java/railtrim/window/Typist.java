package railtrim.window;

import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import railtrim.practice.Answer;
import railtrim.procedure.Field;

/** Gives a hand's answers through the keyboard of the window. */
final class Typist {
    private final Opened window;
    private final Desk desk;

    Typist(Opened window, Desk desk) {
        this.window = window;
        this.desk = desk;
    }

    void give(Answer answer) throws TimeoutException {
        long before = desk.state().job().last();
        if (answer instanceof Answer.Typed typed) {
            type(typed);
        } else if (answer instanceof Answer.Picked picked) {
            pick(picked);
        } else if (answer instanceof Answer.Acknowledged acknowledged) {
            reach(Ids.acknowledge(acknowledged.caution()));
            window.press(KeyCode.SPACE);
        } else if (answer instanceof Answer.Switched switched) {
            reach(Ids.field(switched.field()));
            window.press(KeyCode.SPACE);
        } else {
            throw new AssertionError("not for the keyboard: " + answer);
        }
        if (!(answer instanceof Answer.Typed typed && window.has(Ids.sure(typed.field())))) {
            String said = answer instanceof Answer.Typed typed ? " " + desk.said(typed.field()) : "";
            window.until(
                    "an entry after " + answer + said, () -> desk.state().job().last() > before);
        }
    }

    private void type(Answer.Typed typed) throws TimeoutException {
        reach(Ids.field(typed.field()));
        // What was there is selected when the focus comes, so typing replaces it; after a refusal it has to go first.
        window.fx(() -> {
            ((TextInputControl) window.node(Ids.field(typed.field()))).selectAll();
            return null;
        });
        window.type(typed.text());
        window.press(KeyCode.ENTER);
        if (typed.sure() && window.has(Ids.sure(typed.field()))) {
            window.tabTo(Ids.sure(typed.field()));
            window.press(KeyCode.SPACE);
        }
    }

    private void pick(Answer.Picked picked) throws TimeoutException {
        String list = Ids.field(picked.field()) + "-list";
        String option = Ids.option(picked.field(), picked.option());
        if (window.has(list)) {
            reach(list);
            window.press(KeyCode.DOWN);
            int steps = place(picked, (ComboBox<?>) window.node(list));
            for (int i = 0; i < steps; i++) {
                window.press(KeyCode.DOWN);
            }
            window.press(KeyCode.ENTER);
        } else {
            window.until("the options of " + picked.field(), () -> window.has(option));
            if (!window.focused().equals(option)) {
                window.tabTo(option);
            }
            window.press(KeyCode.SPACE);
        }
    }

    /** How many lines below the first an answer is; from nothing chosen one more, to enter the list. */
    private int place(Answer.Picked picked, ComboBox<?> list) {
        Field.Choice choice = (Field.Choice) desk.course().field(picked.field()).orElseThrow();
        List<String> ids = choice.options().apply(desk.state().figures()).stream()
                .map(Field.Option::id)
                .toList();
        return ids.indexOf(picked.option()) - list.getSelectionModel().getSelectedIndex();
    }

    /** The window itself leads the focus to what is asked next. */
    private void reach(String id) throws TimeoutException {
        window.until("the focus on #" + id, () -> window.focused().equals(id));
    }
}
