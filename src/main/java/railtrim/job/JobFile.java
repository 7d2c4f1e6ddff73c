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
import railtrim.quantity.PlainText;

/**
 * What was found in a job file. Reading changes nothing on the disk.
 *
 * @param goodLength bytes up to the end of the last good line
 * @param lastTag tag of the last good line, from which the next one's is made; empty where nothing may be added
 * @param tail what stands after the last good line
 * @param problems in words, the ones that matter most first
 */
record JobFile(Job job, long version, long goodLength, String lastTag, Tail tail, List<Message> problems) {
    /** A job file larger than this was not written by anybody's hand in one job. */
    static final long LARGEST = 64L * 1024 * 1024;

    /** And one from elsewhere may not even be as large as this. */
    static final int LARGEST_ELSEWHERE = 2 * 1024 * 1024;

    /** Most entries taken from a file made elsewhere. A whole job has a few hundred. */
    static final int MOST_ELSEWHERE = 5_000;

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
        return job.origin() == Origin.OWN && (tail == Tail.CLEAN || tail == Tail.UNENDED || tail == Tail.TORN);
    }

    /** @throws JournalProblem for a file that is not there, cannot be read, is empty, is no job file, or is too large, for this computer’s memory too */
    static JobFile read(Path file, Mark mark) {
        try {
            return of(file, bytes(file, mark), mark);
        } catch (OutOfMemoryError | StackOverflowError e) {
            throw problem("job.too-large", file, e);
        }
    }

    static JobFile of(Path file, byte[] bytes, Mark mark) {
        return new Reader(file, mark).read(bytes);
    }

    private static byte[] bytes(Path file, Mark mark) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw problem("job.not-a-file", file, null);
            }
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(LARGEST_ELSEWHERE + 1);
                if (bytes.length > LARGEST_ELSEWHERE) {
                    byte[] first = Arrays.copyOf(bytes, Math.min(lineEnd(bytes, 0), Lines.LONGEST + 1));
                    if (!Lines.fits(first, "", mark)) {
                        throw problem("job.too-large", file, null);
                    }
                    // One byte more than allowed tells a file that grew while it was read.
                    byte[] rest = in.readNBytes((int) LARGEST + 1 - bytes.length);
                    bytes = Arrays.copyOf(bytes, bytes.length + rest.length);
                    System.arraycopy(rest, 0, bytes, bytes.length - rest.length, rest.length);
                }
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

    /** One reading of one file from its first line to its last good one. */
    private static final class Reader {
        private final Path file;
        private final Mark mark;
        private final List<Entry> entries = new ArrayList<>();
        private Optional<BadLine> bad = Optional.empty();
        private Tail tail = Tail.CLEAN;
        private long goodLength;
        private String lastTag = "";
        private boolean own;

        Reader(Path file, Mark mark) {
            this.file = file;
            this.mark = mark;
        }

        JobFile read(byte[] bytes) {
            if (bytes.length == 0) {
                throw problem("job.empty", file, null);
            }
            int headerEnd = lineEnd(bytes, 0);
            byte[] first = Arrays.copyOf(bytes, Math.min(headerEnd, Lines.LONGEST + 1));
            Lines.Header header = header(file, first);
            boolean newer = header.version() > Lines.VERSION;
            boolean damaged = !header.sealed() && !newer;
            lastTag = Lines.tag(first).orElse("");
            // A damaged first line fits no tag; then the lines behind it tell whose job it is.
            own = header.version() >= Lines.TAGGED && (damaged || Lines.fits(first, "", mark));
            readFacts(bytes, headerEnd, header.version());
            own &= !damaged || !entries.isEmpty();
            List<Message> problems = new ArrayList<>();
            if (newer) {
                problems.add(Message.of("job.newer", Long.toString(header.version()), Integer.toString(Lines.VERSION)));
            } else if (damaged) {
                problems.add(Message.of("job.damaged.header", stem(file)));
            }
            bad.ifPresent(why -> problems.addAll(told(why, entries.size(), tail, newer, damaged)));
            tail = newer ? Tail.NEWER : damaged ? Tail.DAMAGED : tail;
            // A name that may have been altered is not shown as good.
            Job job = job(damaged ? stem(file) : header.name());
            return new JobFile(job, header.version(), goodLength, lastTag, tail, List.copyOf(problems));
        }

        private void readFacts(byte[] bytes, int headerEnd, long version) {
            Entry before = null;
            int start = headerEnd + 1;
            while (start < bytes.length) {
                int end = lineEnd(bytes, start);
                byte[] line = Arrays.copyOfRange(bytes, start, Math.min(end, start + Lines.LONGEST + 1));
                try {
                    before = Lines.readEntry(line, before, version);
                } catch (BadLine e) {
                    tail = end == bytes.length ? Tail.TORN : Tail.DAMAGED;
                    bad = Optional.of(e);
                    goodLength = start;
                    return;
                }
                own = own && Lines.fits(line, lastTag, mark);
                lastTag = Lines.tag(line).orElse("");
                entries.add(before);
                if (!own && entries.size() > MOST_ELSEWHERE) {
                    throw problem("job.too-large", file, null);
                }
                start = end + 1;
            }
            goodLength = bytes.length;
            tail = bytes[bytes.length - 1] == '\n' ? Tail.CLEAN : Tail.UNENDED;
        }

        private Job job(String name) {
            return own
                    ? new Job(name, entries, Origin.OWN)
                    : new Job(
                            PlainText.of(name),
                            entries.stream().map(Reader::plain).toList(),
                            Origin.ELSEWHERE);
        }

        private static Entry plain(Entry entry) {
            return new Entry(
                    entry.sequence(), entry.time(), entry.session(), entry.tick(), FactCodec.plain(entry.fact()));
        }
    }

    private static List<Message> told(BadLine why, int good, Tail tail, boolean newer, boolean headerDamaged) {
        String line = Integer.toString(good + 2);
        if (newer) {
            return List.of(Message.of("job.newer.rest", line));
        } else if (tail == Tail.TORN && !headerDamaged) {
            return List.of(Message.of("job.torn.left"));
        }
        return List.of(Message.of(why.key(), line), Message.of("job.damaged.so", Integer.toString(good)));
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
