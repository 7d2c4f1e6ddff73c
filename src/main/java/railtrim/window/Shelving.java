package railtrim.window;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import railtrim.job.Job;
import railtrim.job.JobCheck;
import railtrim.job.JournalProblem;
import railtrim.job.Mark;
import railtrim.procedure.Procedure;
import railtrim.quantity.BadInput;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.ReportWriter;
import railtrim.report.shelf.Comparison;
import railtrim.report.shelf.Shelf;
import railtrim.window.shelf.ShelfDeeds;

/** What the shelf does in this window. */
final class Shelving implements ShelfDeeds {
    private final Shell shell;

    Shelving(Shell shell) {
        this.shell = shell;
    }

    @Override
    public Shelf read(Path folder) {
        return Shelf.of(folder, Procedure.builtIn(), mark());
    }

    @Override
    public Optional<Path> askForFolder(Path start) {
        return shell.surroundings().askForFolder(shell.stage(), start);
    }

    @Override
    public void open(Path job) {
        shell.open(job);
    }

    @Override
    public void plan(Path job) {
        read(job, new Copies(shell)::plan);
    }

    @Override
    public void share(Path job) {
        read(job, new Copies(shell)::share);
    }

    private void read(Path job, Consumer<Job> deed) {
        try {
            deed.accept(JobCheck.of(job, mark()).job());
        } catch (JournalProblem gone) {
            shell.tell(shell.words().of("window.open.failed"), shell.words().of(gone.told()));
        }
    }

    @Override
    public void write(Comparison comparison, Path folder) {
        shell.write(() -> written(comparison, folder));
    }

    private Shell.Told written(Comparison comparison, Path folder) {
        try {
            List<Path> files = ReportWriter.document(
                    "comparison",
                    comparison.document(),
                    shell.words().withPoint(),
                    folder,
                    EnumSet.complementOf(EnumSet.of(Format.LABEL)),
                    Paper.usual(Locale.getDefault()));
            return new Shell.Told(
                    shell.words().of("window.shelf.written"), Export.told(shell.words(), "window.export.done", files));
        } catch (BadInput refused) {
            return new Shell.Told(
                    shell.words().of("window.export.failed"), shell.words().of(refused.told()));
        }
    }

    @Override
    public void leave() {
        shell.toStart();
    }

    private Mark mark() {
        return Mark.keptIn(shell.surroundings().ownFolder());
    }
}
