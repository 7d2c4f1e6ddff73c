package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.Fact;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Status;
import railtrim.quantity.Display;
import railtrim.quantity.Message;

/** What the procedure must and must never do. The numbers come from the demo board's own figures. */
class ProcedureTest {

    // ---- the list of steps ----

    @Test
    void everyStepAndFieldHasAnIdOfItsOwnAndRestsOnEarlierSteps() {
        Set<String> fields = new HashSet<>();
        Set<String> earlier = new HashSet<>();
        for (Step step : HalfDone.PROCEDURE.steps()) {
            step.fields().forEach(field -> assertTrue(fields.add(field.id()), "twice: " + field.id()));
            assertTrue(earlier.containsAll(step.restsOn()), step.id() + " rests on " + step.restsOn());
            assertTrue(earlier.add(step.id()), "twice: " + step.id());
        }
    }

    @Test
    void powerChangesOnlyInStepsOfTheirOwn() {
        boolean on = false;
        for (Step step : HalfDone.PROCEDURE.steps()) {
            boolean spared = step.id().equals("down.back") || step.id().equals("down.on");
            if (!spared) {
                assertEquals(on, step.power().startsOn(), step.id() + " follows a step that leaves the board " + on);
                on = step.power().endsOn();
            }
            boolean switches = step.fields().stream().anyMatch(Field.Switch.class::isInstance);
            boolean changes = step.power() == PowerNeed.TO_ON || step.power() == PowerNeed.TO_OFF;
            assertEquals(changes, switches, step.id());
        }
    }

    @Test
    void aHoldPointCannotBeSkipped() {
        for (Step step : HalfDone.PROCEDURE.steps()) {
            assertFalse(step.hold() && step.skippable(), step.id());
        }
        HalfDone job = HalfDone.upTo("pins");
        assertRefused(job.course.skip("I am sure"), "verdict.not-skippable");
    }

    @Test
    void aStepThatMayBeLeftOutNeedsAReason() {
        HalfDone job = HalfDone.upTo("warm");
        assertRefused(job.course.skip(" "), "verdict.reason-short");
        assertInstanceOf(Verdict.Accept.class, job.course.skip("no thermometer in the house"));
        assertEquals(Status.SKIPPED, job.course.state().step("warm").status());
        assertEquals("base.off", job.current());
    }

    // ---- gates ----

    @Test
    void nothingIsTakenBeforeItsCautionsAreAcknowledgedOneByOne() {
        Course course = new Course(HalfDone.PROCEDURE, new railtrim.job.MemoryLog("new", railtrim.job.Time.system()));
        assertRefused(course.type("board.name", "Mixer", false), "verdict.caution-first");
        course.acknowledge("mains");
        assertRefused(course.type("board.name", "Mixer", false), "verdict.caution-first");
        course.acknowledge("closed-supply");
        assertInstanceOf(Verdict.Accept.class, course.type("board.name", "Mixer", false));
    }

    @Test
    void aFieldOfALaterStepCannotBeAnswered() {
        HalfDone job = HalfDone.upTo("legs");
        assertRefused(job.course.type("first.volts", "3.3 V", true), "verdict.not-now");
        assertRefused(job.course.choose("solder.pair", "adjust-ground"), "verdict.not-now");
    }

    @Test
    void aReadingIsNotTakenBeforeTheSwitchIsToldAbout() {
        HalfDone job = HalfDone.upTo("base.on");
        assertRefused(job.course.type("base.rail", "3.3 V", false), "verdict.switch-first");
    }

    @Test
    void wellIsNotTakenBeforeTheDwellIsOverButAFaultIs() {
        HalfDone job = HalfDone.upTo("down.watch");
        assertTrue(job.course.dwellLeft() > 0);
        assertRefused(job.course.choose("down.seen", "well"), "verdict.dwell");
        assertInstanceOf(Verdict.Accept.class, job.course.choose("down.seen", "glitch"));
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
    }

