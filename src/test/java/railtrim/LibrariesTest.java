package railtrim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The list of libraries that each build writes and prints: name, version and licence of all that travels with the program. */
class LibrariesTest {
    private static final Pattern LINE =
            Pattern.compile("\\s*\\((?<licence>.+?)\\) .+ \\((?<what>[^: ]+:[^: ]+:[^: ]+) - .*\\)");
    private static final List<String> LICENCES =
            List.of("Apache-2.0", "MIT", "BSD-3-Clause", "GPL-2.0 with Classpath Exception");

    @Test
    void everyLibraryIsListedWithItsVersionAndALicenceThatAllowsShippingIt() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("target", "LIBRARIES.txt")).stream()
                .filter(line -> line.startsWith("     ("))
                .toList();
        lines.forEach(System.out::println);
        assertTrue(lines.size() >= 8, "only " + lines);
        for (String line : lines) {
            Matcher library = LINE.matcher(line);
            assertTrue(library.matches(), line);
            assertTrue(LICENCES.contains(library.group("licence")), line);
            String[] named = library.group("what").split(":");
            assertEquals(1, onClassPath(named[1] + "-" + named[2]), "as listed, so it is used: " + line);
        }
    }

    /** JavaFX comes in two files for each part, an empty one and one for the system at hand. */
    private static long onClassPath(String start) {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(path -> Path.of(path).getFileName().toString())
                .filter(name -> name.equals(start + ".jar"))
                .distinct()
                .count();
    }
}
