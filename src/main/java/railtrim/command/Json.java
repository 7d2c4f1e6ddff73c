package railtrim.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** An object under construction, keys in the order they are put. */
final class Json {
    private final Map<String, Object> keys = new LinkedHashMap<>();

    static Json object() {
        return new Json();
    }

    Json put(String key, Object value) {
        keys.put(key, value);
        return this;
    }

    Json put(String key, OptionalDouble value) {
        return put(key, (Object) value.orElse(Double.NaN));
    }

    Map<String, Object> map() {
        return keys;
    }
}
