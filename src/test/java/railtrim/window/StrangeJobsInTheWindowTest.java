package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.fuzz.StrangeJobs;
import railtrim.job.Journal;
import railtrim.job.JournalProblem;
import railtrim.job.Mark;
import railtrim.procedure.Procedure;
import railtrim.procedure.Step;
import railtrim.window.picture.Answering;
import railtrim.window.picture.Pictures;

/** A stranger's job, well formed but saying what nobody ever answered, opened and looked at page by page. */
class StrangeJobsInTheWindowTest {
    @TempDir
    Path folder;

    @Test
    void everyPageOfAStrangersJobIsShown() throws Exception {
        look(3, 20260305);
    }

    @Test
    @Tag("long")
    void theSameForManyJobs() throws Exception {
        look(Integer.getInteger("railtrim.strange.jobs", 200), Long.getLong("railtrim.seed", 1));
    }

    private void look(int jobs, long seed) throws Exception {
        Procedure procedure = Procedure.builtIn();
        StrangeJobs strange = new StrangeJobs(procedure, seed);
        List<String> stopped = new ArrayList<>();
        try (Opened window = Opened.in(folder)) {
            for (int i = 0; i < jobs; i++) {
                Path file = folder.resolve("strange-" + i + Journal.ENDING);
                try {
                    Journal.write(file, strange.next(), Mark.forShow());
                } catch (JournalProblem tooLong) {
                    continue;
                }
                stopped.addAll(pages(window, file, procedure, "seed " + seed + ", job " + i));
                Files.delete(file);
            }
        }
        assertEquals(List.of(), stopped, () -> String.join("\n", stopped));
    }

    private static List<String> pages(Opened window, Path file, Procedure procedure, String which) throws Exception {
        List<String> stopped = new ArrayList<>();
        window.fx(() -> {
            attempt(stopped, which + " opened", () -> window.shell.open(file));
            return null;
        });
        for (Step step : procedure.steps()) {
            window.fx(() -> {
                attempt(stopped, which + " at " + step.id(), () -> {
                    Desk desk = window.shell.desk().orElseThrow();
                    desk.look(step.id());
                    window.shell.scene().getRoot().applyCss();
                    window.shell.scene().getRoot().layout();
                    Pictures.of(step.picture(), desk.shown(), desk.state(), window.words, Answering.none());
                });
                return null;
            });
        }
        // What goes wrong while the window draws itself is told on a sheet.
        if (window.has("copy-details")) {
            stopped.add(which + ": the window told of an error");
        }
        return stopped;
    }

    private static void attempt(List<String> stopped, String where, Runnable work) {
        try {
            work.run();
        } catch (RuntimeException | Error e) {
            stopped.add(where + ": " + e + " at " + StrangeJobs.where(e));
        }
    }
}
