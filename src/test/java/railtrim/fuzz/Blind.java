package railtrim.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Run in a process of its own with a small heap: changes by chance, of what a guided search found, as fast as the reader takes them. */
final class Blind {
    /** Changes in a row before the next begins with a kept input again. */
    private static final int ROW = 50;

    private Blind() {}

    /** @param arguments name of the target, how many inputs, how many seconds at most, seed, then folders of inputs to begin with */
    public static void main(String[] arguments) throws IOException {
        Target target = Target.named(arguments[0]);
        long most = Long.parseLong(arguments[1]);
        long end = System.nanoTime() + Long.parseLong(arguments[2]) * 1_000_000_000L;
        Random random = new Random(Long.parseLong(arguments[3]));
        List<byte[]> kept = new ArrayList<>();
        for (String folder : Arrays.asList(arguments).subList(4, arguments.length)) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                for (Path file : files.sorted().toList()) {
                    kept.add(Files.readAllBytes(file));
                }
            }
        }
        long fed = 0;
        long slowest = 0;
        byte[] input = new byte[0];
        while (fed < most && System.nanoTime() < end) {
            input = fed % ROW == 0 || input.length > 2L * target.longest()
                    ? kept.get(random.nextInt(kept.size()))
                    : Change.of(input, random);
            long before = System.nanoTime();
            try {
                target.feed().accept(input);
            } catch (RuntimeException | Error e) {
                System.out.println("stopped by " + HexFormat.of().formatHex(input));
                throw e;
            }
            slowest = Math.max(slowest, System.nanoTime() - before);
            fed++;
        }
        System.out.println(
                fed + " executions from " + kept.size() + " inputs, the slowest " + slowest / 1_000_000 + " ms");
    }
}
