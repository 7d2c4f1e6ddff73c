package railtrim.window;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.State.StepState;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** Every step of a whole job in each of its states, found by letting a hand do the job on a practice board. */
final class Moments {
    private static final int MOST_ANSWERS = 2000;

    private final Procedure procedure = Procedure.builtIn();
    private final Bench bench;
    private final MemoryLog log;
    private final Course course;
    private final List<Moment> moments = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();

    private Moments(String board) {
        // The same meter as its manual has it, so that the step that asks for its rows is among them.
        Meter meter = Meter.ofRanges(Meter.middle().volts(), Meter.middle().ohms());
        bench = new Bench(Practice.board(board), meter, new Random(7));
        log = new MemoryLog(bench.board().label().name(), bench);
        course = new Course(procedure, log);
    }

    static List<Moment> of(String board) {
        Moments moments = new Moments(board);
        moments.walk();
        moments.stale();
        return List.copyOf(moments.moments);
    }

    private void walk() {
        Hand hand = new Hand(bench);
        for (int i = 0; i < MOST_ANSWERS; i++) {
            State before = course.state();
            Answer answer = hand.next(before, course);
            if (answer instanceof Answer.Done) {
                add("done", "finished", log.job(), desk -> {});
                return;
            }
            if (answer instanceof Answer.Stuck stuck) {
                throw new AssertionError(stuck.why());
            }
            look(before);
            String step = before.current().step().id();
            Job job = log.job();
            Desk desk = new Desk(course, bench, Optional.empty());
            Walk.give(desk, answer);
            boolean finished = before.card().isEmpty()
                    && !step.equals(course.state().current().step().id());
            if (finished && course.state().card().isEmpty()) {
                add(step, "filled", job, shown -> Walk.give(shown, answer));
            }
        }
        throw new AssertionError("the job does not end");
    }

    private void look(State state) {
        StepState now = state.current();
        String step = now.step().id();
        if (state.card().isPresent()) {
            add(state.card().get().getClass().getSimpleName(), "card", log.job(), desk -> {});
        } else if (!now.open().isEmpty()) {
            add(step, locked(now), log.job(), desk -> {});
        } else if (add(step, "fresh", log.job(), desk -> {})) {
            cards(step);
            if (now.step().power().startsOn()) {
                add(step, "fault", log.job(), desk -> desk.alarm("pressed"));
            }
        }
        if (state.card().isEmpty() && now.open().isEmpty()) {
            slips(step, now);
        }
    }

    /** The cards that an honest job on a good board never meets: after a night, and for a supply that is not to be opened. */
    private void cards(String step) {
        if (step.equals("smooth")) {
            long last = log.job().last();
            Entry night = new Entry(last + 1, log.now(), 2, 0, new Fact.Resumed("resume", 15 * 3600));
            add("Resume", "card", log.job().with(night), desk -> {});
        } else if (step.equals("scope")) {
            add("Stop", "card", log.job(), desk -> desk.choose("supply.kind", "mains"));
        }
    }

    /** A step is seen once for each of its cautions. */
    private static String locked(StepState now) {
        int read = now.step().cautions().size() - now.open().size();
        return read == 0 ? "locked" : "locked " + (read + 1);
    }

    /** What can go wrong with the first number of a step, once it is its turn. */
    private void slips(String step, StepState now) {
        Optional<Field.Number> asked = now.missing().stream()
                .findFirst()
                .flatMap(course::field)
                .filter(Field.Number.class::isInstance)
                .map(Field.Number.class::cast);
        asked.ifPresent(field -> {
            slip(step, "refused", new Moment.Typed(field.id(), "4.7 elephants"));
            course.expected(field.id())
                    .ifPresent(expected ->
                            slip(step, "out of range", new Moment.Typed(field.id(), outside(field, expected))));
        });
    }

    private void slip(String step, String state, Moment.Typed typed) {
        add(step, state, log.job(), desk -> desk.type(typed.field(), typed.text(), false), Optional.of(typed));
    }

    private static String outside(Field.Number field, Field.Expected expected) {
        boolean above = Double.isFinite(expected.high());
        double far = above
                ? Math.min(expected.high() * 1.2 + 0.05, (expected.high() + field.hardHigh()) / 2)
                : Math.max(expected.low() * 0.8, (expected.low() + field.hardLow()) / 2);
        Unit unit = field.unit();
        return unit == Unit.VOLT ? Display.volts(far) : Display.of(far, unit);
    }

    /** Each finished step after one it rests on was opened again. */
    private void stale() {
        for (StepState state : course.state().steps()) {
            state.step().restsOn().stream()
                    .sorted()
                    .filter(other -> course.state().step(other).status() == State.Status.DONE)
                    .findFirst()
                    .filter(other -> state.status() == State.Status.DONE)
                    .ifPresent(other -> add(state.step().id(), "stale", log.job(), desk -> {
                        desk.reopen(other, "read the wrong line");
                        desk.look(state.step().id());
                    }));
        }
    }

    private boolean add(String step, String state, Job job, Consumer<Desk> deed) {
        return add(step, state, job, deed, Optional.empty());
    }

    private boolean add(String step, String state, Job job, Consumer<Desk> deed, Optional<Moment.Typed> typed) {
        boolean fresh = seen.add(step + " " + state);
        if (fresh) {
            moments.add(new Moment(step, state, job, log.ticks(), log.now(), deed, typed));
        }
        return fresh;
    }
}
