package railtrim.window;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.control.Button;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import railtrim.benchmark.LongJob;
import railtrim.benchmark.Row;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.job.Log;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.quantity.Meter;
import railtrim.window.kit.Handle;

/**
 * A whole practice job, and long finished ones leafed through, in a real window: from the press on Next until the next step
 * has been drawn, the wait for the frame counted in, from the very first step on, so nothing is warm.
 */
public final class NextToPainted {
    /** A person takes longer; it lets the focus and what follows the first picture settle. */
    private static final long BETWEEN = 40;

    /** And anywhere between two strokes of the toolkit’s clock, in microseconds; else the press would always fall at the same place. */
    private static final int STROKE = 16_667;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final int READINGS = 500;
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private final Procedure procedure = Procedure.builtIn();
    private final Random chance = new Random(5);
    private final Shell shell;
    private final Stalls stalls;
    /** Milliseconds of processor time that the window’s thread took for each press, which a busy machine changes less. */
    private final List<Double> work = new ArrayList<>();

    private NextToPainted() throws IOException, InterruptedException, ExecutionException {
        Path folder = Files.createTempDirectory("railtrim-bench");
        shell = fx(() -> {
            Shell opened = new Shell(new Stage(), new TestSurroundings(folder), Words.english());
            opened.show();
            return opened;
        });
        TimeUnit.SECONDS.sleep(2);
        stalls = Stalls.watch();
        reachForTheMouse();
    }

    /** As a person does who is about to begin, and reads what the start page says. */
    private void reachForTheMouse() throws InterruptedException, ExecutionException {
        fx(() -> {
            Event.fireEvent(
                    shell.scene(),
                    new MouseEvent(
                            MouseEvent.MOUSE_MOVED,
                            300,
                            300,
                            300,
                            300,
                            MouseButton.NONE,
                            0,
                            false,
                            false,
                            false,
                            false,
                            false,
                            false,
                            false,
                            true,
                            false,
                            true,
                            null));
            return null;
        });
        TimeUnit.SECONDS.sleep(3);
    }

    public static void main(String[] arguments) throws Exception {
        TOOLKIT.setLevel(Level.SEVERE);
        CountDownLatch up = new CountDownLatch(1);
        Platform.startup(up::countDown);
        up.await();
        NextToPainted window = new NextToPainted();
        window.wholeJob();
        window.longJob();
        window.growth();
        System.exit(0);
    }

    private void wholeJob() throws InterruptedException, ExecutionException {
        Bench bench = new Bench(Practice.board("sound-board"), Meter.middle(), new Random(7));
        Course course =
                new Course(procedure, new MemoryLog(bench.board().label().name(), bench));
        Desk desk = fx(() -> {
            JobPage page = JobPage.practice(shell, course, bench);
            shell.show(page);
            return page.desk();
        });
        Hand hand = new Hand(bench);
        List<Double> times = new ArrayList<>();
        while (true) {
            Answer answer = hand.next(desk.state(), course);
            if (answer instanceof Answer.Done) {
                break;
            }
            fx(() -> {
                Walk.give(desk, answer);
                return null;
            });
            pause();
            if (desk.nextOpen()) {
                times.add(pressed("next"));
            }
        }
        rows("Next to painted, a practice job", times);
        Row.print("    longest stall of the window", stalls.longestMilliseconds(), "wished", 100, "1 at most");
    }

    private void longJob() throws InterruptedException, ExecutionException {
        show(READINGS);
        rows("Next to painted, " + READINGS + " readings", leafed());
        Row.print("    longest stall of the window", stalls.longestMilliseconds(), "wished", 100, "1 at most");
    }

    private void growth() throws InterruptedException, ExecutionException {
        double opened = show(10);
        double next = Row.median(array(leafed()));
        for (int readings : new int[] {100, 1000, 10_000}) {
            double openedNow = show(readings);
            double nextNow = Row.median(array(leafed()));
            Row.print(readings + " readings, opened", openedNow, readings / 10 + " readings", opened, "10 or less");
            Row.print(
                    readings + " readings, Next to painted", nextNow, readings / 10 + " readings", next, "10 or less");
            opened = openedNow;
            next = nextNow;
        }
    }

