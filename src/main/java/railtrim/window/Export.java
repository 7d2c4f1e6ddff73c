package railtrim.window;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import railtrim.job.Job;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.Printed;
import railtrim.report.ReportWriter;

/** Writes the checklist of a job beside its file, finished or not, and tells where it is. */
final class Export {
    private final Shell shell;
    private final Desk desk;
    private final Path folder;

    Export(Shell shell, Desk desk, Path folder) {
        this.shell = shell;
        this.desk = desk;
        this.folder = folder;
    }

    void write() {
        Job job = desk.state().job();
        shell.write(() -> written(job));
    }

    /** Away from the window’s thread, with a state of its own: what is worked out for one is not meant for two threads. */
    private Shell.Told written(Job job) {
        Words words = shell.words();
        Procedure procedure = desk.course().procedure();
        State state = procedure.state(job);
        try {
            List<Path> files = ReportWriter.write(
                    state,
                    procedure,
                    words.withPoint(),
                    folder,
                    EnumSet.allOf(Format.class),
                    Paper.usual(Locale.getDefault()));
            String key = state.complete() ? "window.export.done" : "window.export.unfinished";
            return new Shell.Told(words.of("window.export.title"), told(words, key, files));
        } catch (BadInput refused) {
            return new Shell.Told(words.of("window.export.failed"), words.of(refused.told()));
        }
    }

    /** Looks at it before it goes on paper. */
    void print() {
        new PrintSheet(shell, Optional.of(desk.state()), folder, Printed.CHECKLIST).ask();
    }

    /** Where files were written, and what they are called. */
    static String told(Words words, String key, List<Path> files) {
        String names = files.stream().map(file -> file.getFileName().toString()).collect(Collectors.joining("\n"));
        return words.of(key, files.get(0).getParent().toString()) + "\n" + names;
    }
}
