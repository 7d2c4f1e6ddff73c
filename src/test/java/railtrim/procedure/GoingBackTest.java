package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.procedure.State.Card;

/** Whoever goes back to a step with the board on proves it with the power off first: it has been in their hands since. */
class GoingBackTest {
    /** The last column is where the work goes on, once the board is known to be dead. */
    @ParameterizedTest(name = "at {0} back to {1}: {2}")
    @CsvSource({
        "smooth, base.on, legs",
        "hand, base.on, legs",
        "budget, first.on, smooth",
        "budget, first.load, smooth",
        "record, fit.on, fit.proof",
        "record, fit.soak, fit.proof",
        "setting, soak, set.back",
        "setting, cold, cool",
        // With the iron on the board since: all the way back to the proof of what is soldered there now.
        "proof, ref.on, clip",
        "proof, base.on, legs",
        "proof, load, legs",
        "hand, first.on, proof",
        "fit.proof, set.on, proof",
        "fit.proof, soak, proof",
        "fit.proof, cool, proof",
        "fit.proof, cold, proof",
    })
    void theProofInOhmsComesFirst(String at, String back, String then) {
        HalfDone job = HalfDone.upTo(at);
        List<String> shown = job.course.relocks(back).stream().map(Step::id).toList();
        assertInstanceOf(Verdict.Accept.class, job.course.reopen(back, "I doubt it"));
        assertTrue(job.course.state().card().isEmpty(), "the board is off");
        assertEquals(then, job.current());
        assertTrue(shown.contains(then) || then.equals(back), "what it takes with it is shown before: " + shown);
        job.workTo(back);
        assertTrue(job.finish(), "and from there it goes to the end");
    }

    @Test
    void withTheBoardStillOnTheReadingIsTakenAgainAtOnce() {
        HalfDone job = HalfDone.upTo("warm");
        job.course.reopen("load", "read the wrong line");
        assertTrue(job.course.state().card().isEmpty());
        assertEquals("load", job.current());
        assertEquals(State.Power.ON, job.course.state().power());
    }

    @Test
    void doingAgainWhatSwitchedTheBoardOnSwitchesItOffFirst() {
        HalfDone job = HalfDone.upTo("load");
        job.course.reopen("base.on", "it was not switched on");
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        job.course.type("safe.rail", "0 V", false);
        assertEquals("legs", job.current());
    }

    /** A trimmer that nobody has proven yet, and the pins in doubt: without this its leg would see power before it is known to be the right one. */
    @Test
    void aForgottenTrimmerIsFoundInOhmsBeforeTheReferenceIsReadAnew() {
        HalfDone job = HalfDone.upTo("proof");
        double bare = job.course.state().figures().ohms("leg.ohms").orElseThrow();
        job.course.reopen("ref.on", "are these the pins?");
        assertEquals("clip", job.current());
        job.workToField("clip.leg");
        job.course.type("clip.leg", Math.round(0.8 * bare) + " Ω", true);
        job.course.choose("clip.pair", "out-adjust");
        assertEquals("clip", job.current(), "no power with the trimmer on");
        assertTrue(job.course.state().current().findings().stream().anyMatch(Step.Finding::blocks));
        job.course.type("clip.leg", Math.round(bare) + " Ω", false);
        assertEquals("ref.on", job.current());
    }

    /** On either leg: on the other one it would raise the output. */
    @ParameterizedTest
    @CsvSource({"leg.ohms", "other.ohms"})
    void aForgottenPartIsFoundInOhmsWhereTheLegsAreReadAnew(String field) {
        HalfDone job = HalfDone.upTo("first.on");
        double before = job.course.state().figures().ohms(field).orElseThrow();
        job.course.reopen("legs", "one lead was loose");
        job.workToField(field);
        String less = Math.round(0.7 * before) + " Ω";
        job.course.type(field, less, true);
        assertTrue(blocked(job), "less than before the iron");
        job.course.type(field, less, true);
        assertFalse(blocked(job), "read twice alike it is believed");
    }

    /** Switched off, as they said, and the rail still up: doing the step again asks for it again. */
    @ParameterizedTest
    @CsvSource({"base.off", "set.off", "fit.off"})
    void aRailThatStayedUpIsReadAgain(String off) {
        HalfDone job = HalfDone.upTo(off);
        job.course.turn(off + ".switch");
        job.course.type(off + ".rail", "2.41 V", true);
        job.course.reopen(off, "It did not add up");
        assertEquals(off, job.current());
        assertFalse(job.course.state().complete());
        assertTrue(job.finish());
    }

    /** That somebody has switched it off is a word; only a dead rail on the meter unlocks a step with the power off. */
    @Test
    void aBoardThatIsOnlySaidToBeOffIsMadeSafeFirst() {
        HalfDone job = HalfDone.upTo("ref.off");
        job.course.turn("ref.off.switch");
        job.course.reopen("pins", "not sure about pin 1");
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        job.course.type("safe.rail", "0 V", false);
        assertTrue(job.course.state().card().isEmpty());
        assertEquals("pins", job.current());
    }

    private static boolean blocked(HalfDone job) {
        return job.course.state().step("legs").findings().stream()
                .anyMatch(finding -> finding.blocks() && finding.message().key().equals("verdict.lower-than-it-came"));
    }
}
