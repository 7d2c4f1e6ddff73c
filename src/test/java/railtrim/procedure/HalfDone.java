package railtrim.procedure;

import java.time.Duration;
import railtrim.job.BuiltIn;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.quantity.Meter;

/** A job on the demo sound board, worked by a careful hand up to a step of one's choice. */
final class HalfDone {
    static final Procedure PROCEDURE = Procedure.builtIn();
    private static final int MOST_ANSWERS = 1000;

    final Bench bench;
    final MemoryLog log;
    final Course course;
    private final Hand hand;

    private HalfDone(String board) {
        bench = new Bench(
                Board.of(BuiltIn.text("demo-data/boards/" + board + ".json")), Meter.basic(), Rehearsal.chance(3));
        log = new MemoryLog("half done", bench);
        course = new Course(PROCEDURE, log);
        hand = new Hand(bench);
    }

    static HalfDone upTo(String step) {
        return on("sound-board", step);
    }

    static HalfDone on(String board, String step) {
        HalfDone job = new HalfDone(board);
        job.workTo(step);
        return job;
    }

    /** Goes on until the step is the current one, with its cautions acknowledged and nothing else answered. */
    void workTo(String step) {
        for (int i = 0; i < MOST_ANSWERS; i++) {
            State.StepState current = course.state().current();
            if (current.step().id().equals(step)
                    && course.state().card().isEmpty()
                    && current.open().isEmpty()) {
                return;
            }
            give();
        }
        throw new AssertionError("never came to " + step + ", stands at " + current());
    }

    /** One answer of the hand. */
    void give() {
        Answer answer = hand.next(course.state(), course);
        if (answer instanceof Answer.Typed typed) {
            course.type(typed.field(), typed.text(), typed.sure());
        } else if (answer instanceof Answer.Picked picked) {
            course.choose(picked.field(), picked.option());
        } else if (answer instanceof Answer.Acknowledged acknowledged) {
            course.acknowledge(acknowledged.caution());
        } else if (answer instanceof Answer.Switched switched) {
            course.turn(switched.field());
        } else {
            throw new AssertionError("the hand is stuck: " + answer + " at " + current());
        }
    }

    void wait(Duration time) {
        bench.waitSeconds(time.toSeconds());
    }

    Time time() {
        return bench;
    }

    String current() {
        return course.state().current().step().id();
    }
}
