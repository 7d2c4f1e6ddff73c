package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.JobCheck;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

/**
 * The finished job that comes with the program. Run with {@code -Drailtrim.write-finished-job=true} to write it anew from the rehearsal it
 * was made by.
 */
class FinishedJobTest {
    private static final Path SHIPPED = Path.of("demo-data", "finished-job" + Journal.ENDING);
    private static final long SEED = 1996;

    private static Outcome write(Path file) {
        Board board = DemoBoards.named("sound-board");
        Journal[] journal = new Journal[1];
        try {
            return new Rehearsal(Procedure.builtIn(), Meter.middle()).play(board, SEED, time -> {
                journal[0] = Journal.create(file, board.label().name(), time, Mark.forShow());
                return journal[0];
            });
        } finally {
            journal[0].close();
        }
    }

    @Test
    void theFinishedJobIsCompleteAndUndamaged() throws IOException {
        if (Boolean.getBoolean("railtrim.write-finished-job")) {
            Files.deleteIfExists(SHIPPED);
            write(SHIPPED);
            Files.deleteIfExists(Path.of(SHIPPED + ".lock"));
        }
        JobCheck check = JobCheck.of(SHIPPED, Mark.forShow());
        assertEquals(List.of(), check.problems());
        State state = Procedure.builtIn().state(check.job());
        assertTrue(
                state.complete(),
                () -> "not complete at " + state.current().step().id() + ": missing "
                        + state.current().missing() + ", " + state.current().findings());
    }

    @Test
    void theProgramWritesTheSameJobTwiceByteForByte(@TempDir Path folder) throws IOException {
        Path one = folder.resolve("one.railtrim");
        Path other = folder.resolve("other.railtrim");
        Outcome outcome = write(one);
        write(other);
        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());
        assertEquals(-1, Files.mismatch(one, other));
    }
}
