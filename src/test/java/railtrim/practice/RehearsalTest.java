package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.circuit.RegulatorFamily;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

class RehearsalTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    private static Meter meter(String id) {
        return switch (id) {
            case "basic" -> Meter.basic();
            case "middle" -> Meter.middle();
            default -> Meter.fine();
        };
    }

    @ParameterizedTest
    @CsvSource({
        "sound-board, basic",
        "sound-board, fine",
        "storage-controller, basic",
        "storage-controller, middle",
        "network-blade, middle",
        "network-blade, fine",
        "delay-unit, middle",
        "studio-clock, middle"
    })
    void anHonestHandFinishesAndTheResistorHoldsTheChipBetweenFailAndStock(String board, String meter) {
        Outcome outcome = new Rehearsal(PROCEDURE, meter(meter)).play(DemoBoards.named(board), 3);

        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());
        assertTrue(outcome.fitted().orElseThrow() > outcome.fail(), outcome.toString());
        assertTrue(outcome.fitted().orElseThrow() < outcome.stock(), outcome.toString());
        assertFalse(outcome.aboveStock());
        assertFalse(outcome.belowFail());
        assertTrue(outcome.mishaps().isEmpty(), outcome.mishaps().toString());
    }

    @Test
    void theBoardWithACodedSupplyIsStoppedBeforeAnythingIsSoldered() {
        Outcome outcome = new Rehearsal(PROCEDURE, Meter.middle()).play(DemoBoards.named("playout-module"), 3);

        assertEquals(Outcome.Ending.STOPPED, outcome.ending());
        assertTrue(outcome.reason().contains("code"), outcome.reason());
        assertEquals(0, outcome.highestSeen(), "the board was never switched on");
        assertEquals("reg.control", lastField(outcome));
    }

    private static String lastField(Outcome outcome) {
        List<Entry> entries = outcome.job().entries();
        return entries.get(entries.size() - 1).fact() instanceof Fact.Choice choice ? choice.field() : "";
    }

    @ParameterizedTest
    @EnumSource(Place.class)
    void anHonestHandFinishesWhereverTheReferenceSits(Place place) {
        List<RegulatorFamily> families =
                RegulatorFamilies.of(BuiltIn.text("regulators.json")).all();
        RandomBoards boards = new RandomBoards(families, Rehearsal.chance(2024 + place.ordinal()));
        for (int seed = 0; seed < 3; seed++) {
            Board board = boards.draw("board " + seed, place);
            Outcome outcome = new Rehearsal(PROCEDURE, Meter.middle()).play(board, seed);
            String what = "seed " + seed + ": " + outcome.values() + " on " + board;
            // A chip that fails close to stock leaves nothing to gain; then the procedure says so and stops.
            assertNotEquals(Outcome.Ending.STUCK, outcome.ending(), what);
            assertFalse(outcome.aboveStock(), what);
            assertFalse(outcome.belowFail(), what);
        }
    }

    @Test
    void theSameSeedGivesTheSameJobFactForFact() {
        Rehearsal rehearsal = new Rehearsal(PROCEDURE, Meter.fine());
        Outcome one = rehearsal.play(DemoBoards.named("sound-board"), 5);
        Outcome other = rehearsal.play(DemoBoards.named("sound-board"), 5);
        assertEquals(one.job(), other.job());
        assertEquals(one.values(), other.values());
        assertNotEquals(
                one.job(), rehearsal.play(DemoBoards.named("sound-board"), 6).job());
    }

    /** Cold, this chip fails so much sooner that the repeated way down shows its fault at the very first voltage. */
    @Test
    void aRepeatedWayDownThatFailsAtOnceGoesOnWithTheFault() {
        Board board = failingSoonerCold(DemoBoards.named("network-blade"), 0.04);
        Outcome outcome = new Rehearsal(PROCEDURE, Meter.basic()).play(board, 17);
        String rounds = outcome.job().entries().stream()
                .map(RehearsalTest::onTheWayDown)
                .collect(Collectors.joining());
        assertTrue(rounds.contains("|f"), "one of its ways down, " + rounds + ", fails at once");
        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());
    }

    private static Board failingSoonerCold(Board board, double partOfStock) {
        Board.Failing failing = board.failing();
        return new Board(
                board.label(),
                board.feed(),
                board.chip(),
                board.regulator(),
                board.divider(),
                board.load(),
                board.warmth(),
                new Board.Failing(
                        failing.hot(),
                        failing.hot() + partOfStock * board.stock(),
                        failing.spread(),
                        failing.damage(),
                        failing.shows()));
    }

    /** A bar for the beginning of a repeated way down, w for a voltage it was well at, f for a fault. */
    private static String onTheWayDown(Entry entry) {
        if (entry.fact() instanceof Fact.Power power && power.step().equals("down.on")) {
            return "|";
        }
        if (entry.fact() instanceof Fact.Choice choice && choice.field().equals("down.seen")) {
            return choice.option().equals("well") ? "w" : "f";
        }
        return "";
    }

    /** What every rehearsal has to keep to: it ends in a finished job or in words, and the chip is never worse off than before. */
    @Test
    void noChipGetsMoreThanStockOrIsLeftWhereItMayFail() {
        Tally tally = new Tally();
        Rehearsal rehearsal = new Rehearsal(PROCEDURE, Meter.basic());
        List<Board> boards = drawn(7, 40);
        for (int i = 0; i < boards.size(); i++) {
            Outcome outcome = rehearsal.play(boards.get(i), 7 + i);
            tally.add(outcome);
            assertEquals(Set.of(), outcome.mishaps(), "seed " + outcome.seed());
        }
        assertEquals(0, tally.stuck(), tally.bad().toString());
        assertEquals(0, tally.aboveStock());
        assertEquals(0, tally.belowFail());
        // Few chips fail so near stock that nothing is left to gain.
        assertTrue(tally.finished() >= 34, tally.values().toString());
    }

    /**
     * Just above 2 V this meter shows whole hundredths, and all that the fine trimmer of this board can do is less than that: the coarse one has to
     * come down further before the target can be set.
     */
    @ParameterizedTest
    @ValueSource(longs = {6, 10, 12})
    void aTargetThatTheFineTrimmerDoesNotReachIsSetWithTheCoarseOne(long seed) {
        List<Board> boards = drawn(1, 7314);
        Outcome outcome = new Rehearsal(PROCEDURE, Meter.basic()).play(boards.get(7313), seed);
        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());
        assertFalse(outcome.harmed());
    }

    /** A meter that jumps from 5.999 V to 6.04 V where it changes its range: the fine trimmer goes on down there, the coarse one stays. */
    @Test
    void aGapBetweenTwoRangesIsNotChasedWithTheCoarseTrimmer() {
        Outcome outcome = new Rehearsal(PROCEDURE, Meter.middle(), 0.05)
                .play(drawn(1, 4512).get(4511), 4512);
        assertNotEquals(Outcome.Ending.STUCK, outcome.ending(), outcome.reason());
    }

    private static List<Board> drawn(long seed, int boards) {
        List<RegulatorFamily> families =
                RegulatorFamilies.of(BuiltIn.text("regulators.json")).all();
        return new RandomBoards(families, Rehearsal.chance(seed)).draw(boards);
    }
}
