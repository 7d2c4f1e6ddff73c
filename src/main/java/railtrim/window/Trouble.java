package railtrim.window;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.System.Logger.Level;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import railtrim.procedure.Words;
import railtrim.window.kit.Build;

/** An error nobody foresaw: logged once, here, and told with a short code to quote; never as a stack trace. */
final class Trouble {
    private static final System.Logger LOG = System.getLogger("railtrim");

    private Trouble() {}

    /** For everything that goes wrong on the thread of the window. */
    static void catchAll(Words words, Sheet sheet) {
        Thread.currentThread().setUncaughtExceptionHandler((thread, error) -> tell(words, sheet, error));
    }

    private static void tell(Words words, Sheet sheet, Throwable error) {
        String details = details(error);
        String code = String.format(Locale.ROOT, "R-%04X", details.hashCode() & 0xFFFF);
        LOG.log(Level.ERROR, code, error);
        Button close = Build.button("sheet-close", words.of("window.sheet.close"), sheet::close, "primary");
        Button copy = Build.button(
                "copy-details", words.of("window.trouble.copy"), () -> copy(code + "\n" + details), "plain");
        sheet.ask(
                words.of("window.trouble.title"),
                Build.prose(words.of("window.trouble.text", code), "sheet-text"),
                close,
                copy);
    }

    private static void copy(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }

    private static String details(Throwable error) {
        StringWriter text = new StringWriter();
        error.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }
}
