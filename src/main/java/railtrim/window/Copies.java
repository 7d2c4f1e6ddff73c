package railtrim.window;

import java.nio.file.Path;
import java.util.Map;
import railtrim.job.Job;
import railtrim.job.Journal;
import railtrim.job.Origin;
import railtrim.procedure.State;

/** Going on in another file: with a copy of the whole job, or with its plan for a board of one's own. */
final class Copies {
    private final Shell shell;

    Copies(Shell shell) {
        this.shell = shell;
    }

    /** The whole job, in a file that can be written. What was typed and not yet taken stays in its field. */
    void whole(Journal journal, Desk desk) {
        Map<String, String> drafts = desk.drafts();
        String name = journal.job().name();
        new FileSheet(shell, "window.copy", name, (file, called) -> shell.copy(journal, file, drafts)).ask();
    }

    /** What is printed on the parts of another board, to be held against one's own. */
    void plan(Job job) {
        new FileSheet(shell, "window.plan", "", (file, called) -> shell.plan(job, file, called)).ask();
    }

    /** The same for the job that is open: its board is not left with power on it. */
    void plan(Desk desk) {
        Job job = desk.state().job();
        if (job.origin() == Origin.OWN && desk.state().power() == State.Power.ON) {
            shell.askBeforeLeaving(() -> {
                shell.toStart();
                plan(job);
            });
        } else {
            plan(job);
        }
    }

    /** Opens an earlier state that was kept beside a job. */
    void earlier(Path kept) {
        shell.open(kept);
    }
}
