package railtrim;

import railtrim.command.CommandLineStart;
import railtrim.command.NoWindow;
import railtrim.command.Terminal;
import railtrim.job.Journal;
import railtrim.window.WindowStart;

/** Opens the window, or runs a command. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        Terminal terminal = Terminal.system();
        System.exit(forWindow(arguments) ? openWindow(terminal, arguments) : CommandLineStart.run(terminal, arguments));
    }

    /** Nothing typed, or one job file, as when it is opened from a file manager. */
    static boolean forWindow(String... arguments) {
        return arguments.length == 0 || arguments.length == 1 && arguments[0].endsWith(Journal.ENDING);
    }

    private static int openWindow(Terminal terminal, String... arguments) {
        try {
            WindowStart.open(arguments);
            return 0;
        } catch (UnsupportedOperationException | UnsatisfiedLinkError e) {
            return NoWindow.say(terminal, e);
        }
    }
}
