package railtrim.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;

/** Writes a job's checklist into a folder, in one or more formats. */
public final class ReportWriter {
    private ReportWriter() {}

    /**
     * The files are called after the job, {@code NAME checklist.html} and so on; earlier ones of the same name are replaced. The same job gives the
     * same bytes.
     *
     * @param folder made where it is not there yet
     * @return the files written, in the order of {@link Format}
     * @throws BadInput where the folder cannot be written
     */
    public static List<Path> write(State state, Procedure procedure, Words words, Path folder, Set<Format> formats) {
        Checklist checklist = Checklist.of(state, procedure, words);
        List<Path> written = new ArrayList<>();
        for (Format format :
                Arrays.stream(Format.values()).filter(formats::contains).toList()) {
            written.add(put(folder, fileName(state, format), text(checklist, format, words)));
        }
        return written;
    }

    private static String text(Checklist checklist, Format format, Words words) {
        return switch (format) {
            case HTML ->
                HtmlReport.write(
                        checklist, Map.of("missing", words.of("report.missing"), "note", words.of("report.note")));
            case MARKDOWN -> MarkdownReport.write(checklist, words.of("report.missing"));
            case CSV -> CsvReport.write(checklist, words.of("report.missing"));
        };
    }

    private static String fileName(State state, Format format) {
        return FileName.of(state.job().name(), "job") + " checklist." + format.ending();
    }

    private static Path put(Path folder, String name, String text) {
        try {
            Files.createDirectories(folder);
            Path base = folder.toRealPath();
            Path file = base.resolve(name).normalize();
            if (!file.startsWith(base) || !base.equals(file.getParent())) {
                throw new IOException("outside the folder");
            }
            // Under another name first, so that a full disk does not leave half a checklist in the place of a whole
            // one.
            Path half = base.resolve(name + ".tmp");
            Files.deleteIfExists(half);
            try {
                Files.write(half, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE_NEW);
                Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(half);
            }
            return file;
        } catch (IOException e) {
            throw BadInput.of("report.cannot-write", name, folder.toString());
        }
    }
}
