package railtrim.window.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Job;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.quantity.Meter;

class HintsTest {
    private static final Words WORDS = Words.english();
    private static final Procedure PROCEDURE = Procedure.builtIn();

    @Test
    void everyQuestionHasAHintThatIsADeedOnTheBench() {
        Figures nothing = PROCEDURE.state(Job.empty("hints")).figures();
        Set<String> given = new TreeSet<>();
        for (Step step : PROCEDURE.steps()) {
            for (Field field : step.fields()) {
                String hint = Hints.of(field, nothing);
                assertTrue(WORDS.has("window.bench.hint." + hint), field.id() + ": " + hint);
                given.add(hint);
            }
        }
        assertTrue(given.size() > 20, "the hints tell deeds apart: " + given);
    }

    /** What a person can read there; everything else is seen, measured or chosen. */
    @Test
    void toThePapersIsSentOnlyWhoFindsTheAnswerThere() {
        Figures nothing = PROCEDURE.state(Job.empty("hints")).figures();
        Set<String> sent = new TreeSet<>();
        for (Step step : PROCEDURE.steps()) {
            for (Field field : step.fields()) {
                if (Hints.of(field, nothing).equals("papers")) {
                    sent.add(field.id().replaceAll("^pin\\..*", "pin").replaceAll("^(sheet|range)\\..*", "$1"));
                }
            }
        }
        assertEquals(
                new TreeSet<>(Set.of(
                        "board.name",
                        "chip.name",
                        "current.known",
                        "load.current",
                        "load.name",
                        "meter.class",
                        "pin",
                        "place.pair",
                        "rail.highest",
                        "range",
                        "rated.high",
                        "rated.known",
                        "rated.low",
                        "reg.control",
                        "reg.family",
                        "reg.marking",
                        "reg.outline",
                        "sheet",
                        "supply.kind")),
                sent);
    }

    /** Reference between OUT and ADJ: the leg from ADJ to ground lowers, the other one raises. */
    @Test
    void aBlownChipIsBlamedOnWhereThePartWasSoldered() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        Bench bench = new Bench(board, Meter.middle(), new Random(1));
        assertEquals("wrong-leg", Blame.of(bench, Optional.of(new Node.Pair(Node.OUTPUT, Node.ADJUST))));
        assertEquals("wrong-pins", Blame.of(bench, Optional.of(new Node.Pair(Node.INPUT, Node.ADJUST))));
        assertEquals("open", Blame.of(bench, Optional.of(new Node.Pair(Node.ADJUST, Node.GROUND))));
        assertEquals("bare", Blame.of(bench, Optional.empty()));
        for (String blame : new String[] {"wrong-leg", "wrong-pins", "open", "bare"}) {
            assertTrue(WORDS.has("window.bench.blame." + blame));
        }
    }
}
