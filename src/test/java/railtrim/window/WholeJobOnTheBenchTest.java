package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import railtrim.circuit.Leg;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.practice.Seen;
import railtrim.quantity.Meter;

/** The practice bench of the window, worked with its own controls alone: probes, dial, switch, load, screw and iron. */
class WholeJobOnTheBenchTest {
    @TempDir
    Path folder;

    private Bench bench;
    private Desk desk;

    /** @param step where the person takes over from a hand that did all before; empty for the beginning */
    private BenchHand begin(Opened window, String board, String step) throws Exception {
        bench = new Bench(Practice.board(board), Meter.middle(), new Random(11));
        desk = BenchHand.sitDown(window, bench, step);
        return new BenchHand(window, desk, bench.board());
    }

    /** A person who does what the hints say and types what the display shows comes to a finished checklist, without a mishap. */
    @Test
    void aPersonWhoFollowsTheHintsFinishesTheJobAndWritesTheChecklist() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "");
            hand.work();
            assertTrue(
                    desk.state().complete(), () -> "stands at " + desk.state().current() + hand.deeds);
            assertEquals(java.util.Set.of(), bench.mishaps());
            assertTrue(hand.text("bench-lesson").contains(bench.board().label().teaches()));
            assertTrue(hand.text("bench-lesson").contains("2.710 V"), "warm, as its file says");
            assertTrue(hand.text("bench-lesson").contains("2.630 V"), "cold");
            assertTrue(hand.text("bench-lesson").endsWith(window.words.of("window.bench.lesson.clean")));

            window.until("the checklist’s button", () -> window.has("export"));
            hand.press("export");
            WaitForAsyncUtils.waitFor(60, TimeUnit.SECONDS, () -> window.has("sheet-close"));
            try (Stream<Path> files = Files.list(folder.resolve("jobs"))) {
                assertTrue(files.anyMatch(file -> file.toString().endsWith(".pdf")));
            }
            // The truth of the virtual board, which the window keeps to itself until now.
            Board board = bench.board();
            double lowest = bench.trueUnderLoad();
            assertTrue(lowest > board.worstFail(), () -> lowest + " V against " + board.worstFail());
            assertTrue(lowest < board.stock() - 0.1, () -> lowest + " V against " + board.stock());
        }
    }

    /** Reference between OUT and ADJ: a part across that leg raises the output; the stop resistor keeps it from killing the chip. */
    @Test
    void theWrongLegRaisesTheVoltageAndTheBenchSaysSoForAsLongAsItLasts() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "solder");
            hand.press("trimmer-fetch");
            hand.join("trimmer", "output", "adjust");
            hand.turnTo(KeyCode.HOME);
            assertFalse(window.has("mishap"), "the board is off, nothing has happened yet");
            hand.press("bench-power");
            String pads = window.words.of("window.bench.pads", "OUT", "ADJ");
            String why = window.words.of("window.bench.blame.wrong-leg", pads);
            assertTrue(hand.text("mishap").contains(why), hand.text("mishap"));
            hand.press("meter-again");
            assertTrue(hand.text("mishap").contains(why));
            assertEquals(Seen.WELL, bench.seen());
            hand.press("bench-power");
            assertFalse(window.has("mishap"), "the plug is out");
        }
    }

    /** Solder from the output to the input beside it: the chip gets the input’s 5.06 V, and 4.6 V is what it can stand. */
    @Test
    void aBridgeToTheInputBlowsTheChipAndTheBenchSaysHowAndWhatWouldHaveShownIt() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "solder");
            hand.press("trimmer-fetch");
            hand.join("trimmer", "input", "ground", "plenty");
            assertFalse(window.has("mishap"), "the board is off, nothing has happened yet");
            hand.press("bench-power");
            assertEquals(Seen.SMOKE, bench.seen(), () -> bench.highestSeen() + " V");
            String told = hand.text("mishap");
            String pads = window.words.of("window.bench.pads", "OUT", "IN");
            assertTrue(told.contains(window.words.of("window.bench.blame.bridge-beside", pads)), told);
            assertTrue(told.contains(railtrim.quantity.Display.volts(bench.highestSeen())), told);
            assertTrue(hand.text("bench-seen").contains(window.words.of("option.seen.smoke")));
            // It does not go away with the plug.
            hand.press("bench-power");
            hand.press("bench-minute");
            assertEquals(told, hand.text("mishap"));

            costsNothing(window, hand);
        }
    }

    /** The same board as new: alive, cold, nothing soldered, and the job at its beginning. */
    private void costsNothing(Opened window, BenchHand hand) throws Exception {
        Desk before = window.shell.desk().orElseThrow();
        hand.press("bench-again");
        Desk after = window.shell.desk().orElseThrow();
        assertNotEquals(before, after);
        assertEquals(0, after.state().job().entries().size());
        assertFalse(window.has("mishap"));
        assertFalse(window.has("trimmer-travel"));
        assertEquals(window.words.of("window.bench.seen.off"), hand.text("bench-seen"));
        hand.press("bench-power");
        hand.press("meter-volts");
        hand.press("probe-red");
        hand.press("pad-output");
        hand.press("pad-ground");
        double volts = Double.parseDouble(hand.text("meter-display").replace(" V", ""));
        assertEquals(bench.board().stock(), Math.abs(volts), 0.05);
        assertTrue(hand.text("bench-seen").contains(window.words.of("option.seen.well")));
    }

    @Test
    void lotsOfSolderRunToTheNextPinAndTheWickTakesThemUp() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "solder");
            hand.press("trimmer-fetch");
            hand.join("trimmer", "output", "input", "plenty");
            Node.Pair joined = bench.bridged().orElseThrow();
            hand.press("bench-look");
            String pads =
                    window.words.of("window.bench.pads", name(window, joined.first()), name(window, joined.second()));
            assertEquals(window.words.of("window.bench.joints.bridge", pads), hand.text("bench-joints"));
            hand.press("bench-clean");
            hand.press("bench-look");
            assertTrue(bench.bridged().isEmpty());
            assertEquals(window.words.of("window.bench.joints.good"), hand.text("bench-joints"));
        }
    }

    /** It holds for at most half an hour with the power on; then the voltage is back at stock, and the glass shows why. */
    @Test
    void aQuickTouchLeavesAJointThatOpensLater() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "solder");
            hand.press("trimmer-fetch");
            Node.Pair leg = Node.Pair.of(Leg.LOWER);
            hand.join("trimmer", id(leg.first()), id(leg.second()), "touch");
            String part = hand.trimmer();
            hand.press("bench-look");
            assertEquals(window.words.of("window.bench.joints.dry", part), hand.text("bench-joints"));
            hand.press("bench-power");
            double held = bench.output();
            assertTrue(held < bench.board().stock() - 0.01, held + " V");
            for (int minute = 0; minute < 31; minute++) {
                hand.press("bench-minute");
            }
            assertEquals(bench.board().stock(), bench.output(), 0.003);
            hand.press("bench-look");
            assertEquals(window.words.of("window.bench.joints.loose", part), hand.text("bench-joints"));
            hand.press("bench-power");
            hand.press("bench-minute");
            hand.press("trimmer-heat");
            hand.press("bench-power");
            assertEquals(held, bench.output(), 0.003);
        }
    }

    /** A part can go to any two pads, but not with both leads to one. */
    @Test
    void bothLeadsOnOnePadAreNotSoldered() throws Exception {
        try (Opened window = Opened.in(folder)) {
            BenchHand hand = begin(window, "sound-board", "solder");
            hand.press("trimmer-fetch");
            assertTrue(window.node("trimmer-solder").isDisabled());
            hand.press("trimmer-first-input");
            hand.press("trimmer-second-input");
            assertTrue(window.node("trimmer-solder").isDisabled());
            hand.press("trimmer-second-adjust");
            hand.press("trimmer-solder");
            assertFalse(window.has("trimmer-solder"), "it is on the board now");
            assertTrue(window.node("trimmer-remove") instanceof ButtonBase);
        }
    }

    private static String name(Opened window, Node node) {
        return window.words.of("window.bench.pad." + id(node));
    }

    private static String id(Node node) {
        return node.name().toLowerCase(java.util.Locale.ROOT);
    }
}
