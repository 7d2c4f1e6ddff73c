package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The finished job that comes with the program, with one bit turned over or cut off at one byte. Whatever is still shown has to be what was written,
 * and what is not shown has to be said.
 */
final class Spoiled {
    private static final Path SHIPPED = Path.of("demo-data", "finished-job" + Journal.ENDING);

    private final byte[] sound;
    private final Job whole;
    private final List<Entry> plain;
    private final LongAdder refused = new LongAdder();
    private final LongAdder read = new LongAdder();

    Spoiled() throws IOException {
        sound = Files.readAllBytes(SHIPPED);
        JobFile found = JobFile.of(SHIPPED, sound, MARK);
        assertEquals(JobFile.Tail.CLEAN, found.tail());
        assertEquals(Origin.OWN, found.job().origin());
        whole = found.job();
        plain = JobFile.of(SHIPPED, sound, Mark.lookUp(Path.of("no such folder")))
                .job()
                .entries();
    }

    long bits() {
        return 8L * sound.length;
    }

    int length() {
        return sound.length;
    }

    void turnOver(LongStream bits) {
        bits.parallel().forEach(bit -> {
            byte[] spoiled = sound.clone();
            spoiled[(int) (bit / 8)] ^= (byte) (1 << (bit % 8));
            look(spoiled, "bit " + bit, false);
        });
    }

    void cut(IntStream lengths) {
        lengths.parallel().forEach(length -> look(Arrays.copyOf(sound, length), "cut at " + length, true));
    }

    String tally() {
        return read.sum() + " read up to the damage and said so, " + refused.sum()
                + " refused in words, 0 altered values shown";
    }

    private void look(byte[] spoiled, String what, boolean cut) {
        JobFile found;
        try {
            found = JobFile.of(SHIPPED, spoiled, MARK);
        } catch (JournalProblem problem) {
            assertTrue(
                    List.of("job.foreign", "job.empty").contains(problem.told().key()), what);
            refused.increment();
            return;
        }
        read.increment();
        List<Entry> entries = found.job().entries();
        List<Entry> written = found.job().origin() == Origin.OWN ? whole.entries() : plain;
        assertEquals(written.subList(0, entries.size()), entries, what);
        boolean betweenLines = cut && spoiled[spoiled.length - 1] == '\n';
        boolean lastFeedOnly = spoiled.length >= sound.length - 1
                && entries.size() == whole.entries().size();
        if (!betweenLines && !lastFeedOnly && !atLineEnd(spoiled, cut)) {
            assertNotEquals(List.of(), found.problems(), what);
        }
        if (found.writable()) {
            assertEquals(whole.name(), found.job().name(), what);
            assertTrue(cut || found.tail() != JobFile.Tail.CLEAN, what);
        }
    }

    /** Cut just before a line feed: nothing is missing but that. */
    private boolean atLineEnd(byte[] spoiled, boolean cut) {
        return cut && sound[spoiled.length] == '\n';
    }
}
