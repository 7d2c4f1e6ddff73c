package railtrim.command;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.MemoryLog;
import railtrim.job.OwnFolder;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.Message;

/** {@code text}: the wizard in a terminal, on a job file or without one. */
@Command(name = "text", description = "${bundle:command.text.about}")
final class TextCommand implements Asked {
    private final Terminal terminal;
    private final Words words;

    @Parameters(index = "0", arity = "0..1", paramLabel = "JOB", description = "${bundle:command.option.text-job}")
    private String job;

    TextCommand(Terminal terminal, Words words) {
        this.terminal = terminal;
        this.words = words;
    }

    @Override
    public Answer answer() {
        Procedure procedure = Procedure.builtIn();
        Waiting waiting = Waiting.real(terminal);
        if (job == null) {
            terminal.out().println(words.of("command.text.not-kept"));
            Course course = new Course(procedure, new MemoryLog("text", Time.system()));
            return exit(new TextWizard(course, terminal, words, waiting).run());
        }
        Path file = JobFile.named(job);
        Mark mark = Mark.keptIn(OwnFolder.path());
        try (Journal journal = Files.exists(file)
                ? Journal.open(file, Time.system(), mark)
                : Journal.create(file, JobFile.title(file), Time.system(), mark)) {
            journal.problems().forEach(problem -> terminal.out().println(words.of(problem)));
            if (journal.readOnly()) {
                throw new BadOption("JOB", Message.of("command.wrong.read-only", Typed.shown(job)));
            }
            return exit(new TextWizard(new Course(procedure, journal), terminal, words, waiting).run());
        }
    }

    private static Answer exit(int exit) {
        return new Answer(exit, Json.object().map(), new Sheet());
    }
}
