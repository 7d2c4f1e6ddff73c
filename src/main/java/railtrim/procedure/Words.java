package railtrim.procedure;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import railtrim.quantity.Message;

/** All words of the program, from one bundle ({@code resources/words.properties}). */
public final class Words {
    private final ResourceBundle bundle;

    public Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The bundle that travels with the program, in English. */
    public static Words english() {
        return new Words(ResourceBundle.getBundle("railtrim.words", Locale.ROOT));
    }

    public String of(String key, Object... values) {
        String pattern = bundle.getString(key);
        return values.length == 0 && pattern.indexOf('\'') < 0 && pattern.indexOf('{') < 0
                ? pattern
                : new MessageFormat(pattern, Locale.ROOT).format(values);
    }

    public String of(Message message) {
        return of(message.key(), message.values().toArray());
    }

    public boolean has(String key) {
        return bundle.containsKey(key);
    }
}
