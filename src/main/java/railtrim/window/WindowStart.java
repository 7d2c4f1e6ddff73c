package railtrim.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import railtrim.job.OwnFolder;

/** Opens the window. Not an {@link Application} itself, so that a start from the class path works. */
public final class WindowStart {
    /** Whether a window that was open already took the job. */
    private static final CompletableFuture<Boolean> TAKEN = new CompletableFuture<>();

    private WindowStart() {}

    /** Returns when the window is closed, or where one that is open already took the job. @param arguments at most one: the job file to open */
    public static void open(String[] arguments) {
        HeadStart.begin();
        // Whether a window is open already is found out while the toolkit comes up; nothing is shown before.
        Thread thread = new Thread(() -> ring(arguments), "second start");
        thread.setDaemon(true);
        thread.start();
        // The toolkit remarks on being started from the class path; that is meant, and nothing the person can act on.
        Quiet.TOOLKIT.setLevel(Level.SEVERE);
        HeadStart.nameTheme();
        Application.launch(RailtrimApp.class, arguments);
    }

    private static void ring(String... arguments) {
        boolean taken = false;
        try {
            Optional<Path> job = arguments.length == 0 ? Optional.empty() : Optional.of(Path.of(arguments[0]));
            taken = new Doorbell(OwnFolder.path(), System.getenv()).ring(job);
        } finally {
            TAKEN.complete(taken);
        }
    }

    /** Waits for the answer. @return whether a window that was open already took the job */
    static boolean takenElsewhere() {
        return TAKEN.join();
    }

    /** Made ready only after the others have begun. */
    private static final class Quiet {
        /** Kept, because a logger nobody holds is forgotten together with its level. */
        static final Logger TOOLKIT = Logger.getLogger("javafx");
    }
}
