package railtrim.job;

import java.time.Instant;

/** The two clocks a journal needs: the wall clock for the record, and a monotonic one for dwell. */
public interface Time {
    Instant now();

    /** Milliseconds of a clock that never goes back; only differences mean something. */
    long ticks();

    static Time system() {
        return new Time() {
            @Override
            public Instant now() {
                return Instant.now();
            }

            @Override
            public long ticks() {
                return System.nanoTime() / 1_000_000;
            }
        };
    }
}