    @Test
    void aRailThatIsNotDeadKeepsTheIronAway() {
        HalfDone job = HalfDone.upTo("solder");
        Verdict asked = job.course.type("solder.dead", "0.35 V", false);
        // A thousandth of it would be dead enough, but a rail that is on must not be talked dead.
        assertEquals(
                List.of("verdict.outside"),
                assertInstanceOf(Verdict.AskAgain.class, asked).says().stream()
                        .map(Message::key)
                        .toList());
        assertInstanceOf(Verdict.Accept.class, job.course.type("solder.dead", "0.35 V", true));
        assertRefused(job.course.choose("solder.pair", "adjust-ground"), "verdict.rail-first");
        assertEquals("solder", job.current(), "a rail above 0.1 V blocks soldering");
        job.course.type("solder.dead", "4 mV", false);
        job.give();
        job.course.choose("solder.pair", "adjust-ground");
        assertEquals("proof", job.current());
    }

    @Test
    void theWrongLegIsCaughtBeforePowerAndBeforeTheIron() {
        HalfDone identify = HalfDone.upTo("place");
        identify.course.choose("place.pair", "out-adjust");
        identify.course.choose("place.leg", "out-adjust");
        assertEquals(
                "place", identify.current(), "for a reference between OUT and ADJ the lowering leg is ADJ to ground");
        HalfDone wire = HalfDone.upTo("solder");
        wire.course.type("solder.dead", "4 mV", false);
        wire.give();
        wire.course.choose("solder.pair", "out-adjust");
        assertEquals("solder", wire.current());
    }

    /** The far end read anew after the maximum: the trimmer stands there now, and power would find it there. */
    @Test
    void afterTheFarEndTheMaximumIsReadAgainBeforeAnyPower() {
        HalfDone job = HalfDone.upTo("smooth");
        job.workToField("smooth.feel");
        double low = job.course.state().figures().number("smooth.low").orElseThrow();
        job.course.choose("smooth.feel", "jumps");
        double most = job.course.state().figures().number("proof.total").orElseThrow();
        job.course.type("smooth.total", Display.ohms(most), true);
        assertEquals("smooth", job.current());
        job.course.type("smooth.low", Display.ohms(low), true);
        job.course.choose("smooth.feel", "falls-smoothly");
        assertEquals("smooth", job.current());
        assertEquals(
                List.of("verdict.maximum-first"),
                job.course.state().current().findings().stream()
                        .map(finding -> finding.message().key())
                        .toList());
        job.course.type("smooth.total", Display.ohms(most), true);
        assertEquals("first.on", job.current());
    }

    @Test
    void aTrimmerNotAtItsMaximumIsNotSoldered() {
        HalfDone job = HalfDone.upTo("ends");
        while (!job.course.state().current().missing().equals(List.of("trimmer.at"))) {
            job.give();
        }
        job.course.choose("trimmer.at", "minimum");
        assertEquals("ends", job.current());
        job.course.choose("trimmer.at", "maximum");
        assertEquals("solder", job.current());
    }

    @Test
    void firstPowerAboveStockMeansPowerOffAtOnceAndTheWiringIsProvenAgain() {
        HalfDone job = HalfDone.upTo("first.on");
        job.course.turn("first.on.switch");
        job.course.type("first.volts", "3.83 V", false);
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        assertRefused(job.course.type("first.volts", "3.30 V", false), "verdict.not-now");
        job.course.type("safe.rail", "2 mV", false);
        assertTrue(job.course.state().card().isEmpty());
        assertEquals("proof", job.current());
        assertEquals(Status.STALE, job.course.state().step("smooth").status());
    }

    @Test
    void theMakeSafeCardIsLeftOnlyByADeadRail() {
        HalfDone job = HalfDone.upTo("down.set");
        job.course.alarm("pressed");
        assertInstanceOf(Verdict.AskAgain.class, job.course.type("safe.rail", "1.9 V", false));
        job.course.type("safe.rail", "1.9 V", true);
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        assertRefused(job.course.acknowledge("over-voltage"), "verdict.not-now");
        assertRefused(job.course.reopen("legs", "no"), "verdict.not-now");
        job.course.type("safe.rail", "20 mV", false);
        assertTrue(job.course.state().card().isEmpty());
        assertEquals("down.back", job.current(), "the trimmer is proven back at maximum before power comes again");
    }

