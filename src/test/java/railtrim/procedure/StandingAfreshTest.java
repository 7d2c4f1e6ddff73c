package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.RandomBoards;
import railtrim.practice.Rehearsal;
import railtrim.quantity.Meter;

/** What is kept from fact to fact to be quick has to be what the whole job, read afresh, comes to. */
class StandingAfreshTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    /** Jobs of a hand that slips often: with readings done over, alarms, rework and breaks. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theStateKeptFromFactToFactIsTheStateOfTheWholeJob(long seed) {
        compare(played(seed), 1);
    }

    /** The same with answers taken back and given again, and the whole way asked for only now and then, as by a hand. */
    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7, 8})
    void soItIsWhereAnswersAreTakenBackAndTheWholeWayIsSeldomLookedAt(long seed) {
        Job job = withTakingBack(played(seed), Rehearsal.chance(seed));
        assertTrue(job.entries().stream().anyMatch(entry -> entry.fact() instanceof Fact.Withdrawn));
        compare(job, 7);
    }

    private static Job played(long seed) {
        List<Board> boards = new RandomBoards(
                        RegulatorFamilies.of(BuiltIn.text("regulators.json")).all(), Rehearsal.chance(seed))
                .draw(4);
        return new Rehearsal(PROCEDURE, Meter.middle(), 0.15)
                .play(boards.get((int) seed % 4), seed)
                .job();
    }

    /** One fact in twelve is taken back, and then comes again. */
    private static Job withTakingBack(Job job, RandomGenerator chance) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : job.entries()) {
            add(entries, entry, entry.fact());
            boolean possible = Withdrawals.last(Withdrawals.counting(new Job(job.name(), entries)))
                    .isPresent();
            if (possible && chance.nextInt(12) == 0) {
                add(entries, entry, new Fact.Withdrawn(entry.fact().step(), entries.size()));
                add(entries, entry, entry.fact());
            }
        }
        return new Job(job.name(), entries);
    }

    private static void add(List<Entry> entries, Entry at, Fact fact) {
        entries.add(new Entry(entries.size() + 1, at.time(), at.session(), at.tick(), fact));
    }

    /** @param every so many facts the state of every step is asked for */
    private static void compare(Job job, int every) {
        Recall kept = new Recall();
        for (int facts = 1; facts <= job.entries().size(); facts++) {
            Job part = new Job(job.name(), job.entries().subList(0, facts));
            State quick = PROCEDURE.state(part, kept);
            State afresh = PROCEDURE.state(part);
            String what = "after " + job.entries().get(facts - 1);
            assertEquals(look(afresh.current()), look(quick.current()), what);
            assertEquals(afresh.card(), quick.card(), what);
            assertEquals(afresh.power(), quick.power(), what);
            assertEquals(afresh.complete(), quick.complete(), what);
            assertEquals(told(afresh.figures()), told(quick.figures()), what);
            if (facts % every == 0) {
                assertEquals(looks(afresh), looks(quick), what);
            }
        }
    }

    private static List<Object> told(Figures figures) {
        return List.of(
                figures.trials(),
                figures.nextTarget(),
                figures.lastGood(),
                figures.failVoltage(),
                figures.budget(),
                figures.start(),
                figures.now(),
                figures.addedNow(),
                figures.trimmerInHand(),
                figures.agreement(),
                figures.circuit(),
                figures.lineCheck(),
                figures.legDoubt(),
                figures.resistors(),
                figures.fitted(),
                figures.descent().roundBase(),
                figures.descent().terminal(),
                figures.descent().lateFault());
    }

    private static List<List<Object>> looks(State state) {
        return state.steps().stream().map(StandingAfreshTest::look).toList();
    }

    private static List<Object> look(State.StepState each) {
        return List.of(each.step().id(), each.status(), each.open(), each.missing(), each.findings(), each.entries());
    }
}
