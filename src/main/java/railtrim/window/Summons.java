package railtrim.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import javafx.application.Platform;

/** Somebody started the program once more: the window comes to the front with their job. One that does not answer in time takes nothing. */
final class Summons implements Predicate<Optional<Path>> {
    private static final long PATIENCE_MILLIS = 1500;

    private final Shell shell;

    Summons(Shell shell) {
        this.shell = shell;
    }

    /** Not for the window's thread, which it waits for. */
    @Override
    public boolean test(Optional<Path> job) {
        AtomicBoolean decided = new AtomicBoolean();
        CountDownLatch taken = new CountDownLatch(1);
        Platform.runLater(() -> {
            if (decided.compareAndSet(false, true)) {
                taken.countDown();
                shell.summon(job);
            }
        });
        try {
            return taken.await(PATIENCE_MILLIS, TimeUnit.MILLISECONDS) || !decided.compareAndSet(false, true);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return !decided.compareAndSet(false, true);
        }
    }
}
