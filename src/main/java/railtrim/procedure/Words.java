package railtrim.procedure;

import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.Pattern;
import railtrim.quantity.Message;

/** All words of the program, from one bundle ({@code resources/words.properties}), and how numbers are written among them. */
public final class Words {
    private final ResourceBundle bundle;
    /** The root writes a decimal point. */
    private final Locale country;
    /** Whether it writes a decimal comma; looked up when the first number is written, for the start page has none and Java reads long about a country. */
    private volatile Optional<Boolean> comma = Optional.empty();

    public Words(ResourceBundle bundle) {
        this(bundle, Locale.ROOT);
    }

    private Words(ResourceBundle bundle, Locale country) {
        this.bundle = bundle;
        this.country = country;
    }

    /** The bundle that travels with the program, in English; numbers with a decimal point. */
    public static Words english() {
        return new Words(WordList.builtIn());
    }

    /**
     * The same words with numbers as a country writes them: with a decimal comma where it has one, else with a point. Other signs, digits and marks
     * between thousands are left alone, so that every number shown can be typed as it stands.
     */
    public Words numbersOf(Locale country) {
        return new Words(bundle, country);
    }

    /** The same words with a decimal point, for what is read in other countries too. */
    public Words withPoint() {
        return new Words(bundle);
    }

    public String of(String key, Object... values) {
        String pattern = bundle.getString(key);
        return values.length == 0 && pattern.indexOf('\'') < 0 && pattern.indexOf('{') < 0
                ? pattern
                : new MessageFormat(pattern, Locale.ROOT)
                        .format(Arrays.stream(values).map(this::value).toArray());
    }

    private Object value(Object value) {
        return value instanceof String text ? number(text) : value;
    }

    /** A number that was written with a decimal point, as these words write numbers; any other text as it is. */
    public String number(String written) {
        return !country.equals(Locale.ROOT)
                        && comma()
                        && Value.NUMBER.matcher(written).matches()
                ? written.replace('.', ',')
                : written;
    }

    private boolean comma() {
        if (comma.isEmpty()) {
            comma = Optional.of(DecimalFormatSymbols.getInstance(country).getDecimalSeparator() == ',');
        }
        return comma.get();
    }

    public String of(Message message) {
        return of(message.key(), message.values().toArray());
    }

    public boolean has(String key) {
        return bundle.containsKey(key);
    }

    /** The words themselves, for a library that looks them up by itself. */
    public ResourceBundle bundle() {
        return bundle;
    }

    /** Made ready only where numbers are written with a comma. */
    private static final class Value {
        /** A whole value as {@link railtrim.quantity.Display} writes it: digits with a point, a unit, perhaps an uncertainty. */
        static final Pattern NUMBER = Pattern.compile(
                "[−-]?\\d+\\.\\d+( \\S{1,4})?|[−-]?\\d+(\\.\\d+)?( \\S{1,4})? ± \\d+(\\.\\d+)?( \\S{1,4})?");
    }
}
