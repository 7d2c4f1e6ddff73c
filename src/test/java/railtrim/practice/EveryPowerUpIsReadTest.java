package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Fact;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** Whenever the board is switched on, its voltage is read before anything else is asked: also on the second and third way down. */
class EveryPowerUpIsReadTest {
    @Test
    void theFirstThingAfterSwitchingOnIsAVoltage() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        Outcome outcome = new Rehearsal(Procedure.builtIn(), Meter.basic()).play(board, 1);
        assertEquals(Outcome.Ending.FINISHED, outcome.ending(), outcome.reason());

        List<Fact> facts =
                outcome.job().entries().stream().map(entry -> entry.fact()).toList();
        List<Integer> powerUps = IntStream.range(0, facts.size())
                .filter(i -> facts.get(i) instanceof Fact.Power power && power.on())
                .boxed()
                .toList();
        assertTrue(
                powerUps.stream()
                                .filter(i -> facts.get(i).step().equals("down.on"))
                                .count()
                        >= 2,
                "this board is run down more than once");
        powerUps.forEach(i -> assertTrue(
                facts.get(i + 1) instanceof Fact.Reading reading
                        && reading.step().equals(facts.get(i).step()),
                facts.get(i) + " was followed by " + facts.get(i + 1)));
    }
}
