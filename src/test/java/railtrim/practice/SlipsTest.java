package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

class SlipsTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    /** What is typed when the hand slips over a reading of a meter. */
    @ParameterizedTest
    @CsvSource({
        "PREFIX, 218.4 Ω, 218.4 kΩ",
        "PREFIX, 0.373 kΩ, 0.373 Ω",
        "PREFIX, 3.555 V, 3.555 mV",
        "COMMA, 3.555 V, 3555 V",
        "UNIT, 3.555 V, 3.555 Ω",
        "UNIT, 218.4 Ω, 218.4 V",
        "SWAPPED_PROBES, 3.555 V, -3.555 V",
        "SWAPPED_PROBES, -3.29 V, 3.29 V"
    })
    void aSlipOfThePenChangesOneThing(Slip slip, String shown, String typed) {
        assertEquals(typed, SlipText.of(slip, shown, Rehearsal.chance(1)).orElseThrow());
    }

    @Test
    void aDecimalPointOneOffIsAFactorOfTen() {
        for (int seed = 0; seed < 10; seed++) {
            String typed =
                    SlipText.of(Slip.DECIMAL, "3.555 V", Rehearsal.chance(seed)).orElseThrow();
            assertTrue(List.of("35.55 V", "0.3555 V").contains(typed), typed);
        }
    }

    /** A 2000-count meter shows 3.47 V with one decimal on its 200 V range (a count is 0.1 V). */
    @Test
    void aRangeTooLargeLosesTheLastDigits() {
        VirtualMeter meter = new VirtualMeter(Meter.basic(), Rehearsal.chance(1));
        assertEquals(
                "3.5 V", meter.onLargerRange(Unit.VOLT, 3.47, 1).orElseThrow().text());
        assertTrue(meter.onLargerRange(Unit.VOLT, 3.47, 2).isEmpty(), "it has no larger one");
    }

    /** Whatever the hand does wrong, the job ends in a safe part or in words, and no chip is harmed. */
    @Test
    void aHandThatSlipsLeavesNoChipBelowItsFailVoltage() {
        Tally tally = played(24, 11, 0.05);
        assertTrue(tally.slips() > 40, tally.values().toString());
        assertEquals(0, tally.belowFail(), tally.bad().toString());
        assertEquals(0, tally.stuck(), tally.bad().toString());
        assertTrue(tally.slipsCaught() > 0.7 * tally.slips(), tally.values().toString());
    }

    @Test
    void theSameSeedGivesTheSameSlips() {
        Rehearsal rehearsal = new Rehearsal(PROCEDURE, Meter.middle(), 0.1);
        Outcome one = rehearsal.play(DemoBoards.named("sound-board"), 5);
        Outcome other = rehearsal.play(DemoBoards.named("sound-board"), 5);
        assertEquals(one.slips(), other.slips());
        assertEquals(one.job(), other.job());
        assertTrue(!one.slips().isEmpty());
    }

    /** Threads and batches decide nothing: board by board in a loop gives the figures that many at once give. */
    @Test
    void manyAtOnceGiveTheFiguresOfOneAfterTheOther() {
        Rehearsal basic = new Rehearsal(PROCEDURE, Meter.basic());
        Rehearsal middle = new Rehearsal(PROCEDURE, Meter.middle());
        List<Board> boards = new ArrayList<>();
        boards(8, 3).forEachRemaining(boards::add);
        Tally oneByOne = new Tally();
        for (int i = 0; i < boards.size(); i++) {
            oneByOne.add((i < 4 ? basic : middle).play(boards.get(i), 3 + i));
        }
        Tally together = new Rehearsals(List.of(basic, middle)).play(boards.iterator(), 3, done -> {});
        assertEquals(oneByOne.values(), together.values());
    }

    @Test
    void aWrongLegIsFoundByResistanceBeforeThePowerIsOn() {
        Map<String, Integer> keys = new java.util.TreeMap<>();
        for (SlipMade made : made(Slip.WRONG_LEG)) {
            assertEquals(SlipMade.Noticed.BEFORE_HARM, made.noticed(), made.toString());
            keys.merge(made.key(), 1, Integer::sum);
        }
        assertTrue(keys.containsKey("verdict.outside"), keys.toString());
    }

    /** Seeds at which chance brings the slip about: the boards are slow to slip in one particular way. */
    private static List<SlipMade> made(Slip slip) {
        Rehearsal rehearsal = new Rehearsal(PROCEDURE, Meter.middle(), 0.2);
        List<SlipMade> made = IntStream.of(2, 4, 13, 28)
                .mapToObj(seed -> rehearsal.play(DemoBoards.named("sound-board"), seed))
                .flatMap(outcome -> outcome.slips().stream())
                .filter(each -> each.slip() == slip)
                .toList();
        assertTrue(made.size() > 1, "never made: look for other seeds");
        return made;
    }

    private static Tally played(int boards, long seed, double slips) {
        return new Rehearsals(List.of(
                        new Rehearsal(PROCEDURE, Meter.basic(), slips),
                        new Rehearsal(PROCEDURE, Meter.middle(), slips)))
                .play(boards(boards, seed), seed, done -> {});
    }

    private static Iterator<Board> boards(int count, long seed) {
        return new RandomBoards(
                        RegulatorFamilies.of(BuiltIn.text("regulators.json")).all(), Rehearsal.chance(seed))
                .some(count);
    }
}
