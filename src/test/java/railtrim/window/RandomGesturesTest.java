package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/**
 * Somebody presses, types and resizes at random: no error, no word on the console, no gate passed, nothing lost, and the window answers. The long form has
 * 10,000 gestures: {@code mvn -Pproof test -Dtest=RandomGesturesTest}, with {@code -Dgestures.seed=N} the same ones again, and with
 * {@code -Dgestures.sitting=K} one sitting of them by itself.
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
        RandomGestures.Found found = hold(Long.getLong("gestures.seed", System.nanoTime() % 1_000_000), 10_000);
        assertEquals(List.of(), found.frozen(), "the window was kept for more than " + Heartbeat.FROZEN + " ms");
    }

    private RandomGestures.Found hold(long seed, int gestures) throws Exception {
        System.out.println("random gestures: -Dgestures.seed=" + seed);
        // The toolkit has a remark of its own to make when it comes up.
        FxToolkit.registerPrimaryStage();
        PrintStream console = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        RandomGestures.Found found;
        try {
            Integer again = Integer.getInteger("gestures.sitting");
            found = again == null
                    ? RandomGestures.of(folder, seed, gestures)
                    : RandomGestures.sitting(folder, seed, again);
        } finally {
            System.setErr(console);
        }
        System.out.println(found.gestures() + " gestures, " + found.answers() + " of them right answers, in "
                + found.files() + " files; " + found.longest());
        assertAll(
                "seed " + seed,
                () -> assertTrue(found.problems().isEmpty(), () -> String.join("\n", found.problems())),
                () -> assertEquals(List.of(), lines(said)));
        return found;
    }

    /**
     * What was said on the console, a line with the trace below it as one. Where a window is resized while a frame is under way, the toolkit's painter
     * for screens in memory drops that frame and says so; that is none of ours.
     */
    private static List<String> lines(ByteArrayOutputStream said) {
        return Pattern.compile("\\R(?!\\s)")
                .splitAsStream(said.toString(StandardCharsets.UTF_8).strip())
                .filter(each -> !each.isEmpty() && !each.contains("com.sun.javafx.tk.quantum.UploadingPainter"))
                .toList();
    }
}
