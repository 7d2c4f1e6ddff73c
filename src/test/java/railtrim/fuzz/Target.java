package railtrim.fuzz;

import java.util.List;
import java.util.function.Consumer;
import railtrim.job.JobFuzz;

/** What is fed with nonsense, and what a search for more of it begins with: the files in {@code src/test/resources/railtrim/fuzz/NAME}. */
record Target(String name, Class<?> type, Consumer<byte[]> feed) {
    static final List<Target> ALL = List.of(
            new Target("number", NumberFuzz.class, NumberFuzz::fuzzerTestOneInput),
            new Target("job", JobFuzz.class, JobFuzz::fuzzerTestOneInput),
            new Target("parts", PartsFuzz.class, PartsFuzz::fuzzerTestOneInput),
            new Target("board", BoardFuzz.class, BoardFuzz::fuzzerTestOneInput));

    static Target named(String name) {
        return ALL.stream()
                .filter(target -> target.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
