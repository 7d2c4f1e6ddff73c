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
    Course course;
    private final Hand hand;

    private HalfDone(String board, Meter meter) {
        bench = new Bench(Board.of(BuiltIn.text("demo-data/boards/" + board + ".json")), meter, Rehearsal.chance(3));
        log = new MemoryLog("half done", bench);
        course = new Course(PROCEDURE, log);
        hand = new Hand(bench);
    }

    static HalfDone upTo(String step) {
        return on("sound-board", step);
    }

    static HalfDone on(String board, String step) {
        HalfDone job = new HalfDone(board, Meter.basic());
        job.workTo(step);
        return job;
    }

    /** On the sound board, with a meter of one's choice. */
    static HalfDone with(Meter meter, String step) {
        HalfDone job = new HalfDone("sound-board", meter);
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

    /** Goes on until a field is the next to be answered. */
    void workToField(String field) {
        for (int i = 0; i < MOST_ANSWERS; i++) {
            State.StepState current = course.state().current();
            if (current.open().isEmpty()
                    && !current.missing().isEmpty()
                    && current.missing().get(0).equals(field)) {
                return;
            }
            give();
        }
        throw new AssertionError("never came to " + field + ", stands at " + current());
    }

    /** Opens the job afresh, as after a break. */
    void reload() {
        course = new Course(PROCEDURE, log);
    }

    /** Goes on to the end; whether it came there. */
    boolean finish() {
        for (int i = 0; i < MOST_ANSWERS && !course.state().complete(); i++) {
            Answer answer = hand.next(course.state(), course);
            if (answer instanceof Answer.Stuck || answer instanceof Answer.Done) {
                return false;
            }
            give(answer);
        }
        return course.state().complete();
    }

    /** Answers one field of a card. */
    void answer(Course at, String field) {
        switch (field) {
            case "resume.rail", "safe.rail" -> at.type(field, "1 mV", false);
            case "resume.zero" -> at.type(field, "0.2 Ω", false);
            case "resume.where" -> at.choose(field, "as-left");
            case "resume.marking" ->
                at.type(field, at.state().figures().text("reg.marking").orElseThrow(), false);
            case "resume.total" -> {
                double ohms = at.expected(field)
                        .map(range -> (range.low() + range.high()) / 2)
                        .orElse(100.0);
                at.type(field, String.format(java.util.Locale.ROOT, "%.2f Ω", ohms), false);
            }
            default -> throw new AssertionError(field);
        }
    }

    /** One answer of the hand. */
    void give() {
        give(hand.next(course.state(), course));
    }

    private void give(Answer answer) {
        if (answer instanceof Answer.Alarmed || answer instanceof Answer.Done || answer instanceof Answer.Stuck) {
            throw new AssertionError("the hand is stuck: " + answer + " at " + current());
        }
        Rehearsal.offer(answer, course);
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
