package railtrim.job;

import java.time.Duration;
import java.time.Instant;

/** Two clocks moved by hand. */
final class HandTime implements Time {
    private Instant now = Instant.parse("2026-03-01T09:00:00.123456789Z");
    private long ticks = 5_000;

    void pass(Duration time) {
        now = now.plus(time);
        ticks += time.toMillis();
    }

    /** The wall clock alone, forwards or back. */
    void setBy(Duration change) {
        now = now.plus(change);
    }

    @Override
    public Instant now() {
        return now;
    }

    @Override
    public long ticks() {
        return ticks;
    }
}
