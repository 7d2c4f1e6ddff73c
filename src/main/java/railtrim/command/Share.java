package railtrim.command;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.procedure.Sharing;
import railtrim.procedure.Words;

/** {@code share}: writes a job for others, without what is personal in it. The job itself is not touched. */
@Command(name = "share", description = "${bundle:command.share.about}")
final class Share implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:command.option.job}")
    private String job;

    @Parameters(index = "1", paramLabel = "NEW", description = "${bundle:command.option.shared-job}")
    private String to;

    @Option(names = "--name", paramLabel = "NAME", description = "${bundle:command.option.shared-name}")
    private String name;

    Share(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Path file = JobFile.named(to);
        Job whole = JobCheck.of(TextFile.path("JOB", job), Mark.lookUp(OwnFolder.path()))
                .job();
        String called = name == null || name.isBlank() ? words.of("share.unnamed") : name;
        Sharing.Shared shared = Sharing.of(whole, called, words.of("share.left-out"));
        Journal.write(file, shared.job(), Mark.forShow());
        Json json = Json.object()
                .put("file", file.toString())
                .put("facts", shared.job().entries().size())
                .put("leftOut", shared.leftOut())
                .put("stays", shared.stays());
        Sheet sheet = new Sheet()
                .say(words.of("command.share.done", file.toString()))
                .say(words.of("share.personal", Integer.toString(shared.leftOut())))
                .say(words.of("share.stays", String.join("; ", shared.stays())));
        return Answer.done(json.map(), sheet);
    }
}
