package railtrim.command;

import railtrim.procedure.Words;

/** Says in one line why the window cannot open here, and what can be done without it. */
public final class NoWindow {
    private NoWindow() {}

    /**
     * @param trouble what the window toolkit threw: it names GTK where that library is missing, else there is no screen
     * @return exit code
     */
    public static int say(Terminal terminal, Throwable trouble) {
        boolean gtkMissing = String.valueOf(trouble.getMessage()).contains("GTK");
        terminal.err().println(Words.english().of(gtkMissing ? "command.no-window.gtk" : "command.no-window.screen"));
        return Answer.BAD_INPUT;
    }
}
