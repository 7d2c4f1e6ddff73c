package railtrim.job;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import railtrim.quantity.Message;

/**
 * A job on disk: facts appended one by one, each forced to the disk before {@link #append} returns.
 *
 * <p>The file is JSON Lines in UTF-8. The first line is {@code {"format":"railtrim job","version":3,"name":…,"own":…,"crc":…}}; the first three stay
 * as they are in every later version. Then one fact a line: {@code sequence}, {@code time}, {@code session}, {@code tick}, {@code fact} and the parts
 * of that fact, {@code own}, {@code crc}. What is written is never changed; only a last line that was never finished is cut off.
 *
 * <p>A job that does not carry this installation's {@link Mark} in every line was made elsewhere, as was one of version 1, which had no marks. It
 * opens for reading only. {@link #begin} writes what it proposes into a new job.
 */
public final class Journal implements Log, Closeable {
    public static final String ENDING = ".railtrim";

    /** A gap longer than this is written into the job: what was measured before it may no longer hold. */
    static final Duration GAP = Duration.ofMinutes(10);

    /** Opens the file's end for writing; a test hands in one that fails. */
    interface Opener {
        Disk.Tail open(Path file) throws IOException;
    }

    private final Time time;
    private final Mark mark;
    private final Opener opener;
    private final long began;
    private final int session;
    private final boolean sound;
    private final List<Message> problems;
    private final List<Message> news = new ArrayList<>();
    private Path file;
    private Optional<JobLock> lock;
    private Optional<Disk.Tail> tail;
    private Disk.Seen seen;
    private String lastTag;
    private Job job;

    private Journal(Path file, Time time, Mark mark, Opener opener, JobFile found, List<Message> problems) {
        this.file = file;
        this.time = time;
        this.mark = mark;
        this.opener = opener;
        this.began = time.ticks();
        this.job = found.job();
        this.lastTag = found.lastTag();
        this.session = lastSession(job) + 1;
        this.sound = found.tail() != JobFile.Tail.DAMAGED;
        this.lock = Optional.empty();
        this.tail = Optional.empty();
        this.seen = Disk.Seen.NOTHING;
        this.problems = new ArrayList<>(problems);
    }

    private static int lastSession(Job job) {
        return job.entries().isEmpty()
                ? 0
                : job.entries().get(job.entries().size() - 1).session();
    }

    /** @throws JournalProblem where the file exists or the folder cannot be written */
    public static Journal create(Path file, String name, Time time, Mark mark) {
        return create(file, Job.empty(name), time, mark, Disk::tail);
    }

    /**
     * A new file with everything the other log holds, for going on elsewhere when the old file can no longer be written or trusted. The old file
     * stays as it is. Where entries of the old file are lost, nobody knows what was done since: then a {@link Fact.Resumed} is added.
     *
     * @throws JournalProblem as {@link #create}, and for a job made elsewhere
     */
    public static Journal copy(Log log, Path file, Time time, Mark mark) {
        if (log.job().origin() == Origin.ELSEWHERE) {
            throw JobFile.problem("job.elsewhere.copy", file, null);
        }
        Journal copy = create(file, log.job(), time, mark, Disk::tail);
        if (log instanceof Journal old
                && !old.sound
                && copy.job.entries().equals(log.job().entries())) {
            copy.append(new Fact.Resumed("resume", -1));
        }
        return copy;
    }

    /**
     * A new job that has these facts from the start, such as what another job proposes.
     *
     * @throws JournalProblem as {@link #create}
     */
    public static Journal begin(Path file, String name, List<Fact> facts, Time time, Mark mark) {
        Job job = Job.empty(name);
        for (Fact fact : facts) {
            job = job.with(new Entry(job.last() + 1, time.now(), 1, 0, fact));
        }
        return create(file, job, time, mark, Disk::tail);
    }

    static Journal create(Path file, Job job, Time time, Mark mark, Opener opener) {
        write(file, job, mark);
        return open(file, time, mark, opener);
    }

