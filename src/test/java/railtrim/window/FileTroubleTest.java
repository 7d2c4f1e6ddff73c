package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.BuiltIn;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.Time;

/** A file that takes no entries says so, and how to go on. */
class FileTroubleTest {
    @TempDir
    Path folder;

    @Test
    void aStrangersJobIsTakenOverAsAPlanThatFillsInNothing() throws Exception {
        Path theirs = folder.resolve("theirs.railtrim");
        Files.writeString(theirs, BuiltIn.text("demo-data/finished-job.railtrim"));
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.open(theirs);
                return null;
            });
            assertEquals(window.words.of("window.band.saved.elsewhere"), label(window, "saved"));
            window.press("take-over");
            name(window, "my board");
            window.press("job-create");
            window.until("the new job", () -> !window.has("take-over") && window.has("make-safe"));
            acknowledgeAll(window);
            assertEquals("", ((TextField) window.node(Ids.field("board.name"))).getText());
            String theirBoard = job("theirs.railtrim").entries().stream()
                    .map(entry -> entry.fact())
                    .filter(fact ->
                            fact instanceof Fact.Note note && note.field().equals("board.name"))
                    .map(fact -> ((Fact.Note) fact).text())
                    .findFirst()
                    .orElseThrow();
            assertTrue(shownTexts(window).contains(window.words.of("take-over.says", theirBoard)), theirBoard);
        }
        List<Fact> plan = job("jobs/my board.railtrim").entries().stream()
                .map(entry -> entry.fact())
                .filter(fact -> !(fact instanceof Fact.Acknowledged))
                .toList();
        assertTrue(plan.stream().allMatch(Fact.Proposed.class::isInstance), plan.toString());
    }

    @Test
    void aFileChangedFromOutsideIsCopiedElsewhereWithWhatWasTyped() throws Exception {
        Files.createDirectories(folder.resolve("jobs"));
        Path file = folder.resolve("jobs").resolve("voice board.railtrim");
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.create(file, "voice board");
                return null;
            });
            acknowledgeAll(window);
            assertFalse(window.has("save-elsewhere"));
            Files.writeString(file, "scribble\n", StandardOpenOption.APPEND);
            String field = Ids.field("board.name");
            window.fx(() -> {
                ((TextField) window.node(field)).setText("voice board, rev 3");
                ((Button) window.node(Ids.enter("board.name"))).fire();
                return null;
            });
            assertTrue(label(window, "trouble").contains(file.toString()));
            window.press("save-elsewhere");
            name(window, "copy");
            window.press("job-create");
            window.until("the copy", () -> !window.has("save-elsewhere"));
            assertEquals("voice board, rev 3", ((TextField) window.node(field)).getText());
            window.fx(() -> {
                ((Button) window.node(Ids.enter("board.name"))).fire();
                return null;
            });
        }
        Job copy = job("jobs/copy.railtrim");
        assertEquals("voice board", copy.name());
        assertEquals(
                new Fact.Note("scope", "board.name", "voice board, rev 3"),
                copy.entries().get(copy.entries().size() - 1).fact());
    }

    @Test
    void aBreakOfUnknownLengthIsNotToldInMinutes() throws Exception {
        Path file = folder.resolve("organ.railtrim");
        Mark mark = Mark.keptIn(folder.resolve("own"));
        try (Journal journal = Journal.create(file, "organ", Time.system(), mark)) {
            // Nothing is asked after a break until the board was worked on.
            journal.append(new Fact.Power("ref.off", false));
            journal.append(new Fact.Resumed("resume", -1));
        }
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.open(file);
                return null;
            });
            List<String> shown = shownTexts(window);
            assertTrue(shown.contains(window.words.of("window.resume.gap.unknown")), shown.toString());
        }
    }

    private Job job(String file) {
        return JobCheck.of(folder.resolve(file), Mark.keptIn(folder.resolve("own")))
                .job();
    }

    private static void acknowledgeAll(Opened window) throws Exception {
        window.fx(() -> {
            Desk desk = window.shell.desk().orElseThrow();
            while (!desk.shown().open().isEmpty()) {
                desk.acknowledge(desk.shown().open().get(0));
            }
            return null;
        });
        window.layOut();
    }

    private static void name(Opened window, String name) throws Exception {
        window.fx(() -> {
            ((TextField) window.node("job-name")).setText(name);
            return null;
        });
    }

    private static String label(Opened window, String id) {
        return ((Label) window.node(id)).getText();
    }

    private static List<String> shownTexts(Opened window) throws Exception {
        window.layOut();
        return window.fx(() -> window.shell.scene().getRoot().lookupAll(".label").stream()
                .filter(Opened::shown)
                .map(node -> ((Label) node).getText())
                .toList());
    }
}
