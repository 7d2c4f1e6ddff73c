package railtrim.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import railtrim.quantity.Message;

/**
 * What was found in a job file. Reading changes nothing on the disk.
 *
 * @param goodLength bytes up to the end of the last good line
 * @param tail what stands after the last good line
 * @param problems in words, the ones that matter most first
 */
record JobFile(Job job, long version, long goodLength, Tail tail, List<Message> problems) {
    /** A job file larger than this was not written by anybody's hand in one job. */
    static final long LARGEST = 64L * 1024 * 1024;

    enum Tail {
        /** Nothing: the file ends where it should. */
        CLEAN,
        /** The last line is whole but for its line feed. */
        UNENDED,
        /** The beginning of a line that was never finished: it was never told to be saved. */
        TORN,
        /** Something that cannot be trusted; nothing may be added behind it. */
        DAMAGED,
        /** Written by a newer version: nothing may be added. */
        NEWER
    }

    boolean writable() {
        return tail == Tail.CLEAN || tail == Tail.UNENDED || tail == Tail.TORN;
    }

    /** @throws JournalProblem for a file that is not there, cannot be read, is empty, is too large or is no job file */
    static JobFile read(Path file) {
        return of(file, bytes(file));
    }

    private static byte[] bytes(Path file) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw problem("job.not-a-file", file, null);
            }
            // One byte more than allowed tells a file that grew while it was read.
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes((int) LARGEST + 1);
                if (bytes.length > LARGEST) {
                    throw problem("job.too-large", file, null);
                }
                return bytes;
            }
        } catch (NoSuchFileException e) {
            throw problem("job.missing", file, e);
        } catch (IOException | InvalidPathException e) {
            throw problem("job.unreadable", file, e);
        }
    }

    private static JobFile of(Path file, byte[] bytes) {
        if (bytes.length == 0) {
            throw problem("job.empty", file, null);
        }
        int headerEnd = lineEnd(bytes, 0);
        Lines.Header header = header(file, Arrays.copyOf(bytes, Math.min(headerEnd, Lines.LONGEST + 1)));
        boolean newer = header.version() > Lines.VERSION;
        boolean damaged = !header.sealed() && !newer;
        List<Message> problems = new ArrayList<>();
        if (newer) {
            problems.add(Message.of("job.newer", Long.toString(header.version()), Integer.toString(Lines.VERSION)));
        } else if (damaged) {
            problems.add(Message.of("job.damaged.header", stem(file)));
        }
        Facts facts = facts(bytes, headerEnd);
        facts.bad().ifPresent(why -> problems.addAll(told(why, facts, newer, damaged)));
        Tail tail = newer ? Tail.NEWER : damaged ? Tail.DAMAGED : facts.tail();
        // A name that may have been altered is not shown as good.
        String name = damaged ? stem(file) : header.name();
        return new JobFile(
                new Job(name, facts.entries()), header.version(), facts.goodLength(), tail, List.copyOf(problems));
    }

    /** The sound lines after the header, and what stopped the reading, if anything did. */
    private record Facts(List<Entry> entries, long goodLength, Tail tail, Optional<BadLine> bad) {}

    private static Facts facts(byte[] bytes, int headerEnd) {
        List<Entry> entries = new ArrayList<>();
        Entry before = null;
        int start = headerEnd + 1;
        while (start < bytes.length) {
            int end = lineEnd(bytes, start);
            try {
                before = Lines.readEntry(
                        Arrays.copyOfRange(bytes, start, Math.min(end, start + Lines.LONGEST + 1)), before);
            } catch (BadLine e) {
                Tail tail = end == bytes.length ? Tail.TORN : Tail.DAMAGED;
                return new Facts(entries, start, tail, Optional.of(e));
            }
            entries.add(before);
            start = end + 1;
        }
        boolean ended = bytes[bytes.length - 1] == '\n';
        return new Facts(entries, bytes.length, ended ? Tail.CLEAN : Tail.UNENDED, Optional.empty());
    }

    private static List<Message> told(BadLine why, Facts facts, boolean newer, boolean headerDamaged) {
        String line = Integer.toString(facts.entries().size() + 2);
        if (newer) {
            return List.of(Message.of("job.newer.rest", line));
        } else if (facts.tail() == Tail.TORN && !headerDamaged) {
            return List.of(Message.of("job.torn.left"));
        }
        return List.of(
                Message.of(why.key(), line),
                Message.of("job.damaged.so", Integer.toString(facts.entries().size())));
    }

    private static Lines.Header header(Path file, byte[] line) {
        try {
            return Lines.readHeader(line);
        } catch (BadLine e) {
            throw problem("job.foreign", file, e);
        }
    }

    /** Index of the next line feed, or the length where there is none. */
    private static int lineEnd(byte[] bytes, int start) {
        int end = start;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end;
    }

    /** The file's name without its ending. */
    static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(Journal.ENDING) ? name.substring(0, name.length() - Journal.ENDING.length()) : name;
    }

    static JournalProblem problem(String key, Path file, Throwable cause) {
        return new JournalProblem(Message.of(key, file.toString()), cause);
    }
}
