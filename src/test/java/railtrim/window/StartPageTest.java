package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Beginning a job, with mouse and keyboard as a person would. */
class StartPageTest {
    @TempDir
    Path folder;

    @Test
    void aNewJobIsAFileInTheFolderNamed() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.robot.clickOn(window.node("new-job"));
            window.until("the name’s field", () -> window.focused().equals("job-name"));
            window.robot.write("Rack sampler 2/3");
            window.robot.push(KeyCode.ENTER);
            window.until("the first caution", () -> window.has("cautions"));
            // What no file system may refuse: letters, digits, space, _ and - only; what is left out becomes _.
            assertTrue(Files.exists(folder.resolve("jobs").resolve("Rack sampler 2_3.railtrim")));
            assertEquals("Rack sampler 2/3 – Railtrim", window.shell.stage().getTitle());
        }
    }

    /** As one window manager of Linux makes every new window. */
    @Test
    void aWindowThatIsOpenedAtItsLeastSizeAsksForItsOwn() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.stage().setWidth(window.shell.stage().getMinWidth());
                return null;
            });
            window.until("its usual width", () -> window.shell.stage().getWidth() > 1000);
        }
    }

    /** A scroll pane is there only where it is needed, and the focus stays where it was. */
    @Test
    void thePageScrollsOnlyWhereItMust() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.tabTo("glossary");
            assertEquals(0, scrollPanes(window));
            window.size(800, 600, 28);
            window.until("the page scrolls", () -> scrollPanes(window) == 1);
            assertEquals("glossary", window.focused());
            assertTrue(window.has("look"));
            window.size(1240, 800, 14);
            window.until("all fits again", () -> scrollPanes(window) == 0);
            assertEquals("glossary", window.focused());
        }
    }

    /** The rules for later pages come in behind the first picture, which is to stay as it is. */
    @Test
    void theRulesForLaterPagesChangeNothingOnIt() throws Exception {
        try (Opened window = Opened.in(folder)) {
            for (int text : List.of(14, 28)) {
                window.size(1024, 700, text);
                window.tabTo("look");
                window.frames();
                List<String> before =
                        window.fx(() -> List.copyOf(window.shell.scene().getStylesheets()));
                PixelsOf first = PixelsOf.page(window);
                window.fx(() -> {
                    window.shell.scene().getStylesheets().add(1, Theme.sheet("pages"));
                    return null;
                });
                window.frames();
                assertTrue(first.like(PixelsOf.page(window)), "with letters of " + text);
                window.fx(() -> window.shell.scene().getStylesheets().setAll(before));
            }
        }
    }

    private record PixelsOf(int width, int height, int[] colours) {
        static PixelsOf page(Opened window) throws Exception {
            return window.fx(() -> {
                WritableImage image = window.shell.scene().snapshot(null);
                int width = (int) image.getWidth();
                int height = (int) image.getHeight();
                int[] colours = new int[width * height];
                image.getPixelReader()
                        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), colours, 0, width);
                return new PixelsOf(width, height, colours);
            });
        }

        boolean like(PixelsOf other) {
            return Arrays.equals(colours, other.colours);
        }
    }

    private static int scrollPanes(Opened window) {
        return Opened.look(() -> {
            window.shell.scene().getRoot().layout();
            return window.shell.scene().getRoot().lookupAll(".scroll-pane").size();
        });
    }

    /** Not in the folder where the program was started, which nobody would look into. */
    @Test
    void aFolderWithoutARootLiesInTheOneThatWasOffered() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.robot.clickOn(window.node("new-job"));
            window.until("the name’s field", () -> window.focused().equals("job-name"));
            window.robot.write("Rack sampler");
            window.fx(() -> {
                ((TextField) window.node("job-folder")).setText("old boards");
                return null;
            });
            window.robot.push(KeyCode.ENTER);
            window.until("the first caution", () -> window.has("cautions"));
            assertTrue(Files.exists(folder.resolve("jobs").resolve("old boards").resolve("Rack sampler.railtrim")));
            assertFalse(Files.exists(Path.of("old boards")));
        }
    }

    @Test
    void aJobWithoutANameIsAskedForOne() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.robot.clickOn(window.node("new-job"));
            window.until("the name’s field", () -> window.focused().equals("job-name"));
            window.robot.push(KeyCode.ENTER);
            window.until("the reason", () -> window.has("job-problem"));
            assertEquals(window.words.of("window.new.name.missing"), ((Label) window.node("job-problem")).getText());
            window.robot.push(KeyCode.ESCAPE);
            window.until("the start page", () -> !window.has("job-name"));
            assertFalse(Files.exists(folder.resolve("jobs")));
        }
    }

    @Test
    void aJobOpenedLatelyIsOfferedAgain() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                Files.createDirectories(folder.resolve("jobs"));
                window.shell.create(folder.resolve("jobs").resolve("voice board.railtrim"), "voice board");
                window.shell.toStart();
                return null;
            });
            window.layOut();
            window.robot.clickOn(window.node("recent-0"));
            window.until("the job", () -> window.has("make-safe"));
        }
    }

    @Test
    void aFileThatIsNoJobIsRefusedInWords() throws Exception {
        Path file = Files.writeString(folder.resolve("shopping.railtrim"), "milk\n");
        try (Opened window = Opened.in(folder)) {
            window.fx(() -> {
                window.shell.open(file);
                return null;
            });
            window.until("what is wrong with it", () -> window.has("sheet-close") || window.has("saved"));
            // Either it is refused, or it is open for reading only; never for writing.
            boolean readOnly = window.has("saved")
                    && ((Label) window.node("saved")).getText().equals(window.words.of("window.band.saved.read-only"));
            assertTrue(window.has("sheet-close") || readOnly);
            assertEquals("milk\n", Files.readString(file));
        }
    }

    @Test
    void practiceOpensABoardOnABench() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.robot.clickOn(window.node("practice"));
            window.until("the boards", () -> window.focused().startsWith("board-"));
            window.robot.push(KeyCode.ENTER);
            window.until("the bench", () -> window.has("meter-display"));
            // A fresh cell shows about 1.6 V (common practice, no source).
            window.robot.clickOn(window.node("hold-cell"));
            window.until(
                    "the cell’s voltage",
                    () -> ((Label) window.node("meter-display")).getText().matches("1\\.[56]\\d* V"));
        }
    }
}
