package railtrim;

import railtrim.command.CommandLineStart;
import railtrim.command.Terminal;

/** Opens the window, or runs a command. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.exit(CommandLineStart.run(Terminal.system(), arguments));
    }
}
