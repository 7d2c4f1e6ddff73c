package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** A caution is read and acknowledged on its own before what it guards can be touched. */
class CautionGateTest {
    @TempDir
    Path folder;

    private final Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(5));

    @Test
    void fieldsStayShutUntilEachCautionIsAcknowledged() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            List<String> waiting = desk.shown().open();
            assertFalse(waiting.isEmpty(), "the first step has a caution");
            for (String caution : waiting) {
                assertTrue(window.node("field-board-name").isDisabled());
                window.until("the caution", () -> window.focused().equals(Ids.acknowledge(caution)));
                window.press(KeyCode.SPACE);
            }
            window.until("the first field", () -> window.focused().equals("field-board-name"));
            assertFalse(window.node("field-board-name").isDisabled());
            assertTrue(window.node("next").isDisabled());
        }
    }

    @Test
    void enterDoesNotAcknowledge() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            List<String> waiting = desk.shown().open();
            window.press(KeyCode.ENTER, KeyCode.ENTER, KeyCode.ENTER);
            assertEquals(waiting, desk.shown().open());
        }
    }

    @Test
    void aKeyHeldDownAcknowledgesOneCautionAtMost() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            int waiting = desk.shown().open().size();
            window.layOut();
            for (int i = 0; i < 20; i++) {
                hold(window, KeyCode.SPACE);
                window.layOut();
            }
            assertEquals(waiting, desk.shown().open().size(), "nothing while it is held");
            release(window, KeyCode.SPACE);
            assertEquals(waiting - 1, desk.shown().open().size(), "one when it is let go");
        }
    }

    /** 1024 by 700 is the smallest window that is promised; 21 and 28 are one and a half times and twice the usual text. */
    @ParameterizedTest
    @ValueSource(ints = {21, 28})
    void everyWaitingCautionIsSeenWholeInASmallWindowWithLargeText(int text) throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
            window.fx(() -> {
                while (window.shell.theme().pixels() < text) {
                    window.shell.theme().bigger();
                }
                return null;
            });
            Desk desk = open(window);
            Hand hand = new Hand(bench);
            int seen = 0;
            for (int i = 0; i < 1500; i++) {
                if (desk.state().card().isEmpty() && !desk.shown().open().isEmpty() && desk.working()) {
                    String caution = desk.shown().open().get(0);
                    window.layOut();
                    Bounds at = inScene(window.node(Ids.acknowledge(caution)));
                    double foot = inScene(window.node("make-safe")).getMinY();
                    double band = inScene(window.node("power")).getMaxY();
                    String where = desk.shown().step().id() + " " + caution + " " + at;
                    assertTrue(at.getMaxY() <= foot && at.getMinY() >= band, where);
                    assertTrue(band > 0 && at.getHeight() >= 24, where);
                    seen++;
                }
                Answer answer = hand.next(desk.state(), desk.course());
                if (answer instanceof Answer.Done) {
                    break;
                }
                window.fx(() -> {
                    Walk.give(desk, answer);
                    desk.next();
                    return null;
                });
            }
            assertTrue(seen > 15, "cautions met: " + seen);
        }
    }

    private static Bounds inScene(Node node) {
        return Opened.look(() -> node.localToScene(node.getBoundsInLocal()));
    }

    private static void hold(Opened window, KeyCode key) throws Exception {
        fire(window, KeyEvent.KEY_PRESSED, key);
    }

    private static void release(Opened window, KeyCode key) throws Exception {
        fire(window, KeyEvent.KEY_RELEASED, key);
    }

    private static void fire(Opened window, javafx.event.EventType<KeyEvent> kind, KeyCode key) throws Exception {
        window.fx(() -> {
            Node owner = window.shell.scene().getFocusOwner();
            Event.fireEvent(owner, new KeyEvent(kind, "", "", key, false, false, false, false));
            return null;
        });
        window.settle();
    }

    private Desk open(Opened window) throws Exception {
        Desk desk = window.fx(() -> {
            Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
            JobPage page = JobPage.practice(window.shell, course, bench);
            window.shell.show(page);
            return page.desk();
        });
        window.until("the first caution", () -> window.focused().startsWith("ack-"));
        return desk;
    }
}
