package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import org.junit.jupiter.api.Test;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;

/** What a picture tells where it is pointed at, and what can be answered in it. */
class PointingTest {
    /** Least size of what can be pressed, WCAG 2.2, 2.5.8. */
    private static final double TARGET = 24;

    @Test
    void everyPictureWithSomethingInItTellsNumbersByMouseAndByKeyboard() {
        List<String> wrong = Screen.on(() -> {
            List<String> found = new ArrayList<>();
            for (Map.Entry<String, Drawing> each : Samples.all().entrySet()) {
                PictureView view = Screen.laidOut(each.getValue(), 340, 420);
                boolean blank = each.getKey().matches("board-off|.*-(empty|none|unknown)");
                if (view.details().isEmpty() && !blank) {
                    found.add(each.getKey() + " tells nothing");
                }
                for (Detail detail : view.details()) {
                    hover(view, view.boundsOf(detail));
                    if (!note(view).isVisible() || note(view).getText().isBlank()) {
                        found.add(each.getKey() + " does not tell " + detail.says());
                    }
                }
            }
            return found;
        });
        assertEquals(List.of(), wrong, String.join("\n", wrong));
    }

    @Test
    void arrowKeysGoThroughTheNumbersAndTheReaderHearsThem() {
        Screen.on(() -> {
            PictureView view = Screen.laidOut(Samples.all().get("ladder-way-down"), 340, 420);
            List<String> heard = new ArrayList<>();
            for (int i = 0; i < view.details().size(); i++) {
                key(view, KeyCode.DOWN);
                heard.add(view.getAccessibleText());
            }
            assertEquals(view.details().stream().map(Detail::says).toList(), heard);
            key(view, KeyCode.HOME);
            assertEquals(view.details().get(0).says(), note(view).getText());
            assertTrue(heard.contains("last good: 3.214 V. That is 198.0 mV or 5.8 % below stock."), heard.toString());
            return null;
        });
    }

    @Test
    void theNoteStaysInsideThePicture() {
        Screen.on(() -> {
            PictureView view = Screen.laidOut(Samples.all().get("faults-three-pins"), 260, 260);
            for (Detail detail : view.details()) {
                hover(view, view.boundsOf(detail));
                Bounds note = note(view).getBoundsInParent();
                assertTrue(
                        note.getMinX() >= -1
                                && note.getMaxX() <= view.getWidth() + 1
                                && note.getMaxY() <= view.getHeight() + 1,
                        detail.says() + ": " + note);
            }
            return null;
        });
    }

    @Test
    void aPinIsGivenItsRoleInThePicture() {
        Screen.on(() -> {
            Asked asked = new Asked();
            PackageData data = new PackageData(Optional.of(Outline.TO_220), List.of(), List.of(), false, false);
            PictureView view = Screen.laidOut(new PackageDrawing(data, Samples.WORDS), asked, 340, 420);
            List<String> fields = view.details().stream()
                    .flatMap(detail -> detail.asks().stream())
                    .map(Detail.Asks::field)
                    .toList();
            assertEquals(List.of("pin.1", "pin.2", "pin.3", "pin.tab"), fields);
            return null;
        });
    }

    @Test
    void aPackageIsPickedByPressingIt() {
        Screen.on(() -> {
            Asked asked = new Asked();
            PackageData which = new PackageData(Optional.empty(), List.of(), List.of(), false, false);
            PictureView view = Screen.laidOut(new PackageDrawing(which, Samples.WORDS), asked, 340, 420);
            Detail tab = view.details().stream()
                    .filter(detail -> detail.says().startsWith("SOT-223"))
                    .findFirst()
                    .orElseThrow();
            press(view, view.boundsOf(tab));
            assertEquals(List.of("reg.outline=SOT-223"), asked.given);
            return null;
        });
    }

    /** The press takes the focus from a field, whose entry is taken and puts another picture in this one's place. */
    @Test
    void aPictureThatIsReplacedWhileItIsPressedAsksNothing() {
        Screen.on(() -> {
            Asked asked = new Asked();
            List<Optional<PinRole>> none = List.of();
            PackageData pins = new PackageData(Optional.of(Outline.TO_220), none, List.of(), false, false);
            PictureView view = Screen.laidOut(new PackageDrawing(pins, Samples.WORDS), asked, 340, 420);
            Detail pin = view.details().stream()
                    .filter(detail -> detail.asks().isPresent())
                    .findFirst()
                    .orElseThrow();
            ((javafx.scene.layout.Pane) view.getParent()).getChildren().remove(view);
            press(view, view.boundsOf(pin));
            assertEquals(List.of(), asked.given);
            return null;
        });
    }

    @Test
    void whatIsNotAskedNowCannotBeAnswered() {
        Screen.on(() -> {
            PackageData which = new PackageData(Optional.empty(), List.of(), List.of(), false, false);
            PictureView view = Screen.laidOut(new PackageDrawing(which, Samples.WORDS), 340, 420);
            // Answering.none() would throw.
            view.details().forEach(detail -> press(view, view.boundsOf(detail)));
            assertFalse(view.details().isEmpty());
            return null;
        });
    }

    @Test
    void everyPinIsLargeEnoughToBeHit() {
        List<String> small = Screen.on(() -> {
            List<String> found = new ArrayList<>();
            for (Outline outline : Outline.values()) {
                List<Optional<PinRole>> none = List.of();
                PackageData data = new PackageData(Optional.of(outline), none, List.of(), false, false);
                PictureView view = Screen.laidOut(new PackageDrawing(data, Samples.WORDS), 340, 420);
                for (Detail detail : view.details()) {
                    Bounds bounds = view.boundsOf(detail);
                    if (bounds.getWidth() < TARGET || bounds.getHeight() < TARGET) {
                        found.add(outline.id() + " " + detail.says() + " " + bounds);
                    }
                }
            }
            return found;
        });
        assertEquals(List.of(), small, String.join("\n", small));
    }

    private static Label note(PictureView view) {
        return (Label) view.lookup(".picture-note");
    }

    private static void hover(PictureView view, Bounds at) {
        Event.fireEvent(view, mouse(MouseEvent.MOUSE_MOVED, at));
        view.layout();
    }

    private static void press(PictureView view, Bounds at) {
        Event.fireEvent(view, mouse(MouseEvent.MOUSE_PRESSED, at));
    }

    private static MouseEvent mouse(javafx.event.EventType<MouseEvent> type, Bounds at) {
        return new MouseEvent(
                type,
                at.getCenterX(),
                at.getCenterY(),
                0,
                0,
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                true,
                false,
                false,
                null);
    }

    private static void key(PictureView view, KeyCode code) {
        Event.fireEvent(view, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
    }

    private static final class Asked implements Answering {
        private final List<String> given = new ArrayList<>();

        @Override
        public List<Choice> choices(String field) {
            return List.of(new Choice("SOT-223", "SOT-223"), new Choice("output", "Output"));
        }

        @Override
        public void choose(String field, String answer) {
            given.add(field + "=" + answer);
        }
    }
}
