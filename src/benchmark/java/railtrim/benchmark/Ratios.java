package railtrim.benchmark;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks of the sums, each in three Javas of its own, and takes the middle: one in a few translates a loop badly. */
public final class Ratios {
    private static final double FRAME = 1000.0 / 60;

    private final Map<String, Double> milliseconds = new TreeMap<>();

    private Ratios() {}

    static void measure() throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("railtrim\\.benchmark\\..*")
                        .forks(3)
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
            String sizes = result.getParams().getParamsKeys().stream()
                    .map(result.getParams()::getParam)
                    .collect(Collectors.joining());
            // The middle one of all calls or, where calls are too short to be timed alone, of all iterations.
            milliseconds.put(
                    name + sizes, result.getPrimaryResult().getStatistics().getPercentile(50));
        }
        line(
                "every pair of E192 x 7 decades, tried",
                "Pairs.everyPair",
                "the sorted search",
                "Pairs.sorted",
                "50 or more");
        Row.print("triples of E24 x 6 decades", at("Pairs.triples"), "one frame of 1/60 s", FRAME, "1 or 2 at most");
        line(
                "a million boards drawn",
                "Samples.boards",
                "their random numbers alone",
                "Samples.numbersAlone",
                "1.5 at most");
        Row.print("a job of 1,000 facts judged", at("WholeJob.fromScratch1000"), "10 ms", 10, "1 at most");
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
        Row.print("PDF of the finished demo job", at("Printed.pdf"), "wished", 300, "1 at most");
        for (int readings : new int[] {100, 1000, 10_000}) {
            int before = readings / 10;
            line(
                    readings + " step-down readings judged",
                    "Growth.judged" + readings,
                    before + " readings",
                    "Growth.judged" + before,
                    "10 or less");
        }
    }

    private void line(String what, String name, String against, String other, String wished) {
        Row.print(what, at(name), against, at(other), wished);
    }

    private double at(String name) {
        if (!milliseconds.containsKey(name)) {
            throw new IllegalStateException("no result for " + name + " in " + milliseconds.keySet());
        }
        return milliseconds.get(name);
    }
}
