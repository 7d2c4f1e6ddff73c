package railtrim.job;

import java.io.Closeable;
import java.nio.file.Path;
import java.util.List;
import railtrim.quantity.Message;

/** A job on disk: facts appended one by one, each forced to the disk before {@link #append} returns. */
public final class Journal implements Log, Closeable {
    public static final String ENDING = ".railtrim";

    private Journal() {}

    /** @throws JournalProblem where the file exists or the folder cannot be written */
    public static Journal create(Path file, String name, Time time) {
        throw new UnsupportedOperationException();
    }

    /**
     * Opens for writing where that is safe, else for reading only: damaged beyond the last line, newer version, or open in another window.
     * Appends a {@link Fact.Resumed} fact by itself where more than ten minutes passed since the last fact.
     */
    public static Journal open(Path file, Time time) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Job job() {
        throw new UnsupportedOperationException();
    }

    public Path file() {
        throw new UnsupportedOperationException();
    }

    /** Forced to disk when this returns. @throws JournalProblem with what to do where it could not be saved */
    @Override
    public Entry append(Fact fact) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long ticks() {
        throw new UnsupportedOperationException();
    }

    @Override
    public int session() {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean readOnly() {
        throw new UnsupportedOperationException();
    }

    /** What was found when opening: a torn last line cut off, damage, another window, a newer version. */
    public List<Message> problems() {
        throw new UnsupportedOperationException();
    }

    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }
}
