package railtrim.window;

import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.event.EventHandler;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;
import railtrim.window.kit.PlainScroll;

/**
 * The first job of a start needs a thousand classes that the start page did not. They are brought in when the first key or movement of the
 * mouse says that somebody is about to begin, so that opening it does not hold the window up; left alone, the window does nothing.
 */
final class WarmUp {
    /** Between two pieces of work on the window’s thread, so that it answers in between. */
    private static final long PAUSE_MILLISECONDS = 20;

    private final Shell shell;
    private final EventHandler<InputEvent> begun = event -> begin();

    private WarmUp(Shell shell) {
        this.shell = shell;
    }

    static void wait(Shell shell) {
        WarmUp warm = new WarmUp(shell);
        shell.scene().addEventFilter(MouseEvent.MOUSE_MOVED, warm.begun);
        shell.scene().addEventFilter(KeyEvent.KEY_PRESSED, warm.begun);
    }

    private void begin() {
        shell.scene().removeEventFilter(MouseEvent.MOUSE_MOVED, begun);
        shell.scene().removeEventFilter(KeyEvent.KEY_PRESSED, begun);
        if (shell.desk().isPresent()) {
            return;
        }
        List<String> sheets = List.copyOf(shell.scene().getStylesheets());
        Thread thread = new Thread(() -> warm(sheets), "warm-up");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    private void warm(List<String> sheets) {
        try {
            JobPage page = page();
            for (Supplier<Parent> kind : Kinds.ALL) {
                onTheWindowsThread(() -> style(kind.get(), sheets));
            }
            onTheWindowsThread(page::refresh);
            for (Parent part : page.parts()) {
                onTheWindowsThread(() -> style(part, sheets));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** A page that is never shown; nodes outside a window may be made on any thread. */
    private JobPage page() {
        Bench bench = new Bench(Practice.board(Practice.BOARDS.get(0)), Meter.middle(), new Random(1));
        Course course = new Course(Procedure.builtIn(), new MemoryLog("", bench));
        return JobPage.practice(shell, course, bench);
    }

    private static void onTheWindowsThread(Runnable work) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.runLater(() -> {
            try {
                work.run();
            } finally {
                done.countDown();
            }
        });
        done.await();
        TimeUnit.MILLISECONDS.sleep(PAUSE_MILLISECONDS);
    }

    /** Styled and laid out as in the window, but in a scene that none shows. */
    private static void style(Parent kind, List<String> sheets) {
        Scene scene = new Scene(new StackPane(kind));
        scene.getStylesheets().setAll(sheets);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private static Parent tipped(Button button) {
        button.setTooltip(new Tooltip("1"));
        return button;
    }

    /** The kinds of control on a job’s page; none is looked at before somebody begins. */
    private static final class Kinds {
        static final List<Supplier<Parent>> ALL = List.of(
                () -> Build.prose("0.00 V"),
                () -> Build.row("", Icon.TICK.draw(12), new Label("1")),
                () -> Build.button("", "1", () -> {}),
                () -> new ToggleButton("1"),
                () -> new FlowPane(new CheckBox("1")),
                TextField::new,
                () -> new ScrollBar(),
                () -> new PlainScroll(new Label("1")),
                () -> new MenuButton("1", null, new MenuItem("1")),
                () -> new ComboBox<String>(),
                () -> new ProgressBar(0.5),
                Slider::new,
                () -> tipped(new Button("1")));
    }
}
