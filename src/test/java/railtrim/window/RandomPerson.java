package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javafx.stage.Window;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.quantity.Display;
import railtrim.window.kit.Handle;

/** Does to the window whatever comes to mind: presses what can be seen, types what fits and what does not, changes its size and its look. */
final class RandomPerson {
    private static final List<String> SILLY = List.of(
            "",
            " ",
            "4.7 elephants",
            "1,234.5 Ω",
            "-3.3 V",
            "1e999 Ω",
            "NaN",
            "OL",
            "0",
            "٣٫٣ V",
            "<b>3 V</b>",
            "{0} ' {",
            "\u202e3.3 V",
            "\uD83D\uDD25",
            "\u0000\u0007",
            "long ".repeat(400),
            "9".repeat(400) + " V");
    private static final List<String> PLAUSIBLE = List.of(
            "3.3 V",
            "3.315 V",
            "2.95 V",
            "0.02 V",
            "0 V",
            "110 Ω",
            "87.3",
            "4k7",
            "10 kΩ",
            "1.58 V",
            "0.3 Ω",
            "320 °C",
            "21 °C",
            "1.2 A",
            "2 %",
            "AZ1117 adj",
            "a board of mine");
    private static final List<KeyCode> KEYS = List.of(
            KeyCode.TAB,
            KeyCode.TAB,
            KeyCode.TAB,
            KeyCode.ENTER,
            KeyCode.ENTER,
            KeyCode.SPACE,
            KeyCode.SPACE,
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.LEFT,
            KeyCode.RIGHT,
            KeyCode.HOME,
            KeyCode.END,
            KeyCode.PAGE_UP,
            KeyCode.PAGE_DOWN,
            KeyCode.BACK_SPACE,
            KeyCode.DELETE,
            KeyCode.F10);

    private final Opened window;
    private final Random chance;
    private final Robot robot;

    /** Called on the window's thread. */
    RandomPerson(Opened window, Random chance) {
        this.window = window;
        this.chance = chance;
        this.robot = new Robot();
    }

    /** One gesture, on the window's thread. @return what it was */
    String gesture() {
        int kind = chance.nextInt(100);
        if (kind < 40) {
            return click();
        } else if (kind < 58) {
            return key();
        } else if (kind < 66) {
            return type(one(chance.nextBoolean() ? PLAUSIBLE : SILLY));
        } else if (kind < 80) {
            return fill();
        } else if (kind < 84) {
            return together(KeyCode.SHIFT, KeyCode.TAB);
        } else if (kind < 87) {
            return press(KeyCode.ESCAPE);
        } else if (kind < 89) {
            return press(KeyCode.F1);
        } else if (kind < 91) {
            return together(KeyCode.CONTROL, one(List.of(KeyCode.Z, KeyCode.C, KeyCode.V, KeyCode.A)));
        } else if (kind < 94) {
            return resize();
        } else if (kind < 96) {
            return together(
                    KeyCode.CONTROL, one(List.of(KeyCode.EQUALS, KeyCode.EQUALS, KeyCode.MINUS, KeyCode.DIGIT0)));
        } else if (kind < 97) {
            return look();
        } else if (kind < 98) {
            robot.mouseWheel(chance.nextInt(21) - 10);
            return "wheel";
        }
        return menu();
    }

    private String click() {
        List<Node> there = seen();
        if (there.isEmpty()) {
            return "nothing to press";
        }
        Node node = one(there);
        MouseButton button = chance.nextInt(30) == 0 ? MouseButton.SECONDARY : MouseButton.PRIMARY;
        Bounds at = node.localToScreen(node.getBoundsInLocal());
        robot.mouseMove(
                at.getMinX() + at.getWidth() * chance.nextDouble(),
                at.getMinY() + at.getHeight() * chance.nextDouble());
        robot.mousePress(button);
        if (chance.nextInt(15) == 0) {
            robot.mouseMove(at.getMinX() + chance.nextInt(300) - 150, at.getMinY() + chance.nextInt(300) - 150);
        }
        robot.mouseRelease(button);
        return "press " + name(node);
    }

    private String fill() {
        List<Node> entries = seen().stream()
                .filter(node -> node instanceof TextInputControl entry && entry.isEditable())
                .toList();
        if (entries.isEmpty()) {
            return "nothing to fill";
        }
        TextInputControl entry = (TextInputControl) one(entries);
        entry.requestFocus();
        entry.selectAll();
        String text = fitting(entry);
        type(text);
        press(KeyCode.ENTER);
        return "fill " + name(entry) + " with " + shortened(text);
    }

