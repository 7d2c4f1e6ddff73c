package railtrim.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import railtrim.job.BuiltIn;
import railtrim.job.JobCheck;
import railtrim.job.Mark;
import railtrim.procedure.Procedure;
import railtrim.procedure.Words;
import railtrim.report.Format;
import railtrim.report.Paper;
import railtrim.report.ReportWriter;

/** The finished demo job as PDF, from its state to the file. */
@org.openjdk.jmh.annotations.State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Printed {
    private final Procedure procedure = Procedure.builtIn();
    private final Words words = Words.english();
    private railtrim.procedure.State state;
    private Path folder;

    @Setup
    public void readTheJob() throws IOException {
        folder = Files.createTempDirectory("railtrim-bench");
        Path demo = Files.writeString(folder.resolve("demo.railtrim"), BuiltIn.text("demo-data/finished-job.railtrim"));
        state = procedure.state(JobCheck.of(demo, Mark.lookUp(folder)).job());
    }

    @Benchmark
    public List<Path> pdf() {
        return ReportWriter.write(state, procedure, words, folder, EnumSet.of(Format.PDF), Paper.A4);
    }
}
