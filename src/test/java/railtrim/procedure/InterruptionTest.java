package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Status;
import railtrim.quantity.Unit;

/**
 * Where work is taken up again, and what has to be shown first. The three rows (ten minutes, longer, a new day) are this program's choice, after the
 * practice of aircraft maintainers to go back three steps at least.
 */
class InterruptionTest {
    private static final long MINUTES = 60;
    private static final long DAY = 24 * 3600;

    @ParameterizedTest
    @CsvSource({
        "0,     false, false, SHORT",
        "600,   false, false, SHORT",
        "601,   false, false, LONG",
        "5,     true,  false, LONG",
        "21599, true,  false, LONG",
        "21600, false, false, NEW_DAY",
        "5,     true,  true,  NEW_DAY",
        "-1,    false, false, NEW_DAY"
    })
    void theLengthOfABreakDecidesWhatItIs(long seconds, boolean closed, boolean boardOn, Break is) {
        assertEquals(is, Break.of(seconds, closed, boardOn));
    }

    @Test
    void aShortBreakAsksForTheRailAloneAndGoesOnAtTheSameStep() {
        HalfDone job = HalfDone.upTo("pick");
        Course later = resumed(job, "resume", 5 * MINUTES);
        assertEquals(List.of("resume.rail"), card(later).fields());
        later.type("resume.rail", "2 mV", false);
        assertEquals("pick", current(later));
        assertTrue(staleOrAsked(later, job).isEmpty(), "nothing else is asked again");
    }

    @Test
    void aBoardThatWasNotTouchedYetNeedsNoProof() {
        HalfDone job = HalfDone.upTo("pins");
        Course later = resumed(job, "resume", DAY);
        assertTrue(later.state().card().isEmpty());
        assertEquals("meter", current(later), "three back: the leads and the bench are looked at again");
    }

    @Test
    void afterALongBreakTheLeadsAndThePlaceAreAskedForTooAndThreeStepsAreReadAgain() {
        HalfDone job = HalfDone.upTo("solder");
        Course later = resumed(job, "resume", 20 * MINUTES);
        assertEquals(
                List.of("resume.rail", "resume.zero", "resume.where"),
                card(later).fields());
        answerCard(later, job);
        // Three back from the soldering is the aim; what was decided there stays, the trimmer is measured again.
        assertEquals("ends", current(later));
        assertEquals(
                List.of("trimmer.max", "trimmer.min", "trimmer.max.again", "trimmer.at"),
                later.state().current().missing());
    }

    @Test
    void aReadingThatComesOutAsBeforeLeavesWhatRestsOnItAsItIs() {
        HalfDone job = HalfDone.upTo("pick");
        Course later = resumed(job, "resume", 20 * MINUTES);
        answerCard(later, job);
        assertEquals("agree", current(later), "the last hold point");
        Fact.Reading before = later.state().figures().reading("leg.again").orElseThrow();
        later.type("leg.again", before.typed(), false);
        assertEquals("pick", current(later), "the aim was not asked again");
    }

    @Test
    void aReadingThatComesOutOtherwiseTakesWhatRestsOnItWithIt() {
        HalfDone job = HalfDone.upTo("base.on");
        Course later = resumed(job, "resume", 20 * MINUTES);
        answerCard(later, job);
        assertEquals("legs", current(later));
        assertEquals(
                List.of("leg.ohms", "leg.reversed", "other.ohms", "rail.ohms"),
                later.state().current().missing());
        HalfDone wired = HalfDone.upTo("pick");
        Course other = resumed(wired, "resume", 20 * MINUTES);
        answerCard(other, wired);
        double first = other.state().figures().number("leg.again").orElseThrow();
        other.type("leg.again", String.format(java.util.Locale.ROOT, "%.1f Ω", first * 1.2), true);
        assertNotEquals("pick", current(other), "twenty per cent off is no longer the same leg");
    }

    @Test
    void afterANewDayTheMarkingAndTheLegShowThatItIsTheSameBoard() {
        HalfDone job = HalfDone.upTo("down.watch");
        Course later = resumed(job, "resume", DAY);
        assertEquals(
                List.of("resume.rail", "resume.zero", "resume.marking", "resume.total"),
                card(later).fields());
        answerCard(later, job);
        assertEquals("down.back", current(later), "the last hold point with the power off");
        assertEquals(List.of("down.max"), later.state().current().missing());
    }

