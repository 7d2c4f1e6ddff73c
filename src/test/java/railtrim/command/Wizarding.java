package railtrim.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.function.BiFunction;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.practice.Bench;
import railtrim.procedure.Course;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Words;

/** The wizard in a terminal, run on a job in memory with a clock that only moves when the wizard waits. */
final class Wizarding {
    private static final Procedure PROCEDURE = Procedure.builtIn();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final LongConsumer waits;
    private final Course course;

    Wizarding() {
        this(new Clock());
    }

    private Wizarding(Clock clock) {
        this(clock, seconds -> clock.seconds += seconds);
    }

    /** @param waits lets seconds pass on the clock that {@code time} shows */
    Wizarding(Time time, LongConsumer waits) {
        this.waits = waits;
        this.course = new Course(PROCEDURE, new MemoryLog("test", time));
    }

    static Wizarding on(Bench bench) {
        return new Wizarding(bench, bench::waitSeconds);
    }

    static final class Clock implements Time {
        private long seconds;

        @Override
        public Instant now() {
            return Instant.EPOCH.plusSeconds(seconds);
        }

        @Override
        public long ticks() {
            return seconds * 1000;
        }
    }

    int types(String... lines) {
        return reads(new BufferedReader(new StringReader(String.join("\n", lines) + "\n")));
    }

    int reads(BiFunction<Course, Supplier<String>, BufferedReader> reader) {
        return reads(reader.apply(course, this::screen));
    }

    private int reads(BufferedReader reader) {
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(reader, stream, stream, false);
        return new TextWizard(course, terminal, Words.english(), waits::accept).run();
    }

    String screen() {
        return out.toString(StandardCharsets.UTF_8);
    }

    State state() {
        return course.state();
    }

    long dwellLeft() {
        return course.dwellLeft();
    }

    String step() {
        return state().current().step().id();
    }
}
