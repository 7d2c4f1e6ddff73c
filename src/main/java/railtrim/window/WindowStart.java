package railtrim.window;

import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javafx.application.Application;
import railtrim.job.OwnFolder;
import railtrim.procedure.Words;

/** Opens the window. Not an {@link Application} itself, so that a start from the class path works. */
public final class WindowStart {
    /** Kept, because a logger nobody holds is forgotten together with its level. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private WindowStart() {}

    /** Returns when the window is closed, or where one that is open already took the job. @param arguments at most one: the job file to open */
    public static void open(String[] arguments) {
        Optional<Path> job = Stream.of(arguments).findFirst().map(Path::of);
        if (new Doorbell(OwnFolder.path(), System.getenv()).ring(job)) {
            return;
        }
        // The toolkit remarks on being started from the class path; that is meant, and nothing the person can act on.
        TOOLKIT.setLevel(Level.SEVERE);
        // Read on another processor while the toolkit comes up; the bundle is kept once it has been read.
        Thread words = new Thread(Words::english, "words");
        words.setDaemon(true);
        words.start();
        Application.launch(RailtrimApp.class, arguments);
    }
}
