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

/** A finished job judged from scratch, by the number of readings on its way down. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Growth {
    @Param({"10", "100", "1000", "10000"})
    private int readings;

    private final Procedure procedure = Procedure.builtIn();
    private Job job;

    @Setup
    public void writeTheJob() {
        job = LongJob.ofReadings(procedure, readings);
    }

    @Benchmark
    public Object judged() {
        return procedure.state(job);
    }
}
