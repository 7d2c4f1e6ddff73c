package railtrim.practice;

import railtrim.job.Log;
import railtrim.job.MemoryLog;
import railtrim.job.Time;

/** Where the job of a rehearsal is kept. */
@FunctionalInterface
public interface Logs {
    Log begin(Time time);

    /** The same job, taken up again in another session; it goes on in memory unless said otherwise. @param gapSeconds since its last fact */
    default Log again(Log log, Time time, long gapSeconds) {
        return MemoryLog.takenUp(log.job(), time, gapSeconds);
    }
}
