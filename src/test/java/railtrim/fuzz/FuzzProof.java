package railtrim.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Two searches for input that stops a reader, each in 256 MiB of heap: one led by what it reaches in the program (Jazzer), then changes by chance of
 * all that the first found worth keeping, which are far faster. {@code -Drailtrim.fuzz.seconds=60} is for each search of each of the four readers,
 * {@code -Drailtrim.fuzz.runs} the most changes by chance, {@code -Drailtrim.fuzz.only=job} takes one reader.
 */
@Tag("long")
class FuzzProof {
    private static final Pattern DONE = Pattern.compile("Done (\\d+) runs in (\\d+) second");
    private static final int SECONDS = Integer.getInteger("railtrim.fuzz.seconds", 60);

    @TempDir
    Path found;

    @ParameterizedTest
    @ValueSource(strings = {"number", "job", "parts", "board"})
    void nothingStopsAReader(String name) throws IOException, InterruptedException {
        if (!System.getProperty("railtrim.fuzz.only", name).equals(name)) {
            return;
        }
        Path corpus = Files.createDirectory(found.resolve("corpus"));
        String kept = CorpusTest.CORPUS.resolve(name).toString();
        Target target = Target.named(name);
        String guided = java(
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + target.type().getName(),
                "--instrumentation_includes=" + target.watched(),
                "--custom_hook_includes=" + target.watched(),
                "--reproducer_path=" + found,
                "-artifact_prefix=" + found + "/",
                "-max_total_time=" + SECONDS,
                "-timeout=10",
                "-max_len=" + target.longest(),
                "-rss_limit_mb=0",
                corpus.toString(),
                kept);
        MatchResult done = DONE.matcher(guided).results().findFirst().orElseThrow(() -> new AssertionError(guided));
        String blind = java(
                "railtrim.fuzz.Blind",
                name,
                Long.toString(Long.getLong("railtrim.fuzz.runs", 5_000_000)),
                Integer.toString(SECONDS),
                "1",
                corpus.toString(),
                kept);
        System.out.println("fuzzed " + name + ": led, " + done.group(1) + " executions in " + done.group(2)
                + " s; by chance, " + blind.strip() + "; nothing found");
    }

    /** @return what it said */
    private String java(String main, String... arguments) throws IOException, InterruptedException {
        Path said = found.resolve("said");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                main));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        try {
            assertTrue(process.waitFor(SECONDS + 180L, TimeUnit.SECONDS), "hung");
        } finally {
            process.destroyForcibly();
        }
        String all = Files.readString(said, StandardCharsets.ISO_8859_1);
        assertEquals(0, process.exitValue(), all);
        return all;
    }
}
