package railtrim.job;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import railtrim.quantity.PlainText;
import railtrim.quantity.Unit;

/**
 * A fact as named values and back: {@code fact} is the kind in small letters, the rest are the record's components by name. Every component has
 * to be there, each of its own type, and none may be there that does not belong: what is missing is never taken for zero.
 */
final class FactCodec {
    /** Magnitudes beyond this are no measurement. */
    static final double LARGEST = 1e12;

    /** Magnitudes below this, other than zero, are no measurement. */
    static final double SMALLEST = 1e-30;

    /** What {@link Double#toString} writes within the limits above. */
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,13}(\\.\\d{1,20})?(E-?\\d{1,2})?");

    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,15}");
    private static final Map<String, Kind> KINDS = kinds();

    private FactCodec() {}

    /** A record of facts, taken apart once: looking it up for each line would take longer than reading the line. */
    private record Kind(String name, List<RecordComponent> components, Constructor<?> constructor) {
        static Kind of(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                return new Kind(
                        type.getSimpleName().toLowerCase(Locale.ROOT),
                        List.of(components),
                        type.getDeclaredConstructor(types));
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }

        static Kind of(Fact fact) {
            return KINDS.get(fact.getClass().getSimpleName().toLowerCase(Locale.ROOT));
        }
    }

    private static Map<String, Kind> kinds() {
        Map<String, Kind> kinds = new TreeMap<>();
        for (Class<?> type : Fact.class.getPermittedSubclasses()) {
            Kind kind = Kind.of(type);
            kinds.put(kind.name(), kind);
        }
        return Map.copyOf(kinds);
    }

    /** @throws IllegalArgumentException for a number or text that could not be read back as it is */
    static Map<String, Object> write(Fact fact) {
        Map<String, Object> values = new LinkedHashMap<>();
        Kind kind = Kind.of(fact);
        values.put("fact", kind.name());
        for (RecordComponent component : kind.components()) {
            values.put(component.getName(), written(value(component, fact)));
        }
        return values;
    }

    /** The same fact with every text made plain: what a stranger wrote is not to hide or to turn anything round on the screen. */
    static Fact plain(Fact fact) {
        Kind kind = Kind.of(fact);
        Object[] parts = kind.components().stream()
                .map(component -> value(component, fact))
                .map(part -> part instanceof String text ? PlainText.of(text) : part)
                .toArray();
        try {
            return make(kind, parts);
        } catch (BadLine e) {
            // It would have to refuse a shorter text than it took.
            throw new IllegalStateException(e);
        }
    }

    private static Object value(RecordComponent component, Fact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object written(Object value) {
        if (value instanceof Double number) {
            if (!measurable(number)) {
                throw new IllegalArgumentException("not a measurement: " + number);
            }
            return new FlatJson.Digits(Double.toString(number));
        } else if (value instanceof Long whole) {
            return new FlatJson.Digits(Long.toString(whole));
        } else if (value instanceof Unit unit) {
            return unit.name();
        } else if (value instanceof Boolean) {
            return value;
        }
        String text = (String) value;
        if (text.length() > FlatJson.LONGEST_TEXT || !FlatJson.wellFormed(text)) {
            throw new IllegalArgumentException("a text of " + text.length() + " characters");
        }
        return text;
    }

    private static boolean measurable(double number) {
        double magnitude = Math.abs(number);
        return Double.isFinite(number) && magnitude <= LARGEST && (magnitude == 0 || magnitude >= SMALLEST);
    }

    /** Takes what belongs to the fact out of {@code values}; what is left belongs to nobody and is the caller's to refuse. */
    static Fact take(Map<String, Object> values) throws BadLine {
        Kind kind = KINDS.get(takeText(values, "fact"));
        if (kind == null) {
            throw new BadLine(BadLine.Why.UNKNOWN);
        }
        Object[] parts = new Object[kind.components().size()];
        for (int i = 0; i < parts.length; i++) {
            RecordComponent component = kind.components().get(i);
            parts[i] = takePart(values, component.getName(), component.getType());
        }
        return make(kind, parts);
    }

    private static Fact make(Kind kind, Object[] parts) throws BadLine {
        try {
            return (Fact) kind.constructor().newInstance(parts);
        } catch (InvocationTargetException e) {
            // A record that refuses its own values.
            throw new BadLine(BadLine.Why.VALUE);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object takePart(Map<String, Object> values, String key, Class<?> type) throws BadLine {
        if (type == double.class) {
            return takeNumber(values, key);
        } else if (type == long.class) {
            return takeWhole(values, key, Long.MIN_VALUE);
        } else if (type == Unit.class) {
            return unit(takeText(values, key));
        } else if (type == boolean.class) {
            return take(values, key, Boolean.class);
        }
        return takeText(values, key);
    }

    private static Unit unit(String name) throws BadLine {
        for (Unit unit : Unit.values()) {
            if (unit.name().equals(name)) {
                return unit;
            }
        }
        throw new BadLine(BadLine.Why.UNKNOWN);
    }

    static String takeText(Map<String, Object> values, String key) throws BadLine {
        return take(values, key, String.class);
    }

    private static double takeNumber(Map<String, Object> values, String key) throws BadLine {
        String digits = take(values, key, FlatJson.Digits.class).text();
        if (!NUMBER.matcher(digits).matches() || !measurable(Double.parseDouble(digits))) {
            throw new BadLine(BadLine.Why.VALUE);
        }
        return Double.parseDouble(digits);
    }

    static long takeWhole(Map<String, Object> values, String key, long least) throws BadLine {
        String digits = take(values, key, FlatJson.Digits.class).text();
        if (!WHOLE.matcher(digits).matches() || Long.parseLong(digits) < least) {
            throw new BadLine(BadLine.Why.VALUE);
        }
        return Long.parseLong(digits);
    }

    private static <T> T take(Map<String, Object> values, String key, Class<T> type) throws BadLine {
        Object value = values.remove(key);
        if (value == null) {
            throw new BadLine(BadLine.Why.KEYS);
        }
        if (!type.isInstance(value)) {
            throw new BadLine(BadLine.Why.VALUE);
        }
        return type.cast(value);
    }
}