    @Test
    void aMovedBoardCountsAsANewDay() {
        HalfDone job = HalfDone.upTo("smooth");
        Course later = resumed(job, "resume", 20 * MINUTES);
        later.type("resume.rail", "0 V", false);
        later.type("resume.zero", "0.2 Ω", false);
        later.choose("resume.where", "moved");
        assertTrue(card(later).fields().containsAll(List.of("resume.marking", "resume.total")));
    }

    @Test
    void anotherBoardIsNoticedByItsMarking() {
        HalfDone job = HalfDone.upTo("solder");
        Course later = resumed(job, "resume", DAY);
        assertInstanceOf(Verdict.AskAgain.class, later.type("resume.marking", "XY-900 bogus", false));
        assertInstanceOf(Verdict.Accept.class, later.type("resume.marking", "XY-900 bogus", true));
        answerCard(later, job);
        assertEquals("marking", current(later), "the marking is asked again, and all that rests on it");
        assertEquals(Status.STALE, later.state().step("pins").status());
    }

    @Test
    void aWireThatCameOffOvernightIsNoticedByTheLegAndTheJointIsProvenAgain() {
        HalfDone job = HalfDone.upTo("first.on");
        Course later = resumed(job, "resume", DAY);
        later.type("resume.rail", "0 V", false);
        later.type("resume.zero", "0.2 Ω", false);
        later.type("resume.marking", later.state().figures().text("reg.marking").orElseThrow(), false);
        assertInstanceOf(Verdict.AskAgain.class, later.type("resume.total", "0.4 Ω", false));
        later.type("resume.total", "0.4 Ω", true);
        assertEquals("solder", current(later));
        assertEquals(Status.STALE, later.state().step("proof").status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ref.on",
                "base.on",
                "load",
                "warm",
                "first.on",
                "first.load",
                "down.set",
                "down.watch",
                "set.down",
                "soak",
                "cold",
                "fit.on",
                "fit.soak"
            })
    void noBreakEverOpensOnAPoweredStep(String step) {
        HalfDone job = HalfDone.upTo(step);
        assertOpensUnpowered(step, job.log.job());
        if (job.course.turn(step + ".switch") instanceof Verdict.Accept) {
            assertOpensUnpowered(step, job.log.job());
        }
    }

    private static void assertOpensUnpowered(String step, Job before) {
        for (long gap : List.of(5L, 20 * MINUTES, DAY, -1L)) {
            Job job = before;
            String marking = HalfDone.PROCEDURE
                    .state(before)
                    .figures()
                    .text("reg.marking")
                    .orElseThrow();
            for (Fact fact : List.of(
                    new Fact.Resumed("resume", gap),
                    new Fact.Reading("resume", "resume.rail", 0, Unit.VOLT, "0 V"),
                    new Fact.Reading("resume", "resume.zero", 0.2, Unit.OHM, "0.2 Ω"),
                    new Fact.Choice("resume", "resume.where", "as-left"),
                    new Fact.Note("resume", "resume.marking", marking),
                    new Fact.Reading("resume", "resume.total", 100, Unit.OHM, "100 Ω"))) {
                job = job.with(new Entry(job.last() + 1, Instant.EPOCH, 1, Long.MAX_VALUE / 4, fact));
            }
            State state = HalfDone.PROCEDURE.state(job);
            assertTrue(state.card().isEmpty(), state.card().toString());
            State.StepState at = state.current();
            boolean off = at.step().power() == PowerNeed.OFF
                    || at.step().power() == PowerNeed.TO_ON
                            && at.missing().contains(at.step().id() + ".switch");
            assertTrue(
                    off, step + " after " + gap + " s resumes at " + at.step().id() + " " + at.missing());
            assertEquals(State.Power.OFF, state.power());
        }
    }

    @Test
    void aBoardThatWasSwitchedOnForTheColdStartHasToCoolAgain() {
        HalfDone job = HalfDone.upTo("cold");
        job.course.turn("cold.switch");
        Course later = resumed(job, "resume", 5 * MINUTES);
        answerCard(later, job);
        assertEquals("cool", current(later));
    }

    @Test
    void aFinishedSoakIsNotDoneOverBecauseOfABreakWhileCooling() {
        HalfDone job = HalfDone.upTo("cool");
        Course later = resumed(job, "resume", DAY);
        answerCard(later, job);
        assertEquals("cool", current(later));
        assertEquals(Status.DONE, later.state().step("soak").status());
    }

    /** After a break the job still comes to its end, with a careful hand. Every fourth step, with a long break or a new day in turn. */
    @Test
    void afterABreakTheWorkGoesOnToTheEnd() {
        List<String> steps = stepsOfAWholeJob();
        for (int i = 0; i < steps.size(); i += 4) {
            assertGoesOnToTheEnd(steps.get(i), i % 8 == 0 ? 20 * MINUTES : DAY);
        }
    }

