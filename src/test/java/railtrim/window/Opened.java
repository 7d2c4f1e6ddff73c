package railtrim.window;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import railtrim.procedure.Words;

/** A window opened for a test, with a hand on its keyboard. */
final class Opened implements AutoCloseable {
    final Words words = Words.english();
    final Shell shell;
    final FxRobot robot = new FxRobot();

    private Opened(Stage stage, Path folder, double width, double height) throws TimeoutException {
        shell = fx(() -> {
            Shell opened = new Shell(stage, new TestSurroundings(folder), words);
            opened.show();
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            return opened;
        });
        settle();
    }

    static Opened in(Path folder) throws TimeoutException {
        return sized(folder, 1240, 800);
    }

    static Opened sized(Path folder, double width, double height) throws TimeoutException {
        return new Opened(FxToolkit.registerPrimaryStage(), folder, width, height);
    }

    @Override
    public void close() throws TimeoutException {
        FxToolkit.cleanupStages();
    }

    <T> T fx(Callable<T> work) throws TimeoutException {
        return WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, WaitForAsyncUtils.asyncFx(work));
    }

    void settle() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    Node node(String id) {
        Node found = shell.scene().getRoot().lookup("#" + id);
        if (found == null) {
            throw new AssertionError("there is no #" + id + " in the window");
        }
        return found;
    }

    boolean has(String id) {
        Node found = shell.scene().getRoot().lookup("#" + id);
        return found != null && shown(found);
    }

    /** Whether a node and all it lies in are visible. */
    static boolean shown(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    String focused() {
        Node owner = shell.scene().getFocusOwner();
        return owner == null || owner.getId() == null ? "" : owner.getId();
    }

    void press(KeyCode... keys) {
        for (KeyCode key : keys) {
            robot.push(key);
        }
        settle();
    }

    void type(String text) {
        robot.write(text, 0);
    }

    void until(String what, BooleanSupplier there) throws TimeoutException {
        try {
            WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, there::getAsBoolean);
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain for: " + what + "; the focus is on #" + focused());
        }
    }

    /** Goes on with Tab, as a person without a mouse does, until a control has the focus. */
    void tabTo(String id) {
        for (int i = 0; i < 60 && !focused().equals(id); i++) {
            press(KeyCode.TAB);
        }
        if (!focused().equals(id)) {
            throw new AssertionError("Tab does not lead to #" + id);
        }
    }
}
