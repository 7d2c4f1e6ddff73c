package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;
import railtrim.job.Log;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Verdict;
import railtrim.procedure.Words;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;

/** Plays a hand through the whole job on practice boards, and judges the end by what only the board knows. */
public final class Rehearsal {
    /** Far more answers than the longest honest job has; beyond this something goes round in circles. */
    private static final int MOST_ANSWERS = 3000;

    private final Procedure procedure;
    private final Meter meter;
    private final Words words = Words.english();

    public Rehearsal(Procedure procedure, Meter meter) {
        this.procedure = procedure;
        this.meter = meter;
    }

    /** One board, with the job kept in memory. The same board and seed give the same outcome. */
    public Outcome play(Board board, long seed) {
        return play(board, seed, time -> new MemoryLog(board.label().name(), time));
    }

    /** Board by board, with seeds that follow on from the first. */
    public Tally playAll(List<Board> boards, long seed) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < boards.size(); i++) {
            outcomes.add(play(boards.get(i), seed + i));
        }
        return new Tally(outcomes);
    }

    /** @param logs makes the log for the job, given the bench's clock */
    public Outcome play(Board board, long seed, Function<Time, Log> logs) {
        Bench bench = new Bench(board, meter, chance(seed));
        Course course = new Course(procedure, logs.apply(bench));
        Hand hand = new Hand(bench);
        List<Message> objections = List.of();
        for (int i = 0; i < MOST_ANSWERS; i++) {
            State state = course.state();
            Answer answer = hand.next(state, course);
            if (answer instanceof Answer.Done) {
                return judge(bench, seed, state, ending(state), stopReason(state));
            }
            if (answer instanceof Answer.Stuck stuck) {
                return judge(bench, seed, state, Outcome.Ending.STUCK, stuck.why() + heard(objections));
            }
            objections = offer(answer, course);
        }
        return judge(bench, seed, course.state(), Outcome.Ending.STUCK, "too many answers; it goes round in circles");
    }

    /** The generator behind a seed; always the same algorithm, so that a seed means the same everywhere. */
    public static RandomGenerator chance(long seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** Offers an answer as a person at the screen would; says what came back, as far as it was not a plain yes. */
    private List<Message> offer(Answer answer, Course course) {
        if (answer instanceof Answer.Typed typed) {
            return objections(course.type(typed.field(), typed.text(), typed.sure()));
        }
        if (answer instanceof Answer.Picked picked) {
            return objections(course.choose(picked.field(), picked.option()));
        }
        if (answer instanceof Answer.Acknowledged acknowledged) {
            return objections(course.acknowledge(acknowledged.caution()));
        }
        if (answer instanceof Answer.Switched switched) {
            return objections(course.turn(switched.field()));
        }
        if (answer instanceof Answer.Alarmed alarmed) {
            return objections(course.alarm(alarmed.reason()));
        }
        if (answer instanceof Answer.Reopened reopened) {
            return objections(course.reopen(reopened.step(), reopened.reason()));
        }
        return List.of();
    }

    private static List<Message> objections(Verdict verdict) {
        if (verdict instanceof Verdict.AskAgain again) {
            return again.says();
        }
        return verdict instanceof Verdict.Refuse refuse ? refuse.says() : List.of();
    }

    private String heard(List<Message> objections) {
        return objections.stream().map(message -> "; " + spoken(message)).collect(Collectors.joining());
    }

    private String spoken(Message message) {
        return words.has(message.key()) ? words.of(message) : message.key() + message.values();
    }

    private static Outcome.Ending ending(State state) {
        return state.complete() ? Outcome.Ending.FINISHED : Outcome.Ending.STOPPED;
    }

    private String stopReason(State state) {
        if (state.card().isPresent() && state.card().get() instanceof State.Card.Stop stop) {
            return spoken(stop.reason());
        }
        return "";
    }

    private static Outcome judge(Bench bench, long seed, State state, Outcome.Ending ending, String reason) {
        Board board = bench.board();
        Optional<String> pick =
                ending == Outcome.Ending.FINISHED ? state.figures().choice("res.pick") : Optional.empty();
        double tolerance =
                state.figures().choice("res.tolerance").map(Double::valueOf).orElse(0.0) / 100;
        Optional<ResistorSkills.Combination> chosen = pick.map(ResistorSkills.Combination::of);
        OptionalDouble lowest = corner(chosen, part -> board.loadedWithAdded(part.ohms(-tolerance)));
        OptionalDouble highest = corner(chosen, part -> board.withAdded(part.ohms(tolerance)));
        boolean finished = ending == Outcome.Ending.FINISHED;
        return new Outcome(
                board.label().name(),
                board.divider().place().id(),
                seed,
                ending,
                reason,
                board.stock(),
                board.failing().worst(),
                state.figures().target(),
                finished ? OptionalDouble.of(bench.trueUnderLoad()) : OptionalDouble.empty(),
                lowest,
                highest,
                bench.highestSeen(),
                bench.mishaps().contains(Bench.Mishap.ABOVE_STOCK) || highest.orElse(0) > board.stock(),
                lowest.orElse(Double.POSITIVE_INFINITY) < board.failing().worst(),
                bench.mishaps(),
                0,
                0,
                pick.orElse(""),
                state.job());
    }

    private static OptionalDouble corner(
            Optional<ResistorSkills.Combination> chosen, Function<ResistorSkills.Combination, Double> volts) {
        return chosen.map(part -> OptionalDouble.of(volts.apply(part))).orElse(OptionalDouble.empty());
    }
}
