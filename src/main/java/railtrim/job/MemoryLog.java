package railtrim.job;

import java.time.Instant;

/** A job kept in memory, for rehearsals and tests. */
public final class MemoryLog implements Log {
    private final Time time;
    private final long began;
    private final int session;
    private Job job;

    public MemoryLog(String name, Time time) {
        this(Job.empty(name), 1, time);
    }

    private MemoryLog(Job job, int session, Time time) {
        this.time = time;
        this.began = time.ticks();
        this.session = session;
        this.job = job;
    }

    /** A job taken up again in a session of its own, after so many seconds; says so with a {@link Fact.Resumed}, as a journal on disk does. */
    public static MemoryLog takenUp(Job job, Time time, long gapSeconds) {
        int last = job.entries().stream().mapToInt(Entry::session).max().orElse(0);
        MemoryLog log = new MemoryLog(job, last + 1, time);
        log.append(new Fact.Resumed("resume", gapSeconds));
        return log;
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public Entry append(Fact fact) {
        Entry entry = new Entry(job.last() + 1, time.now(), session(), ticks(), fact);
        job = job.with(entry);
        return entry;
    }

    @Override
    public long ticks() {
        return time.ticks() - began;
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
    public boolean readOnly() {
        return false;
    }
}