    private void rows(String what, List<Double> times) {
        Row.print(what + ", median", Row.median(array(times)), "wished", 16, "1 at most");
        Row.print("    99 of 100", Row.percentile(0.99, array(times)), "wished", 50, "1 at most");
        Row.print("    processor time of it, median", Row.median(array(work)), "a frame", 1000.0 / 60, "");
        work.clear();
    }

    /** @return milliseconds until a finished job is judged and its page drawn */
    private double show(int readings) throws InterruptedException {
        Job job = LongJob.ofReadings(procedure, readings);
        double time = untilDrawn(() -> {
            Course course = new Course(procedure, new Given(job));
            Desk desk = new Desk(course, Time.system(), Optional.empty());
            JobPage.Kept kept =
                    new JobPage.Kept("long", shell.surroundings().jobFolder(), List.of(), false, Optional.empty());
            shell.show(new JobPage(shell, desk, kept));
        });
        TimeUnit.MILLISECONDS.sleep(10 * BETWEEN);
        return time;
    }

    /** Back to the first step, then on with Next through all of them. */
    private List<Double> leafed() throws InterruptedException, ExecutionException {
        while (fx(() -> !button("back").isDisabled())) {
            pressed("back");
        }
        work.clear();
        List<Double> times = new ArrayList<>();
        while (fx(() -> !button("next").isDisabled())) {
            times.add(pressed("next"));
        }
        return times;
    }

    private double pressed(String id) throws InterruptedException {
        double time = untilDrawn(() -> button(id).fire());
        pause();
        return time;
    }

    private void pause() throws InterruptedException {
        TimeUnit.MICROSECONDS.sleep(1000 * BETWEEN + chance.nextInt(STROKE));
    }

    private Button button(String id) {
        return (Button) Handle.find(shell.scene().getRoot(), id);
    }

    /** The frame is laid out, handed over and drawn; what is asked of the drawing thread after that is done after it. */
    private double untilDrawn(Runnable deed) throws InterruptedException {
        AtomicLong start = new AtomicLong();
        AtomicLong end = new AtomicLong();
        CountDownLatch drawn = new CountDownLatch(1);
        RenderJob last = new RenderJob(() -> {
            end.set(System.nanoTime());
            drawn.countDown();
        });
        Runnable[] laidOut = new Runnable[1];
        AtomicLong processor = new AtomicLong();
        laidOut[0] = () -> {
            shell.scene().removePostLayoutPulseListener(laidOut[0]);
            Platform.runLater(() -> {
                work.add((THREADS.getCurrentThreadCpuTime() - processor.get()) / 1e6);
                Toolkit.getToolkit().addRenderJob(last);
            });
        };
        Platform.runLater(() -> {
            start.set(System.nanoTime());
            processor.set(THREADS.getCurrentThreadCpuTime());
            deed.run();
            shell.scene().addPostLayoutPulseListener(laidOut[0]);
            Platform.requestNextPulse();
        });
        drawn.await();
        return (end.get() - start.get()) / 1e6;
    }

    /** Read only, so that nobody asks where the board was meanwhile. */
    private record Given(Job job) implements Log {
        @Override
        public Entry append(Fact fact) {
            throw new IllegalStateException("nothing is written here, but there came " + fact);
        }

        @Override
        public long ticks() {
            return 0;
        }

        @Override
        public Instant now() {
            return Time.system().now();
        }

        @Override
        public int session() {
            return 1;
        }

        @Override
        public boolean readOnly() {
            return true;
        }
    }

    private static <T> T fx(Callable<T> work) throws InterruptedException, ExecutionException {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    private static double[] array(List<Double> times) {
        return times.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
