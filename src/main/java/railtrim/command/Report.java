package railtrim.command;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.job.JobCheck;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.report.Format;
import railtrim.report.ReportWriter;

/** {@code report}: writes the checklist of a job into a folder. */
@Command(name = "report", description = "${bundle:command.report.about}")
final class Report implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:command.option.job}")
    private String job;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "${bundle:command.option.out}")
    private String out;

    @Option(names = "--format", paramLabel = "html,pdf,md,csv,label", description = "${bundle:command.option.format}")
    private String format;

    @Option(names = "--paper", paramLabel = "a4,letter", description = "${bundle:command.option.paper}")
    private String paper;

    Report(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Set<Format> formats =
                format == null ? EnumSet.of(Format.HTML) : FormatOption.of(format, EnumSet.allOf(Format.class));
        Path folder = TextFile.path("--out", out);
        JobCheck found = JobCheck.of(TextFile.path("JOB", job), Mark.lookUp(OwnFolder.path()));
        Procedure procedure = Procedure.builtIn();
        State state = procedure.state(found.job());
        List<String> files =
                ReportWriter.write(state, procedure, words, folder, formats, PaperOption.of(paper)).stream()
                        .map(Path::toString)
                        .toList();
        List<String> problems = found.problems().stream().map(words::of).toList();
        Json json = Json.object()
                .put("files", files)
                .put("complete", state.complete())
                .put("elsewhere", found.elsewhere())
                .put("problems", problems);
        Sheet sheet = new Sheet();
        files.forEach(sheet::say);
        if (!state.complete()) {
            sheet.say(words.of("command.report.not-complete"));
        }
        if (found.elsewhere()) {
            sheet.say(words.of("command.report.elsewhere"));
        }
        problems.forEach(sheet::say);
        return Answer.done(json.map(), sheet);
    }
}
