package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second process: it is killed in the middle of writing, or it holds the job. {@code -Drailtrim.kills=3000} for a long run. */
class KilledWriterTest {
    @TempDir
    Path folder;

    @Test
    void aKilledWriterLosesNothingItToldToBeSaved() throws Exception {
        Path file = folder.resolve("organ.railtrim");
        Journal.create(file, "Organ", Time.system(), MARK).close();
        long seed = 20260302;
        Random random = new Random(seed);
        long told = 0;
        for (int kill = 0; kill < Integer.getInteger("railtrim.kills", 10); kill++) {
            told = Math.max(told, killAfter(file, 1 + random.nextInt(300)));
            JobCheck check = JobCheck.of(file, MARK);
            assertTrue(
                    check.facts() >= told, "kill " + kill + " of seed " + seed + ": " + check.facts() + " < " + told);
            assertTrue(
                    check.problems().isEmpty() || check.problems().get(0).key().equals("job.torn.left"),
                    check.problems().toString());
            try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                assertFalse(journal.readOnly(), "a killed writer leaves no lock behind");
                assertEquals(journal.job().entries().size(), journal.job().last());
            }
        }
    }

    @Test
    void anotherProcessThatHasTheJobOpenKeepsThisOneReading() throws Exception {
        Path file = folder.resolve("organ.railtrim");
        Journal.create(file, "Organ", Time.system(), MARK).close();
        Process writer = start(file);
        try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
            assertEquals("1", said.readLine());
            try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                assertTrue(journal.readOnly());
                assertEquals("job.locked", journal.problems().get(0).key());
            }
        } finally {
            end(writer);
        }
    }

    /** @return the highest sequence the writer told to be saved before it died */
    private static long killAfter(Path file, int facts) throws Exception {
        Process writer = start(file);
        long told = 0;
        try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
            String line = said.readLine();
            for (int i = 0; i < facts && line != null; i++) {
                told = Long.parseLong(line);
                line = said.readLine();
            }
            // By the handle, which unlike the process leaves the pipe open: what it still said before it died counts
            // too.
            writer.toHandle().destroyForcibly();
            while (line != null) {
                told = Long.parseLong(line);
                line = said.readLine();
            }
        } finally {
            end(writer);
        }
        assertTrue(told > 0);
        return told;
    }

    private static Process start(Path file) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        file.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static void end(Process process) throws InterruptedException {
        process.destroyForcibly();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
    }

    /** Appends until it is killed, and says each sequence once it is saved. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) {
            try (Journal journal = Journal.open(Path.of(arguments[0]), Time.system(), MARK)) {
                String filler = "x".repeat(500);
                while (true) {
                    Entry entry = journal.append(new Fact.Note("a", "b", filler));
                    System.out.print(entry.sequence() + "\n");
                    System.out.flush();
                }
            }
        }
    }
}
