package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.job.Fact;
import railtrim.procedure.State.Card;
import railtrim.quantity.Message;

/**
 * Slips that people make, each made on purpose: caught before the hazardous step, by which check, with which words. The demo sound board's figures. What
 * no reading can catch is in the README.
 */
class SeededSlipsTest {
    private static final Words WORDS = Words.english();

    // ---- numbers ----

    /** 1: kΩ for Ω. Caught at the proof, before any power. */
    @Test
    void kiloohmsForOhms() {
        HalfDone job = HalfDone.upTo("proof");
        assertAsked(job.course.type("proof.total", middle(job, "proof.total") + " kΩ", false), "verdict.slip");
        assertEquals("proof", job.current());
    }

    /** 2: a comma among thousands, a point too many, a number without its unit. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1,234.5 Ω|quantity.two-marks", "100|quantity.unit-missing", "1 00 Ω|quantity.gap"})
    void aCommaAGapOrNoUnit(String typed, String words) {
        HalfDone job = HalfDone.upTo("proof");
        assertRefused(job.course.type("proof.total", typed, true), words);
    }

    /** 3: the two legs swapped. Caught where legs, reference and stock voltage are held together, before a trimmer is chosen. */
    @Test
    void swappedLegs() {
        HalfDone job = HalfDone.upTo("legs");
        String leg = typedIn(HalfDone.upTo("base.on"), "leg.ohms");
        String other = typedIn(HalfDone.upTo("base.on"), "other.ohms");
        for (String field : List.of("leg.ohms", "leg.reversed")) {
            job.course.type(field, other, true);
        }
        job.course.type("other.ohms", leg, true);
        job.workTo("agree");
        job.course.type("leg.again", other, true);
        assertEquals("agree", job.current());
        assertFinding(job, "verdict.legs-swapped");
    }

    /** 4: a stale value: the leg is measured again and comes out otherwise, so the trimmer chosen for it no longer counts. */
    @Test
    void aStaleValue() {
        HalfDone job = HalfDone.upTo("solder");
        job.course.reopen("legs", "one lead was loose");
        assertEquals(State.Status.STALE, job.course.state().step("ends").status());
        assertRefused(job.course.type("solder.dead", "0 V", false), "verdict.not-now");
    }

    /** 5: quit in the middle of a powered step. Never taken up there: rail, leads, place first, then the proof before power. */
    @Test
    void quitInTheMiddleOfAPoweredStep() {
        HalfDone job = HalfDone.upTo("down.set");
        job.log.append(new Fact.Resumed("resume", 1200));
        job.reload();
        assertInstanceOf(Card.Resume.class, job.course.state().card().orElseThrow());
        assertRefused(job.course.type("down.volts", "3.2 V", true), "verdict.not-now");
    }

    /** 6: the board still powered at a step with the power off. Caught by the rail, before the iron. */
    @ParameterizedTest
    @CsvSource({"clip, clip.dead", "solder, solder.dead", "fit, fit.dead"})
    void aPoweredBoardWhereItMustBeOff(String step, String field) {
        HalfDone job = HalfDone.upTo(step);
        assertAsked(job.course.type(field, "3.31 V", false), "verdict.outside");
        job.course.type(field, "3.31 V", true);
        assertEquals(step, job.current());
        assertBlocked(job, field);
    }

    /** 7: a reading outside at first power: off at once, and what is wrong is said. */
    @Test
    void outOfRangeAtFirstPower() {
        HalfDone job = HalfDone.upTo("first.on");
        job.course.turn("first.on.switch");
        Verdict.Accept accept = assertInstanceOf(Verdict.Accept.class, job.course.type("first.volts", "2.9 V", false));
        assertEquals("verdict.outside", accept.says().get(0).key());
        assertInstanceOf(Card.MakeSafe.class, job.course.state().card().orElseThrow());
    }

    /** 8: a probe slipped to the input or the adjust pin: the likely place is named. */
    @Test
    void aProbeOnAnotherPin() {
        HalfDone job = HalfDone.upTo("first.on");
        job.course.turn("first.on.switch");
        String input = String.format(
                Locale.ROOT, "%.3f V", job.course.state().figures().input().orElseThrow());
        Verdict.Accept accept = assertInstanceOf(Verdict.Accept.class, job.course.type("first.volts", input, false));
        assertTrue(
                keys(accept.says()).contains("verdict.slip-input"),
                accept.says().toString());
    }

