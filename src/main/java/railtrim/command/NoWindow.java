package railtrim.command;

import java.nio.file.Path;
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
        terminal.err()
                .println(
                        Words.english().of(gtkMissing ? "command.no-window.gtk" : "command.no-window.screen", typed()));
        return Answer.BAD_INPUT;
    }

    /** What was typed to start the program: the name of the installed one, else its jar as it was given to Java. */
    private static String typed() {
        String installed = System.getProperty("jpackage.app-path");
        return installed == null
                ? "java -jar " + System.getProperty("java.class.path")
                : Path.of(installed).getFileName().toString();
    }
}
