package railtrim.window;

import java.util.Optional;
import railtrim.procedure.Field;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** The words that go with a field: its label, how to measure it, what is expected, what an answer is called. */
final class FieldWords {
    private FieldWords() {}

    static String label(Words words, String field) {
        if (numberedPin(field)) {
            return words.of("field.pin.label", field.substring("pin.".length()));
        }
        return words.of("field." + field + ".label");
    }

    static Optional<String> help(Words words, String field) {
        String key = field.equals("pin.1") ? "field.pin.help" : "field." + field + ".help";
        return words.has(key) ? Optional.of(words.of(key)) : Optional.empty();
    }

    /** "Expect 3.200 V to 3.600 V", one-sided where only one end is finite. */
    static String expected(Words words, Field.Expected expected, Unit unit) {
        if (Double.isInfinite(expected.low())) {
            return words.of("window.expect.at-most", written(expected.high(), unit));
        }
        if (Double.isInfinite(expected.high())) {
            return words.of("window.expect.at-least", written(expected.low(), unit));
        }
        return words.of("window.expect.between", written(expected.low(), unit), written(expected.high(), unit));
    }

    static String written(double value, Unit unit) {
        return Display.brief(value, unit);
    }

    private static boolean numberedPin(String field) {
        return field.matches("pin\\.\\d+");
    }
}
