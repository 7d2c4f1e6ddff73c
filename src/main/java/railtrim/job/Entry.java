package railtrim.job;

import java.time.Instant;

/**
 * A fact with its place in the order.
 *
 * @param sequence 1 for the first, then one more each
 * @param time wall clock, for the record only
 * @param session counts the times the job was opened for writing; {@code tick} milliseconds of a monotonic clock since that session began
 */
public record Entry(long sequence, Instant time, int session, long tick, Fact fact) {
    /** The same place with another fact. */
    public Entry with(Fact other) {
        return new Entry(sequence, time, session, tick, other);
    }
}
