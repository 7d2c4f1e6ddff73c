package railtrim.window.kit;

import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Slow work beside the window’s thread, so that the window goes on answering. */
public final class Aside {
    /** Long enough for the first picture on a slow machine, and too short for anybody to wait for. */
    private static final long FIRST_PICTURE_MILLISECONDS = 300;

    private Aside() {}

    /** What can wait until the window has been painted, on the window’s thread; before, it would only hold that up. */
    public static void afterTheFirstPicture(Runnable work) {
        run("after the first picture", Aside::pause, work);
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(FIRST_PICTURE_MILLISECONDS);
        } catch (InterruptedException hurry) {
            Thread.currentThread().interrupt();
        }
    }

    public static void run(String name, Runnable work, Runnable then) {
        run(
                name,
                () -> {
                    work.run();
                    return true;
                },
                done -> then.run());
    }

    /**
     * What goes wrong is thrown on the window’s thread, where all errors are told.
     *
     * @param work on a thread of its own
     * @param then with what came of it, on the window’s thread
     */
    public static <T> void run(String name, Supplier<T> work, Consumer<T> then) {
        Thread thread = new Thread(
                () -> {
                    try {
                        T made = work.get();
                        Platform.runLater(() -> then.accept(made));
                    } catch (RuntimeException | Error wrong) {
                        Platform.runLater(() -> {
                            throw wrong;
                        });
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }
}
