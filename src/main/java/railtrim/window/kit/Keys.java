package railtrim.window.kit;

import java.util.EnumSet;
import java.util.Set;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * What Enter, Space and Escape do. A key that is held down counts once, on the screen where it went down, so that leaning on it
 * neither runs through screens nor acknowledges a caution on the next one.
 */
public final class Keys {
    /** Style class of a control that Enter must not work; only Space or a click on it does. */
    public static final String NOT_BY_ENTER = "not-by-enter";

    private final Set<KeyCode> down = EnumSet.noneOf(KeyCode.class);
    private final Runnable enter;
    private final Runnable escape;

    private Keys(Runnable enter, Runnable escape) {
        this.enter = enter;
        this.escape = escape;
    }

    public static void install(Scene scene, Runnable enter, Runnable escape) {
        Keys keys = new Keys(enter, escape);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, keys::pressed);
        scene.addEventFilter(KeyEvent.KEY_RELEASED, event -> keys.down.remove(event.getCode()));
        scene.addEventHandler(KeyEvent.KEY_PRESSED, keys::unused);
        scene.windowProperty()
                .flatMap(window -> window.focusedProperty())
                .addListener((of, had, has) -> keys.down.clear());
    }

    /** Ctrl Z, wherever the focus is; a text that is being typed takes back its own letters first. */
    public static void undo(Scene scene, Runnable work) {
        KeyCombination undo = KeyCombination.valueOf("Shortcut+Z");
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            boolean typing = scene.getFocusOwner() instanceof TextInputControl text
                    && text.isEditable()
                    && text.isUndoable()
                    && !text.getText().isEmpty();
            if (undo.match(event) && !typing) {
                event.consume();
                work.run();
            }
        });
    }

    private void pressed(KeyEvent event) {
        boolean counted = event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE;
        boolean held = counted && !down.add(event.getCode());
        boolean barred = event.getCode() == KeyCode.ENTER && barred((Scene) event.getSource());
        if (held || barred) {
            event.consume();
        }
    }

    private static boolean barred(Scene scene) {
        Node owner = scene.getFocusOwner();
        return owner != null && owner.getStyleClass().contains(NOT_BY_ENTER);
    }

    private void unused(KeyEvent event) {
        if (event.getCode() == KeyCode.ESCAPE) {
            escape.run();
            event.consume();
        } else if (event.getCode() == KeyCode.ENTER && !event.isControlDown() && !event.isAltDown()) {
            pressEnter(event);
        }
    }

    private void pressEnter(Event event) {
        Scene scene = (Scene) event.getSource();
        Node owner = scene.getFocusOwner();
        event.consume();
        if (owner == null || owner instanceof ComboBoxBase<?>) {
            enter.run();
        } else if (owner instanceof ButtonBase button) {
            button.fire();
        } else {
            enter.run();
        }
    }
}
