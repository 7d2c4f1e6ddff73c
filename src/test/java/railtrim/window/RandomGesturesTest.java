package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/**
 * Somebody presses, types and resizes at random: no error, no word on the console, no gate passed, nothing lost, and the window answers. The long form has
 * 10,000 gestures: {@code mvn -Pproof test -Dtest=RandomGesturesTest}, with {@code -Dgestures.seed=N} the same ones again.
 */
class RandomGesturesTest {
    @TempDir
    Path folder;

    @Test
    void aFewHundredGesturesDoNoHarm() throws Exception {
        hold(Long.getLong("gestures.seed", 20), 240);
    }

    @Test
    @Tag("long")
    void tenThousandGesturesDoNoHarm() throws Exception {
        hold(Long.getLong("gestures.seed", System.nanoTime() % 1_000_000), 10_000);
    }

    private void hold(long seed, int gestures) throws Exception {
        System.out.println("random gestures: -Dgestures.seed=" + seed);
        // The toolkit has a remark of its own to make when it comes up.
        FxToolkit.registerPrimaryStage();
        PrintStream console = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        RandomGestures.Found found;
        try {
            found = RandomGestures.of(folder, seed, gestures);
        } finally {
            System.setErr(console);
        }
        System.out.println(found.gestures() + " gestures, " + found.answers() + " of them right answers, in "
                + found.files() + " files; " + found.longest());
        assertAll(
                "seed " + seed,
                () -> assertTrue(found.problems().isEmpty(), () -> String.join("\n", found.problems())),
                () -> assertEquals(List.of(), lines(said)),
                () -> assertEquals(
                        List.of(), found.frozen(), "the window was kept for more than " + Heartbeat.FROZEN + " ms"));
    }

    /** Where a window is resized while a frame is under way, the toolkit's drawing without a graphics card drops that frame with this remark. */
    private static List<String> lines(ByteArrayOutputStream said) {
        return said.toString(StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.contains("Too small int buffer size"))
                .toList();
    }
}
