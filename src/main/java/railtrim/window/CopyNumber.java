package railtrim.window;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import railtrim.procedure.Words;
import railtrim.window.kit.Together;

/** Any number on the page can be copied: from the menu that the right button or the menu key opens, or with Ctrl C where the focus is. */
final class CopyNumber {
    private static final Pattern NUMBER =
            Pattern.compile("[−-]?\\d+(?:[.,]\\d+)?(?: ?(?:[kMmµn]?[VΩAW]|°C|%|min|s|mV)(?!\\p{L}))?");
    private static final KeyCombination COPY = KeyCombination.valueOf("Shortcut+C");

    private final Scene scene;
    private final Words words;

    CopyNumber(Scene scene, Words words) {
        this.scene = scene;
        this.words = words;
    }

    void watch() {
        scene.addEventHandler(ContextMenuEvent.CONTEXT_MENU_REQUESTED, this::asked);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (COPY.match(event) && !hasOwnText(scene.getFocusOwner())) {
                event.consume();
                copyAtFocus();
            }
        });
    }

    /** The numbers of a text in the order they stand in, each once, with the unit and a minus that other programs take. */
    static List<String> numbers(String text) {
        Set<String> found = new LinkedHashSet<>();
        NUMBER.matcher(Together.plain(text))
                .results()
                .forEach(number -> found.add(number.group().replace('−', '-')));
        return List.copyOf(found);
    }

    private static boolean hasOwnText(Node owner) {
        return owner instanceof TextInputControl text && !text.getSelectedText().isEmpty();
    }

    private void asked(ContextMenuEvent event) {
        if (event.isKeyboardTrigger()) {
            copyAtFocus();
            return;
        }
        List<String> texts = new ArrayList<>();
        collect(
                scene.getRoot(),
                text -> text.localToScene(text.getLayoutBounds()).contains(event.getSceneX(), event.getSceneY()),
                texts);
        if (!texts.isEmpty()) {
            menu(texts).show(scene.getWindow(), event.getScreenX(), event.getScreenY());
            event.consume();
        }
    }

    /** One number is copied at once; of several the person picks. */
    private void copyAtFocus() {
        Node owner = scene.getFocusOwner();
        // What had the focus may just have left the page.
        if (owner == null || owner.getScene() != scene) {
            return;
        }
        List<String> texts = new ArrayList<>();
        collect(around(owner), text -> true, texts);
        List<String> numbers = numbers(String.join("\n", texts));
        if (numbers.size() == 1) {
            copy(numbers.get(0));
        } else if (!texts.isEmpty()) {
            menu(texts).show(owner, Side.BOTTOM, 0, 0);
        }
    }

    /** The whole field a control belongs to, with its label, what is expected and the read-back. */
    private static Node around(Node owner) {
        for (Node each = owner; each != null; each = each.getParent()) {
            if (each.getStyleClass().contains("field")) {
                return each;
            }
        }
        return owner;
    }

    private static void collect(Node node, java.util.function.Predicate<Text> wanted, List<String> texts) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Text text && !text.getText().isBlank() && wanted.test(text)) {
            texts.add(Together.plain(text.getText()));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, wanted, texts));
        }
    }

    ContextMenu menu(List<String> texts) {
        ContextMenu menu = new ContextMenu();
        String all = String.join("\n", texts);
        Stream.concat(numbers(all).stream(), Stream.of(all).filter(text -> !text.isBlank()))
                .distinct()
                .forEach(text -> menu.getItems().add(item(text, text.equals(all))));
        menu.setAutoHide(true);
        return menu;
    }

    private MenuItem item(String text, boolean whole) {
        MenuItem item =
                new MenuItem(whole ? words.of("window.copy-number.text") : words.of("window.copy-number", text));
        item.setMnemonicParsing(false);
        item.setOnAction(event -> copy(text));
        return item;
    }

    private static void copy(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }
}
