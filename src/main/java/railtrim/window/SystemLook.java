package railtrim.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Asks the system whether the person chose dark windows. JavaFX itself can tell only from version 22 on. */
final class SystemLook {
    private static final int PATIENCE_SECONDS = 2;

    private SystemLook() {}

    /** Takes up to two seconds: not for the window's thread. @return false where the system does not say */
    static boolean dark() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            return says(
                    "0x0",
                    "reg",
                    "query",
                    "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                    "/v",
                    "AppsUseLightTheme");
        } else if (system.contains("mac")) {
            return says("dark", "defaults", "read", "-g", "AppleInterfaceStyle");
        }
        return says("dark", "gsettings", "get", "org.gnome.desktop.interface", "color-scheme");
    }

    /** Whether a command of the system ends well and its answer holds a word. */
    static boolean says(String word, String... command) {
        try {
            Process asked = new ProcessBuilder(List.of(command))
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            asked.getOutputStream().close();
            if (!asked.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                asked.destroyForcibly();
                return false;
            }
            String answer = new String(asked.getInputStream().readNBytes(4096), StandardCharsets.UTF_8);
            return asked.exitValue() == 0 && answer.toLowerCase(Locale.ROOT).contains(word);
        } catch (IOException notThere) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
