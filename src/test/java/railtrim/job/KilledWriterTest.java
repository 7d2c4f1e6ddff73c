package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second process: it is killed in the middle of writing, or it holds the job. */
class KilledWriterTest {
    @TempDir
    Path folder;

    @Test
    void aKilledWriterLosesNothingItToldToBeSaved() throws Exception {
        assertTrue(KilledWriter.killAtRandom(folder, 8, 20260302).told() > 0);
    }

    @Test
    void anotherProcessThatHasTheJobOpenKeepsThisOneReading() throws Exception {
        Path file = folder.resolve("organ.railtrim");
        Journal.create(file, "Organ", Time.system(), MARK).close();
        Process writer = KilledWriter.start(file);
        try (BufferedReader said = writer.inputReader(StandardCharsets.UTF_8)) {
            assertEquals("1", said.readLine());
            try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                assertTrue(journal.readOnly());
                assertEquals("job.locked", journal.problems().get(0).key());
            }
        } finally {
            KilledWriter.end(writer);
        }
    }
}
