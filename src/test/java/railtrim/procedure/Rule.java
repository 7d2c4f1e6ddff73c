package railtrim.procedure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Status;

/**
 * Something that must hold in every state. Each is told from the bare facts as far as that goes, not from what the procedure makes of them, so that
 * a procedure that forgets a rule does not forget the check with it.
 *
 * @param check what is wrong, given the facts and the state worked out from them
 */
public record Rule(String name, BiFunction<Facts, State, Optional<String>> check) {
    static final String LEG_PROOF = "no power before the leg is proven";
    static final String WAY_DOWN = "no decrement below the floor, or after a fault without recovery";
    static final String HOLD = "no hold point passed without its fresh reading";
    static final String REASON = "no target below the budget without a reason in words";
    static final String COMPLETE = "no job complete with anything stale or skipped unseen";
    static final String RESUME = "no work taken up on a powered step, or before the rail is dead";
    static final String MAKE_SAFE = "make safe is left only by a dead rail";
    static final String DWELL = "no wait counted that was not kept";
    static final String CAUTIONS = "nothing taken before its cautions were read";
    static final String POWER = "nothing that needs the power off is asked before the rail reads dead";
    static final String TAKEN_BACK = "what happened is never taken back, and power taken back is proven off";
    static final String NO_DEAD_END = "wherever one stands, something is asked or said";

    /** The reading that has to come between any power before and switching on again. */
    private static final Map<String, String> GUARDS = Map.of(
            "ref.on", "clip.dead",
            "base.on", "leg.ohms",
            "first.on", "smooth.total",
            "down.on", "down.max",
            "set.on", "set.max",
            "cold", "cool.how",
            "fit.on", "fit.rail");

    /** After the iron, and before any power: the reading in ohms that shows what is across the leg now. */
    private static final Map<String, String> SEEN_IN_OHMS = Map.of(
            "ref.on", "clip.leg",
            "base.on", "leg.ohms",
            "first.on", "smooth.total",
            "down.on", "down.max",
            "set.on", "set.max",
            "cold", "set.max",
            "fit.on", "fit.total");

    private static final Set<String> IRON =
            Set.of("solder.dead", "solder.pair", "setting.trimmer", "fit.dead", "fit.pair", "fit.left");

    private static final List<Step> STEPS = HalfDone.PROCEDURE.steps();

    public static List<Rule> all() {
        return List.of(
                new Rule(LEG_PROOF, Rule::legProof),
                new Rule(WAY_DOWN, Rule::wayDown),
                new Rule(HOLD, Rule::hold),
                new Rule(REASON, Rule::reason),
                new Rule(COMPLETE, Rule::complete),
                new Rule(RESUME, Rule::resume),
                new Rule(MAKE_SAFE, Rule::makeSafe),
                new Rule(DWELL, Rule::dwell),
                new Rule(CAUTIONS, Rule::cautions),
                new Rule(POWER, Rule::power),
                new Rule(NO_DEAD_END, Rule::noDeadEnd),
                new Rule(TAKEN_BACK, Rule::takenBack));
    }

    public Optional<String> broken(Job job, State state) {
        return check.apply(new Facts(Withdrawals.counting(job), job), state);
    }

    /** The bare facts that count, and all that is on record. */
    public record Facts(Job job, Job whole) {
        /** Sequence of the last fact of a field, 0 for none. */
        long last(String field) {
            return entry(field).map(Entry::sequence).orElse(0L);
        }

        Optional<Entry> entry(String field) {
            List<Entry> entries = job.entries();
            for (int i = entries.size() - 1; i >= 0; i--) {
                if (Figures.fieldOf(entries.get(i).fact()).filter(field::equals).isPresent()) {
                    return Optional.of(entries.get(i));
                }
            }
            return Optional.empty();
        }

        OptionalDouble value(String field) {
            return entry(field)
                    .filter(entry -> entry.fact() instanceof Fact.Reading)
                    .map(entry -> OptionalDouble.of(((Fact.Reading) entry.fact()).value()))
                    .orElse(OptionalDouble.empty());
        }

        double ohms(String field) {
            return value(field).orElse(Double.NaN) - value("meter.zero").orElse(0);
        }

        String option(String field) {
            return entry(field)
                    .filter(entry -> entry.fact() instanceof Fact.Choice)
                    .map(entry -> ((Fact.Choice) entry.fact()).option())
                    .orElse("");
        }

        /** Sequence of the last fact of which this holds, 0 for none. */
        long lastOf(java.util.function.Predicate<Fact> is) {
            List<Entry> entries = job.entries();
            for (int i = entries.size() - 1; i >= 0; i--) {
                if (is.test(entries.get(i).fact())) {
                    return entries.get(i).sequence();
                }
            }
            return 0;
        }

