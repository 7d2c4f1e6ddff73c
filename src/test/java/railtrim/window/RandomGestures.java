package railtrim.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.scene.control.Labeled;
import railtrim.job.JobCheck;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.MemoryLog;
import railtrim.practice.Answer;
import railtrim.practice.Bench;
import railtrim.practice.Hand;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/**
 * Sittings of random gestures, each at another place of a job: on the start page, on a practice bench, in a job that is kept in a file. Between the
 * gestures a hand that knows the board gives right answers, or nobody would ever get past the first steps.
 */
final class RandomGestures {
    private static final int SITTING = 80;
    private static final int DEEPEST = 420;
    private static final int REMEMBERED = 8;

    /** What was found, with the gestures that led there. */
    record Found(
            List<String> problems,
            List<String> frozen,
            Heartbeat.Longest longest,
            int gestures,
            int answers,
            int files) {}

    private final Path folder;
    private final long seed;
    private Random chance;
    private final BenchTime time = new BenchTime();
    private final List<String> problems = new ArrayList<>();
    private final Deque<String> last = new ArrayDeque<>();
    private final GateWatch gates = new GateWatch();
    private int sitting;
    private int answers;
    private int files;

    private RandomGestures(Path folder, long seed) {
        this.folder = folder;
        this.seed = seed;
        this.chance = new Random(seed);
    }

    static Found of(Path folder, long seed, int gestures) throws Exception {
        return new RandomGestures(folder, seed).run(0, gestures);
    }

    /** One sitting again; each has chances of its own. */
    static Found sitting(Path folder, long seed, int sitting) throws Exception {
        return new RandomGestures(folder, seed).run(sitting * SITTING, (sitting + 1) * SITTING);
    }

    private Found run(int from, int to) throws Exception {
        Handler log = listening();
        try (Opened window = Opened.with(new TestSurroundings(folder, new TestPrinting(true), time))) {
            Logger.getLogger("").addHandler(log);
            // After the window has set its own: an error is a failure here, not a sheet.
            window.fx(() -> {
                Thread.currentThread()
                        .setUncaughtExceptionHandler((thread, error) -> wrong("uncaught: " + trace(error)));
                return null;
            });
            comeUp(window);
            Heartbeat heart = window.fx(Heartbeat::new);
            try (heart) {
                for (int done = from; done < to; done += SITTING) {
                    beginAgain(window, done / SITTING);
                    sit(window, heart, Math.min(SITTING, to - done));
                }
            }
            return new Found(List.copyOf(problems), heart.frozen(), heart.longest(), to - from, answers, files);
        } finally {
            Logger.getLogger("").removeHandler(log);
        }
    }

    /** What is shown for the first time loads its classes; that is the start of the program and not counted. */
    private void comeUp(Opened window) throws Exception {
        for (String board : Practice.BOARDS.subList(0, 2)) {
            Bench bench = new Bench(Practice.board(board), Meter.middle(), Rehearsal.chance(1));
            Course course = new Course(Procedure.builtIn(), new MemoryLog(board, bench));
            walk(course, new Hand(bench), DEEPEST);
            window.fx(() -> {
                window.shell.show(JobPage.practice(window.shell, course, bench));
                return null;
            });
            window.settle();
            window.layOut();
        }
        window.fx(() -> {
            window.shell.toStart();
            return null;
        });
    }

    /** The same window, look and chances whatever sittings there were before. */
    private void beginAgain(Opened window, int now) throws Exception {
        sitting = now;
        chance = new Random(seed + 1_000_003L * sitting);
        last.clear();
        window.fx(() -> {
            window.shell.theme().look(Look.SYSTEM);
            return null;
        });
        window.size(1240, 800, Theme.SIZES.get(Theme.USUAL));
    }

    private void sit(Opened window, Heartbeat heart, int gestures) throws Exception {
        Bench bench = new Bench(
                Practice.board(Practice.BOARDS.get(chance.nextInt(Practice.BOARDS.size()))),
                Meter.middle(),
                Rehearsal.chance(chance.nextLong()));
        Hand hand = new Hand(bench);
        time.of(bench);
        Optional<Path> file = begin(window, bench, hand);
        window.fx(() -> {
            heart.again();
            return null;
        });
        System.out.println("sitting " + sitting + ": " + last.getLast());
        Optional<Desk> own = window.shell.desk();
        RandomPerson person = window.fx(() -> new RandomPerson(window, chance));
        for (int i = 0; i < gestures; i++) {
            window.fx(() -> {
                heart.again();
                note(chance.nextInt(5) == 0 ? answer(window, hand, heart) : person.gesture());
                heart.doing("sitting " + sitting + ", " + last.getLast());
                return null;
            });
            window.settle();
            window.layOut();
            window.fx(() -> {
                gates.look(window).forEach(this::wrong);
                heart.again();
                return null;
            });
        }
        leave(window, heart);
        window.forgetEvents();
        file.ifPresent(saved -> readBack(saved, own.orElseThrow()));
    }

