package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** Another person’s finished job says what is printed on the parts. What they read, did and confirmed says nothing about the board here. */
class TakeOverTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    private static final Job FINISHED = new Rehearsal(PROCEDURE, Meter.middle())
            .play(Board.of(BuiltIn.text("demo-data/boards/sound-board.json")), 1)
            .job();

    private static Job plan(Job job) {
        List<Entry> entries = new ArrayList<>();
        for (Fact fact : TakeOver.plan(job)) {
            entries.add(new Entry(entries.size() + 1, Instant.EPOCH, 1, 0, fact));
        }
        return new Job(job.name(), entries);
    }

    @Test
    void aPlanFinishesNoStepAcknowledgesNothingAndOpensNothing() {
        State taken = PROCEDURE.state(plan(FINISHED));
        State empty = PROCEDURE.state(Job.empty("x"));
        assertTrue(PROCEDURE.state(FINISHED).complete());
        for (int i = 0; i < empty.steps().size(); i++) {
            assertEquals(empty.steps().get(i), taken.steps().get(i), "as if nothing had been written");
        }
        assertEquals(State.Power.OFF, taken.power());
        assertEquals(Optional.empty(), taken.card());
    }

    @Test
    void namesMarkingAndPinsAreProposed() {
        Figures taken = PROCEDURE.state(plan(FINISHED)).figures();
        Figures before = PROCEDURE.state(FINISHED).figures();
        for (String name : List.of("board.name", "chip.name", "reg.marking", "load.name")) {
            assertEquals(before.text(name), taken.proposed(name), name);
            assertEquals(Optional.empty(), taken.text(name));
        }
        for (String choice : List.of("reg.family", "reg.outline", "pin.1", "pin.2", "pin.3")) {
            assertEquals(before.choice(choice), taken.proposed(choice), choice);
            assertEquals(Optional.empty(), taken.choice(choice));
        }
    }

    @Test
    void nothingMeasuredIsProposed() {
        Set<String> proposed = TakeOver.plan(FINISHED).stream()
                .map(fact -> ((Fact.Proposed) fact).field())
                .collect(Collectors.toSet());
        Set<String> printedNumbers = Set.of("rated.low", "rated.high");
        FINISHED.entries().stream()
                .map(Entry::fact)
                .filter(Fact.Reading.class::isInstance)
                .map(fact -> ((Fact.Reading) fact).field())
                .filter(field -> !printedNumbers.contains(field) && !field.startsWith("sheet."))
                .forEach(field -> assertTrue(!proposed.contains(field), field));
        assertTrue(Set.of("place.pair", "place.leg", "supply.kind", "meter.class", "work.off").stream()
                .noneMatch(proposed::contains));
    }

    @Test
    void whatAStrangerWroteIsMadePlainAndKeptShort() {
        Job hostile = new Job(
                "x",
                List.of(
                        entry(1, new Fact.Note("marking", "reg.marking", "LM\u202e317\u0007")),
                        entry(2, new Fact.Note("scope", "board.name", "x".repeat(TakeOver.LONGEST + 1))),
                        entry(3, new Fact.Reading("datasheet", "sheet.reference", 1.25, Unit.VOLT, "1.25 V")),
                        entry(4, new Fact.Choice("pins", "pin.9", "adjust")),
                        entry(5, new Fact.Note("marking", "reg.marking", "LM\u202e338"))));
        assertEquals(
                List.of(
                        new Fact.Proposed("plan", "reg.marking", "LM338"),
                        new Fact.Proposed("plan", "sheet.reference", "1.25 V")),
                TakeOver.plan(hostile));
    }

    private static Entry entry(long sequence, Fact fact) {
        return new Entry(sequence, Instant.EPOCH, 1, 0, fact);
    }
}