        long reopened(String step) {
            return lastOf(
                    fact -> fact instanceof Fact.Reopened again && again.step().equals(step));
        }

        long switchedOn() {
            return lastOf(fact -> fact instanceof Fact.Power change && change.on());
        }

        long dead() {
            return lastOf(fact -> fact instanceof Fact.Reading reading
                    && RailFields.isDead(reading.field())
                    && Math.abs(reading.value()) <= 0.1);
        }

        /** The last break that was not a short one in one sitting. */
        long longBreak() {
            long at = 0;
            List<Entry> entries = job.entries();
            for (int i = 1; i < entries.size(); i++) {
                if (entries.get(i).fact() instanceof Fact.Resumed resumed) {
                    boolean closed =
                            entries.get(i - 1).session() != entries.get(i).session();
                    at = closed || resumed.gapSeconds() > 600 || resumed.gapSeconds() < 0
                            ? entries.get(i).sequence()
                            : at;
                }
            }
            return at;
        }
    }

    private static int index(String step) {
        for (int i = 0; i < STEPS.size(); i++) {
            if (STEPS.get(i).id().equals(step)) {
                return i;
            }
        }
        throw new AssertionError(step);
    }

    private static boolean asksForPower(State state) {
        State.StepState at = state.current();
        return !state.complete()
                && state.card().isEmpty()
                && at.step().power() == PowerNeed.TO_ON
                && at.missing().contains(at.step().id() + ".switch");
    }

    private static boolean near(double read, double expected, double part) {
        return Math.abs(read - expected) <= part * expected + 2;
    }

    private static double parallel(double one, double two) {
        return one * two / (one + two);
    }

    private static Optional<String> unless(boolean good, String wrong) {
        return good ? Optional.empty() : Optional.of(wrong);
    }

    /** Two-resistor sums worked here afresh, 6 % wide: parts do not drift more between two readings (common practice, no source). */
    private static Optional<String> legProof(Facts facts, State state) {
        if (!asksForPower(state)) {
            return Optional.empty();
        }
        String step = state.current().step().id();
        String guard = GUARDS.get(step);
        long since = Math.max(
                facts.longBreak(), facts.reopened(state.current().step().id()));
        boolean touched = Set.of("down.on", "set.on", "cold").contains(step);
        since = touched ? Math.max(since, facts.switchedOn()) : since;
        if (facts.last(guard) <= since) {
            return Optional.of(step + " without " + guard + " since " + since);
        }
        long iron = IRON.stream().mapToLong(facts::last).max().orElse(0);
        if (facts.last(SEEN_IN_OHMS.get(step)) < iron) {
            return Optional.of(step + " without " + SEEN_IN_OHMS.get(step) + " after the iron at " + iron);
        }
        boolean trimmer = Set.of("first.on", "down.on", "set.on", "cold").contains(step);
        if (trimmer) {
            double total = parallel(facts.ohms("leg.ohms"), facts.ohms("trimmer.max"));
            boolean proven = near(facts.ohms("proof.total"), total, 0.06)
                    && near(facts.ohms("smooth.total"), facts.ohms("proof.total"), 0.04)
                    && facts.last("proof.other") > facts.last("solder.pair")
                    && facts.last("proof.rail") > facts.last("solder.pair")
                    && facts.option("solder.pair").equals(facts.option("place.leg"))
                    && facts.option("smooth.feel").equals("falls-smoothly");
            return unless(proven, step + " with the trimmer not proven");
        }
        if (step.equals("fit.on")) {
            double total = parallel(facts.ohms("leg.ohms"), facts.ohms("hand.ohms"));
            boolean proven = near(facts.ohms("fit.total"), total, 0.06)
                    && facts.last("fit.total") > facts.last("fit.left")
                    && facts.option("fit.left").equals("resistor-only")
                    && facts.option("fit.pair").equals(facts.option("place.leg"));
            return unless(proven, step + " with the resistor not proven");
        }
        return unless(
                !step.equals("ref.on") || facts.option("clip.pair").equals(facts.option("place.pair")),
                "clips elsewhere");
    }

    private static Optional<String> wayDown(Facts facts, State state) {
        if (state.complete()
                || state.card().isPresent()
                || !state.current().step().id().equals("down.set")) {
            return Optional.empty();
        }
        double floor = facts.value("aim.lowest").orElse(Double.NaN);
        double target = state.figures().nextTarget().orElse(Double.NaN);
        if (!(target >= floor - 1e-9)) {
            return Optional.of("target " + target + " below the floor " + floor);
        }
        long fault = facts.lastOf(fact -> fact instanceof Fact.Choice choice
                && (choice.field().equals("down.seen") || choice.field().equals("first.seen"))
                && Descent.FAULTS.contains(choice.option()));
        // Back at its maximum by ohms: on the way down, or where the joint is proven anew.
        long back = Math.max(facts.last("down.max"), facts.last("smooth.total"));
        boolean recovered = facts.dead() > fault && back > fault && facts.switchedOn() > back;
        return unless(fault == 0 || recovered, "a decrement after a fault without recovery");
    }

