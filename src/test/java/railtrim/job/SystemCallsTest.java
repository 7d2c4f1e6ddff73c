package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the journal asks of the system, and what becomes of a job where the system kills or refuses. The long form is {@link SystemCallsProof}. */
class SystemCallsTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void whereCallsCanBeSeen() {
        SystemCalls.missing().ifPresent(why -> System.out.println("SystemCallsTest skipped: " + why));
        assumeTrue(SystemCalls.missing().isEmpty());
    }

    @Test
    void aNewFileIsWrittenForcedMovedIntoPlaceAndItsFolderForced() throws Exception {
        Path own = Files.createDirectory(folder.resolve("order"));
        SystemCalls.Run run = SystemCalls.run(own, "");
        assertEquals(List.of("1", "2", "3", "job.torn", "4", "5", "done"), run.said());
        assertEquals(
                List.of(
                        // The new job.
                        "write organ.railtrim.tmp",
                        "fsync organ.railtrim.tmp",
                        "rename organ.railtrim.tmp",
                        "fsync .",
                        // Three facts, each forced before it is told to be saved.
                        "write organ.railtrim",
                        "fsync organ.railtrim",
                        "write organ.railtrim",
                        "fsync organ.railtrim",
                        "write organ.railtrim",
                        "fsync organ.railtrim",
                        // A torn end, and its cutting off.
                        "write organ.railtrim",
                        "ftruncate organ.railtrim",
                        "fsync organ.railtrim",
                        // Opened again: the state found is kept, then two facts more.
                        "write organ.railtrim.kept-1.tmp",
                        "fsync organ.railtrim.kept-1.tmp",
                        "rename organ.railtrim.kept-1.tmp",
                        "fsync .",
                        "write organ.railtrim",
                        "fsync organ.railtrim",
                        "write organ.railtrim",
                        "fsync organ.railtrim"),
                SystemCalls.order(own, run));
    }

    @Test
    void killedAtTheFirstForceOrMoveNothingToldIsLost() throws Exception {
        assertEquals(1, SystemCalls.killAtEach(folder, "fsync", 1));
        assertEquals(1, SystemCalls.killAtEach(folder, "rename", 1));
    }

    @Test
    void aForceThatFailsOnceMovesTheJobOn() throws Exception {
        Path own = Files.createDirectory(folder.resolve("eio"));
        // The first two forces belong to the new file and its folder; the fourth is that of the second fact.
        SystemCalls.Run run = SystemCalls.run(own, "fsync:error=EIO:when=4");
        assertTrue(run.said().contains("job.moved-on"), run.said().toString());
        assertEquals(3, JobCheck.of(own.resolve("organ-2.railtrim"), Facts.MARK).facts());
    }
}
