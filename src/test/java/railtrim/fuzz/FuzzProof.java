package railtrim.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A search for input that stops a reader, led by what it reaches in the program (Jazzer), in 256 MiB of heap. {@code -Drailtrim.fuzz.runs=2600000}
 * and {@code -Drailtrim.fuzz.seconds=540} for each of the four readers; {@code -Drailtrim.fuzz.only=job} for one.
 */
@Tag("long")
class FuzzProof {
    private static final Pattern DONE = Pattern.compile("Done (\\d+) runs in (\\d+) second");

    @TempDir
    Path found;

    @ParameterizedTest
    @ValueSource(strings = {"number", "job", "parts", "board"})
    void nothingStopsAReader(String name) throws IOException, InterruptedException {
        if (!System.getProperty("railtrim.fuzz.only", name).equals(name)) {
            return;
        }
        Path said = found.resolve("said");
        Path corpus = Files.createDirectory(found.resolve("corpus"));
        int seconds = Integer.getInteger("railtrim.fuzz.seconds", 540);
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "com.code_intelligence.jazzer.Jazzer",
                        "--target_class=" + Target.named(name).type().getName(),
                        "--instrumentation_includes=railtrim.**:com.google.gson.**:org.apache.commons.csv.**",
                        "--reproducer_path=" + found,
                        "-artifact_prefix=" + found + "/",
                        "-runs=" + Integer.getInteger("railtrim.fuzz.runs", 2_600_000),
                        "-max_total_time=" + seconds,
                        "-timeout=10",
                        "-max_len=4096",
                        "-rss_limit_mb=0",
                        corpus.toString(),
                        CorpusTest.CORPUS.resolve(name).toString()))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        try {
            assertTrue(process.waitFor(seconds + 120L, TimeUnit.SECONDS), "hung");
        } finally {
            process.destroyForcibly();
        }
        String all = Files.readString(said, java.nio.charset.StandardCharsets.ISO_8859_1);
        assertEquals(0, process.exitValue(), all);
        MatchResult done = DONE.matcher(all).results().findFirst().orElseThrow(() -> new AssertionError(all));
        System.out.println(
                "fuzzed " + name + ": " + done.group(1) + " executions in " + done.group(2) + " s, nothing found");
    }
}