    /** A rail to ground typed ten times too high is possible and so is kept; when the proof then fails, the way back is named. */
    @Test
    void aWrongEarlierReadingDoesNotEndInAStepThatCannotBeMended() {
        HalfDone job = HalfDone.upTo("legs");
        while (!job.course.state().current().missing().equals(List.of("rail.ohms"))) {
            job.give();
        }
        job.course.type("rail.ohms", "900 Ω", true);
        job.workTo("proof");
        while (job.course.state().current().missing().size() > 1) {
            job.give();
        }
        job.course.type("proof.rail", "68.2 Ω", true);
        assertEquals("proof", job.current());
        Step.Finding finding = job.course.state().current().findings().stream()
                .filter(Step.Finding::blocks)
                .findFirst()
                .orElseThrow();
        assertEquals("legs", finding.backTo());
        job.course.reopen(finding.backTo(), "the rail may have been misread");
        assertEquals("legs", job.current());
        assertTrue(job.course.state().current().findings().stream()
                .anyMatch(each -> each.message().key().equals("verdict.take-off-first")));
        job.workTo("first.on");
    }

    @Test
    void aHighestRailTypedTooLowNamesTheStepToMend() {
        HalfDone job = HalfDone.upTo("base.on");
        job.course.turn("base.on.switch");
        job.course.type("base.rail", "15 V", true);
        Step.Finding finding = job.course.state().current().findings().stream()
                .filter(Step.Finding::blocks)
                .findFirst()
                .orElseThrow();
        assertEquals("scope", finding.backTo());
    }

    @Test
    void aRailThatReadsDeadWhereItShouldBeUpSendsBackToTheSwitch() {
        HalfDone job = HalfDone.upTo("base.on");
        job.course.turn("base.on.switch");
        assertAsked(job.course.type("base.rail", "0.2 mV", false), "verdict.rail-not-up");
        job.course.type("base.rail", "0.2 mV", true);
        Step.Finding finding = job.course.state().current().findings().stream()
                .filter(Step.Finding::blocks)
                .findFirst()
                .orElseThrow();
        assertEquals("base.on", finding.backTo());
        job.course.reopen("base.on", "it was not switched on");
        job.workTo("load");
    }

    @Test
    void twoFirstPowerUpsOutsideWithGoodJointsStopTheJobInWords() {
        HalfDone job = HalfDone.upTo("first.on");
        for (int time = 0; time < 2; time++) {
            job.workTo("first.on");
            job.course.turn("first.on.switch");
            job.course.type("first.volts", "3.10 V", false);
            job.course.type("safe.rail", "0 V", false);
        }
        Card.Stop stop =
                assertInstanceOf(Card.Stop.class, job.course.state().card().orElseThrow());
        assertEquals("stop.first-power", stop.reason().key());
        job.course.reopen(stop.backTo(), "measuring again");
        assertEquals(java.util.Optional.empty(), job.course.state().card());
        assertEquals("legs", job.current());
    }

    /** A setting read too coarsely makes the sums expect another voltage: no joint mends that, the trimmer has to go back. */
    @Test
    void threePowerUpsOutsideWithTheResistorStopTheJobInWordsAndTheTrimmerGoesBack() {
        HalfDone job = HalfDone.upTo("fit.on");
        for (int time = 0; time < 3; time++) {
            job.workTo("fit.on");
            job.course.turn("fit.on.switch");
            job.course.type("fit.volts", "2.80 V", true);
            job.course.type("safe.rail", "0 V", false);
        }
        assertEquals("fit", job.current());
        job.course.type("fit.dead", "0 V", false);
        Card.Stop stop =
                assertInstanceOf(Card.Stop.class, job.course.state().card().orElseThrow());
        assertEquals("stop.fit-power", stop.reason().key());
        job.course.reopen(stop.backTo(), "putting the trimmer back");
        assertEquals(java.util.Optional.empty(), job.course.state().card());
        assertEquals("solder", job.current());
        assertTrue(job.finish(), "the same hand comes to an end from there");
    }

