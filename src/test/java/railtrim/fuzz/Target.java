package railtrim.fuzz;

import java.util.List;
import java.util.function.Consumer;
import railtrim.job.JobFuzz;

/**
 * What is fed with nonsense, and what a search for more of it begins with: the files in {@code src/test/resources/railtrim/fuzz/NAME}.
 *
 * @param longest input worth trying, bytes
 * @param watched packages whose branches lead the search
 */
record Target(String name, Class<?> type, Consumer<byte[]> feed, int longest, String watched) {
    static final List<Target> ALL = List.of(
            new Target("number", NumberFuzz.class, NumberFuzz::fuzzerTestOneInput, 40, "railtrim.quantity.**"),
            new Target(
                    "job",
                    JobFuzz.class,
                    JobFuzz::fuzzerTestOneInput,
                    1500,
                    "railtrim.job.**:com.google.gson.stream.**"),
            new Target(
                    "parts",
                    PartsFuzz.class,
                    PartsFuzz::fuzzerTestOneInput,
                    250,
                    "railtrim.parts.**:railtrim.quantity.**"),
            new Target(
                    "board",
                    BoardFuzz.class,
                    BoardFuzz::fuzzerTestOneInput,
                    2500,
                    "railtrim.practice.**:com.google.gson.stream.**"));

    static Target named(String name) {
        return ALL.stream()
                .filter(target -> target.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
