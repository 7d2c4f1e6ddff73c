package railtrim.window;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;
import railtrim.job.Entry;
import railtrim.job.Mark;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.Meter;
import railtrim.report.shelf.SavedJobs;

/**
 * Draws every page of a whole job to {@code target/gallery}, for people to look at. Not run with the tests: {@code mvn test
 * -Dtest=Gallery}, and with {@code -Dgallery.width=1024 -Dgallery.height=700 -Dgallery.text=21} for a small
 * window with large text; {@code -Dgallery.only=REGEX} draws some pages only.
 */
class Gallery {
    private static final String BOARD = System.getProperty("gallery.board", "sound-board");
    private static final int WIDTH = Integer.getInteger("gallery.width", 1240);
    private static final int HEIGHT = Integer.getInteger("gallery.height", 800);
    private static final int TEXT = Integer.getInteger("gallery.text", 14);
    private static final String ONLY = System.getProperty("gallery.only", ".*");
    private static final boolean DARK = Boolean.getBoolean("gallery.dark");

    private final Path folder = Path.of("target", "gallery", WIDTH + "x" + HEIGHT + "-" + TEXT + (DARK ? "-dark" : ""));
    private Path own;
    private Stage stage;
    private Shell shell;
    private int number;

    @BeforeEach
    void open() throws TimeoutException, IOException {
        Files.createDirectories(folder);
        own = Files.createTempDirectory("gallery");
        stage = FxToolkit.registerPrimaryStage();
        fx(() -> {
            shell = new Shell(stage, new TestSurroundings(own), Words.english());
            shell.show();
            stage.setWidth(WIDTH);
            stage.setHeight(HEIGHT);
            while (shell.theme().pixels() < TEXT) {
                shell.theme().bigger();
            }
            shell.theme().dark(DARK);
            return null;
        });
    }

    @AfterEach
    void close() throws TimeoutException {
        FxToolkit.cleanupStages();
    }

    @Test
    void everyPage() throws Exception {
        draw("start");
        fx(() -> press("#new-job"));
        draw("new-job");
        fx(() -> press("#job-cancel"));
        fx(() -> press("#practice"));
        draw("practice");
        fx(() -> press("#practice-cancel"));
        walk();
    }

    /** A shelf with several jobs on it, and where they fail. */
    @Test
    void theShelf() throws Exception {
        Path jobs = Files.createDirectories(folder.resolve("jobs-of-the-shelf"));
        try (var old = Files.list(jobs)) {
            for (Path file : old.toList()) {
                Files.delete(file);
            }
        }
        Mark mark = Mark.keptIn(own.resolve("own"));
        Rehearsal rehearsal = new Rehearsal(Procedure.builtIn(), Meter.middle());
        for (int i = 1; i <= 4; i++) {
            List<Entry> entries = rehearsal
                    .play(Practice.board(i == 4 ? "sound-board" : "network-blade"), i)
                    .job()
                    .entries();
            String name = i == 4 ? "organ’s sound board" : "blade " + i + " at " + (75 + 25 * i) + " MHz";
            SavedJobs.save(jobs, name, i == 3 ? entries.subList(0, entries.size() * 2 / 3) : entries, mark);
        }
        Files.writeString(jobs.resolve("no job.railtrim"), "shopping list\n");
        fx(() -> press("#shelf"));
        fx(() -> {
            TextField where = (TextField) shell.scene().lookup("#shelf-folder");
            where.setText(jobs.toString());
            where.getOnAction().handle(null);
            return null;
        });
        WaitForAsyncUtils.waitFor(
                20,
                java.util.concurrent.TimeUnit.SECONDS,
                () -> ((TableView<?>) shell.scene().lookup("#shelf-table"))
                                .getItems()
                                .size()
                        == 5);
        draw("shelf");
        fx(() -> press("#shelf-compare"));
        draw("shelf compared");
    }

    private void walk() throws Exception {
        Bench bench = new Bench(Practice.board(BOARD), Meter.middle(), new Random(7));
        Course course = new Course(
                Procedure.builtIn(), new MemoryLog(bench.board().label().name(), bench));
        Hand hand = new Hand(bench);
        Desk desk = fx(() -> {
            JobPage page = JobPage.practice(shell, course, bench);
            shell.show(page);
            return page.desk();
        });
        Set<String> drawn = new LinkedHashSet<>();
        for (int i = 0; i < 2000; i++) {
            String page = desk.state()
                    .card()
                    .map(card -> card.getClass().getSimpleName())
                    .orElse(desk.shown().step().id() + (desk.shown().open().isEmpty() ? "" : " caution"));
            if (drawn.add(page)) {
                draw(page);
            }
            Answer answer = hand.next(desk.state(), course);
            if (answer instanceof Answer.Done) {
                break;
            }
            if (answer instanceof Answer.Stuck stuck) {
                throw new AssertionError(stuck.why());
            }
            String before = desk.shown().step().id();
            fx(() -> {
                Walk.give(desk, answer);
                return null;
            });
            if (desk.nextOpen()) {
                if (drawn.add(before + " done")) {
                    draw(before + " done");
                }
                fx(() -> {
                    desk.next();
                    return null;
                });
            }
        }
        fx(() -> {
            desk.next();
            return null;
        });
        draw("done");
    }

    private Void press(String id) {
        ((javafx.scene.control.Button) shell.scene().lookup(id)).fire();
        return null;
    }

    private void draw(String name) throws Exception {
        if (!name.matches(ONLY)) {
            return;
        }
        WaitForAsyncUtils.waitForFxEvents();
        File file = folder.resolve(String.format("%03d-%s.png", number++, name.replaceAll("[^A-Za-z0-9]+", "-")))
                .toFile();
        BufferedImage picture = fx(() -> {
            Scene scene = shell.scene();
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            return SwingFXUtils.fromFXImage(scene.snapshot(null), null);
        });
        ImageIO.write(picture, "png", file);
    }

    private static <T> T fx(Callable<T> work) throws TimeoutException {
        if (Platform.isFxApplicationThread()) {
            throw new IllegalStateException("already there");
        }
        return WaitForAsyncUtils.waitFor(20, java.util.concurrent.TimeUnit.SECONDS, WaitForAsyncUtils.asyncFx(work));
    }
}
