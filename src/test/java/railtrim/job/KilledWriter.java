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

/** A second process that appends to a job until it is killed, anywhere. Nothing it told to be saved may be gone afterwards. */
final class KilledWriter {
    /** A new job after so many kills, so that it does not outgrow what a job may be. */
    private static final int KILLS_A_JOB = 25;

    private KilledWriter() {}

    /** What came of it. */
    record Tally(int kills, long told, int torn) {}

    static Tally killAtRandom(Path folder, int kills, long seed) throws Exception {
        Random random = new Random(seed);
        long told = 0;
        long all = 0;
        int torn = 0;
        Path file = folder;
        for (int kill = 0; kill < kills; kill++) {
            if (kill % KILLS_A_JOB == 0) {
                file = folder.resolve("organ" + kill + Journal.ENDING);
                Journal.create(file, "Organ", Time.system(), MARK).close();
                all += told;
                told = 0;
            }
            told = Math.max(told, killAfter(file, 1 + random.nextInt(300)));
            JobCheck check = JobCheck.of(file, MARK);
            assertTrue(
                    check.facts() >= told, "kill " + kill + " of seed " + seed + ": " + check.facts() + " < " + told);
            assertEquals(Origin.OWN, check.job().origin());
            boolean cut =
                    check.problems().stream().anyMatch(found -> found.key().equals("job.torn.left"));
            torn += cut ? 1 : 0;
            assertEquals(cut ? 1 : 0, check.problems().size(), check.problems().toString());
            try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                assertFalse(journal.readOnly(), "a killed writer leaves no lock behind");
                assertEquals(journal.job().entries().size(), journal.job().last());
            }
        }
        return new Tally(kills, all + told, torn);
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

    static Process start(Path file) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(List.of(
                        java,
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        file.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    static void end(Process process) throws InterruptedException {
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
