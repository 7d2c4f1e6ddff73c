package railtrim.window;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Log;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;

/**
 * One step in one of its states: the facts up to there, and what a person then does to get to see it.
 *
 * @param ticks milliseconds since the session began, {@code now} the wall clock then
 * @param typed where the deed is a number typed into the field that has the focus
 */
record Moment(String step, String state, Job job, long ticks, Instant now, Consumer<Desk> deed, Optional<Typed> typed) {
    record Typed(String field, String text) {}

    String name() {
        return step + " " + state;
    }

    /** The desk as a person sees it at that moment; what they do to it stays with it. */
    Desk desk(Procedure procedure) {
        Desk desk = before(procedure);
        deed.accept(desk);
        return desk;
    }

    /** The desk as a person finds it, before they do what leads to the state. */
    Desk before(Procedure procedure) {
        Branch branch = new Branch(job, ticks, now);
        return new Desk(new Course(procedure, branch), branch, Optional.empty());
    }

    /** The job from there on, on a clock that stands still. */
    private static final class Branch implements Log, Time {
        private final long ticks;
        private final Instant now;
        private Job job;

        Branch(Job job, long ticks, Instant now) {
            this.job = job;
            this.ticks = ticks;
            this.now = now;
        }

        @Override
        public Job job() {
            return job;
        }

        @Override
        public Entry append(Fact fact) {
            Entry entry = new Entry(job.last() + 1, now, session(), ticks, fact);
            job = job.with(entry);
            return entry;
        }

        @Override
        public long ticks() {
            return ticks;
        }

        @Override
        public Instant now() {
            return now;
        }

        @Override
        public int session() {
            return List.copyOf(job.entries()).stream()
                    .mapToInt(Entry::session)
                    .max()
                    .orElse(1);
        }

        @Override
        public boolean readOnly() {
            return false;
        }
    }
}
