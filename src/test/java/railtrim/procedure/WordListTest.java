package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.MissingResourceException;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class WordListTest {
    /** The library’s own reader of the format is what ours is held to. */
    @Test
    void everyTextIsTheOneThatThePropertiesFormatGives() throws IOException {
        Properties whole = new Properties();
        try (Reader file = new InputStreamReader(
                WordList.class.getResourceAsStream("/railtrim/words.properties"), StandardCharsets.UTF_8)) {
            whole.load(file);
        }
        WordList words = WordList.builtIn();
        assertEquals(whole.stringPropertyNames(), words.keySet());
        for (String key : words.keySet()) {
            assertEquals(whole.getProperty(key), words.getString(key), key);
        }
    }

    @Test
    void aKeyThatIsNotThereIsNotFoundInTheBeginningOfAnother() {
        WordList words = new WordList(
                "# a remark\n\none.two=2\none=1\r\n=\nlast=with = and # in it".getBytes(StandardCharsets.UTF_8));
        assertEquals("1", words.getString("one"));
        assertEquals("2", words.getString("one.two"));
        assertEquals("with = and # in it", words.getString("last"));
        assertFalse(words.containsKey("two"));
        assertFalse(words.containsKey("one."));
        assertFalse(words.containsKey("# a remark"));
        assertThrows(MissingResourceException.class, () -> words.getString("on"));
    }
}
