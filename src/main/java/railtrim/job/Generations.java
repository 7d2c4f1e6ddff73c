package railtrim.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import railtrim.quantity.Message;

/**
 * The last three states of a job as it was when it was opened, {@code NAME.railtrim.kept-1} (the newest) to {@code kept-3}. Nothing is ever written
 * into them again; where the job itself is damaged later, they still hold what it held.
 */
final class Generations {
    static final int KEPT = 3;
    private static final String ENDING = ".kept-";

    private Generations() {}

    static boolean isKept(Path file) {
        String name = String.valueOf(file.getFileName());
        return IntStream.rangeClosed(1, KEPT).anyMatch(age -> name.endsWith(Journal.ENDING + ENDING + age));
    }

    static Path of(Path file, int age) {
        return file.resolveSibling(file.getFileName() + ENDING + age);
    }

    /** Puts the first {@code length} bytes of a sound job away, unless the newest state kept is that long already: a job only grows. */
    static void keep(Path file, long length) throws IOException {
        Path newest = of(file, 1);
        Disk.sweep(newest);
        if (isRegular(newest) && Files.size(newest) == length) {
            return;
        }
        Path half = Disk.half(newest, Arrays.copyOf(Files.readAllBytes(file), (int) length));
        for (int age = KEPT; age > 1; age--) {
            if (Files.exists(of(file, age - 1), LinkOption.NOFOLLOW_LINKS)) {
                Files.move(of(file, age - 1), of(file, age), StandardCopyOption.ATOMIC_MOVE);
            }
        }
        Disk.place(half, newest, true);
    }

    /** The newest state kept of one's own that holds more than the {@code facts} that can still be read. */
    static Optional<Message> better(Path file, Mark mark, int facts) {
        for (int age = 1; age <= KEPT; age++) {
            int held = facts(of(file, age), mark);
            if (held > facts) {
                return Optional.of(Message.of("job.kept.better", of(file, age).toString(), Integer.toString(held)));
            }
        }
        return Optional.empty();
    }

    private static int facts(Path kept, Mark mark) {
        try {
            Job job = isRegular(kept) ? JobFile.read(kept, mark).job() : Job.empty("");
            return job.origin() == Origin.OWN ? job.entries().size() : 0;
        } catch (JournalProblem e) {
            return 0;
        }
    }

    private static boolean isRegular(Path file) {
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }
}
