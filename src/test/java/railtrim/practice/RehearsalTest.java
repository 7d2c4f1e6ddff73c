package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
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
        "network-blade, fine"
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
}
