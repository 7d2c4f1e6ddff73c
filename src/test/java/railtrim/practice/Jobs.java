package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import railtrim.job.BuiltIn;
import railtrim.job.MemoryLog;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

/** Whole jobs, played on a practice board, state by state. */
public final class Jobs {
    private Jobs() {}

    /** Every state from the first screen to the last. */
    public static List<State> states(String board, long seed) {
        Board practice = Board.of(BuiltIn.text("demo-data/boards/" + board + ".json"));
        Bench bench = new Bench(practice, Meter.middle(), Rehearsal.chance(seed));
        Course course = new Course(Procedure.builtIn(), new MemoryLog(board, bench));
        Hand hand = new Hand(bench);
        List<State> states = new ArrayList<>();
        while (states.size() < 3000) {
            State state = course.state();
            states.add(state);
            Answer answer = hand.next(state, course);
            if (answer instanceof Answer.Done) {
                return states;
            }
            Rehearsal.offer(answer, course);
        }
        throw new AssertionError("the job on " + board + " does not end");
    }
}
