package railtrim.command;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.report.Format;
import railtrim.report.ReportWriter;

/** {@code worksheet}: writes the whole way as a form to be filled in by hand. */
@Command(name = "worksheet", description = "${bundle:command.worksheet.about}")
final class WorksheetCommand implements Asked {
    private final Words words;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "${bundle:command.option.out}")
    private String out;

    @Option(names = "--format", paramLabel = "pdf,html", description = "${bundle:command.option.worksheet-format}")
    private String format;

    @Option(names = "--paper", paramLabel = "a4,letter", description = "${bundle:command.option.paper}")
    private String paper;

    WorksheetCommand(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Set<Format> known = EnumSet.of(Format.PDF, Format.HTML);
        Set<Format> formats = format == null ? EnumSet.of(Format.PDF) : FormatOption.of(format, known);
        Path folder = TextFile.path("--out", out);
        List<String> files =
                ReportWriter.worksheet(Procedure.builtIn(), words, folder, formats, PaperOption.of(paper)).stream()
                        .map(Path::toString)
                        .toList();
        Sheet sheet = new Sheet();
        files.forEach(sheet::say);
        return Answer.done(Json.object().put("files", files).map(), sheet);
    }
}
