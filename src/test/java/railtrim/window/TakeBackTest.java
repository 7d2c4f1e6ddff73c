package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;
import railtrim.window.kit.Together;

/** Ctrl Z: what it would do is shown first, Escape leaves all as it is. */
class TakeBackTest {
    @TempDir
    Path folder;

    @Test
    void theLastEntryIsShownAndTakenBackOnlyWhenThePersonSaysSo() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = at(window, "legs", "leg.ohms");
            long entries = desk.state().job().last();
            undo(window);
            window.until("the question", () -> window.has("take-back-go"));
            assertTrue(shown(window, ".take-back-entry")
                    .contains(desk.state()
                            .figures()
                            .reading("leg.ohms")
                            .orElseThrow()
                            .typed()));
            window.press(KeyCode.ESCAPE);
            assertEquals(entries, desk.state().job().last());
            undo(window);
            window.until("the question", () -> window.has("take-back-go"));
            window.tabTo("take-back-go");
            window.press(KeyCode.ENTER);
            window.until("one entry more", () -> desk.state().job().last() == entries + 1);
            window.until("the field again", () -> window.focused().equals(Ids.field("leg.ohms")));
            assertTrue(desk.state().figures().number("leg.ohms").isEmpty());
        }
    }

    @Test
    void aSwitchTakenBackLeadsToTheMakeSafePage() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = at(window, "base.on", "base.on.switch");
            undo(window);
            window.until("the question", () -> window.has("take-back-go"));
            assertEquals(window.words.of("window.take-back.power"), shown(window, ".sheet-alert"));
            window.tabTo("take-back-go");
            window.press(KeyCode.ENTER);
            window.until("the make-safe page", () -> desk.state().card().isPresent());
            assertInstanceOf(State.Card.MakeSafe.class, desk.state().card().orElseThrow());
            window.until("the rail’s field", () -> window.focused().equals(Ids.field("safe.rail")));
            undo(window);
            window.until("that there is nothing", () -> window.has("take-back-none"));
        }
    }

    /** A field with letters in it takes back its own letters. */
    @Test
    void aTextBeingTypedKeepsItsOwnUndo() throws Exception {
        try (Opened window = Opened.in(folder)) {
            at(window, "legs", "leg.ohms");
            window.until("the next field", () -> window.focused().equals(Ids.field("leg.reversed")));
            window.type("12");
            undo(window);
            assertEquals(false, window.has("take-back-go"));
        }
    }

    private static String shown(Opened window, String kind) {
        return Together.plain(((Labeled) window.shell.scene().getRoot().lookup(kind)).getText());
    }

    private static void undo(Opened window) throws Exception {
        window.layOut();
        window.robot.push(KeyCode.CONTROL, KeyCode.Z);
        window.settle();
    }

    /** With the given field of the step just answered. */
    private static Desk at(Opened window, String step, String field) throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(3));
        Desk desk = window.fx(() -> {
            JobPage page = JobPage.practice(
                    window.shell, new Course(Procedure.builtIn(), new MemoryLog("board", bench)), bench);
            window.shell.show(page);
            Hand hand = new Hand(bench);
            Desk at = page.desk();
            while (at.course()
                            .lastEntry()
                            .filter(last -> last.fact().step().equals(step))
                            .isEmpty()
                    || at.shown().missing().contains(field)
                    || !at.shown().open().isEmpty()) {
                Walk.give(at, hand.next(at.state(), at.course()));
                at.next();
            }
            return at;
        });
        window.settle();
        return desk;
    }
}
