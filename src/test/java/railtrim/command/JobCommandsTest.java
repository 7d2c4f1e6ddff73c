package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.practice.Board;

class JobCommandsTest {
    @TempDir
    private Path folder;

    @Test
    void theWizardKeepsAJobAndGoesOnWithIt() {
        String job = folder.resolve("synth.railtrim").toString();
        Ran first = Ran.reading("mains\nclosed\nblue synth\n", "text", job);
        assertEquals(0, first.exit(), first.err());
        Ran second = Ran.reading("adapter\n12V\n", "text", job);
        assertFalse(second.out().contains("“mains”"), "what was acknowledged is kept");
        Ran check = Ran.of("check", job, "--json");
        assertEquals(0, check.exit(), check.err());
        // two cautions, a name; taken up again; a supply, a voltage
        assertEquals(6, check.number("facts"));
        assertFalse(check.json().get("complete").getAsBoolean());
        assertTrue(check.json().get("problems").getAsJsonArray().isEmpty());
        assertEquals("synth", check.json().get("name").getAsString());
    }

    @Test
    void aJobIsSharedWithoutTheNamesAndNotesOfItsOwner() throws IOException {
        String job = folder.resolve("annas synth.railtrim").toString();
        Ran.reading("mains\nclosed\nblue synth\npause ring Bob\n", "text", job);
        String shared = folder.resolve("shared.railtrim").toString();
        Ran share = Ran.of("share", job, shared, "--name", "a synth", "--json");
        assertEquals(0, share.exit(), share.err());
        assertEquals(1, share.number("leftOut"));
        String lines = Files.readString(Path.of(shared));
        assertFalse(lines.matches("(?s).*(anna|blue|Bob).*"), lines);
        assertTrue(Ran.of("check", shared, "--json").json().get("elsewhere").getAsBoolean());
        assertEquals(2, Ran.of("share", job, shared).exit(), "a file is never written over");
    }

    @Test
    void aDamagedJobIsAProblemAndIsNotTouched() throws IOException {
        Path job = folder.resolve("synth.railtrim");
        Ran.reading("mains\nclosed\nblue synth\nadapter\n12V\n", "text", job.toString());
        String spoiled = Files.readString(job).replace("blue synth", "blue sinth");
        Files.writeString(job, spoiled);
        Ran check = Ran.of("check", job.toString(), "--json");
        assertEquals(1, check.exit());
        assertTrue(check.json().get("problems").getAsJsonArray().size() > 0);
        Ran people = Ran.of("check", job.toString());
        assertFalse(people.out().contains("command.") || people.out().contains("job."), people.out());
        Ran text = Ran.reading("help\n", "text", job.toString());
        assertEquals(2, text.exit());
        assertEquals(spoiled, Files.readString(job));
    }

    @Test
    void ofAJobMadeElsewhereOnlyThePlanIsTakenOver() throws IOException {
        String shown = "demo-data/finished-job.railtrim";
        Ran check = Ran.of("check", shown, "--json");
        assertEquals(0, check.exit(), check.err());
        assertTrue(check.json().get("elsewhere").getAsBoolean(), "the demo is nobody’s own");
        assertTrue(check.json().get("complete").getAsBoolean());
        assertEquals(3, check.number("version"));
        Ran text = Ran.reading("help\n", "text", shown);
        assertEquals(2, text.exit());
        assertTrue(text.out().contains("another computer"), text.out());
        String mine = folder.resolve("mine.railtrim").toString();
        Ran copy = Ran.of("copy", shown, mine, "--json");
        assertEquals(0, copy.exit(), copy.err());
        assertTrue(copy.json().get("plan").getAsBoolean());
        Ran after = Ran.of("check", mine, "--json");
        assertEquals("scope", after.json().get("step").getAsString(), "nothing is done yet");
        assertFalse(after.json().get("elsewhere").getAsBoolean());
        assertEquals(1, after.json().getAsJsonObject("kinds").size(), "proposals and nothing else");
        Ran wizard = Ran.reading("mains\nclosed\n", "text", mine);
        assertTrue(wizard.out().contains("The other job says"), wizard.out());
        assertEquals(2, Ran.of("copy", shown, mine).exit(), "a job is never written over");
    }

