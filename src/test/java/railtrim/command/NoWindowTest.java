package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The two troubles are worded as OpenJFX 21 words them on Linux, tried without a screen and without the library. */
class NoWindowTest {
    private static final String INSTALLED = "jpackage.app-path";

    @Test
    void withoutAScreenTheCommandsThatNeedNoneAreNamed() {
        String line = said("Unable to open DISPLAY");
        assertTrue(line.contains("text") && line.contains("rehearse"), line);
        assertFalse(line.contains("libgtk-3-0"), line);
    }

    @Test
    void withoutGtkItsPackageIsNamedToo() {
        String line = said("Unable to load glass GTK library.");
        assertTrue(
                line.contains("libgtk-3-0 ")
                        && line.contains("libgtk-3-0t64")
                        && line.contains("text")
                        && line.contains("rehearse"),
                line);
    }

    @Test
    void theInstalledProgramIsCalledByItsName() {
        System.setProperty(INSTALLED, "/opt/railtrim/bin/railtrim");
        try {
            assertTrue(said("Unable to open DISPLAY").contains("type railtrim text"));
        } finally {
            System.clearProperty(INSTALLED);
        }
    }

    @Test
    void theJarIsCalledAsItWasTyped() {
        String line = said("Unable to open DISPLAY");
        assertTrue(line.contains("type java -jar " + System.getProperty("java.class.path") + " text"), line);
    }

    private static String said(String trouble) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(new BufferedReader(new StringReader("")), stream, stream, false);
        assertEquals(2, NoWindow.say(terminal, new UnsupportedOperationException(trouble)));
        String line = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, line.lines().count());
        return line;
    }
}