    private static Optional<String> hold(Facts facts, State state) {
        int current =
                state.complete() ? STEPS.size() : index(state.current().step().id());
        for (int i = 0; i < current; i++) {
            Step step = STEPS.get(i);
            if (!step.hold()
                    || state.steps().stream()
                            .anyMatch(
                                    each -> each.step().id().equals(step.id()) && each.status() == Status.NOT_NEEDED)) {
                continue;
            }
            long reopened = facts.reopened(step.id());
            for (Field field : step.fields()) {
                boolean asked =
                        field instanceof Field.Number number && number.asked().test(state.figures());
                if (asked && facts.last(field.id()) <= reopened) {
                    return Optional.of(step.id() + " passed without " + field.id());
                }
                boolean deadRail = asked && RailFields.isDead(field.id());
                if (deadRail && Math.abs(facts.value(field.id()).orElseThrow()) > 0.1) {
                    return Optional.of(step.id() + " passed with a live rail");
                }
                if (asked
                        && field instanceof Field.Number number
                        && number.again().isPresent()
                        && !near(
                                facts.ohms(field.id()),
                                facts.ohms(number.again().get()),
                                0.04)) {
                    return Optional.of(step.id() + " passed with two readings that differ");
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> reason(Facts facts, State state) {
        boolean past = state.complete() || index(state.current().step().id()) > index("budget");
        OptionalDouble target = facts.value("target.volts");
        if (!past
                || target.isEmpty()
                || state.figures().budget().isEmpty()
                || facts.last("target.volts") < facts.reopened("budget")) {
            return Optional.empty();
        }
        boolean below = target.getAsDouble() < state.figures().budget().get().recommended() - 1e-6;
        return unless(
                !below || facts.last("target.reason") > facts.reopened("budget"),
                "target " + target + " without a reason");
    }

    private static Optional<String> complete(Facts facts, State state) {
        if (!state.complete()) {
            return Optional.empty();
        }
        for (State.StepState step : state.steps()) {
            boolean open = step.status() == Status.STALE || step.status() == Status.LOCKED;
            if (open || step.status() != Status.NOT_NEEDED && !step.missing().isEmpty()) {
                return Optional.of("complete with " + step.step().id() + " " + step.status());
            }
            boolean leftOut = facts.lastOf(fact -> fact instanceof Fact.Skipped
                            && fact.step().equals(step.step().id()))
                    > facts.last(step.step().id());
            boolean answered = step.entries().size() > 0;
            if (leftOut && !answered && step.status() == Status.DONE) {
                return Optional.of("complete with " + step.step().id() + " left out unseen");
            }
            if (step.status() == Status.SKIPPED && !step.step().skippable()) {
                return Optional.of("complete with " + step.step().id() + " left out");
            }
        }
        for (Step step : STEPS) {
            long reopened = facts.reopened(step.id());
            long answered = facts.lastOf(fact -> fact.step().equals(step.id())
                    && (Figures.fieldOf(fact).isPresent() || fact instanceof Fact.Skipped));
            boolean deadSince = step.power() == PowerNeed.TO_OFF && facts.dead() > reopened;
            if (reopened > answered && !deadSince) {
                return Optional.of("complete with " + step.id() + " reopened and not done");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> resume(Facts facts, State state) {
        long resumed = facts.lastOf(Fact.Resumed.class::isInstance);
        boolean touched = facts.job().entries().stream()
                .anyMatch(entry -> entry.sequence() < resumed
                        && entry.fact() instanceof Fact.Reading reading
                        && RailFields.isRail(reading.field()));
        if (resumed == 0 || !touched || state.complete() || state.card().isPresent() || facts.switchedOn() > resumed) {
            return Optional.empty();
        }
        State.StepState at = state.current();
        boolean off = at.step().power() == PowerNeed.OFF
                || asksForPower(state)
                || at.step().power() == PowerNeed.TO_OFF;
        if (!off) {
            return Optional.of("taken up at " + at.step().id());
        }
        return unless(facts.dead() > resumed, "taken up with the rail not proven dead");
    }

    private static Optional<String> makeSafe(Facts facts, State state) {
        long alarm = facts.lastOf(Fact.Alarm.class::isInstance);
        long dead = facts.lastOf(fact -> fact instanceof Fact.Reading reading
                && reading.field().equals("safe.rail")
                && Math.abs(reading.value()) <= 0.1);
        return unless(
                alarm <= dead
                        || state.card().filter(Card.MakeSafe.class::isInstance).isPresent(),
                "an alarm is open and " + state.card());
    }

    private static Optional<String> dwell(Facts facts, State state) {
        for (Step step : STEPS) {
            if (step.dwellSeconds() == 0) {
                continue;
            }
            Optional<State.StepState> standing = state.steps().stream()
                    .filter(each -> each.step().id().equals(step.id()))
                    .findFirst();
            for (Entry entry : standing.map(State.StepState::entries).orElse(List.of())) {
                boolean well = entry.fact() instanceof Fact.Choice choice
                        && (choice.option().equals("well") || choice.option().equals("room-temperature"));
                if (well && waited(facts.job(), entry) < step.dwellSeconds()) {
                    return Optional.of(step.id() + " counted after " + waited(facts.job(), entry) + " s");
                }
            }
        }
        return Optional.empty();
    }

    /** Seconds since the last fact of another step, in the same session. */
    private static long waited(Job job, Entry answer) {
        long since = 0;
        for (Entry entry : job.entries()) {
            boolean before = entry.sequence() < answer.sequence() && entry.session() == answer.session();
            since = before && !entry.fact().step().equals(answer.fact().step()) ? entry.tick() : since;
        }
        return (answer.tick() - since) / 1000;
    }

    private static Optional<String> cautions(Facts facts, State state) {
        for (State.StepState standing : state.steps()) {
            boolean counts =
                    standing.status() == Status.DONE && !standing.entries().isEmpty();
            for (String caution :
                    counts ? STEPS.get(index(standing.step().id())).cautions() : List.<String>of()) {
                if (facts.lastOf(fact -> fact.equals(
                                new Fact.Acknowledged(standing.step().id(), caution)))
                        == 0) {
                    return Optional.of(standing.step().id() + " done without " + caution);
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> power(Facts facts, State state) {
        boolean on = facts.switchedOn() > facts.dead();
        if (!on || state.card().isPresent()) {
            return Optional.empty();
        }
        if (state.complete()) {
            return Optional.of("complete with a rail that nobody read dead");
        }
        State.StepState at = state.current();
        PowerNeed needs = STEPS.get(index(at.step().id())).power();
        boolean fits =
                needs.startsOn() || needs == PowerNeed.TO_ON && !at.entries().isEmpty();
        return unless(fits, at.step().id() + " with the power on");
    }

    private static Optional<String> takenBack(Facts facts, State state) {
        Set<Long> taken = facts.whole().entries().stream()
                .filter(state::takenBack)
                .map(Entry::sequence)
                .collect(Collectors.toSet());
        for (Entry entry : facts.whole().entries()) {
            boolean stays = entry.fact() instanceof Fact.Alarm
                    || entry.fact() instanceof Fact.Resumed
                    || entry.fact() instanceof Fact.Paused
                    || entry.fact() instanceof Fact.Reopened;
            if (stays && taken.contains(entry.sequence())) {
                return Optional.of(entry.fact() + " was taken back");
            }
        }
        long power = facts.whole().entries().stream()
                .filter(entry -> entry.fact() instanceof Fact.Power && taken.contains(entry.sequence()))
                .mapToLong(Entry::sequence)
                .max()
                .orElse(0);
        boolean dead = facts.whole().entries().stream()
                .anyMatch(entry -> entry.sequence() > power
                        && !taken.contains(entry.sequence())
                        && entry.fact() instanceof Fact.Reading reading
                        && reading.field().equals("safe.rail")
                        && Math.abs(reading.value()) <= 0.1);
        return unless(
                power == 0
                        || dead
                        || state.card().filter(Card.MakeSafe.class::isInstance).isPresent(),
                "power was taken back, and " + state.card());
    }

    private static Optional<String> noDeadEnd(Facts facts, State state) {
        State.StepState at = state.current();
        boolean unanswerable = at.step().fields().stream()
                .filter(field -> at.missing().contains(field.id()))
                .anyMatch(field -> field instanceof Field.Choice choice
                        && choice.options().apply(state.figures()).isEmpty()
                        && at.findings().stream().noneMatch(Step.Finding::blocks));
        if (unanswerable && state.card().isEmpty() && at.open().isEmpty()) {
            return Optional.of("a question without an answer at " + at.step().id());
        }
        boolean something = state.complete()
                || state.card().isPresent()
                || !at.open().isEmpty()
                || !at.missing().isEmpty()
                || at.findings().stream().anyMatch(Step.Finding::blocks);
        return unless(something, "nothing is asked at " + at.step().id());
    }
}
