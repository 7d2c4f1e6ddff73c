package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.parts.Boards.floating;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import railtrim.parts.Resistors.Wish;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

/** Everything this package can say has words, and every gap in them is filled. */
class PartsWordsTest {
    private final Properties words = new Properties();
    private final TreeSet<String> said = new TreeSet<>();

    @BeforeEach
    void readTheBundle() throws IOException {
        try (Reader reader = new InputStreamReader(
                PartsWordsTest.class.getResourceAsStream("/railtrim/words.properties"), StandardCharsets.UTF_8)) {
            words.load(reader);
        }
    }

    @Test
    void everyMessageOfPartsHasItsWords() {
        for (double lowest : new double[] {2.9, 3.4, 1.5, floating().magnitude(210)}) {
            var wish = new Trimmers.Wish(0.02, lowest, 0.1, List.of(1, 12, 25));
            Trimmers.rank(floating(), wish)
                    .forEach(candidate -> candidate.reasons().forEach(this::say));
            for (double[] ends : new double[][] {{1e4, 5}, {1e4, 1e3}, {5e3, 5}, {1e4, 1e4}, {2e4, 8e3}}) {
                Trimmers.judge(floating(), wish, ends[0], 10, ends[1], 1)
                        .reasons()
                        .forEach(this::say);
            }
        }
        refused(() -> trimmer(0.02, 1.0, 0.1, 25));
        refused(() -> trimmer(0.3, 2.9, 0.1, 25));
        refused(() -> trimmer(0.02, 2.9, 2, 25));
        refused(() -> trimmer(0.02, 2.9, 0.1, 0));
        refused(() -> Trimmers.judge(floating(), new Trimmers.Wish(0.02, 2.9, 0.1, List.of(25)), -1, 0, 0, 0));
        refused(() -> Series.E24.near(-1));
        refused(() -> Resistors.choose(floating(), 0, new Wish(3, 2.9, 0.01, 4), Series.E24));
        refused(() -> Resistors.choose(floating(), 0, new Wish(3, 2.9, 1, 1), Series.E24));
        refused(() -> Resistors.choose(floating(), 300, new Wish(3, 2.9, 0.01, 1), Series.E24));
        for (String marking : List.of("", "97A", "brown plaid red gold", "red red", "white white white white")) {
            refused(() -> Markings.read(marking));
        }
        for (String marking : List.of("brown black black brown grey", "220", "4m7", "12R", "brown brown red brown")) {
            Markings.read(marking).forEach(reading -> reading.notes().forEach(this::say));
        }
        String head = "value,tolerance,count\n";
        for (String rows : List.of("x,1%,1", "1k,x,1", "1k,1%,x", "1k,1%,", "", "\"1k", "1R,1%,1\n".repeat(5001))) {
            refused(() -> PartsBox.of(head + rows));
        }
        refused(() -> PartsBox.of("x".repeat(70_000)));
        refused(() -> PartsBox.of("1k,1%,1"));

        List<String> inTheBundle = words.stringPropertyNames().stream()
                .filter(key -> key.startsWith("parts."))
                .sorted()
                .toList();
        assertEquals(inTheBundle, new ArrayList<>(said), "the bundle's keys and those this test heard");
    }

    private static void trimmer(double drop, double lowest, double tolerance, int turns) {
        Trimmers.rank(floating(), new Trimmers.Wish(drop, lowest, tolerance, List.of(turns)));
    }

    private void refused(Runnable attempt) {
        try {
            attempt.run();
        } catch (BadInput refusal) {
            say(refusal.told());
            return;
        }
        throw new AssertionError("was not refused");
    }

    private void say(Message message) {
        String pattern = words.getProperty(message.key());
        assertNotNull(pattern, message.key());
        for (int i = 0; i < message.values().size(); i++) {
            assertTrue(pattern.contains("{" + i + "}"), message + " has a value its words leave out");
        }
        String text =
                new MessageFormat(pattern, Locale.ROOT).format(message.values().toArray());
        assertTrue(!text.contains("{"), text);
        said.add(message.key());
    }
}
