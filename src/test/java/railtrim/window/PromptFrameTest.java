package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.window.kit.Frames;
import railtrim.window.kit.PromptFrame;

/** What a deed did is shown at once, and not when the toolkit’s clock next strikes. */
class PromptFrameTest {
    /** The clock strikes sixty times a second and would now and then be in time by chance. */
    private static final int TIMES = 40;

    @TempDir
    Path folder;

    @Test
    void theFrameComesBeforeAnythingThatIsAskedOfTheWindowLater() throws Exception {
        try (Opened window = Opened.in(folder)) {
            assertTrue(window.fx(PromptFrame::known), "this toolkit does not let itself be asked: see PromptFrame");
            int inTime = 0;
            for (int i = 0; i < TIMES; i++) {
                if (window.fx(() -> frameFirst(window.shell.scene())).get(20, TimeUnit.SECONDS)) {
                    inTime++;
                }
            }
            assertEquals(TIMES, inTime);
        }
    }

    /** The frame is asked for in what runs first, so what only the second one asks for has to come after it. */
    private static CompletableFuture<Boolean> frameFirst(Scene scene) {
        CompletableFuture<Boolean> first = new CompletableFuture<>();
        boolean[] drawn = new boolean[1];
        Frames.whenLaidOut(scene, () -> drawn[0] = true);
        PromptFrame.afterDeed();
        Platform.runLater(() -> Platform.runLater(() -> first.complete(drawn[0])));
        return first;
    }
}