    /** A reading in what is expected, just outside, or anything. */
    private String fitting(TextInputControl entry) {
        if (chance.nextInt(4) == 0) {
            return one(SILLY);
        }
        return window.shell
                .desk()
                .map(Desk::course)
                .flatMap(course -> reading(course, Handle.of(entry)))
                .orElseGet(() -> one(PLAUSIBLE));
    }

    private java.util.Optional<String> reading(Course course, String id) {
        return window.shell.desk().orElseThrow().fields().stream()
                .filter(field ->
                        field instanceof Field.Number && Ids.field(field.id()).equals(id))
                .findFirst()
                .flatMap(field -> course.expected(field.id())
                        .filter(range -> Double.isFinite(range.low()) && Double.isFinite(range.high()))
                        .map(range -> range.low() + (range.high() - range.low()) * (chance.nextDouble() * 1.4 - 0.2))
                        .map(value -> Display.of(value, ((Field.Number) field).unit())));
    }

    private String type(String text) {
        Scene scene = window.shell.scene();
        text.chars().limit(500).forEach(letter -> {
            Node owner = scene.getFocusOwner();
            String typed = Character.toString(letter);
            Event.fireEvent(
                    owner == null || owner.getScene() != scene ? scene : owner,
                    new KeyEvent(KeyEvent.KEY_TYPED, typed, typed, KeyCode.UNDEFINED, false, false, false, false));
        });
        return "type " + shortened(text);
    }

    private String key() {
        return press(one(KEYS));
    }

    private String press(KeyCode key) {
        robot.keyPress(key);
        robot.keyRelease(key);
        return "key " + key;
    }

    private String together(KeyCode first, KeyCode second) {
        robot.keyPress(first);
        robot.keyPress(second);
        robot.keyRelease(second);
        robot.keyRelease(first);
        return "keys " + first + " " + second;
    }

    private String resize() {
        // A window larger than its screen is no window a person has, and the headless screen cannot hold one.
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        double wide = 720 + chance.nextInt((int) screen.getWidth() - 719);
        double high = 560 + chance.nextInt((int) screen.getHeight() - 559);
        window.shell.stage().setWidth(wide);
        window.shell.stage().setHeight(high);
        return "resize to " + wide + " × " + high;
    }

    private String look() {
        Look look = one(List.of(Look.values()));
        window.shell.theme().look(look);
        return "look " + look;
    }

    private String menu() {
        List<MenuItem> items = seen().stream()
                .filter(MenuButton.class::isInstance)
                .flatMap(button -> ((MenuButton) button).getItems().stream())
                .filter(item -> !item.isDisable() && item.getOnAction() != null)
                .toList();
        if (items.isEmpty()) {
            return "no menu";
        }
        MenuItem item = one(items);
        item.fire();
        return "menu " + item.getText();
    }

    /** What can be seen and pressed, in any window of the program: controls mostly, and now and then whatever else there is. */
    private List<Node> seen() {
        boolean anything = chance.nextInt(8) == 0;
        List<Node> found = new ArrayList<>();
        for (Window each : Window.getWindows()) {
            if (each.isShowing() && each.getScene() != null) {
                collect(each.getScene().getRoot(), each.getScene(), anything, found);
            }
        }
        return found;
    }

    private static void collect(Node node, Scene scene, boolean anything, List<Node> found) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        Bounds at = node.localToScene(node.getBoundsInLocal());
        boolean inside =
                at.getWidth() > 0 && at.getHeight() > 0 && at.intersects(0, 0, scene.getWidth(), scene.getHeight());
        if (inside && (anything || node instanceof Control && !(node instanceof javafx.scene.control.Label))) {
            found.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, scene, anything, found));
        }
    }

    private static String name(Node node) {
        String says = node instanceof Labeled labeled ? " “" + labeled.getText() + "”" : "";
        return (Handle.of(node).isEmpty() ? node.getClass().getSimpleName() : "#" + Handle.of(node)) + says;
    }

    private static String shortened(String text) {
        return "“" + (text.length() > 20 ? text.substring(0, 20) + "…" : text) + "”";
    }

    private <T> T one(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }
}
