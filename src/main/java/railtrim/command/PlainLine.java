package railtrim.command;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import railtrim.procedure.Words;

/**
 * A command line that is plainly right is read here, in a tenth of the time in which the option parser gets ready. Whatever is not, as a
 * slip, a wish for help, or an option that comes without a value, is left to the parser, which says what to do about it.
 */
final class PlainLine {
    /** A command that can be filled without the parser. */
    interface Command extends Asked {
        /** @return false where it has no option of that name */
        boolean take(String option, String value);

        /** Whether all is there that must be. */
        boolean filled();
    }

    private PlainLine() {}

    /** @return empty where the parser has to look at it */
    static Optional<Answer> answer(Words words, String... arguments) {
        if (arguments.length == 0 || !arguments[0].equals("predict")) {
            return Optional.empty();
        }
        Command command = new Predict(words);
        try {
            return fill(command, arguments) ? Optional.of(command.answer()) : Optional.empty();
        } catch (RuntimeException saidByTheParser) {
            return Optional.empty();
        }
    }

    /** After the name of the command: an option and its value in turn, none twice. */
    static boolean fill(Command command, String... arguments) {
        Set<String> taken = new HashSet<>();
        for (int i = 1; i < arguments.length; i += 2) {
            boolean hasValue =
                    i + 1 < arguments.length && !arguments[i + 1].isEmpty() && !arguments[i + 1].startsWith("-");
            if (!hasValue || !taken.add(arguments[i]) || !command.take(arguments[i], arguments[i + 1])) {
                return false;
            }
        }
        return command.filled();
    }
}
