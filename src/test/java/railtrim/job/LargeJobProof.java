package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static railtrim.job.Facts.MARK;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Unit;

/** How long a job of 100,000 facts takes to open, and whether adding a fact takes longer the longer the job is. Prints figures, holds none. */
@Tag("long")
class LargeJobProof {
    private static final int FACTS = 100_000;
    private static final int ADDED = 300;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @TempDir
    Path folder;

    @Test
    void openingAndAdding() {
        for (int facts : new int[] {100, 1_000, 10_000, FACTS}) {
            Path file = folder.resolve(facts + Journal.ENDING);
            Journal.create(file, job(facts), Time.system(), MARK, Disk::tail).close();
            long[] opened = new long[5];
            long[] worked = new long[opened.length];
            for (int i = 0; i < opened.length; i++) {
                long before = System.nanoTime();
                long cpuBefore = THREADS.getCurrentThreadCpuTime();
                Journal.open(file, Time.system(), MARK).close();
                opened[i] = System.nanoTime() - before;
                worked[i] = THREADS.getCurrentThreadCpuTime() - cpuBefore;
            }
            try (Journal journal = Journal.open(file, Time.system(), MARK)) {
                // The first also notes the gap.
                int first = journal.job().entries().size();
                long[] added = new long[ADDED];
                for (int i = 0; i < ADDED; i++) {
                    Fact fact = reading(i);
                    long before = System.nanoTime();
                    journal.append(fact);
                    added[i] = System.nanoTime() - before;
                }
                assertEquals(first + ADDED, journal.job().entries().size());
                Arrays.sort(added);
                Arrays.sort(opened);
                Arrays.sort(worked);
                System.out.printf(
                        "%,d facts: opened in %d ms, %d ms of them work (middle of 5); a fact added in %d µs (middle of %d)%n",
                        facts, opened[2] / 1_000_000, worked[2] / 1_000_000, added[ADDED / 2] / 1_000, ADDED);
            }
        }
    }

    private static Job job(int facts) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 1; i <= facts; i++) {
            entries.add(new Entry(i, Instant.parse("2026-03-01T09:00:00Z"), 1, i, reading(i)));
        }
        return new Job("Organ", entries);
    }

    private static Fact reading(int i) {
        return new Fact.Reading("down.set", "down.volts", 3 + i % 100 * 0.001, Unit.VOLT, "3.00 V");
    }
}
