package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.MemoryLog;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

/** A job dragged onto the window. */
class DroppedJobTest {
    @TempDir
    Path folder;

    @Test
    void aJobLetGoOnTheWindowOpens() throws Exception {
        try (Opened window = Opened.in(folder)) {
            drop(window, List.of(job(window)));
            window.until("the job", () -> window.has("make-safe"));
            assertEquals("mixer – Railtrim", window.shell.stage().getTitle());
        }
    }

    @Test
    void twoJobsAtOnceAreOneTooMany() throws Exception {
        try (Opened window = Opened.in(folder)) {
            Path job = job(window);
            drop(window, List.of(job, job));
            window.until("the reason", () -> window.has("sheet-close"));
            assertTrue(window.has("new-job"), "the start page is still there");
        }
    }

    @Test
    void aBoardWithPowerIsNotLeftForAnotherJobWithoutAsking() throws Exception {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(3));
        try (Opened window = Opened.in(folder)) {
            Path job = job(window);
            Desk desk = window.fx(() -> {
                JobPage page = JobPage.practice(
                        window.shell, new Course(Procedure.builtIn(), new MemoryLog("board", bench)), bench);
                window.shell.show(page);
                Hand hand = new Hand(bench);
                while (page.desk().state().power() != State.Power.ON) {
                    Walk.give(
                            page.desk(),
                            hand.next(page.desk().state(), page.desk().course()));
                    page.desk().next();
                }
                return page.desk();
            });
            drop(window, List.of(job));
            window.until("the question", () -> window.has("leave-make-safe"));
            window.fx(() -> {
                ((javafx.scene.control.Button) window.node("leave-make-safe")).fire();
                return null;
            });
            assertTrue(desk.state()
                    .card()
                    .filter(State.Card.MakeSafe.class::isInstance)
                    .isPresent());
        }
    }

    private Path job(Opened window) throws Exception {
        Files.createDirectories(folder.resolve("jobs"));
        Path file = folder.resolve("jobs").resolve("mixer.railtrim");
        window.fx(() -> {
            window.shell.create(file, "mixer");
            window.shell.toStart();
            return null;
        });
        return file;
    }

    private static void drop(Opened window, List<Path> files) throws Exception {
        window.fx(() -> {
            new DroppedJob(window.shell).take(files);
            return null;
        });
    }
}