    @Test
    @Tag("long")
    void fromEveryStepAndEveryBreakTheWorkGoesOnToTheEnd() {
        for (String step : stepsOfAWholeJob()) {
            for (long gap : List.of(5L, 20 * MINUTES, DAY, -1L)) {
                assertGoesOnToTheEnd(step, gap);
            }
        }
    }

    /** Those this board comes through with the power on in one go. */
    private static List<String> stepsOfAWholeJob() {
        return HalfDone.PROCEDURE.steps().stream()
                .map(Step::id)
                .filter(id -> !Set.of("datasheet", "down.off").contains(id))
                .toList();
    }

    private static void assertGoesOnToTheEnd(String step, long gap) {
        HalfDone job = HalfDone.upTo(step);
        job.log.append(new Fact.Resumed("resume", gap));
        job.bench.switchOff();
        job.wait(Duration.ofMinutes(2));
        job.reload();
        assertTrue(
                job.finish(),
                step + " after " + gap + " s stands at " + job.current() + " "
                        + job.course.state().current().missing() + " "
                        + job.course.state().current().findings());
    }

    @Test
    void decisionsAndPartsOutliveAnyBreak() {
        HalfDone job = HalfDone.upTo("proof");
        Course later = resumed(job, "resume", DAY);
        for (String step : List.of("scope", "chip", "marking", "pins", "place", "aim", "pick")) {
            assertEquals(Status.DONE, later.state().step(step).status(), step);
        }
    }

    @Test
    void aFinishedJobIsNotTakenUpAgainByBeingLookedAt() {
        HalfDone job = HalfDone.upTo("record");
        assertTrue(job.finish());
        assertTrue(resumed(job, "resume", DAY).state().complete());
    }

    @Test
    void aPauseInOneSittingIsABreakWhenItGetsLong() {
        HalfDone job = HalfDone.upTo("pick");
        job.course.pause("lunch");
        assertTrue(job.course.state().card().isEmpty());
        job.wait(Duration.ofMinutes(11));
        String option = "1000x25";
        assertInstanceOf(Verdict.Refuse.class, job.course.choose("trimmer.pick", option));
        assertEquals("lunch", card(job.course).note().orElseThrow());
    }

    @Test
    void whatIsAskedIsAFunctionOfTheFactsAlone() {
        HalfDone job = HalfDone.upTo("smooth");
        Course later = resumed(job, "resume", DAY);
        answerCard(later, job);
        State again = HalfDone.PROCEDURE.state(new Job("copy", job.log.job().entries()));
        assertEquals(statuses(later.state()), statuses(again));
    }

    /** The program was closed: said by the session of the next fact. */
    @Test
    void aClosedProgramIsALongBreakHoweverShort() {
        HalfDone job = HalfDone.upTo("ends");
        List<Entry> entries = new ArrayList<>(job.log.job().entries());
        Entry last = entries.get(entries.size() - 1);
        entries.add(new Entry(last.sequence() + 1, last.time().plusSeconds(20), 2, 0, new Fact.Resumed("resume", 20)));
        Card.Resume card = assertInstanceOf(
                Card.Resume.class,
                HalfDone.PROCEDURE.state(new Job("x", entries)).card().orElseThrow());
        assertTrue(card.fields().contains("resume.zero"));
    }

    // ---- helpers ----

    private static Course resumed(HalfDone job, String step, long gap) {
        job.log.append(new Fact.Resumed(step, gap));
        job.bench.switchOff();
        job.wait(Duration.ofMinutes(2));
        return new Course(HalfDone.PROCEDURE, job.log);
    }

    private static Card.Resume card(Course course) {
        return assertInstanceOf(Card.Resume.class, course.state().card().orElseThrow());
    }

    private static String current(Course course) {
        return course.state().current().step().id();
    }

    private static void answerCard(Course course, HalfDone job) {
        for (int i = 0; i < 10 && course.state().card().isPresent(); i++) {
            String field = card(course).next(job.log.job().entries());
            job.answer(course, field);
        }
        assertTrue(course.state().card().isEmpty(), course.state().card().toString());
    }

    private static List<String> staleOrAsked(Course course, HalfDone job) {
        return course.state().steps().stream()
                .filter(step -> step.status() == Status.STALE)
                .map(step -> step.step().id())
                .toList();
    }

    private static List<Status> statuses(State state) {
        return state.steps().stream().map(State.StepState::status).toList();
    }
}
