package railtrim.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.locks.LockSupport;

/** Lets time pass while a dwell runs. */
interface Waiting {
    /** Returns after about so many seconds, or sooner when there is something to read. */
    void pass(long seconds);

    /** Real time. A person who types something is listened to at once: it may be {@code safe}. */
    static Waiting real(Terminal terminal) {
        return seconds -> {
            long end = System.nanoTime() + seconds * 1_000_000_000L;
            while (System.nanoTime() < end && !(terminal.person() && typed(terminal))) {
                LockSupport.parkNanos(100_000_000L);
            }
        };
    }

    private static boolean typed(Terminal terminal) {
        try {
            return terminal.in().ready();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
