package railtrim.report;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.report.pdf.PdfLabel;
import railtrim.report.pdf.PdfReport;

/** What can be put on paper. */
public enum Printed {
    CHECKLIST,
    LABEL,
    /** Of no job: the whole way, to be filled in by hand. */
    WORKSHEET;

    /** @param state may only be missing for the worksheet */
    public byte[] pdf(Optional<State> state, Procedure procedure, Words words, Paper paper) {
        return switch (this) {
            case CHECKLIST -> PdfReport.write(Checklist.of(state.orElseThrow(), procedure, words), words, paper);
            case LABEL -> PdfLabel.write(Label.of(state.orElseThrow(), procedure, words), words, paper);
            case WORKSHEET -> PdfReport.write(new Worksheet(procedure, words).build(), words, paper);
        };
    }

    /**
     * The same as a file in {@code folder}.
     *
     * @throws railtrim.quantity.BadInput where the folder cannot be written
     */
    public Path write(Optional<State> state, Procedure procedure, Words words, Path folder, Paper paper) {
        return switch (this) {
            case CHECKLIST -> write(state, procedure, words, folder, Format.PDF, paper);
            case LABEL -> write(state, procedure, words, folder, Format.LABEL, paper);
            case WORKSHEET ->
                ReportWriter.worksheet(procedure, words, folder, EnumSet.of(Format.PDF), paper)
                        .get(0);
        };
    }

    private static Path write(
            Optional<State> state, Procedure procedure, Words words, Path folder, Format format, Paper paper) {
        return ReportWriter.write(state.orElseThrow(), procedure, words, folder, EnumSet.of(format), paper)
                .get(0);
    }
}
