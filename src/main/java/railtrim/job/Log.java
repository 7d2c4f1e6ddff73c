package railtrim.job;

import java.time.Instant;
import java.util.List;
import railtrim.quantity.Message;

/** Where facts are kept in order: on disk ({@link Journal}) or in memory ({@link MemoryLog}). */
public interface Log {
    Job job();

    /** Kept for good when this returns. @throws JournalProblem where it could not be kept; then nothing changed */
    Entry append(Fact fact);

    /** Milliseconds of the monotonic clock since this session began. */
    long ticks();

    /** Wall clock, as it goes into {@link Entry#time()}. */
    Instant now();

    /** Number of this session, as it goes into {@link Entry#session()}. */
    int session();

    boolean readOnly();

    /** What is to be told since this was last asked, such as that the job goes on in another file. */
    default List<Message> news() {
        return List.of();
    }
}
