package railtrim.procedure;

import java.util.Optional;

/** The words of a field. Numbered pins share theirs. */
public final class Labels {
    private static final String PIN = "pin.";

    private Labels() {}

    public static String of(Words words, String field) {
        return numberedPin(field)
                ? words.of("field.pin.label", field.substring(PIN.length()))
                : words.of("field." + field + ".label");
    }

    /** How to measure it; of the numbered pins only the first says so. */
    public static Optional<String> help(Words words, String field) {
        String key = field.equals(PIN + 1) ? "field.pin.help" : "field." + field + ".help";
        return words.has(key) ? Optional.of(words.of(key)) : Optional.empty();
    }

    public static boolean numberedPin(String field) {
        return field.matches("pin\\.\\d+");
    }
}
