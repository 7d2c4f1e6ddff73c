package railtrim.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Job;
import railtrim.job.MemoryLog;
import railtrim.job.Time;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;
import railtrim.procedure.Sharing;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.StepSums;
import railtrim.procedure.Sums;
import railtrim.procedure.TakeOver;
import railtrim.procedure.Words;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.ReportWriter;

/**
 * A stranger's job whose lines are all well formed but say what nobody ever answered: whatever it says, its state, its figures, its sums and its
 * record are worked out. {@code -Drailtrim.strange.jobs=5000} and {@code -Drailtrim.seed=1} for the long form.
 */
class StrangeJobsTest {
    private static final Procedure PROCEDURE = Procedure.builtIn();
    private static final Words WORDS = Words.english();
    private static final Set<Format> TEXTS = EnumSet.of(Format.HTML, Format.MARKDOWN, Format.CSV);

    /** Paper takes far longer to lay out than all the rest. */
    private static final int PAPER_EVERY = 10;

    private static final long HANG_NANOS = 20_000_000_000L;

    @TempDir
    Path folder;

    @Test
    void nothingAStrangersJobSaysStopsTheSumsOrTheRecord() {
        take(25, 20260304);
    }

    @Test
    @Tag("long")
    void theSameForManyJobs() {
        take(Integer.getInteger("railtrim.strange.jobs", 5000), Long.getLong("railtrim.seed", 1));
    }

    private void take(int jobs, long seed) {
        StrangeJobs strange = new StrangeJobs(PROCEDURE, seed);
        Map<String, String> stopped = new TreeMap<>();
        long slowest = 0;
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        for (int i = 0; i < jobs; i++) {
            Job job = strange.next();
            long before = threads.getCurrentThreadCpuTime();
            try {
                everything(job, i % PAPER_EVERY == 0);
            } catch (RuntimeException | Error e) {
                stopped.putIfAbsent(e + " at " + StrangeJobs.where(e), "seed " + seed + ", job " + i);
            }
            slowest = Math.max(slowest, threads.getCurrentThreadCpuTime() - before);
        }
        System.out.println(jobs + " strange jobs worked out, the slowest in " + slowest / 1_000_000 + " ms of work");
        assertTrue(slowest < HANG_NANOS, "no job may take as long as a person would take for a hang: " + slowest);
        assertTrue(
                stopped.isEmpty(),
                () -> String.join("\n", stopped.entrySet().toString().split("(?<=\\d, )")));
    }

    private void everything(Job job, boolean paper) {
        State state = PROCEDURE.state(job);
        Figures figures = state.figures();
        ask(figures);
        for (Step step : PROCEDURE.steps()) {
            StepSums.at(step.id(), figures);
            step.checks().apply(figures);
            for (Field field : step.fields()) {
                field.asked().test(figures);
                TakeOver.inWords(field, figures, WORDS);
                Sums.expected(field, figures);
                if (field instanceof Field.Number number) {
                    number.expected().apply(figures);
                } else if (field instanceof Field.Choice choice) {
                    choice.options().apply(figures);
                }
            }
        }
        Course course = new Course(PROCEDURE, MemoryLog.takenUp(job, Time.system(), 1000));
        course.dwellLeft();
        course.takingBack();
        course.cardFields();
        PROCEDURE.steps().forEach(step -> course.relocks(step.id()));
        TakeOver.plan(job);
        Sharing.of(job, "a sampler", "left out");
        Set<Format> formats = paper ? EnumSet.allOf(Format.class) : TEXTS;
        ReportWriter.write(state, PROCEDURE, WORDS, folder, formats, Paper.A4);
    }

    /** Every question that can be asked of the figures without more. */
    private static void ask(Figures figures) {
        for (Method method : Figures.class.getMethods()) {
            boolean question = method.getDeclaringClass() == Figures.class
                    && method.getParameterCount() == 0
                    && !Modifier.isStatic(method.getModifiers());
            if (question) {
                try {
                    method.invoke(figures);
                } catch (InvocationTargetException e) {
                    throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e);
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }
}
