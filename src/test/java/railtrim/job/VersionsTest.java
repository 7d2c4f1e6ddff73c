package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;

/**
 * Golden files of every version of the format. Their check sums and tags were made by a program of our own in another language (Python’s hmac, and a
 * bitwise CRC-32C held to the RFC 3720 B.4 vector: 32 zero bytes give 8a9136aa), so they also say that ours are right.
 */
class VersionsTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "railtrim", "job");

    @TempDir
    Path folder;

    private final HandTime time = new HandTime();

    @Test
    void aFileOfThisVersionIsWrittenByteForByteAsItAlwaysWas() throws IOException {
        Path golden = GOLDEN.resolve("version-3.railtrim");
        JobCheck check = JobCheck.of(golden, MARK);
        assertEquals(List.of(), check.problems());
        assertEquals(Origin.OWN, check.job().origin());
        assertEquals(13, check.facts());
        Path written = folder.resolve("organ.railtrim");
        Journal.create(written, check.job(), time, MARK, Disk::tail).close();
        List<String> lines = Files.readAllLines(written);
        // The last line says that the clock went on since.
        assertEquals(Files.readAllLines(golden), lines.subList(0, 14));
    }

    /** Version 3 only knows one kind of entry more, so nothing about an older file of one’s own has to change. */
    @Test
    void aFileOfVersionTwoIsOnesOwnAndGoesOnAsItIs() throws IOException {
        Path old = Files.copy(GOLDEN.resolve("version-2.railtrim"), folder.resolve("organ.railtrim"));
        List<String> before = Files.readAllLines(old);
        try (Journal journal = Journal.open(old, time, MARK)) {
            assertFalse(journal.readOnly());
            assertEquals(List.of(), journal.problems());
            journal.append(new Fact.Withdrawn("plan", 12));
        }
        assertEquals(before, Files.readAllLines(old).subList(0, before.size()));
        JobCheck again = JobCheck.of(old, MARK);
        assertEquals(2, again.version());
        assertEquals(List.of(), again.problems());
    }

    @Test
    void aFileOfVersionOneIsReadWholeAndItsPlanGoesIntoANewFile() throws IOException {
        Path old = Files.copy(GOLDEN.resolve("version-1.railtrim"), folder.resolve("old.railtrim"));
        byte[] before = Files.readAllBytes(old);
        Job plan;
        try (Journal journal = Journal.open(old, time, MARK)) {
            assertTrue(journal.readOnly());
            assertEquals(List.of(Message.of("job.older", "1", "3")), journal.problems());
            assertEquals(11, journal.job().entries().size());
            assertEquals(
                    "job.elsewhere.copy",
                    assertThrows(
                                    JournalProblem.class,
                                    () -> Journal.copy(journal, folder.resolve("new.railtrim"), time, MARK))
                            .told()
                            .key());
            List<Fact> proposed = List.of(new Fact.Proposed("plan", "reg.marking", "LM317T"));
            try (Journal next =
                    Journal.begin(folder.resolve("new.railtrim"), journal.job().name(), proposed, time, MARK)) {
                plan = next.job();
            }
        }
        assertEquals(-1, java.util.Arrays.mismatch(before, Files.readAllBytes(old)), "the original stays as it is");
        assertEquals(plan, JobCheck.of(folder.resolve("new.railtrim"), MARK).job());
        assertEquals(3, JobCheck.of(folder.resolve("new.railtrim"), MARK).version());
    }
}
