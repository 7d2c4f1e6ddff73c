package railtrim.window;

import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.procedure.Words;

/** Words of a language that is not there: each text is some 40 % longer than the English one, with letters that English has not. */
final class LongWords extends ResourceBundle {
    private static final Pattern PLAIN = Pattern.compile("[^{}']+|\\{[^}]*}|'");
    private static final String FROM = "aeiouAEIOUcnsz";
    private static final String TO = "äéïöüÄÉÏÖÜçñšž";
    private static final double LONGER = 0.4;

    private final ResourceBundle english = ResourceBundle.getBundle("railtrim.words", java.util.Locale.ROOT);

    private LongWords() {}

    static Words words() {
        return new Words(new LongWords());
    }

    @Override
    protected Object handleGetObject(String key) {
        return english.containsKey(key) ? longer(english.getString(key)) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return english.getKeys();
    }

    /** Vowels are doubled until it is long enough; what is put in later stays as it is. */
    static String longer(String text) {
        StringBuilder out = new StringBuilder();
        Matcher matcher = PLAIN.matcher(text);
        while (matcher.find()) {
            String part = matcher.group();
            out.append(part.startsWith("{") ? part : stretched(part));
        }
        return out.toString();
    }

    private static String stretched(String part) {
        StringBuilder out = new StringBuilder();
        double owed = 0;
        for (char letter : part.toCharArray()) {
            int place = FROM.indexOf(letter);
            char drawn = place < 0 ? letter : TO.charAt(place);
            out.append(drawn);
            owed += LONGER;
            boolean vowel = place >= 0 && place < 10;
            while (vowel && owed >= 1) {
                out.append(Character.toLowerCase(drawn));
                owed--;
            }
        }
        return out.toString();
    }
}