    /** 9: the wrong leg, chosen and soldered. */
    @Test
    void theWrongLeg() {
        HalfDone chosen = HalfDone.upTo("place");
        chosen.course.choose("place.pair", "out-adjust");
        chosen.course.choose("place.leg", "out-adjust");
        assertFinding(chosen, "verdict.leg-differs");
        HalfDone soldered = HalfDone.upTo("solder");
        soldered.course.type("solder.dead", "0 V", false);
        soldered.give();
        soldered.course.choose("solder.pair", "out-adjust");
        assertFinding(soldered, "verdict.soldered-elsewhere");
    }

    /** 10: the next day. */
    @Test
    void theNextDayWithAnotherBoard() {
        HalfDone job = HalfDone.upTo("smooth");
        job.log.append(new Fact.Resumed("resume", 86_400));
        job.reload();
        assertAsked(job.course.type("resume.marking", "ZZ9 other", false), "verdict.other-marking");
    }

    // 11, a full disk, and 12, a stranger's file, are slips of the file: FailingDiskTest and JobCommandsTest hold them.

    // ---- more ----

    /** 13: a factor of ten. */
    @Test
    void aDecimalMarkOnePlaceOff() {
        HalfDone job = HalfDone.upTo("proof");
        assertAsked(job.course.type("proof.total", middle(job, "proof.total") / 10 + " Ω", false), "verdict.slip");
    }

    /** 14: black and red exchanged. */
    @Test
    void swappedProbes() {
        HalfDone job = HalfDone.upTo("base.on");
        job.course.turn("base.on.switch");
        assertAsked(job.course.type("base.rail", "-3.31 V", false), "verdict.slip-sign");
    }

    /** 15: the meter on the wrong dial. */
    @Test
    void voltsWhereOhmsAreAsked() {
        HalfDone job = HalfDone.upTo("proof");
        assertRefused(job.course.type("proof.total", "0.1 V", true), "quantity.other-unit");
    }

    /** 16: the meter shows OL. */
    @Test
    void overRange() {
        HalfDone job = HalfDone.upTo("proof");
        assertRefused(job.course.type("proof.total", "OL", true), "quantity.over-range");
    }

    /** 17: an open joint. At its maximum a trimmer may hide it, so it is turned down with the power off: then the leg must fall. */
    @Test
    void anOpenJoint() {
        HalfDone job = HalfDone.upTo("smooth");
        String bare = typedIn(job, "leg.ohms");
        assertAsked(job.course.type("smooth.low", bare, false), "verdict.slip-bare-leg");
        job.course.type("smooth.low", bare, true);
        job.course.choose("smooth.feel", "no-change");
        job.course.type("smooth.total", bare, true);
        assertEquals("smooth", job.current(), "no power with an open joint");
        assertFinding(job, "verdict.not-smooth");
    }

    /** 18: a solder bridge across the leg, or to ground. */
    @Test
    void aSolderBridge() {
        HalfDone job = HalfDone.upTo("proof");
        job.give();
        job.give();
        assertAsked(job.course.type("proof.rail", "0.3 Ω", false), "verdict.outside");
        job.course.type("proof.rail", "0.3 Ω", true);
        assertEquals("proof", job.current());
    }

    /** 19: the trimmer not at its maximum, in the hand and back again before power. */
    @Test
    void theTrimmerNotAtItsMaximum() {
        HalfDone job = HalfDone.upTo("down.set");
        job.course.alarm("pressed");
        job.course.type("safe.rail", "0 V", false);
        assertEquals("down.back", job.current());
        double low = middle(job, "down.max") * 0.9;
        job.course.type("down.max", String.format(Locale.ROOT, "%.1f Ω", low), true);
        assertEquals("down.back", job.current(), "no power before it is back");
    }

    /** 20: the stop resistor forgotten. */
    @Test
    void theStopResistorForgotten() {
        for (String board : List.of("sound-board", "storage-controller", "network-blade")) {
            HalfDone job = HalfDone.on(board, "pick");
            job.give();
            if (job.current().equals("pick")
                    && job.course.state().current().missing().contains("trimmer.stop")) {
                job.course.choose("trimmer.stop", "none");
                assertEquals("pick", job.current());
                assertFinding(job, "verdict.stop-resistor-needed");
                return;
            }
        }
        throw new AssertionError("no demo board needs a stop resistor");
    }

