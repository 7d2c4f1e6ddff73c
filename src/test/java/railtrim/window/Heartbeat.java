package railtrim.window;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;

/**
 * How long the window's thread is kept from answering: it is asked to beat every few milliseconds, and what lies between two beats was one piece of work or
 * several in a row. Time of the processor is what the window itself used; time of the clock also holds waiting for the disk and for other programs.
 */
final class Heartbeat implements AutoCloseable {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long EVERY = 4;

    /** Nobody is kept waiting longer: milliseconds of the processor's time, as the clock on a shared machine tells more of other work. */
    static final double FROZEN = 200;

    /** @param processor milliseconds, {@code clock} milliseconds */
    record Longest(double processor, String during, double clock, String clockDuring) {
        @Override
        public String toString() {
            return String.format(
                    java.util.Locale.ROOT,
                    "longest without a beat: %.0f ms of the processor (%s), %.0f ms of the clock (%s)",
                    processor,
                    during,
                    clock,
                    clockDuring);
        }
    }

    private final ScheduledExecutorService heart = Executors.newSingleThreadScheduledExecutor();
    private final AtomicBoolean asked = new AtomicBoolean();
    // Of the window's thread only.
    private long processor;
    private long clock;
    private String doing = "";
    private final List<String> frozen = new ArrayList<>();
    private Longest longest = new Longest(0, "", 0, "");

    /** Called on the window's thread. */
    Heartbeat() {
        again();
        heart.scheduleAtFixedRate(this::ask, EVERY, EVERY, TimeUnit.MILLISECONDS);
    }

    private void ask() {
        if (asked.compareAndSet(false, true)) {
            Platform.runLater(this::beat);
        }
    }

    private void beat() {
        double used = (THREADS.getCurrentThreadCpuTime() - processor) / 1e6;
        double passed = (System.nanoTime() - clock) / 1e6;
        boolean more = used > longest.processor();
        boolean later = passed > longest.clock();
        longest = new Longest(
                more ? used : longest.processor(),
                more ? doing : longest.during(),
                later ? passed : longest.clock(),
                later ? doing : longest.clockDuring());
        if (used > FROZEN) {
            frozen.add(String.format(java.util.Locale.ROOT, "%.0f ms of the processor: %s", used, doing));
        }
        again();
        asked.set(false);
    }

    /** Work of the test itself is not counted: called after it, on the window's thread. */
    void again() {
        processor = THREADS.getCurrentThreadCpuTime();
        clock = System.nanoTime();
    }

    void doing(String what) {
        doing = what;
    }

    /** What kept the window for too long. */
    List<String> frozen() {
        return List.copyOf(frozen);
    }

    Longest longest() {
        return longest;
    }

    @Override
    public void close() {
        heart.shutdownNow();
    }
}
