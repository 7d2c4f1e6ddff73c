package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Random;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** What is said about an entry that was not taken is seen without scrolling. */
class RefusalInSightTest {
    @TempDir
    Path folder;

    @Test
    void aNumberWithoutItsUnitIsAnsweredInSightOfASmallWindow() throws Exception {
        try (Opened window = Opened.sized(folder, 1024, 700)) {
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
                Node scroll = window.shell.scene().getRoot().lookup(".step-scroll");
                Node answer = scroll.lookup(".verdict-bad");
                return answer != null && top(answer) >= top(scroll) && bottom(answer) <= bottom(scroll);
            });
            assertEquals("field-rail-highest", window.focused());
        }
    }

    private static double top(Node node) {
        return node.localToScene(node.getBoundsInLocal()).getMinY();
    }

    private static double bottom(Node node) {
        return node.localToScene(node.getBoundsInLocal()).getMaxY();
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
