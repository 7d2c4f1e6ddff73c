package railtrim.procedure;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import railtrim.job.Entry;
import railtrim.job.Job;

/**
 * Results of the few long sums, kept by their inputs, so that a job of hundreds of facts does not work the same sum out again after each.
 * A sum is a function of its inputs, so what is recalled is what would be worked out. For one thread.
 */
final class Recall {
    private static final int MOST = 200;

    private Look.Kept[] looks = new Look.Kept[0];

    private final FactsByStep factsByStep = new FactsByStep();

    private Standing latest;

    private Optional<Descent> descent = Optional.empty();

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

    /** How the step at this place of the route looked the last time, and on what that rested; null where that is not known. */
    Look.Kept look(int place) {
        return place < looks.length ? looks[place] : null;
    }

    void keep(int place, Look.Kept kept) {
        if (place >= looks.length) {
            looks = Arrays.copyOf(looks, place + 32);
        }
        looks[place] = kept;
    }

    /** Steps from this place on were not looked at although something before them changed. */
    void forgetLooks(int from) {
        if (from < looks.length) {
            Arrays.fill(looks, from, looks.length, null);
        }
    }

    /** The standing whose looks are kept now. */
    void latest(Standing standing) {
        latest = standing;
    }

    boolean isLatest(Standing standing) {
        return latest == standing;
    }

    /** The facts of each step of the route, in its order. */
    List<Entry>[] factsByStep(Route route, List<Entry> entries) {
        return factsByStep.of(route, entries);
    }

    /** The way down as it was read last. */
    Optional<Descent> descent() {
        return descent;
    }

    void keep(Descent read) {
        descent = Optional.of(read);
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
