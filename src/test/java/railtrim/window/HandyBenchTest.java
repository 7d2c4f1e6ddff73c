package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeoutException;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.practice.Bench;
import railtrim.quantity.Meter;

/** What makes the practice bench easy on the hand: nothing turns, scrolls, jumps or loses the focus by itself. */
class HandyBenchTest {
    @TempDir
    Path folder;

    private Desk desk;

    private BenchHand begin(Opened window, String step) throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(11));
        desk = BenchHand.sitDown(window, bench, step);
        return new BenchHand(window, desk, bench.board());
    }

    @Test
    void aWheelThatScrollsTheBenchTurnsNoScrewThatPassesBelowTheMouse() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "solder");
            hand.press("trimmer-fetch");
            double was = travel(window).getValue();
            wheel(window, false);
            assertEquals(was, travel(window).getValue());
            wheel(window, true);
            assertEquals(was - 0.05 / 25, travel(window).getValue(), 1e-3);
        }
    }

    @Test
    void homeAndEndTurnTheScrewAndLeaveTheBenchWhereItIs() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "solder");
            hand.press("trimmer-fetch");
            window.layOut();
            ScrollPane scroll = window.fx(() -> {
                Node each = travel(window);
                while (!(each instanceof ScrollPane)) {
                    each = each.getParent();
                }
                ((ScrollPane) each).setVvalue(0.6);
                return (ScrollPane) each;
            });
            for (KeyCode key : new KeyCode[] {KeyCode.END, KeyCode.HOME}) {
                hand.turnTo(key);
                assertEquals(0.6, scroll.getVvalue(), 0.01);
            }
        }
    }

    @Test
    void onceSolderedTheFocusIsOnTheLookAtTheJoints() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "solder");
            hand.press("trimmer-fetch");
            hand.press("trimmer-first-adjust");
            hand.press("trimmer-second-ground");
            window.fx(() -> {
                window.node("trimmer-solder").requestFocus();
                return null;
            });
            window.press(KeyCode.SPACE);
            window.until("the look in focus", () -> window.focused().equals("bench-look"));
        }
    }

    @Test
    void swappedProbesReadTheSameWithTheOtherSign() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "");
            assertTrue(((ButtonBase) window.node("probes-swap")).isDisabled(), "no probe is on the board yet");
            for (String id : new String[] {"bench-power", "meter-volts", "probe-red", "pad-output", "pad-ground"}) {
                hand.press(id);
            }
            String before = hand.text("meter-display");
            hand.press("probes-swap");
            assertTrue(before.startsWith("3.3"), before);
            assertTrue(hand.text("meter-display").matches("[-−]3\\.3.. V"), hand.text("meter-display"));
        }
    }

    @Test
    void aRangeThatIsTooSmallSaysSoBesideTheOverload() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "");
            for (String id : new String[] {"bench-power", "meter-volts", "probe-red", "pad-output", "pad-ground"}) {
                hand.press(id);
            }
            hand.press("meter-range");
            assertEquals("OL", hand.text("meter-display"));
            assertEquals(window.words.of("window.bench.range.too-small", "599.9 mV"), hand.text("meter-range-now"));
            hand.press("meter-range");
            assertEquals(window.words.of("window.bench.range.to", "5.999 V"), hand.text("meter-range-now"));
        }
    }

    /** A hand that goes to an answer while the last second passes must not find another answer there. */
    @Test
    void theAnswersStayWhereTheyAreWhenTheWaitIsOver() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "down.watch");
            double before = top(window, "down.seen", "well");
            assertTrue(desk.course().dwellLeft() > 0);
            hand.press("wait");
            assertEquals(0, desk.course().dwellLeft());
            assertEquals(before, top(window, "down.seen", "well"), 1);
        }
    }

    /** All went well, and another step down follows: nothing is stale in the person’s eyes. */
    @Test
    void aStepDownThatIsDoneDoesNotCallItselfOutOfDate() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "down.watch");
            hand.press("wait");
            window.press(Ids.option("down.seen", "well"));
            window.until("the line", () -> window.has("done-line"));
            assertEquals(window.words.of("window.done"), hand.text("done-line"));
        }
    }

    private static double top(Opened window, String field, String option) throws TimeoutException {
        window.frames();
        return window.fx(
                () -> window.node(Ids.option(field, option)).localToScene(0, 0).getY());
    }

    private static Slider travel(Opened window) {
        return (Slider) window.node("trimmer-travel");
    }

    /** @param moved whether the mouse was moved to the knob before */
    private static void wheel(Opened window, boolean moved) throws TimeoutException {
        window.fx(() -> {
            Node knob = window.node("trimmer-knob");
            if (moved) {
                Event.fireEvent(knob, mouseMoved());
            }
            Event.fireEvent(
                    knob,
                    new ScrollEvent(
                            ScrollEvent.SCROLL,
                            5,
                            5,
                            5,
                            5,
                            false,
                            false,
                            false,
                            false,
                            false,
                            false,
                            0,
                            -40,
                            0,
                            -40,
                            ScrollEvent.HorizontalTextScrollUnits.NONE,
                            0,
                            ScrollEvent.VerticalTextScrollUnits.NONE,
                            0,
                            0,
                            null));
            return null;
        });
    }

    private static MouseEvent mouseMoved() {
        return new MouseEvent(
                MouseEvent.MOUSE_MOVED,
                5,
                5,
                5,
                5,
                MouseButton.NONE,
                0,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                null);
    }
}
