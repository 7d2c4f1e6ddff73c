package railtrim.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;

/** What was taken back stays in the record, and says that it was. */
class TakenBackTest {
    @TempDir
    Path folder;

    @Test
    void anAnswerTakenBackIsInTheRecordAndMarked() throws IOException {
        Course course = new Course(Procedure.builtIn(), new MemoryLog("organ", Time.system()));
        course.acknowledge("mains");
        course.acknowledge("closed-supply");
        course.type("board.name", "wrong organ", false);
        course.takeBack();
        course.type("board.name", "right organ", false);
        List<Path> files = ReportWriter.write(
                course.state(), course.procedure(), Words.english(), folder, EnumSet.of(Format.MARKDOWN), Paper.A4);
        List<String> lines = Files.readAllLines(files.get(0));
        assertEquals(
                1,
                lines.stream()
                        .filter(line -> line.contains("wrong organ") && line.contains("taken back"))
                        .count());
        assertFalse(lines.stream().anyMatch(line -> line.contains("right organ") && line.contains("taken back")));
        assertTrue(lines.stream().anyMatch(line -> line.contains("Taken back: entry 3")), lines::toString);
    }

    /** Another job takes over what counts, not what was taken back. */
    @Test
    void aPlanHoldsNothingThatWasTakenBack() {
        Course course = new Course(Procedure.builtIn(), new MemoryLog("organ", Time.system()));
        course.acknowledge("mains");
        course.acknowledge("closed-supply");
        course.type("board.name", "organ", false);
        course.choose("supply.kind", "adapter");
        course.type("rail.highest", "12 V", false);
        course.type("chip.name", "SOUND 8", false);
        course.takeBack();
        List<Fact> facts =
                course.state().job().entries().stream().map(Entry::fact).toList();
        assertTrue(facts.stream()
                .anyMatch(fact -> fact instanceof Fact.Note note && note.text().equals("SOUND 8")));
        assertTrue(TakeOver.plan(course.state().job()).stream()
                .noneMatch(fact -> ((Fact.Proposed) fact).value().equals("SOUND 8")));
    }
}
