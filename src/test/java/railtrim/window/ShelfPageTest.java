package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.Mark;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.report.shelf.Piece;
import railtrim.report.shelf.SavedJobs;

/** All jobs of a folder at a glance, in the window. */
class ShelfPageTest {
    @TempDir
    Path folder;

    @BeforeEach
    void fillTheFolder() throws Exception {
        Path jobs = Files.createDirectories(folder.resolve("jobs"));
        Mark mark = Mark.keptIn(folder.resolve("own"));
        Board board = Practice.board("network-blade");
        Rehearsal rehearsal = new Rehearsal(Procedure.builtIn(), Meter.middle());
        Job first = rehearsal.play(board, 1).job();
        SavedJobs.save(jobs, "blade one at 100 MHz", first.entries(), mark);
        SavedJobs.save(
                jobs, "blade two at 125 MHz", rehearsal.play(board, 2).job().entries(), mark);
        SavedJobs.save(jobs, "half", first.entries().subList(0, 60), mark);
        Files.writeString(jobs.resolve("no job.railtrim"), "shopping list\n");
    }

    @Test
    void jobsAreFoundComparedPlannedAndOpened() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.press("shelf");
            window.until("all four jobs", () -> pieces(window).size() == 4);

            search(window, "TWO AT");
            assertEquals(List.of("blade two at 125 MHz"), names(window));
            search(window, "toaster");
            assertEquals(List.of(), names(window));
            search(window, "");

            List<Piece> all = pieces(window);
            window.press("shelf-compare");
            String texts = String.join(" ", texts(window));
            for (Piece piece : all) {
                if (piece.fail().isPresent()) {
                    assertTrue(texts.contains(Display.volts(piece.fail().get().bracketHigh())), texts);
                    assertTrue(texts.contains(Display.volts(piece.margin().orElseThrow())), texts);
                }
            }
            window.press("shelf-write");
            window.until("that it is written", () -> window.has("sheet-close"));
            assertTrue(Files.exists(folder.resolve("jobs").resolve("comparison.pdf")));
            window.press("sheet-close");
            window.press(KeyCode.ESCAPE);
            assertTrue(window.has("shelf-open"));

            pick(window, "no job.railtrim");
            assertTrue(((Button) window.node("shelf-open")).isDisabled());
            assertFalse(((Label) window.node("shelf-about")).getText().isBlank());

            pick(window, "blade one at 100 MHz");
            window.press("shelf-plan");
            window.fx(() -> {
                ((TextField) window.node("job-name")).setText("blade three");
                return null;
            });
            window.press("job-create");
            window.until("the new job", () -> window.has("make-safe"));
            assertTrue(Files.exists(folder.resolve("jobs").resolve("blade three.railtrim")));
        }
    }

    @Test
    void enterOpensTheJobThatIsPickedAndEveryControlHasAName() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.press("shelf");
            window.until("all four jobs", () -> pieces(window).size() == 4);
            Set<String> nameless = new TreeSet<>();
            NamesTest.look(window, "shelf", nameless);
            window.press("shelf-compare");
            NamesTest.look(window, "comparison", nameless);
            assertEquals(Set.of(), nameless);
            window.press("shelf-list");
            pick(window, "half");
            window.fx(() -> {
                window.node("shelf-table").requestFocus();
                return null;
            });
            window.press(KeyCode.ENTER);
            window.until("the job", () -> window.has("make-safe"));
            assertEquals("half – Railtrim", window.shell.stage().getTitle());
        }
    }

    @Test
    void aJobIsSharedWithoutItsNameAndOnlyAfterItWasSaidWhatStays() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.press("shelf");
            window.until("all four jobs", () -> pieces(window).size() == 4);
            pick(window, "blade one at 100 MHz");
            window.press("shelf-share");
            assertTrue(String.join(" ", texts(window)).contains("QN-88 switch chip"));
            window.fx(() -> {
                ((TextField) window.node("job-name")).setText("for others");
                return null;
            });
            window.press("job-create");
            window.until("where it is", () -> window.has("sheet-close"));
        }
        Path shared = folder.resolve("jobs").resolve("for others.railtrim");
        assertFalse(Files.readString(shared).contains("blade one"));
        JobCheck there = JobCheck.of(shared, Mark.keptIn(folder.resolve("own")));
        assertTrue(there.elsewhere(), "it carries no mark of this installation");
        assertEquals("for others", there.name());
    }

    @Test
    void aFolderThatIsNotThereIsToldInWords() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.press("shelf");
            window.until("all four jobs", () -> pieces(window).size() == 4);
            window.fx(() -> {
                TextField where = (TextField) window.node("shelf-folder");
                where.setText(folder.resolve("nowhere").toString());
                where.getOnAction().handle(null);
                return null;
            });
            window.until("why", () -> {
                Node why = ((TableView<?>) window.node("shelf-table")).getPlaceholder();
                return ((Label) why).getText().contains("nowhere");
            });
        }
    }

    @SuppressWarnings("unchecked")
    private static TableView<Piece> table(Opened window) {
        return (TableView<Piece>) window.node("shelf-table");
    }

    private static List<Piece> pieces(Opened window) {
        return List.copyOf(table(window).getItems());
    }

    private static List<String> names(Opened window) {
        return pieces(window).stream().map(Piece::name).toList();
    }

    private static void pick(Opened window, String name) throws Exception {
        window.fx(() -> {
            TableView<Piece> table = table(window);
            table.getSelectionModel().clearAndSelect(names(window).indexOf(name));
            return null;
        });
    }

    private static void search(Opened window, String words) throws Exception {
        window.fx(() -> {
            ((TextField) window.node("shelf-search")).setText(words);
            return null;
        });
    }

    private static List<String> texts(Opened window) throws Exception {
        window.layOut();
        return window.fx(() -> window.shell.scene().getRoot().lookupAll(".label").stream()
                .map(node -> ((Label) node).getText())
                .toList());
    }
}
