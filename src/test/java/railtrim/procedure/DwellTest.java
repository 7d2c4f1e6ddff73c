package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;

/** A wait counts only where the record shows it, from its beginning to its end in one sitting. The lengths are this program's choices. */
class DwellTest {
    private static final Words WORDS = Words.english();

    @Test
    void aJobInWhichTheSoakWasCutShortByAnEditorDoesNotCountTheSoak() {
        HalfDone job = HalfDone.upTo("set.off");
        assertEquals(
                "set.off",
                HalfDone.PROCEDURE.state(job.log.job()).current().step().id());
        State forged = HalfDone.PROCEDURE.state(shortened(job.log.job(), "soak", 1790));
        assertTrue(forged.step("soak").missing().contains("soak.seen"), "ten seconds are missing");
        assertEquals("dwell.too-soon", finding(forged.step("soak")).key());
    }

    @Test
    void aSoakThatBeganBeforeTheProgramWasClosedDoesNotCount() {
        HalfDone job = HalfDone.upTo("soak");
        List<Entry> entries = new ArrayList<>(job.log.job().entries());
        Entry last = entries.get(entries.size() - 1);
        // Half an hour by the wall clock, but the session is a new one: nobody watched in between.
        entries.add(new Entry(
                last.sequence() + 1,
                last.time().plusSeconds(1800),
                last.session() + 1,
                1000,
                new Fact.Choice("soak", "soak.seen", "well")));
        State state = HalfDone.PROCEDURE.state(new Job("x", entries));
        assertTrue(state.step("soak").missing().contains("soak.seen"));
    }

    @Test
    void afterABreakItIsSaidHowMuchOfTheWaitIsOnRecord() {
        HalfDone job = HalfDone.upTo("soak");
        job.wait(Duration.ofMinutes(12));
        job.course.pause("the door bell");
        job.workTo("soak");
        String said = WORDS.of(finding(job.course.state().current()));
        assertTrue(said.contains("12 min"), said);
        assertTrue(said.contains("begins again"), said);
        assertTrue(said.contains("If you miss its end"), said);
        assertTrue(job.course.dwellLeft() > 29 * 60, "and the wait is whole again");
    }

    @Test
    void aWaitIsNotBegunByTheCautionsOfItsOwnStep() {
        HalfDone job = HalfDone.upTo("soak");
        assertEquals(
                1800,
                HalfDone.PROCEDURE.steps().stream()
                        .filter(step -> step.id().equals("soak"))
                        .findFirst()
                        .orElseThrow()
                        .dwellSeconds());
        job.wait(Duration.ofSeconds(1799));
        assertInstanceOf(Verdict.Refuse.class, job.course.choose("soak.seen", "well"));
    }

    @Test
    void coolingIsTimedToo() {
        HalfDone job = HalfDone.upTo("cool");
        assertInstanceOf(Verdict.Refuse.class, job.course.choose("cool.how", "room-temperature"));
        job.wait(Duration.ofSeconds(601));
        assertInstanceOf(Verdict.Accept.class, job.course.choose("cool.how", "room-temperature"));
        State forged = HalfDone.PROCEDURE.state(shortened(job.log.job(), "cool", 300));
        assertEquals("cool", forged.current().step().id());
    }

    private static railtrim.quantity.Message finding(State.StepState step) {
        return step.findings().get(0).message();
    }

    /** The same job, with all that was done in a step moved to so many seconds after it came up. */
    private static Job shortened(Job job, String step, long seconds) {
        List<Entry> entries = new ArrayList<>();
        long before = 0;
        for (Entry entry : job.entries()) {
            boolean within = entry.fact().step().equals(step);
            long tick = within ? Math.min(entry.tick(), before + seconds * 1000) : entry.tick();
            before = within ? before : entry.tick();
            entries.add(new Entry(entry.sequence(), entry.time(), entry.session(), tick, entry.fact()));
        }
        return new Job(job.name(), entries);
    }
}