    /**
     * A new file with the whole job as it is, for others; it is not opened.
     *
     * @throws JournalProblem as {@link #create}
     */
    public static void write(Path file, Job job, Mark mark) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw JobFile.problem("job.no-folder", file.toAbsolutePath(), null);
        }
        byte[] start = startOf(job, file, mark);
        Optional<JobLock> lock = Optional.empty();
        try {
            lock = JobLock.take(file);
            if (lock.isEmpty() || Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw JobFile.problem("job.exists", file, null);
            }
            Disk.put(file, start, false);
        } catch (FileAlreadyExistsException e) {
            throw JobFile.problem("job.exists", file, e);
        } catch (IOException e) {
            throw JobFile.problem("job.cannot-create", file, e);
        } finally {
            lock.ifPresent(JobLock::close);
        }
    }

    private static byte[] startOf(Job job, Path file, Mark mark) {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        try {
            Lines.Written line = Lines.header(job.name(), mark);
            lines.writeBytes(line.bytes());
            for (Entry entry : job.entries()) {
                line = Lines.entry(entry, line.tag(), mark);
                lines.writeBytes(line.bytes());
            }
        } catch (IllegalArgumentException e) {
            throw JobFile.problem("job.cannot-create", file, e);
        }
        return lines.toByteArray();
    }

    /**
     * Opens for writing where that is safe, else for reading only: made elsewhere, damaged beyond the last line, another version, a kept state, or
     * open in another window. Appends a {@link Fact.Resumed} fact by itself where more than ten minutes passed since the last fact or the clock was
     * set back. Before that, the state found is put away beside the job, see {@link Generations}.
     *
     * @throws JournalProblem where there is no such file, it cannot be read, or it is no job
     */
    public static Journal open(Path file, Time time, Mark mark) {
        return open(file, time, mark, Disk::tail);
    }

    static Journal open(Path given, Time time, Mark mark, Opener opener) {
        Path file = real(given);
        Disk.Seen before = Disk.Seen.orNothing(file);
        JobFile found = JobFile.read(file, mark);
        if (!found.writable() || Generations.isKept(file)) {
            return reading(file, time, mark, opener, found, whyReadOnly(file, found, mark));
        }
        Optional<JobLock> lock = Optional.empty();
        try {
            lock = JobLock.take(file);
            if (lock.isEmpty()) {
                return reading(file, time, mark, opener, found, List.of(Message.of("job.locked")));
            }
            if (!before.equals(Disk.Seen.of(file))) {
                // Another window added to it until just now.
                found = JobFile.read(file, mark);
            }
            if (!found.writable()) {
                return reading(file, time, mark, opener, found, whyReadOnly(file, found, mark));
            }
            Journal journal = writing(file, time, mark, opener, found, lock.get());
            lock = journal.readOnly() ? lock : Optional.empty();
            return journal;
        } catch (IOException e) {
            Message why = Message.of("job.read-only-folder", file.toString());
            return reading(file, time, mark, opener, found, List.of(why));
        } finally {
            lock.ifPresent(JobLock::close);
        }
    }

    private static List<Message> whyReadOnly(Path file, JobFile found, Mark mark) {
        List<Message> why = new ArrayList<>();
        if (Generations.isKept(file)) {
            why.add(Message.of("job.kept"));
        }
        if (found.version() < Lines.TAGGED) {
            why.add(Message.of("job.older", Long.toString(found.version()), Integer.toString(Lines.VERSION)));
        } else if (found.job().origin() == Origin.ELSEWHERE && found.tail() != JobFile.Tail.NEWER) {
            why.add(Message.of("job.elsewhere"));
        }
        if (found.tail() == JobFile.Tail.DAMAGED) {
            Generations.better(file, mark, found.job().entries().size()).ifPresent(why::add);
        }
        return why;
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            // Not there: reading it says so in words.
            return file.toAbsolutePath();
        }
    }

    private static Journal reading(Path file, Time time, Mark mark, Opener opener, JobFile found, List<Message> why) {
        List<Message> problems = new ArrayList<>(why);
        problems.addAll(found.problems());
        return new Journal(file, time, mark, opener, found, problems);
    }

    private static Journal writing(Path file, Time time, Mark mark, Opener opener, JobFile found, JobLock lock) {
        List<Message> problems = new ArrayList<>(Room.warnings(file));
        if (!mark.kept()) {
            problems.add(Message.of("job.mark-not-kept", OwnFolder.path().toString()));
        }
        try {
            Disk.sweep(file);
            if (found.tail() != JobFile.Tail.CLEAN) {
                byte[] end = found.tail() == JobFile.Tail.UNENDED ? new byte[] {'\n'} : new byte[0];
                Disk.mend(file, found.goodLength(), end);
            }
            Disk.Tail tail = opener.open(file);
            problems.addAll(found.tail() == JobFile.Tail.TORN ? List.of(Message.of("job.torn")) : found.problems());
            Journal journal = new Journal(file, time, mark, opener, found, problems);
            journal.hold(file, lock, tail);
            journal.keepState();
            journal.noteGap();
            return journal;
        } catch (IOException e) {
            problems.add(Message.of("job.read-only-file", file.toString()));
            return reading(file, time, mark, opener, found, problems);
        }
    }

    private void hold(Path held, JobLock itsLock, Disk.Tail itsTail) throws IOException {
        file = held;
        lock = Optional.of(itsLock);
        tail = Optional.of(itsTail);
        seen = Disk.Seen.of(held);
    }

    /** A job is not kept from going on because its earlier state cannot be put away. */
    private void keepState() {
        if (job.entries().isEmpty()) {
            return;
        }
        try {
            Generations.keep(file, seen.size());
        } catch (IOException e) {
            problems.add(Message.of("job.kept.not", file.toString()));
        }
    }

    /** Where the disk does not even take this, the job opens for reading and says why. */
    private void noteGap() {
        if (job.entries().isEmpty()) {
            return;
        }
        Instant last = job.entries().get(job.entries().size() - 1).time();
        Duration gap = Duration.between(last, time.now());
        if (gap.compareTo(GAP) > 0 || gap.isNegative()) {
            try {
                append(new Fact.Resumed("resume", gap.toSeconds()));
                problems.addAll(news());
            } catch (JournalProblem e) {
                problems.add(e.told());
                close();
            }
        }
    }

    @Override
    public synchronized Job job() {
        return job;
    }

    /** Another one than was opened, once the first could no longer be written. */
    public synchronized Path file() {
        return file;
    }

    /**
     * Forced to disk when this returns. Where the disk refuses, the whole job is written into a new file beside the old one and goes on there, which
     * {@link #news} tells.
     *
     * @throws JournalProblem with what to do where it could not be saved; the job is then as it was, and where the disk failed it takes no more
     */
    @Override
    public synchronized Entry append(Fact fact) {
        Disk.Tail open = tail.orElseThrow(() -> JobFile.problem("job.takes-no-more", file, null));
        Entry entry = new Entry(job.last() + 1, time.now(), session, ticks(), fact);
        Lines.Written line = lineOf(entry);
        if (seen.size() + line.bytes().length > JobFile.LARGEST) {
            throw JobFile.problem("job.full", file, null);
        }
        try {
            if (!seen.same(Disk.Seen.of(file))) {
                throw new IOException("changed by another program");
            }
        } catch (NoSuchFileException e) {
            close();
            throw JobFile.problem("job.gone", file, e);
        } catch (IOException e) {
            close();
            throw JobFile.problem("job.changed-outside", file, e);
        }
        try {
            open.write(line.bytes());
            open.force();
        } catch (IOException e) {
            // A force that failed once may report success the next time although the data are lost: this file is done
            // with.
            return moveOn(entry, e);
        }
        saved(entry, line.tag(), seen.size() + line.bytes().length);
        return entry;
    }

    private void saved(Entry entry, String tag, long size) {
        seen = new Disk.Seen(seen.key(), size, seen.changed());
        lastTag = tag;
        job = job.with(entry);
    }

    /** The whole job and the new entry into a new file, as no more can be asked of the old one. */
    private Entry moveOn(Entry entry, IOException why) {
        Path old = file;
        Job whole = job.with(entry);
        close();
        try {
            Path next = NewName.beside(old);
            byte[] lines = startOf(whole, next, mark);
            JobLock itsLock = JobLock.take(next).orElseThrow(() -> new IOException("locked"));
            try {
                Disk.put(next, lines, false);
                hold(next, itsLock, opener.open(next));
            } catch (IOException e) {
                Files.deleteIfExists(next);
                itsLock.close();
                throw e;
            }
            lastTag = Lines.tag(lastLine(lines)).orElseThrow();
            job = whole;
            news.add(Message.of("job.moved-on", old.toString(), next.toString()));
            return entry;
        } catch (IOException e) {
            why.addSuppressed(e);
            throw JobFile.problem("job.not-saved", old, why);
        }
    }

    private static byte[] lastLine(byte[] lines) {
        int start = lines.length - 1;
        while (lines[start - 1] != '\n') {
            start--;
        }
        return Arrays.copyOfRange(lines, start, lines.length - 1);
    }

    private Lines.Written lineOf(Entry entry) {
        try {
            return Lines.entry(entry, lastTag, mark);
        } catch (IllegalArgumentException e) {
            throw JobFile.problem("job.cannot-be-kept", file, e);
        }
    }

    @Override
    public synchronized List<Message> news() {
        List<Message> told = List.copyOf(news);
        news.clear();
        return told;
    }

    @Override
    public synchronized long ticks() {
        long since = Math.max(0, time.ticks() - began);
        return job.entries().isEmpty() || lastSession(job) != session
                ? since
                : Math.max(since, job.entries().get(job.entries().size() - 1).tick());
    }

    @Override
    public Instant now() {
        return time.now();
    }

    @Override
    public int session() {
        return session;
    }

    @Override
    public synchronized boolean readOnly() {
        return tail.isEmpty();
    }

    /** What was found when opening: a torn last line cut off, damage, another window, another version, made elsewhere, a disk that is nearly full. */
    public List<Message> problems() {
        return List.copyOf(problems);
    }

    /** Lets the file and its lock go; nothing can be appended afterwards. */
    @Override
    public synchronized void close() {
        tail.ifPresent(open -> {
            try {
                open.close();
            } catch (IOException e) {
                // Every fact told to be saved is on the disk already.
            }
        });
        tail = Optional.empty();
        lock.ifPresent(JobLock::close);
        lock = Optional.empty();
    }
}
