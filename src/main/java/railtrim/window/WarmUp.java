package railtrim.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.event.EventHandler;
import javafx.scene.Node;
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
import javafx.scene.control.skin.TextFieldSkin;
import javafx.scene.input.InputEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.window.kit.Build;
import railtrim.window.kit.Icon;
import railtrim.window.kit.Pieces;
import railtrim.window.kit.PlainScroll;

/**
 * The first job of a start needs a thousand classes that the start page did not. They are brought in when the first key or movement of the
 * mouse says that somebody is about to begin, so that opening it does not hold the window up; left alone, the window does nothing.
 */
final class WarmUp {
    /** The first step, and those after it that bring most that is new. */
    private static final List<String> STEPS = List.of("scope", "marking", "pins", "legs");

    private final Shell shell;
    private final EventHandler<InputEvent> begun = event -> begin();
    /** Somebody has opened a job, which now needs the window more, or has closed the window. */
    private volatile boolean late;

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
        shell.theme().whole();
        List<String> sheets = List.copyOf(shell.scene().getStylesheets());
        Thread thread = new Thread(() -> warm(sheets), "warm-up");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        thread.start();
    }

    private void warm(List<String> sheets) {
        try {
            for (Supplier<Parent> kind : Kinds.ALL) {
                Parent made = kind.get();
                onTheWindowsThread(() -> style(made, sheets));
            }
            pages(sheets);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Pages of a job that is never shown, made here and laid out by the window; nodes outside a window may be made on any thread. */
    private void pages(List<String> sheets) throws InterruptedException {
        Bench bench = new Bench(Practice.board(Practice.BOARDS.get(0)), Meter.middle(), new Random(1));
        Course course = new Course(Procedure.builtIn(), new MemoryLog("", bench));
        Hand hand = new Hand(bench);
        for (String step : STEPS) {
            while (!course.state().current().step().id().equals(step)) {
                Rehearsal.offer(hand.next(course.state(), course), course);
            }
            JobPage page = JobPage.practice(shell, course, bench);
            onTheWindowsThread(() -> {
                shell.size(page.node());
                page.enter();
            });
            List<Parent> parts = step.equals(STEPS.get(0)) ? page.parts() : List.of(page.middle());
            for (Parent part : parts) {
                if (late) {
                    return;
                }
                makeReady(page, part, sheets);
            }
        }
    }

    /**
     * Piece by piece, so that the window answers in between; and painted once, which brings in what paints. From the second part on the page is in a scene,
     * which the toolkit goes through when the theme changes, so only the window's thread may take it apart.
     */
    private void makeReady(JobPage page, Parent part, List<String> sheets) throws InterruptedException {
        List<Runnable> pieces = new ArrayList<>();
        unlessLate(() -> {
            page.only(part);
            pieces.addAll(Pieces.of(part));
            style((Parent) page.node(), sheets);
        });
        for (Runnable piece : pieces) {
            if (late) {
                return;
            }
            unlessLate(() -> {
                piece.run();
                styleAndLayOut(page.node().getScene());
            });
        }
        unlessLate(() -> part.snapshot(null, null));
    }

    private void unlessLate(Runnable work) throws InterruptedException {
        onTheWindowsThread(() -> {
            late = shell.desk().isPresent() || !shell.stage().isShowing();
            if (!late) {
                work.run();
            }
        });
    }

    /** Between two pieces of work the window has as long for others as the last one took. */
    private static void onTheWindowsThread(Runnable work) throws InterruptedException {
        CompletableFuture<Long> took = new CompletableFuture<>();
        Platform.runLater(() -> {
            long start = System.nanoTime();
            try {
                work.run();
            } finally {
                took.complete(System.nanoTime() - start);
            }
        });
        TimeUnit.NANOSECONDS.sleep(took.join());
    }

    /** Styled and laid out as in the window, but in a scene that none shows. */
    private static void style(Parent kind, List<String> sheets) {
        styleAndLayOut(scene(kind, sheets));
    }

    private static Scene scene(Node shown, List<String> sheets) {
        Scene scene = new Scene(new StackPane(shown), Shell.WIDTH, Shell.HEIGHT);
        scene.getStylesheets().setAll(sheets);
        return scene;
    }

    private static void styleAndLayOut(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    /** Its part of the toolkit is made here as well, for that is most of the work. */
    private static Parent field() {
        TextField field = new TextField();
        field.setSkin(new TextFieldSkin(field));
        return field;
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
                WarmUp::field,
                () -> new ScrollBar(),
                () -> new PlainScroll(new Label("1")),
                () -> new MenuButton("1", null, new MenuItem("1")),
                () -> new ComboBox<String>(),
                () -> new ProgressBar(0.5),
                Slider::new,
                () -> tipped(new Button("1")));
    }
}
