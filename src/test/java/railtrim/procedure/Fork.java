package railtrim.procedure;

import java.time.Instant;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Log;

/** A log that goes on from a job without changing it, so that one job can be gone on with in many ways. */
final class Fork implements Log {
    private final int session;
    private final long ticks;
    private Job job;

    /** @param later seconds after the last fact at which this goes on */
    Fork(Job job, long later) {
        this.job = job;
        Entry last =
                job.entries().isEmpty() ? null : job.entries().get(job.entries().size() - 1);
        this.session = last == null ? 1 : last.session();
        this.ticks = (last == null ? 0 : last.tick()) + later * 1000;
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public Entry append(Fact fact) {
        Entry entry = new Entry(job.last() + 1, now(), session, ticks, fact);
        job = job.with(entry);
        return entry;
    }

    @Override
    public long ticks() {
        return ticks;
    }

    @Override
    public Instant now() {
        return Instant.EPOCH.plusMillis(ticks);
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
