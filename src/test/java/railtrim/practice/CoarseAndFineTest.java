package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.BuiltIn;
import railtrim.job.Fact;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** The whole job with a coarse and a fine trimmer in series, which is what is offered first where one trimmer alone is too coarse. */
class CoarseAndFineTest {
    private static final long SEED = 40_25;

    private static Optional<String> picked(Outcome outcome) {
        return outcome.job().entries().stream()
                .map(entry -> entry.fact())
                .filter(fact ->
                        fact instanceof Fact.Choice choice && choice.field().equals("trimmer.pick"))
                .map(fact -> ((Fact.Choice) fact).option())
                .reduce((first, last) -> last);
    }

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "storage-controller", "network-blade"})
    void theDemoBoardsAreTrimmedWithAPair(String board) {
        Outcome outcome = new Rehearsal(Procedure.builtIn(), Meter.middle()).play(DemoBoards.named(board), SEED);
        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());
        assertTrue(
                picked(outcome).orElseThrow().matches("\\d+x\\d+\\+\\d+x\\d+"),
                picked(outcome).toString());
        safe(outcome, board);
    }

    @Test
    void onBoardsDrawnByChanceNoChipGetsMoreThanStockOrLessThanItsFailVoltage() {
        List<Board> boards = new RandomBoards(
                        RegulatorFamilies.of(BuiltIn.text("regulators.json")).all(), Rehearsal.chance(SEED))
                .draw(8);
        Rehearsal rehearsal = new Rehearsal(Procedure.builtIn(), Meter.middle());
        int pairs = 0;
        for (int i = 0; i < boards.size(); i++) {
            Outcome outcome = rehearsal.play(boards.get(i), SEED + i);
            String what = "seed " + SEED + " board " + i + ": " + outcome.values();
            assertNotEquals(Outcome.Ending.STUCK, outcome.ending(), what);
            safe(outcome, what);
            pairs += picked(outcome).filter(pick -> pick.contains("+")).isPresent() ? 1 : 0;
        }
        assertTrue(pairs >= 5, "seed " + SEED + ": only " + pairs + " jobs used a pair");
    }

    private static void safe(Outcome outcome, String what) {
        assertFalse(outcome.aboveStock(), what);
        assertFalse(outcome.belowFail(), what);
        assertTrue(outcome.mishaps().isEmpty(), what + outcome.mishaps());
    }

    @Test
    void aPartWithTwoScrewsAddsBothAndIsAtItsEndOnlyWithBothDown() {
        Bench bench = new Bench(DemoBoards.named("sound-board"), Meter.fine(), Rehearsal.chance(1));
        Part.Trimmer pair = bench.takeTrimmers(10_000, 200, 25, 0, 100);
        double both = pair.ohms();
        assertEquals(10_300, both, 1 + 1, "10 kΩ, 200 Ω and a 100 Ω stop resistor of 1 %");
        bench.turn(pair, 0);
        assertFalse(pair.atItsEnd());
        bench.turnFine(pair, 0);
        assertTrue(pair.atItsEnd());
        // What is left is the stop and two end resistances of at most 1 % or 2 Ω each (Bourns 3296).
        assertTrue(pair.ohms() >= 99 && pair.ohms() <= 101 + 100 + 2, pair.ohms() + " Ω");
    }
}
