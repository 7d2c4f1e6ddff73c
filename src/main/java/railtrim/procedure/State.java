package railtrim.procedure;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.quantity.Message;

/**
 * Where the job stands; computed from its facts, never stored.
 *
 * @param job all that is on record, with what was taken back
 * @param current the step to work on now; the last step when all is done
 * @param card something that stands before everything else
 * @param complete every step done, nothing stale
 */
public record State(
        Job job, Figures figures, Way way, StepState current, Optional<Card> card, Power power, boolean complete) {

    /** How every step stands, worked out when it is first asked for: to go on with the job only the current step is needed. */
    static final class Way {
        private Supplier<List<StepState>> sum;
        private List<StepState> steps = List.of();

        Way(Supplier<List<StepState>> sum) {
            this.sum = sum;
        }

        private synchronized List<StepState> steps() {
            if (sum != null) {
                steps = sum.get();
                sum = null;
            }
            return steps;
        }
    }

    /** What the board's power is believed to be. */
    public enum Power {
        OFF,
        ON,
        UNKNOWN
    }

    public enum Status {
        DONE,
        /** Done once, but something it rests on changed. */
        STALE,
        CURRENT,
        LOCKED,
        SKIPPED,
        NOT_NEEDED
    }

    /**
     * @param open cautions not yet acknowledged, in order; fields are locked until this is empty
     * @param missing ids of fields not yet answered
     * @param entries the facts that count for this step now, in order
     */
    public record StepState(
            Step step,
            Status status,
            List<String> open,
            List<String> missing,
            List<Step.Finding> findings,
            List<railtrim.job.Entry> entries) {

        /** Which picture belongs beside it now. */
        public Step.Picture picture() {
            return open.isEmpty() ? step.picture() : step.pictureBefore().orElse(step.picture());
        }
    }

    /** Stands before everything else. */
    public sealed interface Card {
        /** Trimmer to maximum, power off, wait; the only way out is a rail reading below 0.1 V (field {@code safe.rail}, step {@code safe}). */
        record MakeSafe(Message reason) implements Card {}

        /** The job ends here, in words, with the reason; an earlier answer can be corrected by reopening {@code backTo}. */
        record Stop(Message reason, String backTo) implements Card {}

        /**
         * After an interruption, step {@code resume}.
         *
         * @param fields what has to be answered before the work goes on: {@code resume.rail} always, more the longer the break was
         */
        record Resume(long gapSeconds, Optional<String> note, List<String> fields) implements Card {
            /** The field to ask next: the one answered longest ago since the break, so that a reading that did not pass comes round again. */
            public String next(List<Entry> entries) {
                Map<String, Long> answered = new HashMap<>();
                for (Entry entry : entries) {
                    if (entry.fact() instanceof Fact.Resumed) {
                        answered.clear();
                    }
                    Figures.fieldOf(entry.fact()).ifPresent(field -> answered.put(field, entry.sequence()));
                }
                return fields.stream()
                        .min(Comparator.comparingLong(field -> answered.getOrDefault(field, 0L)))
                        .orElseThrow();
            }
        }
    }

    /** The same state of a job that has entries on record that no longer count. */
    State of(Job whole) {
        return new State(whole, figures, way, current, card, power, complete);
    }

    /** The same state with another step looked at. */
    public State lookingAt(StepState shown) {
        return new State(job, figures, way, shown, card, power, complete);
    }

    /** Every step in order. */
    public List<StepState> steps() {
        return way.steps();
    }

    /** Whether an entry on record was taken back, so that it counts no longer. */
    public boolean takenBack(Entry entry) {
        return !(entry.fact() instanceof Fact.Withdrawn)
                && !figures.job().entries().contains(entry);
    }

    public StepState step(String id) {
        return steps().stream()
                .filter(state -> state.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
