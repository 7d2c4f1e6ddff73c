package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import railtrim.job.BuiltIn;

/** The bundle and the program belong together: no word is missing, and none is left over. */
class BundleUseTest {
    private static final Set<String> KEYS = BuiltIn.text("words.properties")
            .lines()
            .filter(line -> line.contains("=") && !line.startsWith("#"))
            .map(line -> line.substring(0, line.indexOf('=')))
            .collect(Collectors.toCollection(TreeSet::new));

    /** A key, or a part of one, as it is quoted in the program or named in a template. */
    private static final Pattern QUOTED =
            Pattern.compile("[\"'{:(]([a-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)*\\.?)[\"'})]");

    private static final List<String> QUOTES = quotes();

    private static List<String> quotes() {
        List<String> found = new ArrayList<>();
        for (String folder : List.of("src/main/java", "resources")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(path -> path.toString().matches(".*\\.(java|ftlh|json)"))
                        .toList()) {
                    Matcher matcher = QUOTED.matcher(Files.readString(file));
                    while (matcher.find()) {
                        found.add(matcher.group(1));
                    }
                }
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        }
        return found;
    }

    /** Keys put together from two parts, such as "stop." and a name, are recognised by their beginning. */
    @Test
    void noWordsAreLeftOver() {
        Set<String> whole = Set.copyOf(QUOTES);
        Set<String> beginnings =
                QUOTES.stream().filter(part -> part.endsWith(".")).collect(Collectors.toSet());
        List<String> unused = KEYS.stream()
                .filter(key -> !whole.contains(key) && beginnings.stream().noneMatch(key::startsWith))
                .filter(key -> !(key.endsWith(".negative") && whole.contains(key.replaceFirst("\\.negative$", ""))))
                .toList();
        assertEquals(List.of(), unused);
    }

    /** What looks like a key of the bundle, in a family of keys that the bundle has, is one. */
    @Test
    void noWordsAreMissing() {
        Set<String> families =
                KEYS.stream().map(key -> key.substring(0, key.indexOf('.') + 1)).collect(Collectors.toSet());
        List<String> missing = QUOTES.stream()
                .filter(part -> families.stream().anyMatch(part::startsWith) && !part.endsWith("."))
                .filter(part -> part.chars().filter(c -> c == '.').count() >= 1)
                .filter(part -> !KEYS.contains(part) && KEYS.stream().noneMatch(key -> key.startsWith(part + ".")))
                .distinct()
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void theSearchSeesTheProgramAtAll() {
        assertTrue(QUOTES.size() > 500, "only " + QUOTES.size() + " quoted words found");
        assertTrue(QUOTES.contains("stop-rule.on"));
    }
}
