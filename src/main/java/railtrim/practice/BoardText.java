package railtrim.practice;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;
import java.io.EOFException;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import railtrim.quantity.BadInput;

/**
 * Strict reading of a board file, which may come from a stranger: no duplicate keys (RFC 7493), no unknown keys, plain decimal numbers,
 * every field within its limits. Errors name the field by its path.
 */
final class BoardText {
    private static final int LONGEST_FILE = 64 * 1024;
    private static final int LONGEST_LIST = 16;
    private static final int DEEPEST = 4;
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

    private final String path;
    private final Map<String, Object> fields;
    private final Set<String> unread;

    private BoardText(String path, Map<String, Object> fields) {
        this.path = path;
        this.fields = fields;
        this.unread = new LinkedHashSet<>(fields.keySet());
    }

    /** @throws BadInput where the text is too long, is not strict JSON, or is not one object */
    static BoardText read(String json) {
        if (json.length() > LONGEST_FILE) {
            throw BadInput.of("practice.file-too-long", Integer.toString(LONGEST_FILE));
        }
        try (JsonReader reader = new JsonReader(new StringReader(json))) {
            reader.setStrictness(Strictness.STRICT);
            if (reader.peek() != JsonToken.BEGIN_OBJECT) {
                throw BadInput.of("practice.file-not-an-object");
            }
            BoardText text = new BoardText("", object(reader, "", 1));
            if (reader.peek() != JsonToken.END_DOCUMENT) {
                throw BadInput.of("practice.file-not-an-object");
            }
            return text;
        } catch (MalformedJsonException | EOFException | IllegalStateException e) {
            throw BadInput.of("practice.file-broken");
        } catch (IOException e) {
            throw BadInput.of("practice.file-broken");
        }
    }

    private static Map<String, Object> object(JsonReader reader, String path, int depth) throws IOException {
        Map<String, Object> fields = new LinkedHashMap<>();
        reader.beginObject();
        while (reader.hasNext()) {
            String key = reader.nextName();
            String here = path + key;
            if (fields.containsKey(key)) {
                throw BadInput.of("practice.field-twice", here);
            }
            fields.put(key, value(reader, here, depth));
        }
        reader.endObject();
        return fields;
    }

    private static Object value(JsonReader reader, String path, int depth) throws IOException {
        return switch (reader.peek()) {
            case STRING -> reader.nextString();
            case NUMBER -> number(reader.nextString(), path);
            case BOOLEAN -> reader.nextBoolean();
            case BEGIN_ARRAY -> list(reader, path);
            case BEGIN_OBJECT -> {
                if (depth == DEEPEST) {
                    throw BadInput.of("practice.field-unexpected", path);
                }
                yield object(reader, path + ".", depth + 1);
            }
            default -> throw BadInput.of("practice.field-unexpected", path);
        };
    }

    private static Double number(String text, String path) {
        if (!NUMBER.matcher(text).matches()) {
            throw BadInput.of("practice.field-not-a-number", path, text);
        }
        return Double.valueOf(text);
    }

    private static List<String> list(JsonReader reader, String path) throws IOException {
        List<String> list = new ArrayList<>();
        reader.beginArray();
        while (reader.hasNext()) {
            if (list.size() == LONGEST_LIST || reader.peek() != JsonToken.STRING) {
                throw BadInput.of("practice.field-not-a-list", path, Integer.toString(LONGEST_LIST));
            }
            list.add(reader.nextString());
        }
        reader.endArray();
        return list;
    }

    boolean has(String key) {
        return fields.containsKey(key);
    }

    String text(String key, int longest) {
        if (take(key) instanceof String text && !text.isBlank() && text.length() <= longest) {
            return text;
        }
        throw BadInput.of("practice.field-not-a-text", path + key, Integer.toString(longest));
    }

    /** One of the names given. */
    String oneOf(String key, String... names) {
        String text = text(key, 60);
        if (!List.of(names).contains(text)) {
            throw BadInput.of("practice.field-not-one-of", path + key, text, String.join(", ", names));
        }
        return text;
    }

    double number(String key, double low, double high) {
        if (!(take(key) instanceof Double number)) {
            throw BadInput.of("practice.field-not-a-number", path + key, String.valueOf(fields.get(key)));
        }
        if (number < low || number > high) {
            throw BadInput.of("practice.field-out-of-range", path + key, plain(number), plain(low), plain(high));
        }
        return number;
    }

    boolean yesOrNo(String key) {
        if (take(key) instanceof Boolean answer) {
            return answer;
        }
        throw BadInput.of("practice.field-not-one-of", path + key, String.valueOf(fields.get(key)), "true, false");
    }

    List<String> texts(String key) {
        if (take(key) instanceof List<?> list) {
            return list.stream().map(String.class::cast).toList();
        }
        throw BadInput.of("practice.field-not-a-list", path + key, Integer.toString(LONGEST_LIST));
    }

    BoardText part(String key) {
        if (take(key) instanceof Map<?, ?> map) {
            Map<String, Object> inner = new LinkedHashMap<>();
            map.forEach((name, value) -> inner.put((String) name, value));
            return new BoardText(path + key + ".", inner);
        }
        throw BadInput.of("practice.field-not-an-object", path + key);
    }

    /** @throws BadInput where a key is left that nobody asked for: a misspelt name must not pass unseen */
    void nothingElse() {
        if (!unread.isEmpty()) {
            throw BadInput.of("practice.field-unknown", path + unread.iterator().next());
        }
    }

    private Object take(String key) {
        if (!fields.containsKey(key)) {
            throw BadInput.of("practice.field-missing", path + key);
        }
        unread.remove(key);
        return fields.get(key);
    }

    private static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
