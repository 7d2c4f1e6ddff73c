package railtrim.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class WrappingTest {
    @Test
    void whatIsMissingForAnInstallerIsToldInOneLineWithWhatToInstall() {
        List<String> missing = Wrapping.missing(Build.System.WINDOWS, name -> false);
        String told = Wrapping.told(Build.System.WINDOWS, missing);
        assertEquals(1, told.lines().count());
        assertTrue(told.contains("candle.exe") && told.contains("WiX") && told.contains("-Dpackages=image"), told);
    }

    @Test
    void withAllToolsNothingIsMissing() {
        for (Build.System system : Build.System.values()) {
            assertEquals(List.of(), Wrapping.missing(system, name -> true));
        }
    }

    /** jpackage: “The first number in an app-version cannot be zero or negative” on macOS. */
    @Test
    void onlyAnAppleVersionDoesNotBeginWithZero() {
        assertEquals("1.1.0", Wrapping.version(Build.System.MAC, "0.1.0"));
        assertEquals("2.0.1", Wrapping.version(Build.System.MAC, "2.0.1"));
        assertEquals("0.1.0", Wrapping.version(Build.System.LINUX, "0.1.0"));
        assertEquals("0.1.0", Wrapping.version(Build.System.WINDOWS, "0.1.0"));
    }
}
