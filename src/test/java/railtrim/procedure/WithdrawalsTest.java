package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Power;

/** Taking back the last entry: it stays on record, no longer counts, and never leads to a belief that is less safe. */
class WithdrawalsTest {
    @Test
    void aReadingTakenBackIsAskedAgainAndStaysOnRecord() {
        HalfDone job = HalfDone.upTo("legs");
        job.give();
        State before = job.course.state();
        assertTrue(before.figures().number("leg.ohms").isPresent());
        int entries = before.job().entries().size();
        assertInstanceOf(Verdict.Accept.class, job.course.takeBack());
        State after = job.course.state();
        assertTrue(after.figures().number("leg.ohms").isEmpty());
        assertEquals("leg.ohms", after.current().missing().get(0));
        assertEquals(entries + 1, after.job().entries().size());
        assertTrue(after.takenBack(after.job().entries().get(entries - 1)));
        assertFalse(after.takenBack(after.job().entries().get(entries)));
        assertTrue(job.finish(), "the job goes on to its end");
    }

    @Test
    void whatRestsOnItIsShownBeforeItIsTakenBack() {
        HalfDone job = HalfDone.upTo("aim");
        job.course.reopen("legs", "a lead was loose");
        while (!job.current().equals("legs")
                || job.course.state().current().missing().size() > 1) {
            job.give();
        }
        job.give();
        Course.TakingBack offered = job.course.takingBack().orElseThrow();
        assertEquals("legs", offered.entry().fact().step());
        assertFalse(offered.proveDead());
        assertTrue(job.course.state().steps().stream()
                .filter(step -> offered.again().contains(step.step()))
                .allMatch(step -> step.status() == State.Status.DONE));
    }

    @Test
    void aCautionTakenBackHasToBeReadAgain() {
        HalfDone job = HalfDone.upTo("aim");
        while (job.course.state().current().open().isEmpty()) {
            job.give();
        }
        String caution = job.course.state().current().open().get(0);
        job.course.acknowledge(caution);
        assertFalse(job.course.state().current().open().contains(caution));
        job.course.takeBack();
        assertTrue(job.course.state().current().open().contains(caution));
    }

    @Test
    void aSwitchTakenBackMeansThatNobodyKnowsAndTheRailIsProvenDead() {
        HalfDone job = HalfDone.upTo("first.on");
        job.give();
        assertEquals(Power.ON, job.course.state().power());
        assertTrue(job.course.takingBack().orElseThrow().proveDead());
        job.course.takeBack();
        // It may well be on: the belief must not fall back to "off".
        assertEquals(Power.ON, job.course.state().power());
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        assertInstanceOf(Verdict.Refuse.class, job.course.takeBack(), "nor is that taken back");
        job.answer(job.course, "safe.rail");
        assertEquals(Power.OFF, job.course.state().power());
        assertEquals(Optional.empty(), job.course.state().card());
        // What is asked next is what is asked after make safe at this place.
        HalfDone other = HalfDone.upTo("first.on");
        other.give();
        other.course.alarm("pressed");
        other.answer(other.course, "safe.rail");
        assertEquals(other.current(), job.current());
        assertEquals(
                other.course.state().current().missing(),
                job.course.state().current().missing());
        assertTrue(job.finish());
    }

    @Test
    void thePlugTakenBackLeavesTheBoardBelievedOn() {
        HalfDone job = HalfDone.upTo("base.off");
        job.give();
        assertEquals(Power.OFF, job.course.state().power());
        job.course.takeBack();
        assertEquals(Power.ON, job.course.state().power());
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
    }

    @Test
    void aDeadRailTakenBackBringsTheMakeSafePageBack() {
        HalfDone job = HalfDone.upTo("soak");
        job.course.alarm("pressed");
        job.answer(job.course, "safe.rail");
        assertEquals(Optional.empty(), job.course.state().card());
        job.course.takeBack();
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        assertEquals(Power.ON, job.course.state().power());
    }

    @Test
    void makeSafeAndAFaultHaveHappenedAndStay() {
        HalfDone job = HalfDone.upTo("down.watch");
        job.course.alarm("pressed");
        assertEquals(Optional.empty(), job.course.takingBack());
        HalfDone faulty = HalfDone.upTo("first.load");
        faulty.give();
        faulty.wait(java.time.Duration.ofSeconds(70));
        faulty.course.choose("first.seen", "smoke");
        assertInstanceOf(Verdict.Refuse.class, faulty.course.takeBack());
    }

    @Test
    void theEntryBeforeCanBeTakenBackNext() {
        HalfDone job = HalfDone.upTo("legs");
        job.give();
        job.give();
        job.course.takeBack();
        job.course.takeBack();
        assertEquals(
                List.of("leg.ohms", "leg.reversed"),
                job.course.state().current().missing().subList(0, 2));
    }

    @Test
    void aFileCannotTakeBackWhatHappened() {
        HalfDone job = HalfDone.upTo("soak");
        job.course.alarm("smoke");
        Job before = job.course.state().job();
        for (long target : new long[] {before.last(), before.last() - 1, 1, 9999, -1}) {
            Job forged = before.with(new Entry(
                    before.last() + 1, job.time().now(), 1, job.time().ticks(), new Fact.Withdrawn("soak", target)));
            assertInstanceOf(
                    Card.MakeSafe.class, HalfDone.PROCEDURE.state(forged).card().orElseThrow(), "entry " + target);
        }
    }
}
