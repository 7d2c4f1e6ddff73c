package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.controlsfx.control.PopOver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Outlook;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;
import railtrim.window.kit.Handle;

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
    void theBoardAndItsPlugAreDrawnWhileItIsMadeSafe() throws Exception {
        Moment working = Moments.of("sound-board").stream()
                .filter(each -> each.step().equals("down.watch") && each.state().equals("fresh"))
                .findFirst()
                .orElseThrow();
        try (Opened window = Opened.in(folder)) {
            window.show(working, Procedure.builtIn());
            assertTrue(drawn(window).startsWith(window.words.of("picture.ladder.says")), drawn(window));
            window.press("make-safe");
            window.until("the plug", () -> drawn(window).startsWith(window.words.of("picture.board.says")));
        }
    }

    private static String drawn(Opened window) {
        return ((Pane) window.node("picture")).getChildren().get(0).getAccessibleText();
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
            double x = inScene(window.node("make-safe")).getMinX();
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
                    assertEquals(x, inScene(button).getMinX(), 0.5, step);
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

    /** Whatever sheet is open, Make safe stays free in its place, and pressing it once is enough. */
    @Test
    void noSheetCoversMakeSafe() throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
            window.size(1024, 700, 21);
            Desk desk = job(window);
            for (String sheet : List.of(
                    "menu-help",
                    "menu-glossary",
                    "menu-look",
                    "menu-print",
                    "menu-share",
                    "menu-plan",
                    "menu-take-back-menu",
                    "pause")) {
                Bounds place = inScene(window.node("make-safe"));
                open(window, sheet);
                window.layOut();
                Node veil = window.shell.scene().getRoot().lookup(".veil");
                assertEquals(place, inScene(window.node("make-safe")), sheet);
                assertTrue(inScene(veil).getMaxY() <= place.getMinY(), sheet + " lies on it");
                assertEquals(Set.of("make-safe"), pressable(window, veil), sheet);
                window.press("make-safe");
                assertFalse(window.shell.sheet().open(), sheet);
                assertInstanceOf(State.Card.MakeSafe.class, desk.state().card().orElseThrow(), sheet);
                window.fx(() -> {
                    desk.type("safe.rail", "0 V", false);
                    return null;
                });
                window.layOut();
            }
        }
    }

    /** What is read beside a field goes away with the press, which counts all the same. */
    @Test
    void aBubbleDoesNotSwallowThePress() throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
            window.size(1024, 700, 21);
            Desk desk = job(window);
            acknowledgeAll(window, desk);
            Bounds makeSafe = onScreen(window.node("make-safe"));
            for (Node help : window.shell.scene().getRoot().lookupAll("." + HelpSheet.ASK)) {
                window.fx(() -> {
                    Reveal.within((ScrollPane) window.shell.scene().getRoot().lookup(".step .step-scroll"), help);
                    return null;
                });
                window.layOut();
                window.fx(() -> {
                    ((ButtonBase) help).fire();
                    return null;
                });
                window.until("the bubble", () -> bubble().isPresent());
                window.settle();
                PopupWindow bubble = bubble().orElseThrow();
                assertFalse(bubble.getConsumeAutoHidingEvents(), Handle.of(help));
                Node box = Handle.find(bubble.getScene().getRoot(), "bubble");
                assertFalse(onScreen(box).intersects(makeSafe), Handle.of(help) + " lies on it: " + onScreen(box));
                window.fx(() -> {
                    bubble.hide();
                    return null;
                });
            }
        }
    }

    /** Two ways lead from the card: the rail that reads dead, and help. */
    @Test
    void theCardLeavesTheReadingAndHelpAndNothingElseToPress() throws Exception {
        try (Opened window = Opened.in(folder)) {
            job(window);
            window.press("make-safe");
            window.until("the rail’s field", () -> window.focused().equals("field-safe-rail"));
            window.layOut();
            assertEquals(
                    Set.of("view", "field-safe-rail", Ids.enter("safe.rail"), Ids.help("safe.rail")),
                    pressable(window, new Pane()));
            Set<String> open = ((MenuButton) window.node("view"))
                    .getItems().stream()
                            .filter(item -> !item.isDisable() && item.getId() != null)
                            .map(MenuItem::getId)
                            .collect(Collectors.toSet());
            assertEquals(Set.of("menu-help", "menu-glossary"), open);
        }
    }

    @Test
    void closingTheWindowWithTheBoardOnIsNotSilent() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window);
            Hand hand = new Hand(bench);
            window.fx(() -> {
                while (desk.state().power() != State.Power.ON) {
                    Walk.give(desk, hand.next(desk.state(), desk.course()));
                    desk.next();
                }
                return null;
            });
            askToClose(window);
            window.until("the safe answer", () -> window.focused().equals("stay"));
            assertTrue(window.shell.stage().isShowing());
            window.press(KeyCode.ESCAPE);
            assertTrue(window.shell.stage().isShowing());
            assertFalse(window.shell.sheet().open());
            askToClose(window);
            window.until("the question", () -> window.has("leave-make-safe"));
            window.press("leave-make-safe");
            assertTrue(window.shell.stage().isShowing());
            assertInstanceOf(State.Card.MakeSafe.class, desk.state().card().orElseThrow());
        }
    }

    private static void askToClose(Opened window) throws Exception {
        window.fx(() -> {
            Stage stage = window.shell.stage();
            Event.fireEvent(stage, new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
            return null;
        });
    }

    private static void open(Opened window, String sheet) throws Exception {
        if (!sheet.startsWith("menu-")) {
            window.press(sheet);
        } else {
            window.fx(() -> {
                ((MenuButton) window.node("view"))
                        .getItems().stream()
                                .filter(item -> sheet.equals(item.getId()))
                                .findFirst()
                                .orElseThrow()
                                .fire();
                return null;
            });
        }
        window.until(sheet, () -> window.shell.sheet().open());
    }

    /** All there is to press or type in outside a node. */
    private static Set<String> pressable(Opened window, Node outside) throws Exception {
        return window.fx(() -> {
            Set<String> found = new TreeSet<>();
            pressable(window.shell.scene().getRoot(), outside, found);
            return found;
        });
    }

    private static void pressable(Node node, Node outside, Set<String> found) {
        if (node == outside || !node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node instanceof ButtonBase || node instanceof TextInputControl || node instanceof ComboBoxBase) {
            found.add(Handle.of(node));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> pressable(child, outside, found));
        }
    }

    private static Optional<PopupWindow> bubble() {
        return Window.getWindows().stream()
                .filter(PopOver.class::isInstance)
                .filter(Window::isShowing)
                .map(PopupWindow.class::cast)
                .findFirst();
    }

    private static Bounds onScreen(Node node) {
        return Opened.look(() -> node.localToScreen(node.getLayoutBounds()));
    }

    private static Bounds inScene(Node node) {
        return Opened.look(() -> node.localToScene(node.getLayoutBounds()));
    }

    private static void acknowledgeAll(Opened window, Desk desk) throws Exception {
        window.fx(() -> {
            List.copyOf(desk.shown().open()).forEach(desk::acknowledge);
            return null;
        });
        window.layOut();
    }

    /** A job on disk at its first step. */
    private Desk job(Opened window) throws Exception {
        Desk desk = window.fx(() -> {
            Files.createDirectories(folder.resolve("jobs"));
            window.shell.create(folder.resolve("jobs").resolve("board.railtrim"), "board");
            return window.shell.desk().orElseThrow();
        });
        window.settle();
        window.layOut();
        return desk;
    }

    /** The power this step needs as a word, and where we are: the phase, and which step of how many. */
    private static void assertTheBandSays(Opened window, Desk desk) {
        State.StepState shown = desk.shown();
        Label word = (Label) window.node("power").lookup(".power-word");
        PowerNeed asked = shown.step().power();
        boolean switchedOn = asked == PowerNeed.TO_ON && desk.state().power() == State.Power.ON;
        assertEquals(
                POWER_WORDS.get(switchedOn ? PowerNeed.ON : asked),
                word.getText(),
                shown.step().id());
        List<State.StepState> counted = desk.state().steps().stream()
                .filter(each -> new Outlook(desk.state()).expected(each) || each == shown)
                .toList();
        String where = ((Label) window.node("position")).getText();
        assertTrue(
                where.endsWith("step " + (counted.indexOf(shown) + 1) + " of " + counted.size()),
                () -> where + " at " + shown.step().id());
        assertTrue(
                desk.atEnd() || Opened.shown(window.node(Ids.step(shown.step().id()))), where);
    }

    /** Done is not asked for once more: after the switch the band says how things are, and a step that is only read again asks for no switch. */
    @Test
    void theBandAsksForASwitchOnlyUntilItIsDone() throws Exception {
        Map<String, String> says = Map.of(
                "base.on fresh", "Switch on now",
                "base.on refused", "Power on",
                "base.on filled", "Power on",
                "base.on stale", "Power off",
                "base.off fresh", "Switch off now",
                // The plug is out, but nobody has read the rail yet.
                "base.off refused", "Switch off now",
                "base.off filled", "Power off");
        List<Moment> moments = Moments.of("sound-board");
        try (Opened window = Opened.in(folder)) {
            for (Map.Entry<String, String> each : says.entrySet()) {
                Moment moment = moments.stream()
                        .filter(any -> any.name().equals(each.getKey()))
                        .findFirst()
                        .orElseThrow();
                window.show(moment, Procedure.builtIn());
                Label word = (Label) window.node("power").lookup(".power-word");
                assertEquals(each.getValue(), word.getText(), each.getKey());
            }
        }
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
