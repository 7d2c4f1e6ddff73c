package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import javafx.stage.PopupWindow;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.procedure.Procedure;

/** Light, dark and the size of text are chosen once, and stay. */
class LookTest {
    @TempDir
    Path folder;

    @Test
    void theLookChosenIsThereAtTheNextStart() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.layOut();
            window.robot.clickOn(window.node("look"));
            window.until("the looks", () -> window.focused().equals("look-system"));
            window.press(KeyCode.LEFT);
            assertEquals("look-dark", window.focused());
            window.tabTo("text-bigger");
            window.press(KeyCode.SPACE, KeyCode.SPACE);
            assertTrue(window.shell.theme().dark());
            window.press(KeyCode.ESCAPE);
            assertFalse(window.has("look-dark"));
        }
        try (Opened again = Opened.in(folder)) {
            assertEquals(Look.DARK, again.shell.theme().look());
            assertEquals(18, again.shell.theme().pixels());
        }
    }

    @Test
    void asTheSystemTurnsDarkWhenTheSystemSaysSo() throws Exception {
        try (Opened window = Opened.in(folder)) {
            assertFalse(window.shell.theme().dark());
            window.fx(() -> {
                window.shell.theme().systemIs(true);
                return null;
            });
            assertTrue(window.shell.theme().dark());
            window.fx(() -> {
                window.shell.theme().look(Look.LIGHT);
                return null;
            });
            assertFalse(window.shell.theme().dark(), "a choice of one’s own stands over the system’s");
        }
    }

    /** Its colours would be looked up before the page has the new ones. */
    @Test
    void aMenuThatIsOpenClosesWhenTheColoursChange() throws Exception {
        try (Opened window = Opened.in(folder)) {
            window.show(Moments.of("sound-board").get(0), Procedure.builtIn());
            window.robot.clickOn(window.node("view"));
            window.until("the menu", () -> popups() > 0);
            window.fx(() -> {
                window.shell.theme().systemIs(true);
                return null;
            });
            assertEquals(0, window.fx(LookTest::popups));
        }
    }

    private static long popups() {
        return Window.getWindows().stream()
                .filter(PopupWindow.class::isInstance)
                .count();
    }

    @Test
    void aSystemThatDoesNotAnswerIsLight() {
        assertFalse(SystemLook.says("dark", "no-such-command-here"));
        assertFalse(SystemLook.says("dark", "java", "-version"));
    }

    /** Colours are in the style sheets, where both themes and the contrast are looked after. */
    @Test
    void noColourIsWrittenInTheProgram() throws IOException {
        Pattern colour =
                Pattern.compile("#[0-9a-fA-F]{3,8}\\b|\\b(rgba?|hsba?|hsla?)\\(|\\bColor\\.(?!class)|paint\\.Color\\.");
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "railtrim", "window"))) {
            List<String> found = files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(LookTest::lines)
                    .filter(line -> colour.matcher(line).find())
                    .toList();
            assertEquals(List.of(), found);
        }
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream().map(line -> file.getFileName() + ": " + line.strip());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Nothing moves by itself, so nobody has to ask for less motion: the only timer redraws the clock of a wait, once a second. */
    @Test
    void nothingInTheWindowIsAnimated() throws IOException {
        Pattern motion = Pattern.compile("\\w+Transition\\b|AnimationTimer|new Timeline|setAnimated\\(true|setFade");
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java", "railtrim", "window"))) {
            List<String> found = files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(LookTest::lines)
                    .filter(line -> motion.matcher(line).find())
                    .filter(line -> !line.startsWith("JobPage.java: private final Timeline seconds"))
                    .toList();
            assertEquals(List.of(), found);
        }
    }
}
