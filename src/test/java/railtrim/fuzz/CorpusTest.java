package railtrim.fuzz;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
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

    /** What a reader of numbers, JSON or tables may stumble over. */
    private static final List<String> STUMBLES = List.of(
            "1e999",
            "NaN",
            "-0",
            "0x1p3",
            "1d",
            "٣",
            "１",
            "\u2126",
            "\u03a9",
            "\u00b5",
            "null",
            "{",
            "[",
            "\"",
            "\\u0000",
            "\\ud83c",
            "\u0000",
            "\ufeff",
            "\u202e",
            ",",
            ";",
            ";;",
            "\r",
            "\n",
            "\"\"",
            ".",
            "-",
            "+",
            "k",
            "%",
            "9999999999999999999",
            "true");

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
                    changed = change(random.nextInt(4) == 0 ? input : changed, random);
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

    /** A byte turned over, a piece left out or doubled, or a stumbling block put in. */
    private static byte[] change(byte[] input, Random random) {
        int at = input.length == 0 ? 0 : random.nextInt(input.length);
        int end = Math.min(input.length, at + 1 + random.nextInt(12));
        byte[] piece = Arrays.copyOfRange(input, at, end);
        return switch (random.nextInt(4)) {
            case 0 -> {
                byte[] turned = input.clone();
                if (turned.length > 0) {
                    turned[at] ^= (byte) (1 << random.nextInt(8));
                }
                yield turned;
            }
            case 1 -> joined(input, at, new byte[0], end);
            case 2 -> joined(input, end, piece, end);
            default ->
                joined(
                        input,
                        at,
                        STUMBLES.get(random.nextInt(STUMBLES.size())).getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        at);
        };
    }

    private static byte[] joined(byte[] input, int until, byte[] piece, int from) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(input, 0, until);
        out.writeBytes(piece);
        out.write(input, from, input.length - from);
        return out.toByteArray();
    }
}
