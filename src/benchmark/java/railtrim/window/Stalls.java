package railtrim.window;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;

/** How long the window’s thread keeps others waiting: somebody asks it again and again and notes the longest wait. */
final class Stalls {
    private static final long ASK_EVERY = 5;

    private final AtomicLong longest = new AtomicLong();

    static Stalls watch() {
        Stalls stalls = new Stalls();
        Thread asking = new Thread(stalls::ask, "stalls");
        asking.setDaemon(true);
        asking.start();
        return stalls;
    }

    private void ask() {
        try {
            while (true) {
                long asked = System.nanoTime();
                AtomicLong answered = new AtomicLong();
                CountDownLatch there = new CountDownLatch(1);
                Platform.runLater(() -> {
                    answered.set(System.nanoTime());
                    there.countDown();
                });
                there.await();
                longest.accumulateAndGet(answered.get() - asked, Math::max);
                TimeUnit.MILLISECONDS.sleep(ASK_EVERY);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Since this was last asked. */
    double longestMilliseconds() {
        return longest.getAndSet(0) / 1e6;
    }
}
