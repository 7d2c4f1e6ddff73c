package railtrim.window;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import railtrim.job.Journal;

/** A job’s file dragged onto the window opens, wherever it is let go. */
final class DroppedJob {
    private final Shell shell;

    DroppedJob(Shell shell) {
        this.shell = shell;
    }

    void watch(Scene scene) {
        scene.setOnDragOver(this::over);
        scene.setOnDragDropped(this::dropped);
    }

    private void over(DragEvent event) {
        if (!jobs(event.getDragboard()).isEmpty()) {
            event.acceptTransferModes(TransferMode.COPY, TransferMode.LINK);
        }
        event.consume();
    }

    private void dropped(DragEvent event) {
        List<Path> jobs = jobs(event.getDragboard());
        event.setDropCompleted(!jobs.isEmpty());
        event.consume();
        take(jobs);
    }

    /** A question that stands on the window is answered first; then nothing is opened over it. */
    void take(List<Path> jobs) {
        if (jobs.isEmpty() || shell.sheet().open()) {
            return;
        }
        if (jobs.size() > 1) {
            shell.tell(shell.words().of("window.drop.many"), shell.words().of("window.drop.many.text"));
        } else {
            shell.open(jobs.get(0));
        }
    }

    private static List<Path> jobs(Dragboard board) {
        return board.getFiles().stream()
                .map(File::toPath)
                .filter(file -> file.toString().endsWith(Journal.ENDING))
                .toList();
    }
}
