package railtrim.command;

import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import railtrim.procedure.Words;

/** One line for a command line that cannot be read: what was read, and what to type instead. */
final class Refusals {
    private Refusals() {}

    static String of(ParameterException problem, Words words) {
        CommandLine where = problem.getCommandLine();
        String help = isRoot(where) ? "--help" : where.getCommandName() + " --help";
        if (problem instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String typed = Typed.shown(unmatched.getUnmatched().get(0));
            return isRoot(where) && !typed.startsWith("-")
                    ? words.of(
                            "command.wrong.command",
                            typed,
                            String.join(", ", where.getSubcommands().keySet()))
                    : words.of("command.wrong.unknown", typed, help);
        }
        if (problem instanceof MissingParameterException missing) {
            return missing(missing, words, help);
        }
        if (problem instanceof OverwrittenOptionException twice) {
            return words.of("command.wrong.twice", name(twice.getOverwritten()));
        }
        return words.of("command.wrong.line", help);
    }

    private static String missing(MissingParameterException missing, Words words, String help) {
        String names = missing.getMissing().stream().map(Refusals::name).collect(Collectors.joining(", "));
        boolean valueOnly = missing.getMissing().size() == 1
                && missing.getMissing().get(0) instanceof OptionSpec option
                && !option.stringValues().isEmpty();
        return words.of(valueOnly ? "command.wrong.no-value" : "command.wrong.missing", names, help);
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    private static boolean isRoot(CommandLine commandLine) {
        return commandLine.getParent() == null;
    }
}
