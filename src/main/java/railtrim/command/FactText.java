package railtrim.command;

import java.util.Arrays;
import java.util.stream.Collectors;
import railtrim.job.Fact;
import railtrim.quantity.PlainText;

/** A fact as it stands in the file, on one line and with nothing in it that a terminal would act on. */
final class FactText {
    private FactText() {}

    static String of(Fact fact) {
        return Arrays.stream(fact.getClass().getRecordComponents())
                .map(component -> component.getName() + "=" + value(component, fact))
                .collect(Collectors.joining(" "));
    }

    private static String value(java.lang.reflect.RecordComponent component, Fact fact) {
        try {
            Object value = component.getAccessor().invoke(fact);
            return PlainText.of(String.valueOf(value));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