    private Optional<Path> begin(Opened window, Bench bench, Hand hand) throws Exception {
        int kind = chance.nextInt(10);
        if (kind == 0) {
            note("on the start page");
            return Optional.empty();
        }
        String board = bench.board().label().name();
        int deep = chance.nextInt(DEEPEST);
        Path file = folder.resolve("jobs").resolve("job " + files + Journal.ENDING);
        boolean kept = kind > 3;
        if (!kept) {
            Course course = new Course(Procedure.builtIn(), new MemoryLog(board, bench));
            walk(course, hand, deep);
            show(window, () -> JobPage.practice(window.shell, course, bench));
        } else {
            files++;
            Files.createDirectories(file.getParent());
            Journal journal = Journal.create(file, board, bench, Mark.keptIn(folder.resolve("own")));
            Course course = new Course(Procedure.builtIn(), journal);
            walk(course, hand, deep);
            show(window, () -> JobPage.of(window.shell, journal, course));
        }
        note((kept ? "job of " : "practice of ") + board + " at "
                + window.shell.desk().orElseThrow().shown().step().id());
        return kept ? Optional.of(file) : Optional.empty();
    }

    private static void show(Opened window, Callable<JobPage> page) throws Exception {
        window.fx(() -> {
            window.shell.show(page.call());
            return null;
        });
        window.settle();
    }

    /** Away from the window: nobody sees how the job came to be where it is. */
    private static void walk(Course course, Hand hand, int answers) {
        for (int i = 0; i < answers; i++) {
            Answer answer = hand.next(course.state(), course);
            if (answer instanceof Answer.Done || answer instanceof Answer.Stuck) {
                return;
            }
            Rehearsal.offer(answer, course);
        }
    }

    /** What a hand on the bench would answer now; nobody answers below a sheet. */
    private String answer(Opened window, Hand hand, Heartbeat heart) {
        Optional<Desk> desk = window.shell.desk();
        if (desk.isEmpty() || window.shell.sheet().open()) {
            return "nothing to answer";
        }
        Answer answer = hand.next(desk.get().state(), desk.get().course());
        heart.again();
        if (answer instanceof Answer.Done || answer instanceof Answer.Stuck) {
            return "no answer: " + answer;
        }
        answers++;
        Walk.give(desk.get(), answer);
        desk.get().next();
        return "answer " + answer;
    }

    /** As a person leaves: Escape until nothing lies over the page, then the start page. */
    private void leave(Opened window, Heartbeat heart) throws Exception {
        window.until("the writing to be over", () -> !window.has("sheet-wait"));
        window.until(
                "the printing to be over",
                () -> !window.has("print-close") || !window.node("print-close").isDisabled());
        for (int i = 0; i < 3 && window.fx(() -> window.shell.sheet().open()); i++) {
            window.press(javafx.scene.input.KeyCode.ESCAPE);
        }
        window.fx(() -> {
            if (window.shell.sheet().open()) {
                wrong("Escape does not close the sheet " + title(window));
                window.shell.sheet().close();
            }
            List.copyOf(javafx.stage.Window.getWindows()).stream()
                    .filter(each -> each != window.shell.stage())
                    .forEach(javafx.stage.Window::hide);
            window.shell.toStart();
            heart.again();
            return null;
        });
    }

    private static String title(Opened window) {
        return window.shell.scene().getRoot().lookup(".sheet-title") instanceof Labeled says ? says.getText() : "";
    }

    private void readBack(Path file, Desk desk) {
        JobCheck read = JobCheck.of(file, Mark.keptIn(folder.resolve("own")));
        if (!read.problems().isEmpty()) {
            wrong(file + " reads back with " + read.problems());
        }
        if (!read.job().entries().equals(desk.state().job().entries())) {
            wrong(file + " does not hold what was shown");
        }
        String onDisk = GateWatch.summary(Procedure.builtIn().state(read.job()));
        if (!onDisk.equals(GateWatch.summary(desk.state()))) {
            wrong(file + " reads back as " + onDisk + ", shown was " + GateWatch.summary(desk.state()));
        }
    }

    private Handler listening() {
        return new Handler() {
            @Override
            public void publish(LogRecord told) {
                if (told.getLevel().intValue() >= Level.WARNING.intValue()) {
                    String thrown = told.getThrown() == null ? "" : trace(told.getThrown());
                    wrong("logged: " + told.getLoggerName() + " " + told.getMessage() + thrown);
                }
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
    }

    private static String trace(Throwable error) {
        java.io.StringWriter text = new java.io.StringWriter();
        error.printStackTrace(new java.io.PrintWriter(text, true));
        return text.toString().lines().limit(25).reduce("", (all, line) -> all + "\n    " + line);
    }

    private synchronized void note(String gesture) {
        last.addLast(gesture);
        if (last.size() > REMEMBERED) {
            last.removeFirst();
        }
    }

    private synchronized void wrong(String what) {
        problems.add(what + "\n  in sitting " + sitting + " after " + last);
    }
}
