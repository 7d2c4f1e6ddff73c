package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.quantity.Meter;

/** A job handed to others tells of the board, not of the person. */
class SharingTest {
    private static final Instant EVENING = Instant.parse("2026-03-01T21:17:40Z");

    @Test
    void noTextOfOnesOwnIsLeft() {
        Job job = job(
                new Fact.Note("scope", "board.name", "Anna’s organ"),
                new Fact.Note("scope", "chip.name", "QN-88"),
                new Fact.Note("fault.watch", "fault.text", "as with Bob’s, at 7 Mill Lane"),
                new Fact.Paused("dead", "ring Bob"),
                new Fact.Paused("dead", ""),
                new Fact.Skipped("load", "Bob has the meter"),
                new Fact.Reopened("dead", "Bob came in"),
                new Fact.Proposed("plan", "board.name", "Bob’s organ"),
                new Fact.Proposed("plan", "chip.name", "QN-88"));
        Sharing.Shared shared = Sharing.of(job, "an organ", "(left out)");
        String facts = shared.job().toString();
        assertFalse(facts.contains("Anna") || facts.contains("Bob"), facts);
        assertEquals("an organ", shared.job().name());
        assertEquals(new Fact.Note("scope", "board.name", "an organ"), fact(shared, 0));
        assertEquals(new Fact.Note("scope", "chip.name", "QN-88"), fact(shared, 1));
        assertEquals(new Fact.Paused("dead", ""), fact(shared, 4));
        assertEquals(4, shared.leftOut());
        assertEquals(List.of("QN-88"), shared.stays());
    }

    @Test
    void theDayAndHowLongThingsTookStayButNotTheTimeOfDay() {
        Job job = job(new Fact.Power("off", false), new Fact.Power("off", false));
        List<Entry> entries = Sharing.of(job, "x", "").job().entries();
        assertEquals(Instant.parse("2026-03-01T00:00:00Z"), entries.get(0).time());
        assertEquals(
                Duration.ofSeconds(20),
                Duration.between(entries.get(0).time(), entries.get(1).time()));
    }

    @Test
    void aFinishedJobIsStillFinishedWithTheSameFigures() {
        Procedure procedure = Procedure.builtIn();
        Board board = Board.of(BuiltIn.text("demo-data/boards/network-blade.json"));
        Job job = new Rehearsal(procedure, Meter.middle()).play(board, 1).job();
        State own = procedure.state(job);
        State shared = procedure.state(Sharing.of(job, "a blade", "(left out)").job());
        assertTrue(own.complete());
        assertTrue(shared.complete());
        assertEquals(own.figures().stock(), shared.figures().stock());
        assertEquals(own.figures().fitted(), shared.figures().fitted());
        assertEquals(own.figures().failVoltage(), shared.figures().failVoltage());
        assertEquals(own.figures().budget(), shared.figures().budget());
    }

    private static Fact fact(Sharing.Shared shared, int index) {
        return shared.job().entries().get(index).fact();
    }

    private static Job job(Fact... facts) {
        Job job = Job.empty("Anna’s organ");
        for (Fact fact : facts) {
            long last = job.last();
            job = job.with(new Entry(last + 1, EVENING.plusSeconds(20 * last), 1, 20_000 * last, fact));
        }
        return job;
    }
}
