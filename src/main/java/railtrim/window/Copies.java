package railtrim.window;

import java.nio.file.Path;
import java.util.Map;
import javafx.application.Platform;
import railtrim.job.Job;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.Origin;
import railtrim.procedure.Sharing;
import railtrim.procedure.State;
import railtrim.procedure.Words;

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

    /** For others, without what is personal; what that is, and which words stay, is said before. */
    void share(Job job) {
        Words words = shell.words();
        Sharing.Shared preview = Sharing.of(job, "", words.of("share.left-out"));
        String said = words.of("share.personal", Integer.toString(preview.leftOut()));
        String stays = words.of("share.stays", String.join("; ", preview.stays()));
        new FileSheet(shell, "window.share", "", (file, called) -> {
                    Sharing.Shared shared = Sharing.of(job, called, words.of("share.left-out"));
                    Journal.write(file, shared.job(), Mark.forShow());
                    Platform.runLater(() ->
                            shell.tell(words.of("window.share.done"), words.of("window.share.where", file.toString())));
                })
                .saying(said, stays)
                .ask();
    }

    /** Opens an earlier state that was kept beside a job. */
    void earlier(Path kept) {
        shell.open(kept);
    }
}
