package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

/** Make safe is one press away on every step, and then nothing else can be done. */
class MakeSafeTest {
    private static final Map<PowerNeed, String> POWER_WORDS = Map.of(
            PowerNeed.OFF, "Power off",
            PowerNeed.ON, "Power on",
            PowerNeed.TO_ON, "Switch on now",
            PowerNeed.TO_OFF, "Switch off now");

    @TempDir
    Path folder;

    private final Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(3));

    @Test
    void makeSafeLeavesTheRailReadingAndNothingElse() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            window.press("make-safe");
            assertInstanceOf(State.Card.MakeSafe.class, desk.state().card().orElseThrow());
            window.until("the rail’s field", () -> window.focused().equals("field-safe-rail"));
            for (String id : new String[] {"make-safe", "back", "pause", "next"}) {
                assertTrue(window.node(id).isDisabled(), id);
            }
            assertTrue(window.node("phase-prepare").isDisabled());
            window.type("0.002 V");
            window.press(KeyCode.ENTER);
            window.until("the step again", () -> desk.state().card().isEmpty());
            assertFalse(window.node("make-safe").isDisabled());
        }
    }

    @Test
    void aRailThatStillHasVoltageKeepsTheCard() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            window.press("make-safe");
            window.until("the rail’s field", () -> window.focused().equals("field-safe-rail"));
            // 0.1 V is the least that counts as live (common practice, no source).
            window.type("0.8 V");
            window.press(KeyCode.ENTER);
            assertTrue(desk.state().card().isPresent());
            assertTrue(desk.said("safe.rail").isPresent());
        }
    }

    @Test
    void everyStepShowsMakeSafeInTheSamePlaceReadyToPress() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            Hand hand = new Hand(bench);
            Set<String> seen = new TreeSet<>();
            window.layOut();
            double x = window.node("make-safe").localToScene(0, 0).getX();
            for (int i = 0; i < 1500; i++) {
                Answer answer = hand.next(desk.state(), desk.course());
                if (answer instanceof Answer.Done) {
                    break;
                }
                window.fx(() -> {
                    Walk.give(desk, answer);
                    desk.next();
                    return null;
                });
                window.layOut();
                if (desk.state().card().isEmpty()) {
                    Node button = window.node("make-safe");
                    String step = desk.shown().step().id();
                    seen.add(step);
                    assertTrue(Opened.shown(button) && !button.isDisabled(), step);
                    assertEquals(x, button.localToScene(0, 0).getX(), 0.5, step);
                    boolean powered = desk.shown().step().power().startsOn()
                            || desk.shown().step().power().endsOn();
                    assertEquals(powered && !desk.atEnd(), window.has("stop-rule"), step);
                    assertTheBandSays(window, desk);
                }
            }
            // All but the steps this board does not need: its regulator's family is known, so no data sheet is asked
            // for.
            assertTrue(seen.size() > 40, () -> "only " + seen);
        }
    }

    /** The power this step needs as a word, and where we are: the phase, and which step of how many. */
    private static void assertTheBandSays(Opened window, Desk desk) {
        State.StepState shown = desk.shown();
        Label word = (Label) window.node("power").lookup(".power-word");
        assertEquals(
                POWER_WORDS.get(shown.step().power()),
                word.getText(),
                shown.step().id());
        List<State.StepState> asked = desk.state().steps().stream()
                .filter(each -> each.status() != State.Status.NOT_NEEDED || each == shown)
                .toList();
        String where = ((Label) window.node("position")).getText();
        assertTrue(
                where.endsWith("step " + (asked.indexOf(shown) + 1) + " of " + asked.size()),
                () -> where + " at " + shown.step().id());
        assertTrue(Opened.shown(window.node(Ids.step(shown.step().id()))) || desk.atEnd(), where);
    }

    private Desk open(Opened window) throws Exception {
        return window.fx(() -> {
            Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
            JobPage page = JobPage.practice(window.shell, course, bench);
            window.shell.show(page);
            return page.desk();
        });
    }
}
