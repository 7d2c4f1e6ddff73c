package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.quantity.Meter;

/** A job made by hand can hold any answer and any number; the state is worked out all the same, and what cannot be known is empty. */
class StrangersJobTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    @Test
    void noSingleAnswerOrReadingStopsTheSums() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/network-blade.json"));
        List<Entry> honest =
                new Rehearsal(PROCEDURE, Meter.middle()).play(board, 1).job().entries();
        Set<String> tried = new HashSet<>();
        for (int i = 0; i < honest.size(); i++) {
            for (Fact odd : oddOnes(honest.get(i).fact(), tried)) {
                List<Entry> job = new ArrayList<>(honest);
                Entry entry = honest.get(i);
                job.set(i, new Entry(entry.sequence(), entry.time(), entry.session(), entry.tick(), odd));
                assertDoesNotThrow(() -> workOutEverything(new Job("x", job)), odd::toString);
            }
        }
        assertTrue(tried.size() > 60, "every field of a whole job was tried");
    }

    @Test
    void anAlarmForNoKnownReasonStillMakesSafeInWords() {
        Entry alarm = new Entry(1, java.time.Instant.EPOCH, 1, 0, new Fact.Alarm("scope", "no such reason"));
        State state = PROCEDURE.state(new Job("x", List.of(alarm)));
        State.Card.MakeSafe card = (State.Card.MakeSafe) state.card().orElseThrow();
        assertTrue(Words.english().has(card.reason().key()));
    }

    private static List<Fact> oddOnes(Fact fact, Set<String> tried) {
        if (fact instanceof Fact.Choice choice && tried.add(choice.field())) {
            return List.of(new Fact.Choice(choice.step(), choice.field(), "never offered"));
        } else if (fact instanceof Fact.Reading reading && tried.add(reading.field())) {
            return List.of(
                    new Fact.Reading(reading.step(), reading.field(), 0, reading.unit(), "0"),
                    new Fact.Reading(reading.step(), reading.field(), -1e12, reading.unit(), "less than nothing"));
        }
        return List.of();
    }

    private static void workOutEverything(Job job) {
        Figures figures = PROCEDURE.state(job).figures();
        figures.slips();
        figures.points();
        figures.solution();
        figures.start();
        figures.nextTarget();
        figures.trimmers();
        figures.trimmerInHand();
        figures.failVoltage();
        figures.budget();
        figures.resistors();
        figures.chosen();
        figures.powers();
    }
}
