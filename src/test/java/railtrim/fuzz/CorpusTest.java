package railtrim.fuzz;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every file kept from fuzzing, and some hundred changes of each by chance, the same in every build. The long form is {@link FuzzProof}. */
class CorpusTest {
    static final Path CORPUS = Path.of("src", "test", "resources", "railtrim", "fuzz");
    private static final long SEED = 20260304;
    private static final int CHANGES = 300;
    /** No input of this size may take as long as a person would notice. */
    private static final Duration HANG = Duration.ofSeconds(20);

    @ParameterizedTest
    @ValueSource(strings = {"number", "job", "parts", "board"})
    void noInputStopsAReaderOrMakesItHang(String name) throws IOException {
        Target target = Target.named(name);
        Random random = new Random(SEED);
        List<byte[]> kept = kept(name);
        assertTrue(!kept.isEmpty());
        Assertions.assertTimeout(HANG, () -> {
            for (byte[] input : kept) {
                feed(target, input);
                byte[] changed = input;
                for (int i = 0; i < CHANGES; i++) {
                    changed = Change.of(random.nextInt(4) == 0 ? input : changed, random);
                    feed(target, changed);
                }
            }
        });
    }

    private static void feed(Target target, byte[] input) {
        assertDoesNotThrow(
                () -> target.feed().accept(input),
                () -> "seed " + SEED + ", input " + HexFormat.of().formatHex(input));
    }

    static List<byte[]> kept(String name) throws IOException {
        try (Stream<Path> files = Files.list(CORPUS.resolve(name))) {
            return files.sorted().map(CorpusTest::bytes).toList();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