    @Test
    void onesOwnJobIsCopiedWhole() {
        String job = folder.resolve("synth.railtrim").toString();
        Ran.reading("mains\nclosed\nblue synth\n", "text", job);
        Ran copy = Ran.of("copy", job, folder.resolve("second synth.railtrim").toString(), "--json");
        assertEquals(0, copy.exit(), copy.err());
        assertFalse(copy.json().get("plan").getAsBoolean());
        assertEquals(3, copy.number("facts"));
    }

    @Test
    void whatIsInAFileIsListedForWhoeverHelps() throws IOException {
        Path job = folder.resolve("synth.railtrim");
        Ran.reading("mains\nclosed\nblue synth\nadapter\n12V\nback scope wrong supply\n", "text", job.toString());
        Ran check = Ran.of("check", job.toString(), "--facts");
        assertEquals(0, check.exit(), check.err());
        for (String told :
                new String[] {"File version", "on this computer", "Cautions read", "text=blue synth", "typed=12V"}) {
            assertTrue(check.out().contains(told), told + " in " + check.out());
        }
        // A stranger’s file may hold what a terminal would act on.
        Path strange = folder.resolve("strange.railtrim");
        Files.writeString(strange, "{\"format\":\"railtrim job\",\"version\":9,\"name\":\"\\u001b[2J\\u202eevil\"}\n");
        Ran hostile = Ran.of("check", strange.toString(), "--facts");
        assertFalse(hostile.out().contains("\u001b") || hostile.out().contains("\u202e"), hostile.out());
    }

