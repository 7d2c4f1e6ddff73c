package railtrim.command;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.job.Mark;
import railtrim.job.OwnFolder;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.PlainText;
import railtrim.report.Format;
import railtrim.report.ReportWriter;
import railtrim.report.shelf.Comparison;
import railtrim.report.shelf.Piece;
import railtrim.report.shelf.Shelf;
import railtrim.report.shelf.ShelfTable;

/** {@code shelf}: all jobs of a folder at a glance, searched, and compared. */
@Command(name = "shelf", description = "${bundle:command.shelf.about}")
final class ShelfCommand implements Asked {
    private final Words words;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "${bundle:command.option.shelf}")
    private String folder;

    @Option(names = "--find", paramLabel = "WORDS", description = "${bundle:command.option.find}")
    private String find;

    @Option(names = "--compare", description = "${bundle:command.option.compare}")
    private boolean compare;

    @Option(names = "--out", paramLabel = "FOLDER", description = "${bundle:command.option.compare-out}")
    private String out;

    @Option(names = "--format", paramLabel = "html,pdf,md,csv", description = "${bundle:command.option.format-compare}")
    private String format;

    @Option(names = "--paper", paramLabel = "a4,letter", description = "${bundle:command.option.paper}")
    private String paper;

    ShelfCommand(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Shelf all = Shelf.of(TextFile.path("FOLDER", folder), Procedure.builtIn(), Mark.lookUp(OwnFolder.path()));
        Shelf shelf = find == null ? all : all.find(find);
        Comparison comparison = new Comparison(shelf, words);
        List<String> files = new ArrayList<>();
        if (out != null) {
            ReportWriter.document(
                            "comparison",
                            comparison.document(),
                            words,
                            TextFile.path("--out", out),
                            formats(),
                            PaperOption.of(paper))
                    .forEach(file -> files.add(file.toString()));
        }
        Sheet sheet = new Sheet();
        if (shelf.pieces().isEmpty()) {
            sheet.say(words.of("command.shelf.empty"));
        } else if (compare) {
            compared(sheet, comparison);
        } else {
            ShelfTable table = new ShelfTable(words);
            sheet.table(5, table.head(), shelf.pieces().stream().map(table::row).toList());
        }
        shelf.pieces()
                .forEach(piece -> piece.problems()
                        .forEach(problem -> sheet.say(
                                words.of("command.shelf.problem", PlainText.of(piece.name()), words.of(problem)))));
        files.forEach(sheet::say);
        Json json = Json.object()
                .put(
                        "jobs",
                        (compare ? comparison.pieces() : shelf.pieces())
                                .stream().map(this::json).toList())
                .put("files", files);
        return Answer.done(json.map(), sheet);
    }

    private Set<Format> formats() {
        Set<Format> known = EnumSet.complementOf(EnumSet.of(Format.LABEL));
        return format == null ? EnumSet.of(Format.HTML) : FormatOption.of(format, known);
    }

    private void compared(Sheet sheet, Comparison comparison) {
        if (comparison.pieces().isEmpty()) {
            sheet.say(words.of("shelf.compare.none"));
        } else {
            sheet.table(4, comparison.head(), comparison.rows());
            sheet.say(words.of("shelf.compare.differs"));
        }
    }

    private Map<String, Object> json(Piece piece) {
        Json json = Json.object()
                .put("file", piece.file().toString())
                .put("name", piece.name())
                .put("state", piece.standing().id())
                .put("step", piece.step())
                .put("board", piece.board())
                .put("chip", piece.chip())
                .put("load", piece.load())
                .put("elsewhere", piece.elsewhere());
        number(json, "stock", piece.stock());
        number(json, "new", piece.fitted());
        number(json, "recommended", piece.recommended());
        number(json, "margin", piece.margin());
        number(json, "saved", piece.wattsSaved());
        number(json, "clock", piece.clock());
        number(json, "current", piece.current());
        piece.fail()
                .ifPresent(fail -> json.put("fail", fail.fail())
                        .put("faultSeen", fail.faultSeen())
                        .put("bracketHigh", fail.bracketHigh())
                        .put("runs", fail.runs()));
        return json.put("problems", piece.problems().stream().map(words::of).toList())
                .map();
    }

    private static void number(Json json, String key, OptionalDouble value) {
        value.ifPresent(found -> json.put(key, found));
    }
}
