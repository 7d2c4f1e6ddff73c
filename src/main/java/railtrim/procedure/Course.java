package railtrim.procedure;

import java.util.Optional;
import railtrim.job.Log;

/** One job under way: offers go in, the procedure judges them, accepted facts are kept, and the new state comes out. */
public final class Course {
    public Course(Procedure procedure, Log log) {
        throw new UnsupportedOperationException();
    }

    public Procedure procedure() {
        throw new UnsupportedOperationException();
    }

    public State state() {
        throw new UnsupportedOperationException();
    }

    /** Answers a number or text field of the current step or card. {@code sure}: "the meter really shows this". */
    public Verdict type(String field, String text, boolean sure) {
        throw new UnsupportedOperationException();
    }

    public Verdict choose(String field, String option) {
        throw new UnsupportedOperationException();
    }

    public Verdict acknowledge(String caution) {
        throw new UnsupportedOperationException();
    }

    /** Answers a {@link Field.Switch}: "I have switched it". */
    public Verdict turn(String field) {
        throw new UnsupportedOperationException();
    }

    /** Make safe, from anywhere; reasons: {@code pressed}, {@code smoke}, {@code fault}. */
    public Verdict alarm(String reason) {
        throw new UnsupportedOperationException();
    }

    /** Go back to a finished step to do it again; what rests on it becomes stale. */
    public Verdict reopen(String step, String reason) {
        throw new UnsupportedOperationException();
    }

    /** Leave out the current step where that is allowed. */
    public Verdict skip(String reason) {
        throw new UnsupportedOperationException();
    }

    public Verdict pause(String note) {
        throw new UnsupportedOperationException();
    }

    /** A field of the current step or of the card before it. */
    public Optional<Field> field(String id) {
        throw new UnsupportedOperationException();
    }

    /** The expected range shown before entry, empty where nothing can be expected. */
    public Optional<Field.Expected> expected(String field) {
        throw new UnsupportedOperationException();
    }

    /** Seconds of dwell still to wait before the current step's last answer is taken, 0 when none. */
    public long dwellLeft() {
        throw new UnsupportedOperationException();
    }
}