    /** 21: a step too far down. */
    @Test
    void turnedTooFar() {
        HalfDone job = HalfDone.upTo("down.set");
        double target = job.course.state().figures().nextTarget().orElseThrow();
        assertAsked(
                job.course.type("down.volts", String.format(Locale.ROOT, "%.3f V", target - 0.12), false),
                "verdict.outside");
    }

    /** 22: "well" before the wait is over. */
    @Test
    void wellTooSoon() {
        HalfDone job = HalfDone.upTo("soak");
        assertRefused(job.course.choose("soak.seen", "well"), "verdict.dwell");
    }

    /** 23: a warm board called cold. */
    @Test
    void aWarmBoardForTheColdStart() {
        HalfDone job = HalfDone.upTo("cool");
        assertRefused(job.course.choose("cool.how", "room-temperature"), "verdict.dwell");
        job.wait(Duration.ofSeconds(700));
        job.course.choose("cool.how", "still-warm");
        assertFinding(job, "verdict.still-warm");
    }

    /** 24: a target above stock, or below the budget without a word. */
    @Test
    void aTargetOutOfTheBudget() {
        HalfDone job = HalfDone.upTo("budget");
        job.course.type("target.volts", "5 V", true);
        assertFinding(job, "verdict.target-above-stock");
        job.course.type("target.volts", "2 V", true);
        assertEquals(List.of("target.reason"), job.course.state().current().missing());
    }

    /** 25: the trimmer left beside the resistor. */
    @Test
    void theTrimmerLeftBesideTheResistor() {
        HalfDone job = HalfDone.upTo("fit");
        job.course.type("fit.dead", "0 V", false);
        job.course.choose("fit.pair", "adjust-ground");
        job.course.choose("fit.left", "both");
        assertFinding(job, "verdict.trimmer-left");
        assertEquals("fit", job.current());
    }

    /** 26: the wrong resistor out of the drawer. */
    @Test
    void anotherResistorInTheHand() {
        HalfDone job = HalfDone.upTo("hand");
        double right = middle(job, "hand.ohms");
        assertAsked(
                job.course.type("hand.ohms", String.format(Locale.ROOT, "%.1f Ω", right / 10), false), "verdict.slip");
    }

    /** 27: the second reading copied from memory of another number. */
    @Test
    void aSecondReadingThatDiffers() {
        HalfDone job = HalfDone.upTo("agree");
        assertAsked(job.course.type("leg.again", "47 Ω", false), "verdict.again-differs");
    }

    /** 28: only the switch, not the plug. */
    @Test
    void onlyTheSwitchIsOff() {
        HalfDone job = HalfDone.upTo("workplace");
        job.course.choose("work.off", "switch-only");
        job.course.choose("work.ground", "strap");
        job.course.type("iron.set", "320 °C", false);
        assertFinding(job, "verdict.not-unplugged");
    }

    /** 29: clips between the wrong pins before power. */
    @Test
    void clipsElsewhere() {
        HalfDone job = HalfDone.upTo("clip");
        job.course.type("clip.dead", "0 V", false);
        job.course.choose("clip.pair", "in-out");
        assertFinding(job, "verdict.clips-elsewhere");
        assertEquals("clip", job.current());
    }

    /** 30: the deed before the reading that allows it: nothing else is taken, and on the page the deed stands below the rail. */
    @ParameterizedTest
    @CsvSource({"clip, clip.pair, out-adjust", "solder, solder.pair, adjust-ground", "fit, fit.pair, adjust-ground"})
    void theDeedBeforeTheRailIsProvenDead(String step, String field, String right) {
        HalfDone job = HalfDone.upTo(step);
        assertEquals(step + ".dead", job.course.deedWaitsFor().orElseThrow());
        assertRefused(job.course.choose(field, right), "verdict.rail-first");
        job.course.type(step + ".dead", "3.31 V", true);
        assertRefused(job.course.choose(field, right), "verdict.rail-first");
        job.course.type(step + ".dead", "3 mV", false);
        if (step.equals("solder")) {
            assertRefused(job.course.choose(field, right), "verdict.pins-first");
            job.give();
        }
        assertTrue(job.course.deedWaitsFor().isEmpty());
        assertInstanceOf(Verdict.Accept.class, job.course.choose(field, right));
    }

