package railtrim.command;

import java.util.Optional;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** The words of a field. Numbered pins share theirs. */
final class FieldText {
    private static final String PIN = "pin\\.\\d+";

    private FieldText() {}

    static String label(Words words, String field) {
        return field.matches(PIN)
                ? words.of("field.pin.label", field.substring("pin.".length()))
                : words.of("field." + field + ".label");
    }

    static Optional<String> help(Words words, String field) {
        String key = field.matches(PIN) ? "field.pin.help" : "field." + field + ".help";
        return words.has(key) ? Optional.of(words.of(key)) : Optional.empty();
    }

    static String value(double value, Unit unit) {
        return Display.brief(value, unit);
    }
}
