package railtrim.job;

import java.time.Instant;

/** A job kept in memory, for rehearsals and tests. */
public final class MemoryLog implements Log {
    private final Time time;
    private final long began;
    private Job job;

    public MemoryLog(String name, Time time) {
        this.time = time;
        this.began = time.ticks();
        this.job = Job.empty(name);
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
        return 1;
    }

    @Override
    public boolean readOnly() {
        return false;
    }
}
