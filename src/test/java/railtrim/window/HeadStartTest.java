package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start page is made beside the toolkit, with all that it needs, and needs no window. */
class HeadStartTest {
    /** Ready in a Java of its own, where no toolkit runs, as at a real start. */
    private static final List<String> NEEDED = List.of(
            "javafx.scene.control.skin.ButtonSkin",
            "javafx.scene.layout.FlowPane",
            "javafx.scene.control.Labeled$StyleableProperties",
            "com.sun.javafx.text.PrismTextLayout",
            "railtrim.window.kit.Tile",
            "railtrim.window.kit.SparingScroll");

    /** The toolkit makes these ready on its own thread meanwhile; two threads that wait for each other’s classes never end. */
    private static final List<String> NOT_TO_BE_TOUCHED = List.of(
            "javafx.stage.Window",
            "javafx.stage.Stage",
            "com.sun.javafx.stage.WindowHelper",
            "com.sun.javafx.stage.StageHelper");

    @TempDir
    Path folder;

    @Test
    void whatTheFirstPageNeedsIsReadyWithoutAWindow() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load,class+init=info:file=" + folder.resolve("classes"),
                        "-Dprism.order=sw",
                        "-Dglass.platform=Monocle",
                        "-Dmonocle.platform=Headless",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Alone.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        assertEquals("done", said.strip());
        String loaded = Files.readString(folder.resolve("classes"));
        assertEquals(
                List.of(),
                NEEDED.stream()
                        .filter(name -> !loaded.contains(" " + name + " "))
                        .toList());
        assertEquals(
                List.of(),
                NOT_TO_BE_TOUCHED.stream()
                        .filter(name -> loaded.contains("Initializing '" + name.replace('.', '/') + "'"))
                        .toList());
    }

    /** In a Java of its own. */
    public static final class Alone {
        private Alone() {}

        public static void main(String[] arguments) {
            HeadStart.nameTheme();
            HeadStart.run();
            System.out.println(HeadStart.page().isPresent() ? "done" : "no page");
            System.exit(0);
        }
    }
}
