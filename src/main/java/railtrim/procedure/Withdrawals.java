package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;

/**
 * What was taken back. Nothing is ever rubbed out: an entry says that an earlier one no longer counts, and both stay on record. Only the last
 * entry that counts can be taken back, and only an answer, an acknowledgement, a step left out or a change of power; make safe, a break and going
 * back are things that happened. A file that says otherwise is not believed.
 */
final class Withdrawals {
    /** Of the alarm that stands for a change of power taken back: then nobody knows whether the board is on. */
    static final String REASON = "withdrawn";

    private Withdrawals() {}

    /** The job as it counts: without what was taken back. A change of power taken back is an alarm instead, so that the rail is proven dead. */
    static Job counting(Job job) {
        if (!anyIn(job.entries())) {
            return job;
        }
        List<Entry> kept = new ArrayList<>();
        for (Entry entry : job.entries()) {
            if (entry.fact() instanceof Fact.Withdrawn withdrawn) {
                last(kept).filter(last -> last.sequence() == withdrawn.entry()).ifPresent(last -> {
                    kept.remove(kept.size() - 1);
                    if (last.fact() instanceof Fact.Power power) {
                        kept.add(entry.with(new Fact.Alarm(power.step(), REASON)));
                    }
                });
            } else {
                kept.add(entry);
            }
        }
        return new Job(job.name(), kept, job.origin());
    }

    /** A plain loop: it is asked after every fact of a job. */
    private static boolean anyIn(List<Entry> entries) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).fact() instanceof Fact.Withdrawn) {
                return true;
            }
        }
        return false;
    }

    /** The entry that could be taken back now. */
    static Optional<Entry> last(Job counting) {
        return last(counting.entries());
    }

    private static Optional<Entry> last(List<Entry> kept) {
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(kept.get(kept.size() - 1)).filter(entry -> canBeTakenBack(entry.fact()));
    }

    private static boolean canBeTakenBack(Fact fact) {
        return fact instanceof Fact.Reading
                || fact instanceof Fact.Choice
                || fact instanceof Fact.Note
                || fact instanceof Fact.Acknowledged
                || fact instanceof Fact.Skipped
                || fact instanceof Fact.Power;
    }
}
