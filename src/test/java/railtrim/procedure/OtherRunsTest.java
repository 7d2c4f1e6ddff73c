package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.Trial;

/** What a further run covers counts in the margin: how long each voltage was held, and with which program. */
class OtherRunsTest {
    private final HalfDone job = HalfDone.upTo("fault.next");

    private static MarginBudget.Line load(HalfDone job) {
        return job.course.state().figures().budget().orElseThrow().lines().stream()
                .filter(line -> line.id().equals("load"))
                .findFirst()
                .orElseThrow();
    }

    private void runWithAnotherProgram(String name) {
        job.course.choose("fault.again", "load");
        job.workTo("down.load");
        job.course.type("run.load", name, false);
    }

    /** The wait of the step is a minute: a voltage that was good was held that long by the record, and not much longer by this hand. */
    @Test
    void eachVoltageIsRecordedWithTheTimeItWasHeld() {
        List<Trial> trials = job.course.state().figures().trials();
        assertTrue(trials.size() > 3);
        for (Trial trial : trials) {
            assertTrue(trial.fault() || trial.dwell() >= 60, trial.toString());
            assertTrue(trial.dwell() <= 600, trial.toString());
        }
    }

    @Test
    void aRunWithAnotherProgramAsksForItsNameOnceTheBoardIsOn() {
        runWithAnotherProgram("memory test");
        assertEquals("down.set", job.current());
        job.workTo("fault.next");
        List<Trial> second = job.course.state().figures().trials().stream()
                .filter(trial -> trial.run() == 2)
                .toList();
        assertFalse(second.isEmpty());
        second.forEach(trial -> assertEquals("memory test", trial.load()));
    }

    /** The allowance is 1 % of stock, our own choice; once a second load has failed, the worst run counts instead. */
    @Test
    void theAllowanceForALoadNotTriedBecomesAMeasuredLine() {
        MarginBudget.Line before = load(job);
        assertFalse(before.measured());
        assertEquals(0.01 * job.course.state().figures().stock().orElseThrow(), before.volts(), 1e-12);
        runWithAnotherProgram("memory test");
        assertFalse(load(job).measured(), "a name alone shows nothing");
        job.workTo("fault.next");
        assertTrue(load(job).measured());
        assertEquals(0, load(job).volts());
    }

    @Test
    void theProgramOfTheFirstRunIsNoOtherOne() {
        String first = job.course.state().figures().text("load.name").orElseThrow();
        runWithAnotherProgram(" " + first.toUpperCase(java.util.Locale.ROOT) + " ");
        assertEquals("down.load", job.current());
        job.course.type("run.load", "memory test", false);
        assertEquals("down.set", job.current());
    }

    @Test
    void afterItAnotherRunIsWithTheFirstProgramAgain() {
        runWithAnotherProgram("memory test");
        job.workTo("fault.next");
        job.course.choose("fault.again", "hot");
        job.workTo("fault.next");
        List<Trial> trials = job.course.state().figures().trials();
        assertEquals(3, trials.get(trials.size() - 1).run());
        assertEquals(
                job.course.state().figures().text("load.name").orElseThrow(),
                trials.get(trials.size() - 1).load());
    }
}