    @Test
    void aFaultMadeSafeIsNotSwitchedOffASecondTime() {
        HalfDone job = HalfDone.upTo("down.watch");
        job.course.choose("down.seen", "reset");
        job.course.type("safe.rail", "0 V", false);
        assertEquals("fault.note", job.current());
        assertEquals(Status.NOT_NEEDED, job.course.state().step("down.off").status());
    }

    @Test
    void aWayDownThatEndsWithoutAFaultIsSwitchedOff() {
        HalfDone job = HalfDone.upTo("down.watch");
        job.wait(Duration.ofSeconds(61));
        job.course.choose("down.seen", "enough");
        assertEquals("down.off", job.current());
    }

    @Test
    void aReadingBelowTheFloorMeansPowerOff() {
        HalfDone job = HalfDone.upTo("down.set");
        double floor = job.course.state().figures().floor().orElseThrow();
        job.course.type("down.volts", String.format(java.util.Locale.ROOT, "%.3f V", floor - 0.3), false);
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
    }

    @Test
    void aDecrementTooFarIsAskedAgain() {
        HalfDone job = HalfDone.upTo("down.set");
        double target = job.course.state().figures().nextTarget().orElseThrow();
        String far = String.format(java.util.Locale.ROOT, "%.3f V", target - 0.15);
        assertInstanceOf(Verdict.AskAgain.class, job.course.type("down.volts", far, false));
    }

    // ---- stale by itself ----

    @Test
    void aReopenedLegTakesAllThatRestsOnItWithIt() {
        HalfDone job = HalfDone.upTo("solder");
        List<String> relocked =
                job.course.relocks("legs").stream().map(Step::id).toList();
        assertTrue(relocked.containsAll(List.of("agree", "aim", "pick", "ends")), relocked.toString());
        job.course.reopen("legs", "one lead was loose");
        assertEquals("legs", job.current());
        for (String step : List.of("agree", "aim", "pick", "ends")) {
            assertEquals(Status.STALE, job.course.state().step(step).status(), step);
        }
        assertEquals(Status.DONE, job.course.state().step("marking").status());
        assertTrue(job.course.state().figures().readLeg().isEmpty(), "a withdrawn reading is used nowhere");
    }

    @Test
    void aSlipIsMendedAtOnceByTypingAgain() {
        HalfDone job = HalfDone.upTo("workplace");
        job.course.choose("work.off", "unplugged");
        job.course.choose("work.ground", "strap");
        job.course.type("iron.set", "320 °C", false);
        assertEquals("marking", job.current());
        assertInstanceOf(Verdict.Accept.class, job.course.type("iron.set", "330 °C", false));
        assertEquals(330, job.course.state().figures().number("iron.set").orElseThrow());
    }

    @Test
    void reopeningAnUnpoweredStepWithTheBoardOnAsksForPowerOffFirst() {
        HalfDone job = HalfDone.upTo("load");
        job.course.reopen("pins", "not sure about pin 1");
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
        job.course.type("safe.rail", "0.01 V", false);
        assertEquals("pins", job.current());
    }

    // ---- stops ----

    @ParameterizedTest
    @ValueSource(strings = {"fixed", "coded"})
    void aSupplyWithoutADividerIsStoppedInWordsAndCanBeCorrected(String control) {
        HalfDone job = HalfDone.upTo("marking");
        job.course.type("reg.marking", "XY", false);
        job.course.choose("reg.control", control);
        Card.Stop stop =
                assertInstanceOf(Card.Stop.class, job.course.state().card().orElseThrow());
        assertEquals("stop." + control, stop.reason().key());
        job.course.reopen(stop.backTo(), "looked again");
        assertTrue(job.course.state().card().isEmpty());
        assertEquals("marking", job.current());
    }

    @Test
    void mainsOnTheBoardIsStopped() {
        HalfDone job = HalfDone.upTo("scope");
        job.course.choose("supply.kind", "mains");
        assertInstanceOf(Card.Stop.class, job.course.state().card().orElseThrow());
    }

    // ---- interruption ----

