package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;

/**
 * Every state that can be reached with so many detours from the good way, and what must hold in each of them. Each rule is then broken on purpose,
 * by other steps or by hiding facts from the procedure, and the exploration has to find it.
 */
class ExplorationTest {
    private static final GoodAnswers GOOD = GoodAnswers.ofAWholeJob();
    private static final Job WHOLE = new Explorer(HalfDone.PROCEDURE, List.of(), GOOD)
            .from(Job.empty("explored"), 0, "")
            .last();

    @Test
    void theGoodWayLeadsToTheEnd() {
        assertTrue(HalfDone.PROCEDURE.state(WHOLE).complete());
    }

    @Test
    void noRuleIsBrokenOneDetourFromTheGoodWay() {
        explore(1, 3000);
    }

    @Test
    @Tag("long")
    void noRuleIsBrokenTwoDetoursFromTheGoodWay() {
        explore(2, 30_000);
    }

    private static void explore(int detours, int atLeast) {
        Explorer explorer = new Explorer(HalfDone.PROCEDURE, Rule.all(), GOOD).from(Job.empty("explored"), detours, "");
        System.out.println("procedure explored, at most " + detours + " detour(s): " + explorer.states() + " states, "
                + explorer.moves() + " moves, " + Rule.all().size() + " rules, broken: " + explorer.broken());
        assertTrue(explorer.exhausted());
        assertEquals(Map.of(), explorer.broken());
        assertTrue(explorer.states() > atLeast, explorer.states() + " states");
    }

    // ---- broken on purpose ----

