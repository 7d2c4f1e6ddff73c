package railtrim.practice;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Log;
import railtrim.job.MemoryLog;
import railtrim.parts.Series;
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

    /** Sets the luck of the hand's slips apart from the bench's own, so that a board is the same with and without them. */
    private static final long SLIPS_LUCK = 0x5115;

    private final Procedure procedure;
    private final Meter meter;
    private final double slips;
    private final Words words = Words.english();

    public Rehearsal(Procedure procedure, Meter meter) {
        this(procedure, meter, 0);
    }

    /** @param slips chance of a slip in a step, 0 to 1 */
    public Rehearsal(Procedure procedure, Meter meter, double slips) {
        this.procedure = procedure;
        this.meter = meter;
        this.slips = slips;
    }

    /** One board, with the job kept in memory. The same board and seed give the same outcome. */
    public Outcome play(Board board, long seed) {
        return play(board, seed, time -> new MemoryLog(board.label().name(), time));
    }

    public Outcome play(Board board, long seed, Logs logs) {
        Bench bench = new Bench(board, meter, chance(seed));
        Log log = logs.begin(bench);
        Course course = new Course(procedure, log);
        Worker worker = worker(new Workpiece(bench), seed);
        List<Message> objections = List.of();
        for (int i = 0; i < MOST_ANSWERS; i++) {
            State state = course.state();
            Answer answer = worker.next(state, course);
            if (answer instanceof Answer.Done) {
                return judge(bench, seed, state, ending(state), stopReason(state), worker.slips());
            }
            if (answer instanceof Answer.Stuck stuck) {
                String why = stuck.why() + heard(objections);
                return judge(bench, seed, state, Outcome.Ending.STUCK, why, worker.slips());
            }
            if (answer instanceof Answer.WentHome) {
                log = logs.again(log, bench, gap(state.job(), bench));
                course = new Course(procedure, log);
                worker.hear(answer, new Verdict.Refuse(List.of()), course.state());
                continue;
            }
            Verdict verdict = offer(answer, course);
            objections = objections(verdict);
            worker.hear(answer, verdict, course.state());
        }
        String circles = "too many answers; it goes round in circles" + heard(objections);
        return judge(bench, seed, course.state(), Outcome.Ending.STUCK, circles, worker.slips());
    }

    private Worker worker(Workpiece piece, long seed) {
        Hand hand = new Hand(piece);
        return slips > 0 ? new Slips(hand, piece, chance(seed ^ SLIPS_LUCK), slips) : hand;
    }

    private static long gap(Job job, Bench bench) {
        List<Entry> entries = job.entries();
        return entries.isEmpty()
                ? 0
                : Duration.between(entries.get(entries.size() - 1).time(), bench.now())
                        .toSeconds();
    }

    /** The generator behind a seed; always the same algorithm, so that a seed means the same everywhere. */
    public static RandomGenerator chance(long seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }

    /** Offers an answer as a person at the screen would. @throws IllegalArgumentException for what is no offer, as when the hand is stuck */
    public static Verdict offer(Answer answer, Course course) {
        if (answer instanceof Answer.Typed typed) {
            return course.type(typed.field(), typed.text(), typed.sure());
        }
        if (answer instanceof Answer.Picked picked) {
            return course.choose(picked.field(), picked.option());
        }
        if (answer instanceof Answer.Acknowledged acknowledged) {
            return course.acknowledge(acknowledged.caution());
        }
        if (answer instanceof Answer.Switched switched) {
            return course.turn(switched.field());
        }
        if (answer instanceof Answer.Alarmed alarmed) {
            return course.alarm(alarmed.reason());
        }
        if (answer instanceof Answer.Reopened reopened) {
            return course.reopen(reopened.step(), reopened.reason());
        }
        throw new IllegalArgumentException("nothing to offer: " + answer);
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

    private static Outcome judge(
            Bench bench, long seed, State state, Outcome.Ending ending, String reason, List<SlipMade> slips) {
        Board board = bench.board();
        boolean finished = ending == Outcome.Ending.FINISHED;
        Optional<String> pick = finished ? state.figures().choice("res.pick") : Optional.empty();
        double tolerance =
                state.figures().choice("res.tolerance").map(Double::valueOf).orElse(0.0) / 100;
        Optional<ResistorSkills.Combination> chosen = pick.map(ResistorSkills.Combination::of);
        OptionalDouble lowest = corner(chosen, part -> board.loadedWithAdded(part.ohms(-tolerance)));
        OptionalDouble highest = corner(chosen, part -> board.withAdded(part.ohms(tolerance)));
        OptionalDouble fitted = finished ? OptionalDouble.of(bench.trueUnderLoad()) : OptionalDouble.empty();
        Worth.Figure worth = fitted.isPresent()
                ? Worth.of(
                        board,
                        state.figures().target().orElse(fitted.getAsDouble()),
                        fitted.getAsDouble(),
                        Series.valueOf(state.figures().choice("res.series").orElse("E24")),
                        tolerance,
                        Integer.parseInt(state.figures().choice("res.most").orElse("1")))
                : Worth.Figure.NONE;
        double least = Math.min(lowest.orElse(Double.POSITIVE_INFINITY), fitted.orElse(Double.POSITIVE_INFINITY));
        return new Outcome(
                board.label().name(),
                board.divider().place().id(),
                seed,
                ending,
                reason,
                board.stock(),
                board.worstFail(),
                state.figures().target(),
                fitted,
                lowest,
                highest,
                bench.highestSeen(),
                bench.mishaps().contains(Bench.Mishap.ABOVE_STOCK) || highest.orElse(0) > board.stock(),
                least <= board.worstFail(),
                worth.expert(),
                worth.share(),
                worth.margin(),
                worth.resistor(),
                effort(state.job(), bench),
                bench.mishaps(),
                slips,
                pick.orElse(""),
                state.job());
    }

    private static Outcome.Effort effort(Job job, Bench bench) {
        int readings = 0;
        int runs = 1;
        for (Entry entry : job.entries()) {
            if (entry.fact() instanceof Fact.Reading) {
                readings++;
            } else if (entry.fact() instanceof Fact.Choice choice
                    && choice.field().equals("fault.again")
                    && !choice.option().equals("enough")) {
                runs++;
            }
        }
        return new Outcome.Effort(readings, runs, (int) (bench.ticks() / 60_000));
    }

    private static OptionalDouble corner(
            Optional<ResistorSkills.Combination> chosen, Function<ResistorSkills.Combination, Double> volts) {
        return chosen.map(part -> OptionalDouble.of(volts.apply(part))).orElse(OptionalDouble.empty());
    }
}
