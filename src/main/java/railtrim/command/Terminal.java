package railtrim.command;

import java.io.BufferedReader;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Where a command reads from and writes to.
 *
 * @param person whether a person types, rather than a file or a program
 */
public record Terminal(BufferedReader in, PrintStream out, PrintStream err, boolean person) {
    /** The streams the program was started with. Written as UTF-8, except on a Windows console, which says itself what it can show. */
    public static Terminal system() {
        Charset charset = charset();
        return new Terminal(
                new BufferedReader(new InputStreamReader(System.in, charset)),
                new PrintStream(new FileOutputStream(FileDescriptor.out), true, charset),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset),
                System.console() != null);
    }

    private static Charset charset() {
        Console console = System.console();
        boolean windows =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
        return windows && console != null ? console.charset() : StandardCharsets.UTF_8;
    }
}
