package railtrim.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.Origin;
import railtrim.job.OwnFolder;
import railtrim.job.Time;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;

/** {@code copy}: goes on with a job in a new file; of a job made elsewhere only the plan is taken over. The old file is not touched. */
@Command(name = "copy", description = "${bundle:command.copy.about}")
final class Copy implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:command.option.job}")
    private String job;

    @Parameters(index = "1", paramLabel = "NEW", description = "${bundle:command.option.new-job}")
    private String to;

    @Option(names = "--plan", description = "${bundle:command.option.plan}")
    private boolean planOnly;

    Copy(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Path file = JobFile.named(to);
        Mark mark = Mark.keptIn(OwnFolder.path());
        Path from = TextFile.path("JOB", job);
        JobCheck found = JobCheck.of(from, mark);
        boolean elsewhere = found.job().origin() == Origin.ELSEWHERE;
        boolean plan = elsewhere || planOnly;
        try (Journal copy = plan ? plan(found.job(), file, mark) : whole(from, file, mark)) {
            int facts = copy.job().entries().size();
            Json json = Json.object()
                    .put("file", copy.file().toString())
                    .put("plan", plan)
                    .put("facts", facts);
            Sheet sheet = new Sheet()
                    .say(words.of(
                            elsewhere ? "command.copy.plan" : plan ? "command.copy.another" : "command.copy.whole",
                            copy.file().toString(),
                            Integer.toString(facts)));
            copy.problems().forEach(problem -> sheet.say(words.of(problem)));
            return Answer.done(json.map(), sheet);
        }
    }

    private static Journal plan(Job job, Path file, Mark mark) {
        List<Fact> facts = TakeOver.plan(job);
        return Journal.begin(file, JobFile.title(file), facts, Time.system(), mark);
    }

    /** Opened, so that what is damaged or lost is known to the copy. */
    private static Journal whole(Path from, Path file, Mark mark) {
        try (Journal old = Journal.open(from, Time.system(), mark)) {
            return Journal.copy(old, file, Time.system(), mark);
        }
    }
}
