package railtrim.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import railtrim.job.Job;
import railtrim.procedure.Procedure;

/**
 * A finished job judged from scratch: where are we, what is stale. Made long by holding one voltage of the way down again and again. Each
 * judging is timed by itself, so that the one in the middle is not one that was broken off by other work of the machine.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WholeJob {
    @Param({"1000", "10000", "100000"})
    private int facts;

    private final Procedure procedure = Procedure.builtIn();
    private Job job;

    @Setup
    public void writeTheJob() {
        job = LongJob.ofFacts(procedure, facts);
        if (!procedure.state(job).complete()) {
            throw new IllegalStateException("the job is not finished, so not all of it is judged");
        }
    }

    @Benchmark
    public Object fromScratch() {
        return procedure.state(job);
    }
}
