package railtrim.packaging;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

/** How large a package came out. */
record Sizes(Build build) {
    private static final double MEBIBYTE = 1024.0 * 1024;

    String of(String what, Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            long bytes =
                    files.filter(Files::isRegularFile).mapToLong(Sizes::size).sum();
            return String.format(
                    Locale.ROOT,
                    "%s: %.1f MiB in %s",
                    what,
                    bytes / MEBIBYTE,
                    build.project().relativize(folder));
        }
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
