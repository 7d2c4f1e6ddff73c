package railtrim.window;

import railtrim.procedure.Field;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** What a field is expected to read, in words. */
final class FieldWords {
    private FieldWords() {}

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
}
