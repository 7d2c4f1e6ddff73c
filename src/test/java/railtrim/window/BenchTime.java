package railtrim.window;

import java.time.Instant;
import railtrim.job.Time;

/** The clock of whichever bench is being worked on, for a window that is opened before it. */
final class BenchTime implements Time {
    private volatile Time of = Time.system();

    void of(Time bench) {
        of = bench;
    }

    @Override
    public Instant now() {
        return of.now();
    }

    @Override
    public long ticks() {
        return of.ticks();
    }
}
