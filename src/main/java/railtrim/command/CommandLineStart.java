package railtrim.command;

import java.util.Optional;
import railtrim.procedure.Words;

/** Runs one command: reads its options, writes its answer, and says in one line what cannot be used. */
public final class CommandLineStart {
    private CommandLineStart() {}

    /** @return exit code: 0 done, 1 the answer is no, 2 bad input (one line on the error stream) */
    public static int run(Terminal terminal, String... arguments) {
        Words words = Words.english();
        Optional<Answer> plain = PlainLine.answer(words, arguments);
        if (plain.isEmpty()) {
            return ParsedLine.run(terminal, words, arguments);
        }
        for (String line : plain.get().sheet().lines()) {
            terminal.out().println(line);
        }
        terminal.out().flush();
        return plain.get().exit();
    }
}
