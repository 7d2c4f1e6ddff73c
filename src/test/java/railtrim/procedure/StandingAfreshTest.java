package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
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
        List<Board> boards = new RandomBoards(
                        RegulatorFamilies.of(BuiltIn.text("regulators.json")).all(), Rehearsal.chance(seed))
                .draw(4);
        Job job = new Rehearsal(PROCEDURE, Meter.middle(), 0.15)
                .play(boards.get((int) seed % 4), seed)
                .job();
        Recall kept = new Recall();
        for (int facts = 1; facts <= job.entries().size(); facts++) {
            Job part = new Job(job.name(), job.entries().subList(0, facts));
            State quick = PROCEDURE.state(part, kept);
            State afresh = PROCEDURE.state(part);
            String what = "after " + job.entries().get(facts - 1);
            assertEquals(looks(afresh), looks(quick), what);
            assertEquals(afresh.card(), quick.card(), what);
            assertEquals(afresh.power(), quick.power(), what);
            assertEquals(afresh.current().step().id(), quick.current().step().id(), what);
        }
    }

    private static List<List<Object>> looks(State state) {
        return state.steps().stream()
                .map(each -> List.<Object>of(
                        each.step().id(), each.status(), each.open(), each.missing(), each.findings(), each.entries()))
                .toList();
    }
}
