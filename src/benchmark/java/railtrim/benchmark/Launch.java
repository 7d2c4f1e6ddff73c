package railtrim.benchmark;

import java.awt.AWTException;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Starts a program and looks at the screen, as a person does: it is there when the screen first shows what it shows from
 * then on. What the system says of the process tells its memory and its idling. Linux only.
 */
final class Launch {
    /** A strip from top to bottom, through words and signs of the start page: looking at more would take the processor from what is looked at. */
    private static final Rectangle MIDDLE = new Rectangle(760, 250, 8, 450);

    private static final long LOOK_EVERY = 5;
    private static final long STANDS_STILL = 1500;
    private static final long GIVE_UP = 60_000;
    private static final double TICKS_A_SECOND = 100;

    /**
     * @param milliseconds from the start of the process to the finished picture
     * @param processor milliseconds of processor time until then, which a busy machine changes less
     * @param mebibytes resident, a moment after
     * @param idle share of one core used while nobody touches it; only measured if asked for
     */
    record Seen(double milliseconds, double processor, double mebibytes, double idle) {}

    private final Robot robot;

    Launch() throws AWTException {
        robot = new Robot();
    }

    Seen of(List<String> command) throws IOException, InterruptedException {
        return of(command, 0);
    }

    /** @param idleSeconds how long it is left alone to see what it uses then; 0 for not at all */
    Seen of(List<String> command, int idleSeconds) throws IOException, InterruptedException {
        long before = picture();
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            Stood stood = whenItStands(process, before, start);
            double mebibytes = resident(process.pid());
            return new Seen(
                    stood.nanoseconds() / 1e6,
                    1000 * stood.processor(),
                    mebibytes,
                    idleSeconds == 0 ? 0 : idle(process.pid(), idleSeconds));
        } finally {
            process.destroy();
            process.waitFor(20, TimeUnit.SECONDS);
            awaitEmpty(before);
        }
    }

    /** @param processor seconds of processor time until the picture stood, not what is done behind it after */
    private record Stood(long nanoseconds, double processor) {}

    private Stood whenItStands(Process process, long empty, long start) throws IOException, InterruptedException {
        long last = empty;
        long since = start;
        double processor = 0;
        while (last == empty || System.nanoTime() - since < STANDS_STILL * 1_000_000) {
            TimeUnit.MILLISECONDS.sleep(LOOK_EVERY);
            if (!process.isAlive() || System.nanoTime() - start > GIVE_UP * 1_000_000) {
                throw new IllegalStateException("no window came up");
            }
            long looked = System.nanoTime();
            long now = picture();
            if (now != last) {
                last = now;
                since = looked;
                processor = processor(process.pid());
            }
        }
        return new Stood(since - start, processor);
    }

    private void awaitEmpty(long empty) throws InterruptedException {
        while (picture() != empty) {
            TimeUnit.MILLISECONDS.sleep(LOOK_EVERY);
        }
    }

    private long picture() {
        BufferedImage image = robot.createScreenCapture(MIDDLE);
        long sum = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                sum = 31 * sum + image.getRGB(x, y);
            }
        }
        return sum;
    }

    private static double resident(long pid) throws IOException {
        return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
                .findFirst()
                .orElseThrow();
    }

    private static double idle(long pid, int seconds) throws IOException, InterruptedException {
        TimeUnit.SECONDS.sleep(3);
        double before = processor(pid);
        TimeUnit.SECONDS.sleep(seconds);
        return (processor(pid) - before) / seconds;
    }

    /** Seconds of processor time, by the 14th and 15th figure of the process’s line. */
    private static double processor(long pid) throws IOException {
        String line = Files.readString(Path.of("/proc", Long.toString(pid), "stat"));
        String[] figures = line.substring(line.lastIndexOf(')') + 2).split(" ");
        return (Double.parseDouble(figures[11]) + Double.parseDouble(figures[12])) / TICKS_A_SECOND;
    }
}
