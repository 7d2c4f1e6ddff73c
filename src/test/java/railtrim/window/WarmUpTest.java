package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;

/** What is made ready when somebody is about to begin is never seen, and leaves nothing behind. */
class WarmUpTest {
    private static final long PATIENCE = TimeUnit.SECONDS.toMillis(60);

    @TempDir
    Path folder;

    @Test
    void theStartPageIsAsItWas() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.until("the focus", () -> !window.focused().isEmpty());
            List<Node> before = window.fx(() -> all(window.shell.scene().getRoot()));
            Node focused = window.fx(() -> window.shell.scene().getFocusOwner());
            List<Throwable> troubles = new ArrayList<>();
            Thread thread = begun(window);
            thread.setUncaughtExceptionHandler((of, trouble) -> troubles.add(trouble));
            thread.join(PATIENCE);
            assertTrue(!thread.isAlive(), "still at it");
            window.settle();
            assertEquals(List.of(), troubles);
            assertEquals(before, window.fx(() -> all(window.shell.scene().getRoot())));
            assertEquals(focused, window.fx(() -> window.shell.scene().getFocusOwner()));
        }
    }

    /** A change of theme goes through every scene there is, those of the warm-up as well. */
    @Test
    void theColoursMayChangeMeanwhile() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            List<Throwable> troubles = new ArrayList<>();
            Thread thread = begun(window);
            thread.setUncaughtExceptionHandler((of, trouble) -> troubles.add(trouble));
            while (thread.isAlive()) {
                window.fx(() -> {
                    window.shell.theme().dark(!window.shell.theme().dark());
                    return null;
                });
            }
            assertEquals(List.of(), troubles);
        }
    }

    @Test
    void aJobThatIsOpenedMeanwhileIsLeftAlone() throws Exception {
        Moment fresh = Moments.of("sound-board").get(0);
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            Thread thread = begun(window);
            window.fx(() -> {
                window.showNow(fresh, Procedure.builtIn());
                return null;
            });
            window.settle();
            List<Node> before = window.fx(() -> all(window.shell.scene().getRoot()));
            thread.join(PATIENCE);
            assertTrue(!thread.isAlive(), "still at it");
            window.settle();
            assertEquals(before, window.fx(() -> all(window.shell.scene().getRoot())));
        }
    }

    private static Thread begun(Opened window) throws Exception {
        Optional<Thread> found = window.fx(() -> {
            Event.fireEvent(
                    window.shell.scene(),
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.SHIFT, true, false, false, false));
            return Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().equals("warm-up"))
                    .findFirst();
        });
        return found.orElseThrow();
    }

    private static List<Node> all(Parent within) {
        List<Node> all = new ArrayList<>();
        for (Node child : within.getChildrenUnmodifiable()) {
            all.add(child);
            if (child instanceof Parent parent) {
                all.addAll(all(parent));
            }
        }
        return all;
    }
}
