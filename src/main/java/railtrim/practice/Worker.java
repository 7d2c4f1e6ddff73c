package railtrim.practice;

import java.util.List;
import railtrim.procedure.Course;
import railtrim.procedure.State;
import railtrim.procedure.Verdict;

/** Somebody at the bench. */
interface Worker {
    /** Does the next thing on the bench and tells what to type, pick or press. */
    Answer next(State state, Course course);

    /** What the procedure said to an answer; {@code after} is the state it led to. */
    default void hear(Answer answer, Verdict verdict, State after) {}

    /** The slips made so far. */
    default List<SlipMade> slips() {
        return List.of();
    }
}
