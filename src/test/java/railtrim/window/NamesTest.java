package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.window.kit.Handle;

/** Every control on every page has a name for people who do not see it. */
class NamesTest {
    @TempDir
    Path folder;

    @Test
    void everyControlOnEveryPageHasAName() throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(5));
        Set<String> nameless = new TreeSet<>();
        try (Opened window = Opened.in(folder)) {
            look(window, "start", nameless);
            Desk desk = window.fx(() -> {
                Course course = new Course(Procedure.builtIn(), new MemoryLog("board", bench));
                JobPage page = JobPage.practice(window.shell, course, bench);
                window.shell.show(page);
                return page.desk();
            });
            Hand hand = new Hand(bench);
            for (int i = 0; i < 1500; i++) {
                look(window, desk.shown().step().id(), nameless);
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
            look(window, "done", nameless);
        }
        assertEquals(Set.of(), nameless);
    }

    static void look(Opened window, String page, Set<String> nameless) throws Exception {
        window.layOut();
        window.fx(() -> {
            collect(window.shell.scene().getRoot(), page, nameless);
            return null;
        });
    }

    private static void collect(Node node, String page, Set<String> nameless) {
        if (!node.isVisible() || node instanceof ScrollBar) {
            return;
        }
        boolean control = node instanceof Control && node.isFocusTraversable() && !(node instanceof ScrollPane);
        if (control
                && blank(node.getAccessibleText())
                && !(node instanceof Labeled labeled && !blank(labeled.getText()))) {
            nameless.add(page + " " + Handle.of(node) + " " + node.getStyleClass());
        }
        boolean whole = node instanceof javafx.scene.control.ComboBox<?>;
        if (node instanceof Parent parent && !whole) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, page, nameless));
        }
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