    /** 31: the legs are measured anew and the trimmer is forgotten on its leg: the board then reads lower than it came. */
    @Test
    void theTrimmerForgottenWhenTheBoardIsReadAnew() {
        HalfDone job = HalfDone.upTo("first.on");
        job.course.reopen("legs", "one lead was loose");
        job.workTo("base.on");
        readsLower(job);
        assertFinding(job, "verdict.lower-than-it-came");
        assertEquals("base.on", job.current());
        job.course.reopen("legs", "the trimmer was still there");
        job.course.type("safe.rail", "0 V", false);
        job.workTo("base.on");
        job.give();
        job.give();
        assertEquals("load", job.current(), "taken off, it reads as it came");
        assertTrue(job.course.state().current().missing().contains("stock.volts"), "stock is read anew as well");
    }

    /** 32: the first reading of the board was the wrong one: what reads lower twice alike is believed, so that nobody is held for ever. */
    @Test
    void aBoardThatTwiceReadsLowerGoesOnWithAWarning() {
        HalfDone job = HalfDone.upTo("first.on");
        job.course.reopen("legs", "one lead was loose");
        job.workTo("base.on");
        readsLower(job);
        job.course.reopen("base.on", "read again");
        job.course.type("safe.rail", "0 V", false);
        job.workTo("base.on");
        readsLower(job);
        assertEquals("load", job.current());
        assertTrue(job.course.state().step("base.on").findings().stream()
                .anyMatch(finding -> finding.kind() == Step.Finding.Kind.WARNS));
    }

    /** 33: the pins of the other leg are taken for the right ones: the meter says so before the iron is picked up. */
    @Test
    void theOtherLegsPinsBeforeTheIron() {
        HalfDone job = HalfDone.upTo("solder");
        String other = typedIn(job, "other.ohms");
        job.course.type("solder.dead", "0 V", false);
        assertAsked(job.course.type("solder.leg", other, false), "verdict.slip-other-leg");
        job.course.type("solder.leg", other, true);
        assertRefused(job.course.choose("solder.pair", "adjust-ground"), "verdict.pins-first");
        assertFinding(job, "verdict.again-differs");
        job.course.type("solder.leg", typedIn(job, "leg.ohms"), false);
        assertInstanceOf(Verdict.Accept.class, job.course.choose("solder.pair", "adjust-ground"));
        assertEquals("proof", job.current());
    }

    /** 34: a joint is made again with the trimmer in place: the bare leg, which is not there to read, is not asked for. */
    @Test
    void aJointMadeAgainAsksForNoBareLeg() {
        HalfDone job = HalfDone.upTo("smooth");
        job.course.reopen("solder", "a cold joint");
        job.workTo("solder");
        job.course.type("solder.dead", "0 V", false);
        assertTrue(job.course.deedWaitsFor().isEmpty());
        job.course.choose("solder.pair", "adjust-ground");
        assertEquals("proof", job.current());
    }

    private static void readsLower(HalfDone job) {
        double came = job.course.state().figures().history("base.rail").stream()
                .mapToDouble(entry -> ((Fact.Reading) entry.fact()).value())
                .max()
                .orElseThrow();
        job.course.turn("base.on.switch");
        job.course.type("base.rail", String.format(Locale.ROOT, "%.2f V", 0.97 * came), true);
    }

    // ---- helpers ----

    private static double middle(HalfDone job, String field) {
        Field.Expected range = job.course.expected(field).orElseThrow();
        return Math.round((range.low() + range.high()) * 5) / 10.0;
    }

    private static String typedIn(HalfDone job, String field) {
        return job.course.state().figures().reading(field).orElseThrow().typed();
    }

    private static List<String> keys(List<Message> says) {
        says.forEach(message -> assertFalse(WORDS.of(message).isBlank()));
        return says.stream().map(Message::key).toList();
    }

    private static void assertAsked(Verdict verdict, String key) {
        Verdict.AskAgain again = assertInstanceOf(Verdict.AskAgain.class, verdict);
        assertTrue(keys(again.says()).contains(key), again.says().toString());
    }

    private static void assertRefused(Verdict verdict, String key) {
        Verdict.Refuse refuse = assertInstanceOf(Verdict.Refuse.class, verdict);
        assertTrue(keys(refuse.says()).contains(key), refuse.says().toString());
    }

    private static void assertFinding(HalfDone job, String key) {
        List<Message> says = job.course.state().current().findings().stream()
                .map(Step.Finding::message)
                .toList();
        assertTrue(keys(says).contains(key), says.toString());
    }

    private static void assertBlocked(HalfDone job, String field) {
        job.course.state().current().findings().forEach(finding -> WORDS.of(finding.message()));
        assertTrue(job.course.state().current().findings().stream().anyMatch(Step.Finding::blocks), field);
    }
}
