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
            return words.of("window.expect.at-most", Display.brief(expected.high(), unit));
        }
        if (Double.isInfinite(expected.high())) {
            return words.of("window.expect.at-least", Display.brief(expected.low(), unit));
        }
        Display.Ends ends = Display.ends(expected.low(), expected.high(), unit);
        return words.of("window.expect.between", ends.low(), ends.high());
    }
}
