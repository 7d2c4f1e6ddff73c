package railtrim.window;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.window.kit.Frames;
import railtrim.window.kit.Handle;

/** A window opened for a test, with a hand on its keyboard. */
final class Opened implements AutoCloseable {
    /** One lays out, one brings into sight what was asked for, one follows what that moved. */
    private static final int FRAMES = 3;

    final Words words;
    final Shell shell;
    final FxRobot robot = new FxRobot();

    private Opened(Words words, Stage stage, Surroundings surroundings, double width, double height)
            throws TimeoutException {
        this.words = words;
        shell = fx(() -> {
            Shell opened = new Shell(stage, surroundings, words);
            opened.show();
            stage.setX(0);
            stage.setY(0);
            stage.setWidth(width);
            stage.setHeight(height);
            return opened;
        });
        settle();
        until(
                "the first picture, behind which keys are answered",
                () -> !shell.scene().getAccelerators().isEmpty());
    }

    static Opened in(Path folder) throws TimeoutException {
        return sized(folder, 1240, 800);
    }

    static Opened sized(Path folder, double width, double height) throws TimeoutException {
        return new Opened(
                Words.english(), FxToolkit.registerPrimaryStage(), new TestSurroundings(folder), width, height);
    }

    static Opened with(Surroundings surroundings) throws TimeoutException {
        return new Opened(Words.english(), FxToolkit.registerPrimaryStage(), surroundings, 1240, 800);
    }

    static Opened with(Words words, Path folder) throws TimeoutException {
        return new Opened(words, FxToolkit.registerPrimaryStage(), new TestSurroundings(folder), 1240, 800);
    }

    /** @param text pixels of the root font, one of the theme's sizes */
    void size(double width, double height, double text) throws TimeoutException {
        fx(() -> {
            shell.stage().setWidth(width);
            shell.stage().setHeight(height);
            shell.theme().usual();
            while (shell.theme().pixels() < text) {
                shell.theme().bigger();
            }
            return null;
        });
        settle();
    }

    /** A step in one of its states, as a job that is not a rehearsal: the step is seen first, and then the deed is done that leads to the state. */
    Desk show(Moment moment, Procedure procedure) throws TimeoutException {
        Desk shown = fx(() -> show(moment, moment.before(procedure)));
        frames();
        if (moment.typed().isPresent()) {
            type(moment.typed().get());
        } else {
            fx(() -> {
                moment.deed().accept(shown);
                return null;
            });
        }
        frames();
        return shown;
    }

    private void type(Moment.Typed typed) throws TimeoutException {
        until("the field", () -> focused().equals(Ids.field(typed.field())));
        type(typed.text());
        press(KeyCode.ENTER);
    }

    /** On the window's thread, the deed done already. */
    Desk showNow(Moment moment, Procedure procedure) {
        return show(moment, moment.desk(procedure));
    }

    private Desk show(Moment moment, Desk desk) {
        JobPage.Kept kept = new JobPage.Kept(
                moment.job().name(), shell.surroundings().jobFolder(), List.of(), false, Optional.empty());
        shell.show(new JobPage(shell, desk, kept));
        return desk;
    }

    /** Until all that waits for a frame is done, and what that puts off once more. */
    void frames() throws TimeoutException {
        for (int i = 0; i < FRAMES; i++) {
            settle();
            CountDownLatch laidOut = new CountDownLatch(1);
            fx(() -> {
                Frames.whenLaidOut(shell.scene(), laidOut::countDown);
                return null;
            });
            await(laidOut);
        }
        settle();
        layOut();
    }

    private static void await(CountDownLatch latch) throws TimeoutException {
        try {
            if (!latch.await(20, TimeUnit.SECONDS)) {
                throw new TimeoutException("no frame came");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** The stage stays open for the next test: on a headless screen only the first one ever shown has the focus. */
    @Override
    public void close() throws TimeoutException {
        fx(() -> {
            shell.stage().setScene(new Scene(new StackPane()));
            return null;
        });
        forgetEvents();
    }

    /**
     * TestFX keeps every event of a registered stage, and with it the pages it was fired at: some hundred events a minute fill the memory. A stage that is
     * registered anew begins with none.
     */
    void forgetEvents() throws TimeoutException {
        fx(() -> {
            FxToolkit.toolkitContext().setRegisteredStage(shell.stage());
            return null;
        });
    }

    /**
     * Looks at the window on its own thread: while that lays nodes out, another one that asks where they lie finds them half done. What looks must not
     * wait for that thread.
     */
    static <T> T look(Callable<T> eyes) {
        try {
            return Platform.isFxApplicationThread()
                    ? eyes.call()
                    : WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, WaitForAsyncUtils.asyncFx(eyes));
        } catch (Exception e) {
            throw new AssertionError("the window could not be looked at", e);
        }
    }

    <T> T fx(Callable<T> work) throws TimeoutException {
        return WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, WaitForAsyncUtils.asyncFx(work));
    }

    /** Until all that was put off on the window's thread is done. */
    void settle() throws TimeoutException {
        fx(() -> null);
        fx(() -> null);
    }

    Node node(String id) {
        Node found = look(() -> Handle.find(shell.scene().getRoot(), id));
        if (found == null) {
            throw new AssertionError("there is no #" + id + " in the window");
        }
        return found;
    }

    boolean has(String id) {
        return look(() -> {
            Node found = Handle.find(shell.scene().getRoot(), id);
            return found != null && shown(found);
        });
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
        return owner == null ? "" : Handle.of(owner);
    }

    /** Presses and lets go of keys one after the other, where the focus is. Quicker than a robot, through the same scene. */
    void press(KeyCode... keys) throws TimeoutException {
        for (KeyCode key : keys) {
            // A control takes keys once it has been laid out, as it has when a person sees it.
            layOut();
            fx(() -> {
                fire(KeyEvent.KEY_PRESSED, key, "");
                fire(KeyEvent.KEY_RELEASED, key, "");
                return null;
            });
            settle();
        }
    }

    /** Presses a button, wherever the focus is. */
    void press(String id) throws TimeoutException {
        layOut();
        fx(() -> {
            ((ButtonBase) node(id)).fire();
            return null;
        });
        layOut();
    }

    void type(String text) throws TimeoutException {
        layOut();
        fx(() -> {
            text.chars().forEach(letter -> fire(KeyEvent.KEY_TYPED, KeyCode.UNDEFINED, Character.toString(letter)));
            return null;
        });
    }

    private void fire(EventType<KeyEvent> kind, KeyCode key, String letter) {
        Node owner = shell.scene().getFocusOwner();
        boolean there = owner != null && owner.getScene() == shell.scene();
        EventTarget target = there ? owner : shell.scene();
        Event.fireEvent(target, new KeyEvent(kind, letter, letter, key, false, false, false, false));
    }

    /** Lays the page out now, rather than with the next pulse. */
    void layOut() throws TimeoutException {
        fx(() -> {
            shell.scene().getRoot().applyCss();
            shell.scene().getRoot().layout();
            return null;
        });
    }

    void until(String what, BooleanSupplier there) throws TimeoutException {
        try {
            WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> look(there::getAsBoolean));
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain for: " + what + "; the focus is on #" + focused());
        }
    }

    /** Goes on with Tab, as a person without a mouse does, until a control has the focus. */
    void tabTo(String id) throws TimeoutException {
        for (int i = 0; i < 60 && !focused().equals(id); i++) {
            press(KeyCode.TAB);
        }
        if (!focused().equals(id)) {
            throw new AssertionError("Tab does not lead to #" + id);
        }
    }
}
