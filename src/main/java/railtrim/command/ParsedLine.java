package railtrim.command;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import railtrim.job.JournalProblem;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;

/** Runs one command by way of the option parser: describes its options, reads them, writes its answer, and says in one line what cannot be used. */
final class ParsedLine {
    private static final String JSON = "--json";

    private final Terminal terminal;
    private final Words words;

    private ParsedLine(Terminal terminal, Words words) {
        this.terminal = terminal;
        this.words = words;
    }

    static int run(Terminal terminal, Words words, String... arguments) {
        return new ParsedLine(terminal, words).run(arguments);
    }

    private int run(String... arguments) {
        try {
            return answer(commandLine(asked(arguments)), arguments);
        } catch (ParameterException e) {
            return wrong(Refusals.of(e, words));
        } catch (BadOption e) {
            return wrong(words.of("command.wrong.option", e.option(), words.of(e.told())));
        } catch (BadInput e) {
            return wrong(words.of(e.told()));
        } catch (JournalProblem e) {
            return wrong(words.of(e.told()));
        } catch (OutOfMemoryError | StackOverflowError e) {
            return wrong(words.of("command.wrong.too-much"));
        } catch (RuntimeException e) {
            return wrong(words.of("command.wrong.unexpected", code(e)));
        } finally {
            terminal.out().flush();
        }
    }

    private int answer(CommandLine commandLine, String... arguments) {
        ParseResult parsed = commandLine.parseArgs(arguments);
        ParseResult leaf = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        if (leaf.isUsageHelpRequested() || !parsed.hasSubcommand()) {
            terminal.out().print(leaf.commandSpec().commandLine().getUsageMessage());
            return Answer.DONE;
        }
        Answer answer = ((Asked) leaf.commandSpec().userObject()).answer();
        if (leaf.commandSpec().findOption(JSON) != null && leaf.hasMatchedOption(JSON)) {
            terminal.out().println(JsonText.of(answer.json()));
        } else {
            answer.sheet().lines().forEach(terminal.out()::println);
        }
        return answer.exit();
    }

    /** Describing a command takes time, so where one is named, only that one is described; else all of them. */
    private static List<String> asked(String... arguments) {
        boolean named = arguments.length > 0 && Commands.NAMES.contains(arguments[0]);
        return named ? List.of(arguments[0]) : Commands.NAMES;
    }

    private CommandLine commandLine(List<String> names) {
        CommandSpec root = CommandSpec.create().name("railtrim");
        root.usageMessage().description("${bundle:command.about}");
        root.addOption(help());
        CommandLine commandLine = new CommandLine(root);
        for (String name : names) {
            Asked command = Commands.of(name, terminal, words);
            CommandSpec spec = CommandSpec.forAnnotatedObject(command);
            spec.addOption(help());
            if (!(command instanceof TextCommand)) {
                spec.addOption(json());
            }
            commandLine.addSubcommand(name, new CommandLine(spec));
        }
        // A value that begins with @ is a value, never the name of a file with more options.
        return commandLine.setExpandAtFiles(false).setUsageHelpWidth(100).setResourceBundle(words.bundle());
    }

    private static OptionSpec json() {
        return OptionSpec.builder(JSON)
                .type(boolean.class)
                .description("${bundle:command.option.json}")
                .build();
    }

    private static OptionSpec help() {
        return OptionSpec.builder("--help")
                .type(boolean.class)
                .usageHelp(true)
                .description("${bundle:command.option.help}")
                .build();
    }

    /** One line, whatever was typed: what it repeats may hold anything. */
    private int wrong(String line) {
        terminal.err().println(line.replaceAll("[\\p{C}\\s]+", " ").strip());
        terminal.err().flush();
        return Answer.BAD_INPUT;
    }

    /** Enough for a report of the fault: what kind, and where it came up. */
    private static String code(RuntimeException e) {
        StackTraceElement[] trace = e.getStackTrace();
        String kind = e.getClass().getSimpleName();
        return trace.length == 0 ? kind : kind + " " + trace[0].getFileName() + ":" + trace[0].getLineNumber();
    }
}
