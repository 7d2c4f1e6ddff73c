package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;

/** A disk that fails is told in words, the job stays as it was, and a file in doubt is never written again. */
class FailingDiskTest {
    @TempDir
    Path folder;

    private final HandTime time = new HandTime();

    /** Fails at the n-th write or force; keeps what was asked of it in order. */
    private static final class FailingTail implements Disk.Tail {
        private final Disk.Tail real;
        private final String failing;
        private final List<String> asked = new ArrayList<>();

        FailingTail(Disk.Tail real, String failing) {
            this.real = real;
            this.failing = failing;
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            if (ask("write")) {
                real.write(Arrays.copyOf(bytes, bytes.length / 2));
                throw new IOException("No space left on device");
            }
            real.write(bytes);
        }

        @Override
        public void force() throws IOException {
            if (ask("force")) {
                throw new IOException("Input/output error");
            }
            real.force();
        }

        private boolean ask(String what) {
            asked.add(what);
            return (what + asked.stream().filter(what::equals).count()).equals(failing);
        }

        @Override
        public void close() throws IOException {
            asked.add("close");
            real.close();
        }
    }

    @Test
    void everyFactIsWrittenThenForcedBeforeItIsToldToBeSaved() throws IOException {
        Path file = newJob();
        FailingTail disk = new FailingTail(Disk.tail(file), "never");
        try (Journal journal = Journal.open(file, time, MARK, path -> disk)) {
            journal.append(new Fact.Power("a", true));
            assertEquals(List.of("write", "force"), disk.asked);
            journal.append(new Fact.Power("a", false));
        }
        assertEquals(List.of("write", "force", "write", "force", "close"), disk.asked);
    }

    @Test
    void aFullDiskLosesOnlyTheFactThatWasNotToldToBeSaved() throws IOException {
        Path file = newJob();
        List<FailingTail> disks = new ArrayList<>();
        try (Journal journal = Journal.open(file, time, MARK, path -> {
            disks.add(new FailingTail(Disk.tail(path), disks.isEmpty() ? "write2" : "opening"));
            if (disks.size() > 1) {
                throw new IOException("No space left on device");
            }
            return disks.get(0);
        })) {
            journal.append(new Fact.Power("a", true));
            Job saved = journal.job();
            JournalProblem problem =
                    assertThrows(JournalProblem.class, () -> journal.append(new Fact.Power("a", false)));
            assertEquals("job.not-saved", problem.told().key());
            assertEquals(saved, journal.job());
            assertTrue(journal.readOnly());
            assertEquals(
                    "job.takes-no-more",
                    assertThrows(JournalProblem.class, () -> journal.append(new Fact.Power("a", false)))
                            .told()
                            .key());
            assertEquals(List.of("write", "force", "write", "close"), disks.get(0).asked);
            assertFalse(Files.exists(file.resolveSibling("organ-2.railtrim")), "half a job is not left lying");

            // Going on elsewhere works.
            try (Journal copy = Journal.copy(journal, folder.resolve("copy.railtrim"), time, MARK)) {
                assertEquals(saved, copy.job());
                copy.append(new Fact.Power("a", false));
            }
        }
        try (Journal again = Journal.open(file, time, MARK)) {
            assertFalse(again.readOnly());
            assertEquals(new Fact.Power("a", true), again.job().entries().get(0).fact());
        }
    }

    @Test
    void aFailedForceIsNeverTriedAgainAndTheJobGoesOnInANewFile() throws IOException {
        assertMovesOn("force2", List.of("write", "force", "write", "force", "close"));
    }

    @Test
    void aFailedWriteMovesTheJobIntoANewFileWhereThatCanBeWritten() throws IOException {
        assertMovesOn("write2", List.of("write", "force", "write", "close"));
    }

    private void assertMovesOn(String failing, List<String> asked) throws IOException {
        Path file = newJob();
        Path next = file.resolveSibling("organ-2.railtrim");
        FailingTail old = new FailingTail(Disk.tail(file), failing);
        Job whole;
        try (Journal journal = Journal.open(file, time, MARK, path -> path.equals(file) ? old : Disk.tail(path))) {
            journal.append(new Fact.Power("a", true));
            Entry kept = journal.append(new Fact.Power("a", false));
            assertEquals(2, kept.sequence());
            assertEquals(asked, old.asked, "the old file is asked no more");
            assertEquals(next, journal.file());
            assertEquals(List.of(Message.of("job.moved-on", file.toString(), next.toString())), journal.news());
            assertEquals(List.of(), journal.news(), "told once");
            journal.append(new Fact.Power("b", true));
            assertEquals(asked, old.asked);
            whole = journal.job();
            try (Journal second = Journal.open(next, time, MARK)) {
                assertTrue(second.readOnly(), "the new file is locked as the old one was");
            }
        }
        try (Journal again = Journal.open(next, time, MARK)) {
            assertEquals(whole, again.job());
            assertFalse(again.readOnly());
        }
    }

    @Test
    void aDiskThatCannotEvenTakeTheGapOpensForReading() throws IOException {
        Path file = newJob();
        try (Journal journal = Journal.open(file, time, MARK)) {
            journal.append(new Fact.Power("a", true));
        }
        time.pass(Duration.ofHours(1));
        try (Journal journal = Journal.open(file, time, MARK, path -> {
            if (!path.equals(file)) {
                throw new IOException("No space left on device");
            }
            return new FailingTail(Disk.tail(path), "write1");
        })) {
            assertTrue(journal.readOnly());
            assertEquals("job.not-saved", journal.problems().get(0).key());
            assertEquals(1, journal.job().last());
        }
    }

    @Test
    void aFileTakenAwayOrReplacedWhileOpenIsNoticed() throws IOException {
        Path file = newJob();
        try (Journal journal = Journal.open(file, time, MARK)) {
            Files.move(file, folder.resolve("moved.railtrim"));
            assertEquals("job.gone", appendProblem(journal));
        }
        Path other = newJob();
        try (Journal journal = Journal.open(other, time, MARK)) {
            byte[] same = Files.readAllBytes(other);
            Path put = folder.resolve("put");
            Files.write(put, same);
            Files.move(put, other, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            assertEquals("job.changed-outside", appendProblem(journal));
        }
    }

    @Test
    void anInterruptedThreadLosesNothing() throws IOException {
        try (Journal journal = Journal.open(newJob(), time, MARK)) {
            Thread.currentThread().interrupt();
            assertEquals(1, journal.append(new Fact.Power("a", true)).sequence());
            assertTrue(Thread.interrupted());
            assertEquals(2, journal.append(new Fact.Power("a", false)).sequence());
        }
    }

    private static String appendProblem(Journal journal) {
        return assertThrows(JournalProblem.class, () -> journal.append(new Fact.Power("a", true)))
                .told()
                .key();
    }

    private Path newJob() throws IOException {
        Path file = Files.createTempDirectory(folder, "job").resolve("organ.railtrim");
        Journal.create(file, "Organ", time, MARK).close();
        return file;
    }
}
