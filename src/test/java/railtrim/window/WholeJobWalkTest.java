package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Board;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Meter;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** The whole job, every value typed and every button pressed from the keyboard alone. */
class WholeJobWalkTest {
    private static final int LONGEST = 1500;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"sound-board", "network-blade", "storage-controller", "delay-unit", "studio-clock"})
    void aWholeJobByKeyboardEndsWithAResistorThatIsSafeForTheBoard(String name) throws Exception {
        Board board = Practice.board(name);
        Bench bench = new Bench(board, Meter.middle(), new Random(11));
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window, bench);
            walk(window, desk, new Hand(bench));
            assertTrue(
                    desk.state().complete(), () -> "stands at " + desk.state().current());
            window.until("the checklist’s button", () -> window.has("export"));
            window.press(KeyCode.ENTER);
            window.until("word of the checklist", () -> window.has("sheet-close"));

            double added = ohmsOnTheChecklist(folder.resolve("jobs"));
            // The truth of the virtual board, which the window never shows.
            double lowest = board.loadedWithAdded(added);
            assertTrue(
                    lowest > board.failing().worst(),
                    () -> lowest + " V against " + board.failing().worst());
            assertTrue(board.withAdded(added) < board.stock());
            assertTrue(bench.highestSeen() <= board.stock() + 0.0005, () -> bench.highestSeen() + " V seen");
            List<String> written = endings(folder.resolve("jobs"));
            assertTrue(written.containsAll(List.of("csv", "html", "md", "pdf")), written::toString);
        }
    }

    @Test
    void aVoltageSetByACodeEndsOnTheStopPage() throws Exception {
        Bench bench = new Bench(Practice.board("playout-module"), Meter.middle(), new Random(11));
        try (Opened window = Opened.in(folder)) {
            Desk desk = open(window, bench);
            walk(window, desk, new Hand(bench));
            assertInstanceOf(State.Card.Stop.class, desk.state().card().orElseThrow());
            window.until("the way back", () -> window.has("stop-back"));
        }
    }

    /** What a reader of the exported checklist would buy: "680 Ω", "470 Ω + 220 Ω" in a row, "1 kΩ ∥ 2.2 kΩ" side by side. */
    private static double ohmsOnTheChecklist(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            Path checklist = files.filter(file -> file.toString().endsWith(".md"))
                    .findFirst()
                    .orElseThrow();
            String value = Files.readAllLines(checklist).stream()
                    .filter(line -> line.startsWith("- **Value**: "))
                    .findFirst()
                    .map(line -> line.substring(line.indexOf(": ") + 2))
                    .orElseThrow();
            double[] values = Stream.of(value.split(" [+∥] "))
                    .mapToDouble(part -> QuantityReader.read(part, Unit.OHM).value())
                    .toArray();
            return value.contains("∥")
                    ? 1 / Arrays.stream(values).map(ohms -> 1 / ohms).sum()
                    : Arrays.stream(values).sum();
        }
    }

    private static Desk open(Opened window, Bench bench) throws Exception {
        return window.fx(() -> {
            Course course = new Course(
                    Procedure.builtIn(), new MemoryLog(bench.board().label().name(), bench));
            JobPage page = JobPage.practice(window.shell, course, bench);
            window.shell.show(page);
            return page.desk();
        });
    }

    private static void walk(Opened window, Desk desk, Hand hand) throws Exception {
        Typist typist = new Typist(window, desk);
        for (int i = 0; i < LONGEST; i++) {
            Answer answer = hand.next(desk.state(), desk.course());
            if (answer instanceof Answer.Done) {
                return;
            }
            if (answer instanceof Answer.Stuck stuck) {
                throw new AssertionError(stuck.why());
            }
            typist.give(answer);
            if (desk.nextOpen()) {
                window.until("Next in focus", () -> window.focused().equals("next"));
                window.press(KeyCode.ENTER);
            }
        }
        throw new AssertionError("the job does not end");
    }

    private static List<String> endings(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(name.lastIndexOf('.') + 1))
                    .sorted()
                    .toList();
        }
    }
}
