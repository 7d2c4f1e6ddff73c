package railtrim.benchmark;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs all benchmarks and prints one table. Times depend on the machine; the ratios are taken within the same run. */
public final class Ratios {
    private static final double FRAME = 1000.0 / 60;

    private final Map<String, Double> milliseconds = new TreeMap<>();

    private Ratios() {}

    public static void main(String[] arguments) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("railtrim\\.benchmark\\..*")
                        .forks(1)
                        .warmupIterations(3)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1))
                        .jvmArgs("-Xmx1500m", "-XX:+UseSerialGC")
                        .verbosity(VerboseMode.SILENT)
                        .build())
                .run();
        new Ratios().table(results);
    }

    private void table(Collection<RunResult> results) {
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark().replaceAll(".*\\.(\\w+\\.\\w+)$", "$1");
            String size = result.getParams().getParam("facts");
            milliseconds.put(
                    size == null ? name : name + size, result.getPrimaryResult().getScore());
        }
        System.out.printf(Locale.ROOT, "%n%-46s %10s  %-34s %9s  %s%n", "what", "ms", "against", "ratio", "wished for");
        line(
                "every pair of E192 x 7 decades, tried",
                "Pairs.everyPair",
                "the sorted search",
                "Pairs.sorted",
                "50 or more");
        row("triples of E24 x 6 decades", at("Pairs.triples"), "one frame of 1/60 s", FRAME, "1 or 2 at most");
        line(
                "a million boards drawn",
                "Samples.boards",
                "their random numbers alone",
                "Samples.numbersAlone",
                "1.5 at most");
        row("a job of 1,000 facts judged", at("WholeJob.fromScratch1000"), "10 ms", 10, "1 at most");
        line(
                "a job of 10,000 facts",
                "WholeJob.fromScratch10000",
                "1,000 facts",
                "WholeJob.fromScratch1000",
                "10 or less");
        line(
                "a job of 100,000 facts",
                "WholeJob.fromScratch100000",
                "10,000 facts",
                "WholeJob.fromScratch10000",
                "about 10");
    }

    private void line(String what, String name, String against, String other, String wished) {
        row(what, at(name), against, at(other), wished);
    }

    private static void row(String what, double time, String against, double other, String wished) {
        System.out.printf(
                Locale.ROOT,
                "%-46s %10.3f  %-34s %9.2f  %s%n",
                what,
                time,
                against + String.format(Locale.ROOT, " (%.3f ms)", other),
                time / other,
                wished);
    }

    private double at(String name) {
        if (!milliseconds.containsKey(name)) {
            throw new IllegalStateException("no result for " + name + " in " + milliseconds.keySet());
        }
        return milliseconds.get(name);
    }
}
