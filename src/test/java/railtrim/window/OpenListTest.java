package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.quantity.Meter;

/** A list hangs open, with an answer lit up in it, when the page below it changes. */
class OpenListTest {
    private static final String LIST = Ids.field("reg.family") + "-list";

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void board() throws Exception {
        bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(3));
    }

    @Test
    void itLeavesWithItsPageAndAnswersNothing() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = BenchHand.sitDown(window, bench, "marking");
            answer(window, desk, "reg.marking", "1086CT", "reg.control", "adjustable");
            lightUp(window);
            window.fx(() -> {
                desk.alarm("pressed");
                return null;
            });
            window.frames();
            assertEquals(Optional.empty(), desk.state().figures().choice("reg.family"));
            assertTrue(desk.makingSafe());
            assertWhole(window);
        }
    }

    @Test
    void itLeavesWithItsStepAndTheAnswerThatWasGivenStands() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Desk desk = BenchHand.sitDown(window, bench, "pins");
            Optional<String> family = desk.state().figures().choice("reg.family");
            window.fx(() -> {
                desk.look("marking");
                desk.reopen("marking", "a second look");
                return null;
            });
            window.frames();
            Hand hand = new Hand(bench);
            while (desk.shown().missing().contains("reg.outline")) {
                window.fx(() -> {
                    Walk.give(desk, hand.next(desk.state(), desk.course()));
                    return null;
                });
            }
            window.frames();
            lightUp(window);
            window.fx(() -> {
                desk.next();
                return null;
            });
            window.frames();
            assertEquals("pins", desk.shown().step().id());
            assertEquals(family, desk.state().figures().choice("reg.family"));
            assertWhole(window);
        }
    }

    private static void answer(Opened window, Desk desk, String text, String typed, String choice, String option)
            throws Exception {
        window.fx(() -> {
            desk.type(text, typed, false);
            desk.choose(choice, option);
            return null;
        });
        window.frames();
    }

    private static void lightUp(Opened window) throws Exception {
        ComboBox<?> box = (ComboBox<?>) window.node(LIST);
        window.fx(() -> {
            box.show();
            box.getSelectionModel().select(1);
            return null;
        });
        assertTrue(window.fx(box::isShowing));
    }

    /** Each part of the page lies in the box it is shown in, and the window goes on painting. */
    private static void assertWhole(Opened window) throws Exception {
        window.fx(() -> {
            whole(window.shell.scene().getRoot());
            return null;
        });
    }

    private static void whole(Parent box) {
        for (Node part : box.getChildrenUnmodifiable()) {
            assertSame(box, part.getParent(), part + " in " + box);
            if (part instanceof Parent inner) {
                whole(inner);
            }
        }
    }
}
