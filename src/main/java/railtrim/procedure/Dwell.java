package railtrim.procedure;

import java.util.List;
import railtrim.job.Entry;
import railtrim.job.Fact;

/**
 * The wait a step asks for, told from the record alone: it runs from the last fact of another step, by the monotonic ticks of one session. The
 * time between two sessions was seen by nobody and counts for nothing.
 */
final class Dwell {
    private Dwell() {}

    /** A fault can be told at any time; "all well" and settled readings only after the wait. */
    static boolean waits(Fact fact) {
        if (fact instanceof Fact.Choice choice) {
            boolean seen = choice.field().endsWith(".seen") && !Descent.FAULTS.contains(choice.option());
            return seen || choice.field().equals("cool.how") && choice.option().equals("room-temperature");
        }
        return fact instanceof Fact.Reading;
    }

    /**
     * Tick at which the step came up, looking back from before entry number {@code before} (an index): that of the last fact of another step, or
     * the session's beginning where that was in an earlier one.
     */
    static long began(List<Entry> entries, int before, String step, int session) {
        for (int i = before - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry.session() != session) {
                return 0;
            }
            if (!entry.fact().step().equals(step)) {
                return entry.tick();
            }
        }
        return 0;
    }

    /** Seconds of the wait that had passed, by the record, when the entry at {@code index} was written. */
    static long passed(List<Entry> entries, int index, String step) {
        Entry entry = entries.get(index);
        return Math.max(0, (entry.tick() - began(entries, index, step, entry.session())) / 1000);
    }

    /** Whether an answer came after the whole wait. One that does not have to wait always does. */
    static boolean kept(List<Entry> entries, int index, Step step) {
        return step.dwellSeconds() == 0
                || !waits(entries.get(index).fact())
                || passed(entries, index, step.id()) >= step.dwellSeconds();
    }
}