    @Test
    void afterALongPauseTheRailAndTheMeterAreProvenAndNoPoweredStepIsResumed() {
        HalfDone job = HalfDone.upTo("down.watch");
        job.log.append(new Fact.Resumed("resume", 7200));
        Course later = new Course(HalfDone.PROCEDURE, job.log);
        assertInstanceOf(Card.Resume.class, later.state().card().orElseThrow());
        later.type("resume.rail", "0 V", false);
        assertTrue(later.state().card().isPresent(), "the leads are still to be zeroed");
        later.type("resume.zero", "0.2 Ω", false);
        assertTrue(later.state().card().isPresent(), "and whether the board lies as it was left");
        later.choose("resume.where", "as-left");
        assertTrue(later.state().card().isEmpty());
        assertEquals(PowerNeed.OFF, later.state().current().step().power());
        assertEquals("down.back", later.state().current().step().id());
    }

    @Test
    void pausingWithTheBoardOnMakesItSafeFirst() {
        HalfDone job = HalfDone.upTo("soak");
        job.course.pause("the phone rang");
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
    }

    // ---- the way down ----

    @Test
    void aFaultInTheSoakMakesTheMarginGrow() {
        HalfDone job = HalfDone.upTo("soak");
        double before = job.course.state().figures().budget().orElseThrow().recommended();
        job.course.choose("soak.seen", "glitch");
        job.course.type("safe.rail", "0 V", false);
        assertEquals("budget", job.current());
        double after = job.course
                .state()
                .figures()
                .budget()
                .map(budget -> budget.recommended())
                .orElse(99.0);
        assertTrue(after > before, after + " after a fault at the old setting of " + before);
    }

    @Test
    void aTargetBelowTheBudgetNeedsAWrittenReason() {
        HalfDone job = HalfDone.upTo("budget");
        double recommended = job.course.state().figures().budget().orElseThrow().recommended();
        String low = String.format(java.util.Locale.ROOT, "%.3f V", recommended - 0.05);
        assertInstanceOf(Verdict.AskAgain.class, job.course.type("target.volts", low, false));
        job.course.type("target.volts", low, true);
        assertEquals(List.of("target.reason"), job.course.state().current().missing());
        job.course.type("target.reason", "a spare board, only used in summer", false);
        assertEquals("set.back", job.current());
    }

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade"})
    void aCarefulHandFinishesTheJobAndNothingIsLeftStale(String board) {
        HalfDone job = HalfDone.on(board, "record");
        while (!job.course.state().complete()) {
            job.give();
        }
        for (State.StepState step : job.course.state().steps()) {
            assertTrue(
                    Set.of(Status.DONE, Status.NOT_NEEDED).contains(step.status())
                            || step.step().id().equals("record"),
                    step.step().id() + " is " + step.status());
        }
        assertEquals(
                job.course.state().figures().fitted(),
                HalfDone.PROCEDURE.state(job.log.job()).figures().fitted(),
                "the state is a function of the facts alone");
        assertTrue(
                job.course.state().figures().chosen().isPresent(),
                "what was chosen is still known when later readings have come in");
    }

    /** Found by the exploration: smoke ends the way down, and nothing of it is asked again once the wiring has been proven and powered. */
    @Test
    void afterSmokeOnTheWayDownNoDecrementIsAskedThatHasEnded() {
        HalfDone job = HalfDone.upTo("down.watch");
        job.course.choose("down.seen", "smoke");
        job.workTo("fault.note");
        assertEquals(Status.NOT_NEEDED, job.course.state().step("down.watch").status());
        assertTrue(job.course.state().figures().descent().faulted());
    }

    private static void assertAsked(Verdict verdict, String key) {
        Verdict.AskAgain ask = assertInstanceOf(Verdict.AskAgain.class, verdict);
        assertTrue(ask.says().stream().anyMatch(each -> each.key().equals(key)), ask::toString);
    }

    private static void assertRefused(Verdict verdict, String key) {
        Verdict.Refuse refuse = assertInstanceOf(Verdict.Refuse.class, verdict);
        assertEquals(key, refuse.says().get(0).key());
    }
}
