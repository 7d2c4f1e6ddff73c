package railtrim.job;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.quantity.Message;

/**
 * A job on disk: facts appended one by one, each forced to the disk before {@link #append} returns.
 *
 * <p>The file is JSON Lines in UTF-8. The first line is {@code {"format":"railtrim job","version":1,"name":…,"crc":…}}; these three stay as they
 * are in every later version. Then one fact a line: {@code sequence}, {@code time}, {@code session}, {@code tick}, {@code fact} and the parts of
 * that fact, {@code crc}. What is written is never changed; only a last line that was never finished is cut off.
 */
public final class Journal implements Log, Closeable {
    public static final String ENDING = ".railtrim";

    /** A gap longer than this is written into the job: what was measured before it may no longer hold. */
    static final Duration GAP = Duration.ofMinutes(10);

    /** Opens the file's end for writing; a test hands in one that fails. */
    interface Opener {
        Disk.Tail open(Path file) throws IOException;
    }

    private final Path file;
    private final Time time;
    private final long began;
    private final int session;
    private final Optional<JobLock> lock;
    private final List<Message> problems;
    private Optional<Disk.Tail> tail;
    private Disk.Seen seen;
    private Job job;

    private Journal(
            Path file,
            Time time,
            Job job,
            Optional<JobLock> lock,
            Optional<Disk.Tail> tail,
            Disk.Seen seen,
            List<Message> problems) {
        this.file = file;
        this.time = time;
        this.began = time.ticks();
        this.job = job;
        this.session = lastSession(job) + 1;
        this.lock = lock;
        this.tail = tail;
        this.seen = seen;
        this.problems = new ArrayList<>(problems);
    }

    private static int lastSession(Job job) {
        return job.entries().isEmpty()
                ? 0
                : job.entries().get(job.entries().size() - 1).session();
    }

    /** @throws JournalProblem where the file exists or the folder cannot be written */
    public static Journal create(Path file, String name, Time time) {
        return create(file, Job.empty(name), time, Disk::tail);
    }

    /**
     * A new file with everything the other log holds, for going on elsewhere when the old file can no longer be written or trusted. The old file
     * stays as it is.
     *
     * @throws JournalProblem as {@link #create}
     */
    public static Journal copy(Log log, Path file, Time time) {
        return create(file, log.job(), time, Disk::tail);
    }

    static Journal create(Path file, Job job, Time time, Opener opener) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw JobFile.problem("job.no-folder", file.toAbsolutePath(), null);
        }
        byte[] start = startOf(job, file);
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
        return open(file, time, opener);
    }

    private static byte[] startOf(Job job, Path file) {
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        try {
            lines.writeBytes(Lines.header(job.name()));
            job.entries().forEach(entry -> lines.writeBytes(Lines.entry(entry)));
        } catch (IllegalArgumentException e) {
            throw JobFile.problem("job.cannot-create", file, e);
        }
        return lines.toByteArray();
    }

    /**
     * Opens for writing where that is safe, else for reading only: damaged beyond the last line, newer version, or open in another window.
     * Appends a {@link Fact.Resumed} fact by itself where more than ten minutes passed since the last fact or the clock was set back.
     *
     * @throws JournalProblem where there is no such file, it cannot be read, or it is no job
     */
    public static Journal open(Path file, Time time) {
        return open(file, time, Disk::tail);
    }

    static Journal open(Path given, Time time, Opener opener) {
        Path file = real(given);
        JobFile.read(file);
        List<Message> problems = new ArrayList<>();
        Optional<JobLock> lock = Optional.empty();
        try {
            lock = JobLock.take(file);
            if (lock.isEmpty()) {
                problems.add(Message.of("job.locked"));
            }
        } catch (IOException e) {
            problems.add(Message.of("job.read-only-folder", file.toString()));
        }
        try {
            // Read again under the lock: another window may have added to it until just now.
            JobFile found = JobFile.read(file);
            Journal journal = lock.isPresent() && found.writable()
                    ? writing(file, time, found, lock.get(), opener, problems)
                    : reading(file, time, found, lock, problems);
            lock = Optional.empty();
            return journal;
        } finally {
            lock.ifPresent(JobLock::close);
        }
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            // Not there: reading it says so in words.
            return file.toAbsolutePath();
        }
    }

    private static Journal reading(
            Path file, Time time, JobFile found, Optional<JobLock> lock, List<Message> problems) {
        lock.ifPresent(JobLock::close);
        problems.addAll(found.problems());
        return new Journal(file, time, found.job(), Optional.empty(), Optional.empty(), new Disk.Seen("", 0), problems);
    }

    private static Journal writing(
            Path file, Time time, JobFile found, JobLock lock, Opener opener, List<Message> problems) {
        try {
            if (found.tail() != JobFile.Tail.CLEAN) {
                byte[] end = found.tail() == JobFile.Tail.UNENDED ? new byte[] {'\n'} : new byte[0];
                Disk.mend(file, found.goodLength(), end);
            }
            Disk.Tail tail = opener.open(file);
            problems.addAll(found.tail() == JobFile.Tail.TORN ? List.of(Message.of("job.torn")) : found.problems());
            Journal journal = new Journal(
                    file, time, found.job(), Optional.of(lock), Optional.of(tail), Disk.Seen.of(file), problems);
            journal.noteGap();
            return journal;
        } catch (IOException e) {
            problems.add(Message.of("job.read-only-file", file.toString()));
            return reading(file, time, found, Optional.of(lock), problems);
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

    public Path file() {
        return file;
    }

    /**
     * Forced to disk when this returns.
     *
     * @throws JournalProblem with what to do where it could not be saved; the job is then as it was, and where the disk failed it takes no more
     */
    @Override
    public synchronized Entry append(Fact fact) {
        Disk.Tail open = tail.orElseThrow(() -> JobFile.problem("job.takes-no-more", file, null));
        Entry entry = new Entry(job.last() + 1, time.now(), session, ticks(), fact);
        byte[] line = lineOf(entry);
        if (seen.size() + line.length > JobFile.LARGEST) {
            throw JobFile.problem("job.full", file, null);
        }
        try {
            if (!seen.same(Disk.Seen.of(file))) {
                throw new IOException("changed by another program");
            }
        } catch (IOException e) {
            close();
            throw JobFile.problem("job.changed-outside", file, e);
        }
        try {
            open.write(line);
            open.force();
        } catch (IOException e) {
            // A force that failed once may report success the next time although the data are lost: this file is done
            // with.
            close();
            throw JobFile.problem("job.not-saved", file, e);
        }
        seen = new Disk.Seen(seen.key(), seen.size() + line.length);
        job = job.with(entry);
        return entry;
    }

    private byte[] lineOf(Entry entry) {
        try {
            return Lines.entry(entry);
        } catch (IllegalArgumentException e) {
            throw JobFile.problem("job.cannot-be-kept", file, e);
        }
    }

    @Override
    public synchronized long ticks() {
        long since = Math.max(0, time.ticks() - began);
        return job.entries().isEmpty() || lastSession(job) != session
                ? since
                : Math.max(since, job.entries().get(job.entries().size() - 1).tick());
    }

    @Override
    public int session() {
        return session;
    }

    @Override
    public synchronized boolean readOnly() {
        return tail.isEmpty();
    }

    /** What was found when opening: a torn last line cut off, damage, another window, a newer version. */
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
    }
}
