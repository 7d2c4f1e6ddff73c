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
import java.util.Set;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.report.pdf.PdfLabel;
import railtrim.report.pdf.PdfReport;

/** Writes a job's checklist into a folder, in one or more formats. */
public final class ReportWriter {
    private ReportWriter() {}

    /**
     * The files are called after the job, {@code NAME checklist.html} and so on; earlier ones of the same name are replaced. The same job gives the
     * same bytes.
     *
     * @param paper for the formats that are printed
     * @param folder made where it is not there yet
     * @return the files written, in the order of {@link Format}
     * @throws BadInput where the folder cannot be written
     */
    public static List<Path> write(
            State state, Procedure procedure, Words words, Path folder, Set<Format> formats, Paper paper) {
        Checklist checklist = Checklist.of(state, procedure, words);
        List<Path> written = new ArrayList<>();
        for (Format format :
                Arrays.stream(Format.values()).filter(formats::contains).toList()) {
            byte[] bytes = format == Format.LABEL
                    ? PdfLabel.write(Label.of(state, procedure, words), words, paper)
                    : bytes(checklist, format, words, paper);
            written.add(put(folder, fileName(state, format), bytes));
        }
        return written;
    }

    /** The blank worksheet, {@code blank worksheet.pdf} and so on: the whole way on paper, for people who work without a screen. */
    public static List<Path> worksheet(
            Procedure procedure, Words words, Path folder, Set<Format> formats, Paper paper) {
        return document("blank worksheet", new Worksheet(procedure, words).build(), words, folder, formats, paper);
    }

    /** Any other document made of the same blocks, called {@code name}; it has no sticker. */
    public static List<Path> document(
            String name, Checklist document, Words words, Path folder, Set<Format> formats, Paper paper) {
        List<Path> written = new ArrayList<>();
        for (Format format :
                Arrays.stream(Format.values()).filter(formats::contains).toList()) {
            if (format != Format.LABEL) {
                written.add(put(folder, name + "." + format.ending(), bytes(document, format, words, paper)));
            }
        }
        return written;
    }

    private static byte[] bytes(Checklist checklist, Format format, Words words, Paper paper) {
        return switch (format) {
            case HTML -> utf8(HtmlReport.write(checklist, words));
            case MARKDOWN -> utf8(MarkdownReport.write(checklist, words.of("report.missing")));
            case CSV -> utf8(CsvReport.write(checklist, words.of("report.missing")));
            case PDF, LABEL -> PdfReport.write(checklist, words, paper);
        };
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String fileName(State state, Format format) {
        return FileName.of(state.job().name(), "job")
                + (format == Format.LABEL ? " label." : " checklist.")
                + format.ending();
    }

    private static Path put(Path folder, String name, byte[] bytes) {
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
                Files.write(half, bytes, StandardOpenOption.CREATE_NEW);
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
