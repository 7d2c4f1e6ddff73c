package railtrim.window;

import railtrim.procedure.Field;
import railtrim.procedure.Words;

/** Picks the view for a kind of field. */
final class FieldViews {
    private FieldViews() {}

    static FieldView of(Words words, Desk desk, Field field) {
        if (field instanceof Field.Number number) {
            return new NumberView(words, desk, number);
        }
        if (field instanceof Field.Choice choice) {
            return new ChoiceView(words, desk, choice);
        }
        if (field instanceof Field.Text text) {
            return new TextView(words, desk, text);
        }
        if (field instanceof Field.Switch change) {
            return new SwitchView(words, desk, change);
        }
        throw new IllegalArgumentException("no view for " + field);
    }
}
