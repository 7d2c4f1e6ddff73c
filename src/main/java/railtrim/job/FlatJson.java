package railtrim.job;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import com.google.gson.stream.MalformedJsonException;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One JSON object of texts, numbers and true/false on one line, and nothing else: no nesting, no null, no key twice. The files may come from a
 * stranger, so the reader is the strict streaming one and builds no objects by itself (RFC 8259; RFC 7493 for the keys).
 */
final class FlatJson {
    /** Longest text or key, characters. */
    static final int LONGEST_TEXT = 4000;

    /** Most keys in one object. */
    static final int MOST_KEYS = 32;

    private FlatJson() {}

    /** A number as it stands in the file; it is only turned into a value once it is known which kind is wanted. */
    record Digits(String text) {}

    /** Values are {@link String}, {@link Digits} or {@link Boolean}. */
    static Map<String, Object> read(String line) throws BadLine {
        Map<String, Object> values = new LinkedHashMap<>();
        try (JsonReader reader = new JsonReader(new StringReader(line))) {
            reader.setStrictness(Strictness.STRICT);
            reader.setNestingLimit(1);
            reader.beginObject();
            while (reader.hasNext()) {
                String key = text(reader.nextName());
                if (values.size() >= MOST_KEYS) {
                    throw new BadLine(BadLine.Why.LIMIT);
                }
                if (values.put(key, value(reader)) != null) {
                    throw new BadLine(BadLine.Why.DOUBLE_KEY);
                }
            }
            reader.endObject();
            if (reader.peek() != JsonToken.END_DOCUMENT) {
                throw new BadLine(BadLine.Why.NOT_JSON);
            }
            return values;
        } catch (MalformedJsonException | IllegalStateException | NumberFormatException e) {
            throw new BadLine(BadLine.Why.NOT_JSON);
        } catch (IOException e) {
            // A line that ends too early.
            throw new BadLine(BadLine.Why.NOT_JSON);
        }
    }

    private static Object value(JsonReader reader) throws IOException, BadLine {
        JsonToken kind = reader.peek();
        if (kind == JsonToken.STRING) {
            return text(reader.nextString());
        } else if (kind == JsonToken.NUMBER) {
            return new Digits(reader.nextString());
        } else if (kind == JsonToken.BOOLEAN) {
            return reader.nextBoolean();
        }
        throw new BadLine(BadLine.Why.VALUE);
    }

    private static String text(String text) throws BadLine {
        if (text.length() > LONGEST_TEXT) {
            throw new BadLine(BadLine.Why.LIMIT);
        }
        if (!wellFormed(text)) {
            throw new BadLine(BadLine.Why.VALUE);
        }
        return text;
    }

    /** No half of a surrogate pair: such a text cannot be written as UTF-8 and read back the same. */
    static boolean wellFormed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            if (Character.isSurrogate(unit)) {
                boolean pair = Character.isHighSurrogate(unit)
                        && i + 1 < text.length()
                        && Character.isLowSurrogate(text.charAt(i + 1));
                if (!pair) {
                    return false;
                }
                i++;
            }
        }
        return true;
    }

    /** The same values on one line, keys in the order of the map. */
    static String write(Map<String, Object> values) {
        StringWriter line = new StringWriter();
        try (JsonWriter writer = new JsonWriter(line)) {
            writer.setStrictness(Strictness.STRICT);
            writer.setHtmlSafe(false);
            writer.beginObject();
            for (Map.Entry<String, Object> entry : values.entrySet()) {
                writer.name(entry.getKey());
                if (entry.getValue() instanceof Digits digits) {
                    writer.jsonValue(digits.text());
                } else if (entry.getValue() instanceof Boolean yes) {
                    writer.value(yes);
                } else {
                    writer.value((String) entry.getValue());
                }
            }
            writer.endObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return line.toString();
    }
}