    @Test
    void anUnfinishedJobIsReportedAsNotComplete() throws IOException {
        String job = folder.resolve("synth.railtrim").toString();
        Ran.reading("mains\nclosed\nblue synth\nadapter\n12V\n", "text", job);
        Path out = folder.resolve("new folder");
        Ran report = Ran.of("report", job, "--out", out.toString(), "--format", "md,html", "--json");
        assertEquals(0, report.exit(), report.err());
        assertEquals(2, report.json().getAsJsonArray("files").size());
        assertFalse(report.json().get("complete").getAsBoolean());
        for (var file : report.json().getAsJsonArray("files")) {
            String text = Files.readString(Path.of(file.getAsString()));
            assertTrue(text.contains("NOT COMPLETE") && text.contains("blue synth"), file.getAsString());
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsBadInput() throws IOException {
        String job = folder.resolve("synth.railtrim").toString();
        Ran.reading("mains\n", "text", job);
        Path file = Files.createFile(folder.resolve("file"));
        Ran report = Ran.of("report", job, "--out", file.resolve("below").toString());
        assertEquals(2, report.exit());
        assertEquals(1, report.err().lines().count(), report.err());
    }

    @Test
    void theWizardSaysWhereAJobCannotBeKept() {
        Ran ran =
                Ran.reading("", "text", folder.resolve("nowhere/synth.railtrim").toString());
        assertEquals(2, ran.exit());
        assertEquals(1, ran.err().lines().count(), ran.err());
    }

    @Test
    void aFileThatIsNoJobIsBadInput() throws IOException {
        Path other = folder.resolve("other.railtrim");
        Files.write(other, "hello\n".getBytes(StandardCharsets.UTF_8));
        assertEquals(2, Ran.of("check", other.toString()).exit());
        Files.write(other, new byte[0]);
        assertEquals(2, Ran.of("check", other.toString()).exit());
    }

    @Test
    void aRehearsalRepeatsWithItsSeed() {
        String[] line = {"rehearse", "demo-data/boards/sound-board.json", "--seed", "7", "--json"};
        Ran one = Ran.of(line);
        Ran again = Ran.of(line);
        assertEquals(one.out(), again.out());
        assertEquals(1, one.number("boards"));
        assertEquals(0, one.number("aboveStock"));
        assertEquals(0, one.number("belowFail"));
        assertEquals(one.number("finished") == 1 ? 0 : 1, one.exit());
    }

    @Test
    void aRehearsalIsKeptLikeARealJob() {
        Path out = folder.resolve("rehearsal");
        Ran ran = Ran.of(
                "rehearse", "demo-data/boards/sound-board.json", "--seed", "7", "--out", out.toString(), "--json");
        assertEquals(0, ran.exit(), ran.err());
        Path job = out.resolve("sound-board.railtrim");
        assertEquals(job.toString(), ran.json().getAsJsonArray("files").get(0).getAsString());
        Ran check = Ran.of("check", job.toString(), "--json");
        assertEquals(0, check.exit(), check.err());
        assertTrue(check.json().get("complete").getAsBoolean());
        Ran again = Ran.of("rehearse", "demo-data/boards/sound-board.json", "--out", out.toString());
        assertEquals(2, again.exit(), "an earlier job is never written over");
        assertEquals(
                2,
                Ran.of("rehearse", "demo-data/boards/sound-board.json", "--out", out.toString(), "--boards", "2")
                        .exit());
    }

    @Test
    void aBoardThatCannotBeDoneIsStoppedWithItsReason() {
        Ran ran = Ran.of("rehearse", "demo-data/boards/playout-module.json", "--json");
        assertEquals(1, ran.exit());
        assertEquals(1, ran.number("stopped"));
        assertTrue(ran.json()
                        .getAsJsonArray("outcomes")
                        .get(0)
                        .getAsJsonObject()
                        .get("reason")
                        .getAsString()
                        .length()
                > 20);
    }

    /** Each of the six boards teaches something of its own; the terminal says so at the end, as the window does. */
    @Test
    void aRehearsalEndsWithWhatTheBoardTeaches() throws IOException {
        Set<String> lessons = new TreeSet<>();
        try (Stream<Path> boards = Files.list(Path.of("demo-data", "boards"))) {
            for (Path board : boards.toList()) {
                lessons.add(Board.of(Files.readString(board)).label().teaches());
            }
        }
        assertEquals(6, lessons.size());
        Ran told = Ran.of("rehearse", "demo-data/boards/playout-module.json");
        String lesson = lessons.stream()
                .filter(each -> each.startsWith("When to stop."))
                .findFirst()
                .orElseThrow();
        assertTrue(told.out().replaceAll("\\s+", " ").contains(lesson), told.out());
        Ran json = Ran.of("rehearse", "demo-data/boards/playout-module.json", "--json");
        assertEquals(lesson, json.json().get("teaches").getAsString());
    }

    @Test
    void withoutABoardSomeAreDrawnByChance() {
        Ran ran = Ran.of("rehearse", "--boards", "4", "--seed", "3", "--json");
        assertEquals(4, ran.number("boards"), ran.err());
        assertEquals(0, ran.number("aboveStock"));
        assertEquals(0, ran.number("belowFail"));
        assertEquals(2, Ran.of("rehearse").exit());
    }

    @Test
    void manyRehearsalsGiveOutcomeFigures() {
        Ran ran = Ran.of("rehearse", "demo-data/boards/playout-module.json", "--boards", "3", "--json");
        assertEquals(3, ran.number("boards"));
        assertEquals(3, ran.number("stopped"));
        assertEquals(0, ran.number("finished"));
        assertEquals(0, ran.exit());
    }

    @Test
    void theMarginIsCountedFromTheRunsInAList() throws IOException {
        Path runs = folder.resolve("runs.csv");
        Files.writeString(runs, """
                run,volts,fault,cold,load
                1,3.00V,no,no,pattern
                1,2.95V,no,no,pattern
                1,2.90V,yes,no,pattern
                2,2.95V,no,yes,pattern
                2,2.90V,no,yes,pattern
                2,2.85V,yes,yes,pattern
                """);
        Ran ran = Ran.of("margin", runs.toString(), "--stock", "3.3V", "--json");
        assertEquals(0, ran.exit(), ran.err());
        // the highest voltage with a fault, and two runs that ended in one
        assertEquals(2.90, ran.number("fail"), 1e-9);
        assertEquals(2, ran.number("runs"));
        // middles 2.925 and 2.875 V, each known to 50 mV: √(2·25²/1 + 2·50²/12/2) mV
        assertEquals(Math.sqrt(2 * 25.0 * 25 + 50.0 * 50 / 12) / 1000, ran.number("spread"), 1e-9);
        double sum = ran.json().getAsJsonArray("budget").asList().stream()
                .mapToDouble(line -> line.getAsJsonObject().get("volts").getAsDouble())
                .sum();
        double recommended = ran.number("recommended");
        assertTrue(recommended >= 2.90 + sum - 1e-9 && recommended < 2.90 + sum + 0.005, ran.out());
    }

    @Test
    void aListOfRunsWithASlipIsRefusedWithItsLine() throws IOException {
        String head = "run,volts,fault\n";
        refusedList("", "columns");
        refusedList("volts,fault\n3V,no\n", "columns");
        refusedList(head, "no run");
        refusedList(head + "1,3.00,no\n", "Line 2");
        refusedList(head + "1,3.00V,no\n1,2.9R,yes\n", "Line 3");
        refusedList(head + "1,3.00V,maybe\n", "Line 2");
        refusedList(head + "one,3.00V,no\n", "Line 2");
        refusedList(head + "1,3.00V\n", "Line 2");
        refusedList(head + "1,300V,no\n", "Line 2");
        refusedList("run,run,volts,fault\n1,1,3V,no\n", "right file");
    }

    private void refusedList(String csv, String says) throws IOException {
        Path runs = folder.resolve("runs.csv");
        Files.writeString(runs, csv);
        Ran ran = Ran.of("margin", runs.toString(), "--json");
        assertEquals(2, ran.exit(), csv);
        assertEquals("", ran.out());
        assertEquals(1, ran.err().lines().count(), ran.err());
        assertTrue(ran.err().contains(says), ran.err());
    }

    @Test
    void theBlankWorksheetAndTheStickerAreWritten(@TempDir Path out) throws Exception {
        Ran sheet = Ran.of("worksheet", "--out", out.toString(), "--paper", "letter", "--json");
        assertEquals(0, sheet.exit(), sheet.err());
        String shown = "demo-data/finished-job.railtrim";
        Ran label = Ran.of("report", shown, "--out", out.toString(), "--format", "label", "--json");
        assertEquals(0, label.exit(), label.err());
        for (Ran ran : List.of(sheet, label)) {
            String file = ran.json().getAsJsonArray("files").get(0).getAsString();
            assertTrue(
                    Files.readString(Path.of(file), StandardCharsets.ISO_8859_1).startsWith("%PDF-"), file);
        }
        Ran paper = Ran.of("worksheet", "--out", out.toString(), "--paper", "a7");
        assertEquals(2, paper.exit());
        assertTrue(paper.err().contains("a4, letter"), paper.err());
    }

    @Test
    void theShelfListsTheJobsOfAFolderAndComparesThem(@TempDir Path out) throws Exception {
        Ran list = Ran.of("shelf", "demo-data", "--json");
        assertEquals(0, list.exit(), list.err());
        var job = list.json().getAsJsonArray("jobs").get(0).getAsJsonObject();
        assertEquals("finished", job.get("state").getAsString());
        assertEquals(
                job.get("new").getAsDouble() - job.get("fail").getAsDouble(),
                job.get("margin").getAsDouble(),
                1e-12);
        Ran compared = Ran.of("shelf", "demo-data", "--compare", "--out", out.toString(), "--format", "html,csv");
        assertEquals(0, compared.exit(), compared.err());
        assertTrue(compared.out().contains("comparison.html"), compared.out());
        assertEquals(0, Ran.of("shelf", out.toString()).exit(), "an empty shelf is no fault");
        assertEquals(2, Ran.of("shelf", out.resolve("nowhere").toString()).exit());
    }

    @Test
    void ofAFinishedJobThePlanCanBeTakenForAnotherBoard(@TempDir Path out) {
        Path next = out.resolve("second board.railtrim");
        Ran copy = Ran.of("copy", "demo-data/finished-job.railtrim", next.toString(), "--plan", "--json");
        assertEquals(0, copy.exit(), copy.err());
        assertTrue(copy.json().get("plan").getAsBoolean());
        Ran check = Ran.of("check", next.toString(), "--json");
        assertEquals("second board", check.json().get("name").getAsString());
        assertEquals("scope", check.json().get("step").getAsString(), "everything is still to be done");
    }
}
