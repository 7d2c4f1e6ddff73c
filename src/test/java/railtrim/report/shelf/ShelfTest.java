package railtrim.report.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Mark;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.report.Checklist.Block;
import railtrim.report.shelf.Piece.Standing;

/** A folder with two finished jobs, one under way, one stopped, and a file that is no job. */
class ShelfTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Words WORDS = Words.english();

    private static final Instant START = Instant.parse("2026-03-01T09:00:00Z");

    @TempDir
    static Path folder;

    private static State finished;
    private static Shelf shelf;

    @BeforeAll
    static void fillTheFolder() throws Exception {
        Mark mark = Mark.forShow();
        Board board = Board.of(BuiltIn.text("demo-data/boards/network-blade.json"));
        Rehearsal rehearsal = new Rehearsal(PROCEDURE, Meter.middle());
        Job first = rehearsal.play(board, 1).job();
        finished = PROCEDURE.state(first);
        SavedJobs.save(folder, "blade one at 100 MHz", first.entries(), mark);
        SavedJobs.save(
                folder, "blade two at 125 MHz", rehearsal.play(board, 2).job().entries(), mark);
        SavedJobs.save(folder, "half", first.entries().subList(0, 60), mark);
        SavedJobs.save(
                folder,
                "stopped",
                List.of(new Entry(1, START, 1, 0, new Fact.Choice("scope", "supply.kind", "mains"))),
                mark);
        Files.writeString(folder.resolve("no job.railtrim"), "shopping list\n");
        Files.writeString(folder.resolve("notes.txt"), "nothing");
        shelf = Shelf.of(folder, PROCEDURE, mark);
    }

    @Test
    void everyJobOfTheFolderIsThereWithWhereItStands() {
        assertEquals(
                List.of(
                        Standing.FINISHED,
                        Standing.FINISHED,
                        Standing.UNDER_WAY,
                        Standing.UNREADABLE,
                        Standing.STOPPED),
                shelf.pieces().stream().map(Piece::standing).toList());
        Piece noJob = shelf.pieces().get(3);
        assertEquals(1, noJob.problems().size(), "says why");
    }

    @Test
    void itsFiguresAreThoseOfTheJob() {
        Piece one = shelf.pieces().get(0);
        assertEquals(finished.figures().stock(), one.stock());
        assertEquals(finished.figures().fitted(), one.fitted());
        assertEquals(finished.figures().failVoltage(), one.fail());
        double before = finished.figures().powers().orElseThrow().loadBefore();
        double after = finished.figures().powers().orElseThrow().loadAfter();
        assertEquals(before - after, one.wattsSaved().orElseThrow(), 1e-12);
        assertTrue(shelf.pieces().get(2).fitted().isEmpty());
    }

    @Test
    void searchFindsBoardsChipsAndNamesInCapitalsOrNot() {
        assertEquals(1, shelf.find("BLADE TWO").pieces().size());
        assertEquals(3, shelf.find("qn-88").pieces().size());
        assertEquals(0, shelf.find("toaster").pieces().size());
    }

    @Test
    void aClockIsReadFromTheName() {
        assertEquals(OptionalDouble.of(125e6), shelf.pieces().get(1).clock());
        assertEquals(OptionalDouble.of(12.5e6), Piece.clock(List.of("no clock", "at 12,5MHz")));
        assertEquals(OptionalDouble.empty(), Piece.clock(List.of("MHz", "12 Hz", "7 MHzen")));
    }

    @Test
    void theComparisonHasFailVoltageBracketAndMarginOfEachInTableAndPlot() {
        Comparison comparison = new Comparison(shelf, WORDS);
        assertEquals(2, comparison.pieces().size());
        List<Block> blocks = comparison.document().sections().get(0).blocks();
        Block.Picture plot = (Block.Picture) blocks.get(blocks.size() - 1);
        for (Piece piece : comparison.pieces()) {
            String fail = Display.volts(piece.fail().orElseThrow().fail());
            String high = Display.volts(piece.fail().orElseThrow().bracketHigh());
            assertTrue(comparison.rows().toString().contains(fail));
            assertTrue(comparison.rows().toString().contains(high));
            assertTrue(comparison
                    .rows()
                    .toString()
                    .contains(Display.volts(piece.margin().orElseThrow())));
            assertTrue(plot.inWords().contains(fail) && plot.inWords().contains(high), plot.inWords());
        }
        assertTrue(plot.drawing().shapes().toString().contains("125 MHz"));
    }

    @Test
    void aFolderThatIsNotThereIsToldInWords() {
        BadInput bad =
                assertThrows(BadInput.class, () -> Shelf.of(folder.resolve("nowhere"), PROCEDURE, Mark.forShow()));
        assertTrue(WORDS.of(bad.told()).contains("nowhere"));
    }
}
