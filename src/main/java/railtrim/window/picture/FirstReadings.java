package railtrim.window.picture;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import railtrim.procedure.Field;
import railtrim.procedure.State;

/** First readings that must not be seen while the second, independent one is taken. */
record FirstReadings(Set<String> hidden) {
    static FirstReadings of(State state) {
        Set<String> hidden = new HashSet<>();
        for (Field field : state.current().step().fields()) {
            if (field instanceof Field.Number number
                    && state.current().missing().contains(number.id())) {
                number.again().ifPresent(hidden::add);
            }
        }
        return new FirstReadings(Set.copyOf(hidden));
    }

    boolean hides(String field) {
        return hidden.contains(field);
    }

    /** The value, or nothing while it rests on a reading that is hidden. */
    OptionalDouble unless(String field, OptionalDouble value) {
        return hides(field) ? OptionalDouble.empty() : value;
    }
}
