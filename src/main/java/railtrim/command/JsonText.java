package railtrim.command;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Writes an answer as one JSON object on one line. Numbers are plain decimals; one that is not finite (an open circuit, a figure not known) is null. */
final class JsonText {
    private JsonText() {}

    static String of(Map<String, Object> object) {
        StringWriter text = new StringWriter();
        try (JsonWriter json = new JsonWriter(text)) {
            json.setHtmlSafe(false);
            write(json, object);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonWriter json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.beginObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.name(String.valueOf(entry.getKey()));
                write(json, entry.getValue());
            }
            json.endObject();
        } else if (value instanceof List<?> list) {
            json.beginArray();
            for (Object item : list) {
                write(json, item);
            }
            json.endArray();
        } else if (value instanceof Number number) {
            json.jsonValue(plain(number.doubleValue()));
        } else if (value instanceof Boolean truth) {
            json.value(truth);
        } else {
            json.value(String.valueOf(value));
        }
    }

    private static String plain(double number) {
        if (!Double.isFinite(number)) {
            return "null";
        }
        BigDecimal decimal = new BigDecimal(Double.toString(number)).stripTrailingZeros();
        return decimal.signum() == 0 ? "0" : decimal.toPlainString();
    }
}
