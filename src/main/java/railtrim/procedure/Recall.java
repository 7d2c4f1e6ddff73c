package railtrim.procedure;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import railtrim.job.Job;

/**
 * Results of the few long sums, kept by their inputs, so that a job of hundreds of facts does not work the same sum out again after each.
 * A sum is a function of its inputs, so what is recalled is what would be worked out. For one thread.
 */
final class Recall {
    private static final int MOST = 64;

    private final Map<String, Standing.Kept> looks = new HashMap<>();

    private final LastDigits lastDigits = new LastDigits();

    private final Map<List<Object>, Object> ofThisJob = new Latest();
    private final Map<List<Object>, Object> known;

    Recall() {
        this(new Latest());
    }

    private Recall(Map<List<Object>, Object> known) {
        this.known = known;
    }

    /** For another course of events: it recalls the sums, and nothing that takes a fact of this job for known by its number. */
    Recall elsewhere() {
        return new Recall(known);
    }

    private static final class Latest extends LinkedHashMap<List<Object>, Object> {
        private static final long serialVersionUID = 1L;

        Latest() {
            super(MOST, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Object> eldest) {
            return size() > MOST;
        }
    }

    /** How the step looked the last time, where it rested on the very same. */
    Optional<Standing.Kept> look(String step, Object basis) {
        return Optional.ofNullable(looks.get(step)).filter(kept -> kept.basis().equals(basis));
    }

    /** Whether the step was looked at before and said the same then to those after it, whatever else of it changed. */
    boolean saysTheSame(String step, Standing.Kept now) {
        Standing.Kept before = looks.get(step);
        return before != null && before.saysAs(now);
    }

    void keep(String step, Standing.Kept kept) {
        looks.put(step, kept);
    }

    LastDigits lastDigits(Job job) {
        return lastDigits.of(job);
    }

    /** @param inputs the sum's name and everything it depends on, each with a true {@code equals} */
    <T> T once(List<Object> inputs, Supplier<T> sum) {
        return once(known, inputs, sum);
    }

    /** @param inputs may name facts of this job by their numbers: a job only grows */
    <T> T onceInThisJob(List<Object> inputs, Supplier<T> sum) {
        return once(ofThisJob, inputs, sum);
    }

    @SuppressWarnings("unchecked")
    private static <T> T once(Map<List<Object>, Object> known, List<Object> inputs, Supplier<T> sum) {
        Object value = known.get(inputs);
        if (value == null) {
            value = sum.get();
            known.put(inputs, value);
        }
        return (T) value;
    }
}