    static Stream<Arguments> breaches() {
        return Stream.of(
                Arguments.of(
                        "the resistance proofs are gone",
                        Rule.LEG_PROOF,
                        "solder",
                        without("proof", "smooth"),
                        SEES_ALL),
                Arguments.of(
                        "any leg will do",
                        Rule.LEG_PROOF,
                        "solder",
                        changed("solder", step -> unchecked(step)),
                        SEES_ALL),
                Arguments.of("the trimmer is not proven back", Rule.LEG_PROOF, "set.on", without("set.back"), SEES_ALL),
                Arguments.of("the resistor is not proven", Rule.LEG_PROOF, "fit", without("fit.proof"), SEES_ALL),
                Arguments.of("the floor is lost", Rule.WAY_DOWN, "down.set", same(), LOWER_FLOOR),
                Arguments.of("a fault is taken for well", Rule.WAY_DOWN, "down.set", same(), NO_FAULTS),
                Arguments.of(
                        "the iron needs no dead rail", Rule.HOLD, "solder", field("solder", "solder.dead"), SEES_ALL),
                Arguments.of(
                        "no second reading of the setting",
                        Rule.HOLD,
                        "setting",
                        field("setting", "setting.again"),
                        SEES_ALL),
                Arguments.of(
                        "a hold point may be left out",
                        Rule.HOLD,
                        "ends",
                        changed("ends", step -> step.with(true, step.cautions(), step.fields(), 0)),
                        SEES_ALL),
                Arguments.of("going back is not seen", Rule.HOLD, "first.on", same(), blindTo(Fact.Reopened.class)),
                Arguments.of("no reason is asked", Rule.REASON, "budget", field("budget", "target.reason"), SEES_ALL),
                Arguments.of(
                        "going back at the end is not seen",
                        Rule.COMPLETE,
                        "record",
                        same(),
                        blindTo(Fact.Reopened.class)),
                Arguments.of("a break is not seen", Rule.RESUME, "soak", same(), blindTo(Fact.Resumed.class)),
                Arguments.of("make safe is not seen", Rule.MAKE_SAFE, "soak", same(), blindTo(Fact.Alarm.class)),
                Arguments.of(
                        "nobody waits",
                        Rule.DWELL,
                        "soak",
                        changed("soak", step -> step.with(false, step.cautions(), step.fields(), 0)),
                        SEES_ALL),
                Arguments.of(
                        "cautions are gone",
                        Rule.CAUTIONS,
                        "solder",
                        changed("solder", step -> step.with(false, List.of(), step.fields(), 0)),
                        SEES_ALL),
                Arguments.of("the board is left on", Rule.POWER, "base.off", leftOn(), SEES_ALL),
                Arguments.of(
                        "power taken back is as if never said", Rule.TAKEN_BACK, "first.on", same(), POWER_FORGOTTEN),
                Arguments.of("a dead end", Rule.NO_DEAD_END, "aim", changed("aim", step -> blocked(step)), SEES_ALL));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("breaches")
    void aRuleBrokenOnPurposeIsFound(
            String what, String rule, String from, UnaryOperator<List<Step>> steps, UnaryOperator<Job> sight) {
        Procedure broken = HalfDone.PROCEDURE.altered(steps, sight);
        Explorer explorer = new Explorer(broken, Rule.all(), GOOD).from(upTo(from), 1, rule);
        assertTrue(explorer.broken().containsKey(rule), what + ": found only " + explorer.broken());
        Explorer sound = new Explorer(HalfDone.PROCEDURE, Rule.all(), GOOD).from(upTo(from), 0, rule);
        assertEquals(Map.of(), sound.broken(), "the sound procedure from the same place");
    }

    /** The good way up to the first fact of a step. */
    private static Job upTo(String step) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : WHOLE.entries()) {
            if (entry.fact().step().equals(step)) {
                break;
            }
            entries.add(entry);
        }
        return new Job("up to " + step, entries);
    }

    private static final UnaryOperator<Job> SEES_ALL = job -> job;

    private static final UnaryOperator<Job> LOWER_FLOOR = rewriting(fact -> fact instanceof Fact.Reading reading
                    && reading.field().equals("aim.lowest")
            ? new Fact.Reading(reading.step(), reading.field(), reading.value() - 0.5, reading.unit(), reading.typed())
            : fact);

    private static final UnaryOperator<Job> NO_FAULTS = rewriting(
            fact -> fact instanceof Fact.Choice choice && choice.field().equals("down.seen")
                    ? new Fact.Choice(choice.step(), choice.field(), "well")
                    : fact instanceof Fact.Alarm ? new Fact.Acknowledged(fact.step(), "none") : fact);

    /** A switch that was taken back leaves no trace at all. */
    private static final UnaryOperator<Job> POWER_FORGOTTEN = job -> {
        Set<Long> gone = job.entries().stream()
                .filter(entry -> entry.fact() instanceof Fact.Withdrawn)
                .map(entry -> ((Fact.Withdrawn) entry.fact()).entry())
                .filter(target -> job.entries().stream()
                        .anyMatch(entry -> entry.sequence() == target && entry.fact() instanceof Fact.Power))
                .collect(Collectors.toSet());
        return new Job(
                job.name(),
                job.entries().stream()
                        .filter(entry -> !gone.contains(entry.sequence()))
                        .filter(entry ->
                                !(entry.fact() instanceof Fact.Withdrawn withdrawn && gone.contains(withdrawn.entry())))
                        .toList());
    };

    private static UnaryOperator<Job> rewriting(UnaryOperator<Fact> change) {
        return job -> new Job(
                job.name(),
                job.entries().stream()
                        .map(entry -> new Entry(
                                entry.sequence(),
                                entry.time(),
                                entry.session(),
                                entry.tick(),
                                change.apply(entry.fact())))
                        .toList());
    }

    private static UnaryOperator<Job> blindTo(Class<? extends Fact> kind) {
        return job -> new Job(
                job.name(),
                job.entries().stream()
                        .filter(entry -> !kind.isInstance(entry.fact()))
                        .toList());
    }

    private static UnaryOperator<List<Step>> same() {
        return steps -> steps;
    }

    private static UnaryOperator<List<Step>> without(String... ids) {
        return steps ->
                steps.stream().filter(step -> !List.of(ids).contains(step.id())).toList();
    }

    /** Nobody switches off, and ohms are read on the live board. */
    private static UnaryOperator<List<Step>> leftOn() {
        UnaryOperator<List<Step>> ohmsWhileOn = changed(
                "agree",
                step -> Build.step(step.phase(), step.id(), PowerNeed.ON)
                        .again("leg.again", "leg.ohms", 0.02)
                        .done());
        return steps -> ohmsWhileOn.apply(without("base.off").apply(steps));
    }

    private static UnaryOperator<List<Step>> field(String step, String field) {
        return changed(
                step,
                each -> each.with(each.fields().stream()
                        .filter(one -> !one.id().equals(field))
                        .toList()));
    }

    private static UnaryOperator<List<Step>> changed(String id, Function<Step, Step> change) {
        return steps -> steps.stream()
                .map(step -> step.id().equals(id) ? change.apply(step) : step)
                .collect(Collectors.toList());
    }

    private static Step unchecked(Step step) {
        return Build.step(step.phase(), step.id(), step.power())
                .hold()
                .dead("solder.dead")
                .choice("solder.pair", figures -> Choices.pairs("out-adjust", "adjust-ground"))
                .cautions(step.cautions().toArray(String[]::new))
                .done();
    }

    /** A question with no answer to pick. */
    private static Step blocked(Step step) {
        return Build.step(step.phase(), step.id(), step.power())
                .choice("aim.drop", figures -> List.of())
                .done();
    }
}
