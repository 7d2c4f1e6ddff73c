package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import railtrim.job.BuiltIn;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;

/** Whole jobs, played on a practice board, state by state. */
final class Jobs {
    private Jobs() {}

    /** Every state from the first screen to the last. */
    static List<State> states(String board, long seed) {
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
            offer(answer, course);
        }
        throw new AssertionError("the job on " + board + " does not end");
    }

    private static void offer(Answer answer, Course course) {
        if (answer instanceof Answer.Typed typed) {
            course.type(typed.field(), typed.text(), typed.sure());
        } else if (answer instanceof Answer.Picked picked) {
            course.choose(picked.field(), picked.option());
        } else if (answer instanceof Answer.Acknowledged acknowledged) {
            course.acknowledge(acknowledged.caution());
        } else if (answer instanceof Answer.Switched switched) {
            course.turn(switched.field());
        } else if (answer instanceof Answer.Alarmed alarmed) {
            course.alarm(alarmed.reason());
        } else if (answer instanceof Answer.Reopened reopened) {
            course.reopen(reopened.step(), reopened.reason());
        } else {
            throw new AssertionError("stuck: " + answer);
        }
    }
}
