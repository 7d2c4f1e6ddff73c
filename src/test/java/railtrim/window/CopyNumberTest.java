package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.window.kit.Together;

/** Any number on the page goes to the clipboard, with its unit. */
class CopyNumberTest {
    @TempDir
    Path folder;

    @Test
    void numbersAreFoundWithTheirUnits() {
        assertEquals(List.of("3.200 V", "3.600 V"), CopyNumber.numbers("Expect 3.200 V to 3.600 V"));
        assertEquals(List.of("-3.3 V", "4.7 kΩ", "1 %"), CopyNumber.numbers("from −3.3 V with 4.7 kΩ, 1 %"));
        assertEquals(List.of("3,200 V", "3,6 V"), CopyNumber.numbers("Expect 3,200 V, at most 3,6 V"));
        assertEquals(List.of("11", "46"), CopyNumber.numbers("Baseline · step 11 of 46"));
        assertEquals(List.of("2"), CopyNumber.numbers("2 Volts")); // a unit is its sign, not a word
        assertEquals(List.of(), CopyNumber.numbers("no number here"));
    }

    @Test
    void theRightButtonOffersTheNumbersUnderIt() throws Exception {
        try (Opened window = Opened.in(folder)) {
            at(window);
            Node expect = window.fx(() -> window.shell.scene().getRoot().lookupAll(".expect").stream()
                    .filter(Opened::shown)
                    .findFirst()
                    .orElseThrow());
            window.layOut();
            Bounds on = window.fx(() -> expect.localToScene(expect.getLayoutBounds()));
            window.fx(() -> {
                expect.fireEvent(new javafx.scene.input.ContextMenuEvent(
                        javafx.scene.input.ContextMenuEvent.CONTEXT_MENU_REQUESTED,
                        on.getMinX() + 10,
                        on.getCenterY(),
                        on.getMinX() + 10,
                        on.getCenterY(),
                        false,
                        new javafx.scene.input.PickResult(expect, on.getMinX() + 10, on.getCenterY())));
                return null;
            });
            List<MenuItem> items = window.fx(CopyNumberTest::items);
            // Two ends of a range, and the line itself.
            assertEquals(3, items.size(), items::toString);
            window.fx(() -> {
                items.get(0).fire();
                return null;
            });
            String copied = window.fx(() -> Clipboard.getSystemClipboard().getString());
            assertTrue(
                    Together.plain(((javafx.scene.control.Label) expect).getText())
                            .contains(copied),
                    copied);
            assertTrue(copied.endsWith("V"), copied);
        }
    }

    @Test
    void controlCOffersTheNumbersOfTheFieldInFocus() throws Exception {
        try (Opened window = Opened.in(folder)) {
            at(window);
            window.layOut();
            window.robot.push(KeyCode.CONTROL, KeyCode.C);
            window.settle();
            assertTrue(window.fx(CopyNumberTest::items).size() >= 2);
        }
    }

    private static List<MenuItem> items() {
        List<MenuItem> items = Window.getWindows().stream()
                .filter(ContextMenu.class::isInstance)
                .flatMap(menu -> ((ContextMenu) menu).getItems().stream())
                .toList();
        List.copyOf(Window.getWindows()).stream()
                .filter(ContextMenu.class::isInstance)
                .forEach(Window::hide);
        return items;
    }

    /** At a field with a range of volts. */
    private static void at(Opened window) throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(3));
        window.fx(() -> {
            JobPage page = JobPage.practice(
                    window.shell, new Course(Procedure.builtIn(), new MemoryLog("board", bench)), bench);
            window.shell.show(page);
            Desk desk = page.desk();
            Hand hand = new Hand(bench);
            while (!desk.shown().step().id().equals("base.on")
                    || !List.of("base.rail").equals(desk.shown().missing())) {
                Walk.give(desk, hand.next(desk.state(), desk.course()));
                desk.next();
            }
            return null;
        });
        window.until("the reading’s field", () -> window.focused().equals(Ids.field("base.rail")));
    }
}
