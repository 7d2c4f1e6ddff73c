package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** What is said about an entry that was not taken is seen without scrolling. */
class RefusalInSightTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(ints = {14, 21})
    void aNumberWithoutItsUnitIsAnsweredInSightOfASmallWindow(int text) throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
            window.size(1024, 700, text);
            Desk desk = open(window);
            while (!desk.shown().open().isEmpty()) {
                String caution = desk.shown().open().get(0);
                window.until("the caution", () -> window.focused().equals(Ids.acknowledge(caution)));
                window.press(KeyCode.SPACE);
            }
            window.until("the name", () -> window.focused().equals("field-board-name"));
            window.type("old synth");
            window.press(KeyCode.ENTER);
            window.fx(() -> {
                desk.choose("supply.kind", "adapter");
                return null;
            });
            window.until("the voltage", () -> window.focused().equals("field-rail-highest"));
            window.type("1200");
            window.press(KeyCode.ENTER);
            window.until("the answer in sight", () -> {
                Node scroll = window.node("step-scroll");
                Node answer = scroll.lookup(".verdict-bad");
                return answer != null && top(answer) >= top(scroll) && bottom(answer) <= bottom(scroll);
            });
            assertEquals("field-rail-highest", window.focused());
        }
    }

    /** All is answered, and still Next stays shut: why is seen without looking for it. */
    @Test
    void whatHoldsTheStepBackComesIntoSight() throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
            window.size(1024, 700, 21);
            Desk desk = open(window);
            window.fx(() -> {
                List.copyOf(desk.shown().open()).forEach(desk::acknowledge);
                desk.type("board.name", "old synth", false);
                desk.choose("supply.kind", "adapter");
                desk.type("rail.highest", "12 V", false);
                desk.next();
                desk.type("chip.name", "DSP", false);
                desk.choose("rated.known", "yes");
                desk.type("rated.low", "15 V", false);
                return null;
            });
            window.until("the last field", () -> window.focused().equals("field-rated-high"));
            window.type("3.5 V");
            window.press(KeyCode.ENTER);
            String upsideDown = window.words.of("verdict.rated-upside-down");
            window.until("why in sight", () -> {
                Node scroll = window.node("step-scroll");
                return scroll.lookupAll(".label").stream()
                        .filter(label ->
                                label instanceof Label said && said.getText().equals(upsideDown))
                        .anyMatch(label -> top(label) >= top(scroll) && bottom(label) <= bottom(scroll));
            });
        }
    }

    /** The deed stands below the rail until that reads dead; then it is at the top, where it stays in sight. */
    @Test
    void theDeedComesIntoSightOnceItsTimeHasCome() throws Exception {
        Moment clip = Moments.of("sound-board").stream()
                .filter(moment -> moment.name().equals("clip fresh"))
                .findFirst()
                .orElseThrow();
        try (Opened window = Opened.in(folder)) {
            window.size(1024, 700, 21);
            Desk desk = window.show(clip, Procedure.builtIn());
            assertTrue(top(window.node("action")) > bottom(window.node("field-clip-dead")));
            window.fx(() -> {
                desk.type("clip.dead", "3 mV", false);
                return null;
            });
            window.layOut();
            double first = top(window.node("step-scroll"));
            assertTrue(bottom(window.node("action")) <= first);
        }
    }

    private static double top(Node node) {
        return Opened.look(() -> node.localToScene(node.getBoundsInLocal()).getMinY());
    }

    private static double bottom(Node node) {
        return Opened.look(() -> node.localToScene(node.getBoundsInLocal()).getMaxY());
    }

    private Desk open(Opened window) throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(5));
        return window.fx(() -> {
            JobPage page = JobPage.practice(
                    window.shell, new Course(Procedure.builtIn(), new MemoryLog("board", bench)), bench);
            window.shell.show(page);
            return page.desk();
        });
    }
}
