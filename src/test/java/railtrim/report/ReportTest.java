package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Section;

/** The checklist of a whole job, played on a practice board, and of its first half. */
class ReportTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Words WORDS = Words.english();
    private static State finished;
    private static Checklist checklist;

    @TempDir
    Path folder;

    @BeforeAll
    static void playAJob() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/network-blade.json"));
        Job job = new Rehearsal(PROCEDURE, Meter.middle()).play(board, 1).job();
        finished = PROCEDURE.state(job);
        checklist = Checklist.of(finished, PROCEDURE, WORDS);
    }

    /** Someone who undoes it holds the meter to the paper: a negative rail stands there as the meter shows it. */
    @Test
    void theVoltagesToMeasureOfANegativeRailHaveTheirSign() throws IOException {
        Board board = Board.of(BuiltIn.text("demo-data/boards/delay-unit.json"));
        State state = PROCEDURE.state(
                new Rehearsal(PROCEDURE, Meter.middle()).play(board, 1).job());
        String stock = Display.volts(-state.figures().stock().orElseThrow());
        assertTrue(stock.startsWith("−"), stock);
        Path page = write(state).stream()
                .filter(file -> file.toString().endsWith(".md"))
                .findFirst()
                .orElseThrow();
        String text = Files.readString(page);
        assertTrue(text.contains("The rail should read " + stock), text);
        assertTrue(text.contains("This rail is negative"), text);
        String lowered = Display.volts(-state.figures().fitted().orElseThrow());
        assertTrue(text.contains("proven at " + lowered), text);
    }

    @Test
    void aFinishedJobIsNotMarkedAndLacksNothing() throws IOException {
        assertTrue(checklist.complete());
        assertEquals(List.of(), checklist.missing());
        for (Path file : write(finished)) {
            assertFalse(Files.readString(file).contains("NOT COMPLETE"), file.toString());
        }
        assertFalse(html(finished).contains("class=\"watermark\""));
    }

    /** Opening a finished job to print it writes down that it was taken up again; that is no work on the board. */
    @Test
    void aFinishedJobThatIsOnlyOpenedAgainIsNoYounger() {
        List<Entry> entries = new ArrayList<>(finished.job().entries());
        Entry last = entries.get(entries.size() - 1);
        entries.add(new Entry(
                last.sequence() + 1,
                last.time().plusSeconds(400L * 24 * 3600),
                last.session() + 1,
                0,
                new Fact.Resumed(last.fact().step(), 400L * 24 * 3600)));
        State opened = PROCEDURE.state(new Job(finished.job().name(), entries));
        assertEquals(
                Label.of(finished, PROCEDURE, WORDS).lines(),
                Label.of(opened, PROCEDURE, WORDS).lines());
        String day = last.time().toString().substring(0, 10);
        assertTrue(
                text(Checklist.of(opened, PROCEDURE, WORDS).sections().get(0)).contains(day));
    }

    @Test
    void everyReadingNoteAndCautionOfTheJobIsInTheChecklist() {
        String text = allText(checklist);
        for (Entry entry : finished.job().entries()) {
            Fact fact = entry.fact();
            if (fact instanceof Fact.Reading reading) {
                assertTrue(text.contains(reading.typed()), entry.toString());
            } else if (fact instanceof Fact.Note note) {
                assertTrue(text.contains(note.text()), entry.toString());
            } else if (fact instanceof Fact.Acknowledged acknowledged) {
                assertTrue(
                        text.contains(PROCEDURE.caution(acknowledged.caution()).hazard(Words.english())),
                        entry.toString());
            }
        }
        long told = finished.job().entries().stream()
                .filter(entry -> !(entry.fact() instanceof Fact.Acknowledged))
                .count();
        // The way down's trials, pairs and so on come on top.
        assertTrue(rows(checklist) >= told, rows(checklist) + " rows for " + told + " entries");
    }

    @Test
    void theFiguresAtTheTopAreThoseOfTheJob() {
        String summary = text(section("What was done"));
        double stock = finished.figures().stock().orElseThrow();
        double fitted = finished.figures().fitted().orElseThrow();
        assertTrue(summary.contains("from " + Display.volts(stock) + " to " + Display.volts(fitted)), summary);
        String resistor = text(section("The resistor"));
        var chosen = finished.figures().chosen().orElseThrow();
        assertTrue(
                resistor.contains(Display.volts(chosen.lowest()) + " to " + Display.volts(chosen.highest())), resistor);
        String margin = text(section("How far it stays away from the fault"));
        finished.figures()
                .budget()
                .orElseThrow()
                .lines()
                .forEach(line -> assertTrue(margin.contains(Display.volts(line.volts())), line.toString()));
        assertTrue(
                margin.contains("= "
                        + Display.volts(finished.figures().budget().get().fail()
                                + finished.figures().budget().get().sum())),
                margin);
    }

    @Test
    void aReadingStandsBesideTheRangeThatWasShownBeforeItWasTyped() {
        // The first step down: one decrement below the start, not below where the way down ended.
        double first = finished.figures().trials().get(0).volts();
        Block.Grid grid = section("One small step down").blocks().stream()
                .filter(Block.Grid.class::isInstance)
                .map(Block.Grid.class::cast)
                .findFirst()
                .orElseThrow();
        String target = Display.volts(first - finished.figures().stepVolts());
        double low = volts(grid.rows().get(0).get(4), 0);
        double high = volts(grid.rows().get(0).get(4), 1);
        assertEquals(first - finished.figures().stepVolts(), (low + high) / 2, 0.002, target);
    }

    @Test
    void theRunsThatEndedInAFaultAndWhatItLookedLikeAreKept() {
        String down = text(section("The way down and the faults"));
        assertTrue(down.contains("FAULT"));
        finished.job().entries().stream()
                .filter(entry ->
                        entry.fact() instanceof Fact.Note note && note.field().equals("fault.text"))
                .forEach(entry -> assertTrue(down.contains(((Fact.Note) entry.fact()).text())));
        assertTrue(text(section("Breaks, alarms and second thoughts")).contains("Alarm: The board showed a fault."));
    }

    @Test
    void anUnfinishedJobIsMarkedAtTheTopAndOnEveryPart() throws IOException {
        for (int length : List.of(0, 1, 40, 120, 170, finished.job().entries().size() - 1)) {
            State half = stateOfFirst(length);
            Checklist unfinished = Checklist.of(half, PROCEDURE, WORDS);
            assertFalse(unfinished.complete());
            assertFalse(unfinished.missing().isEmpty());
            unfinished.sections().stream()
                    .filter(section -> section.level() == 2)
                    .forEach(section -> assertEquals("NOT COMPLETE", section.mark(), section.title()));
            String page = HtmlReport.write(unfinished, WORDS);
            assertTrue(page.contains("<div class=\"watermark\" aria-hidden=\"true\">NOT COMPLETE</div>"));
            assertTrue(MarkdownReport.write(unfinished, "")
                    .startsWith(
                            "# Checklist: " + MarkdownReport.escape(half.job().name()) + " (NOT COMPLETE)"));
        }
    }

    @Test
    void anUnfinishedJobNeverClaimsAResistorWasFitted() {
        String text = allText(Checklist.of(stateOfFirst(120), PROCEDURE, WORDS));
        assertTrue(text.contains("No fixed resistor has been fitted."));
        assertTrue(text.contains("A trimmer is still on this board."));
        assertFalse(text.contains("lowered on purpose"));
        assertTrue(allText(Checklist.of(stateOfFirst(10), PROCEDURE, WORDS)).contains("nothing to undo"));
    }

    @Test
    void aReopenedStepAndItsOldReadingsStayInTheRecord() {
        Job job = finished.job();
        Entry last = job.entries().get(job.entries().size() - 1);
        Job again = job.with(
                new Entry(last.sequence() + 1, last.time(), 1, last.tick(), new Fact.Reopened("legs", "lamp was on")));
        Checklist reopened = Checklist.of(PROCEDURE.state(again), PROCEDURE, WORDS);
        Section legs = reopened.sections().stream()
                .filter(section -> section.title().equals(WORDS.of("step.legs.title")))
                .findFirst()
                .orElseThrow();
        assertTrue(text(legs).contains("Opened again: lamp was on"));
        assertTrue(text(legs).contains("replaced later"));
        assertFalse(reopened.complete());
    }

    @Test
    void theSameJobGivesTheSameBytes() throws IOException {
        List<Path> first = write(finished);
        List<byte[]> bytes = first.stream().map(ReportTest::bytes).toList();
        State again =
                PROCEDURE.state(new Job(finished.job().name(), finished.job().entries()));
        List<Path> second = write(again);
        assertEquals(first, second);
        for (int i = 0; i < first.size(); i++) {
            assertArrayEquals(bytes.get(i), bytes(second.get(i)));
        }
    }

    @Test
    void onlyWhatWasAskedForIsWrittenAndNothingElseIsLeftInTheFolder() throws IOException {
        Path there = folder.resolve("new").resolve("folder");
        List<Path> written =
                ReportWriter.write(stateOfFirst(3), PROCEDURE, WORDS, there, Set.of(Format.MARKDOWN), Paper.A4);
        try (var files = Files.list(there)) {
            assertEquals(written, files.toList());
        }
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldInWords() throws IOException {
        Path plain = Files.createFile(folder.resolve("plain"));
        BadInput bad = assertThrows(
                BadInput.class,
                () -> ReportWriter.write(stateOfFirst(0), PROCEDURE, WORDS, plain, Set.of(Format.HTML), Paper.A4));
        assertTrue(WORDS.of(bad.told()).contains("could not be written"));
    }

    private static State stateOfFirst(int facts) {
        return PROCEDURE.state(
                new Job(finished.job().name(), finished.job().entries().subList(0, facts)));
    }

    private List<Path> write(State state) {
        return ReportWriter.write(
                state, PROCEDURE, WORDS, folder, EnumSet.complementOf(EnumSet.of(Format.PDF, Format.LABEL)), Paper.A4);
    }

    private String html(State state) throws IOException {
        return Files.readString(write(state).get(0));
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Section section(String title) {
        return checklist.sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static double volts(String range, int which) {
        return Double.parseDouble(range.split(" V")[which].replace("to", "").strip());
    }

    private static String allText(Checklist list) {
        return list.sections().stream().map(ReportTest::text).collect(Collectors.joining("\n"));
    }

    private static String text(Section section) {
        return section.blocks().stream().map(Object::toString).collect(Collectors.joining("\n"));
    }

    private static long rows(Checklist list) {
        return list.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Grid.class::isInstance)
                .mapToLong(block -> ((Block.Grid) block).rows().size())
                .sum();
    }
}
