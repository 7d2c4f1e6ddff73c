package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    private static final Pattern QUOTED_ENDING = Pattern.compile("\"(\\.[a-z][a-z-]*)\"");

    private static final Set<String> QUOTES = quoted(QUOTED);
    private static final Set<String> ENDINGS = quoted(QUOTED_ENDING);
    private static final Set<String> BEGINNINGS =
            QUOTES.stream().filter(part -> part.endsWith(".")).collect(Collectors.toSet());

    private static Set<String> quoted(Pattern pattern) {
        Set<String> found = new TreeSet<>();
        for (String folder : List.of("src/main/java", "resources")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(path -> path.toString().matches(".*\\.(java|ftlh|json)"))
                        .toList()) {
                    Matcher matcher = pattern.matcher(Files.readString(file));
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

    /**
     * Keys put together from parts are recognised by the quoted beginning and ending: "alarm." and a name; "phase.", a name and ".aim".
     * Steps, fields and answers are held to the procedure itself in {@link WordsTest}.
     */
    @Test
    void noWordsAreLeftOver() {
        List<String> unused = KEYS.stream()
                .filter(key -> !key.matches("(step|field|option)\\..*"))
                .filter(key -> !used(key))
                .filter(key -> ENDINGS.stream()
                        .noneMatch(ending ->
                                key.endsWith(ending) && used(key.substring(0, key.length() - ending.length()))))
                .toList();
        assertEquals(List.of(), unused);
    }

    private static boolean used(String key) {
        return QUOTES.contains(key) || BEGINNINGS.stream().anyMatch(part -> begins(part, key));
    }

    /** After a beginning of a single word only one word more may follow. */
    private static boolean begins(String part, String key) {
        boolean single = part.indexOf('.') == part.length() - 1;
        return key.startsWith(part) && !(single && key.substring(part.length()).contains("."));
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
