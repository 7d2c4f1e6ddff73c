package railtrim.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Changes to an input by chance. */
final class Change {
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

    private Change() {}

    /** A byte turned over, a piece left out or doubled, or a stumbling block put in. */
    static byte[] of(byte[] input, Random random) {
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
                joined(input, at, STUMBLES.get(random.nextInt(STUMBLES.size())).getBytes(StandardCharsets.UTF_8), at);
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
