package railtrim.procedure;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import com.google.gson.Strictness;
import com.google.gson.reflect.TypeToken;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import railtrim.quantity.BadInput;

/**
 * Reads the list of cautions with their signal words and signs; an incomplete one is refused, so that it never reaches a person.
 */
public final class Cautions {
    /** The pictures a caution may carry, drawn by the window. */
    public static final Set<String> SYMBOLS =
            Set.of("general", "electricity", "hot", "fume", "eyes", "static", "no-touch", "manual");

    private static final String LEVELS = "WARNING, CAUTION, NOTICE";
    private static final Gson GSON = new GsonBuilder()
            .setStrictness(Strictness.STRICT)
            .disableJdkUnsafe()
            .create();

    private Cautions() {}

    /**
     * @param json a JSON list of objects with id, level and symbol
     * @throws BadInput naming the caution and the field that is missing, empty, unknown or there twice
     */
    public static List<Caution> of(String json) {
        List<Caution> cautions = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Written written : parse(json)) {
            Caution caution = complete(written == null ? Written.EMPTY : written, cautions.size() + 1);
            if (!seen.add(caution.id())) {
                throw BadInput.of("caution.twice", caution.id());
            }
            cautions.add(caution);
        }
        return List.copyOf(cautions);
    }

    private static List<Written> parse(String json) {
        try {
            List<Written> list = GSON.fromJson(json, new TypeToken<List<Written>>() {});
            if (list == null) {
                throw BadInput.of("caution.not-a-list", "it is empty");
            }
            return list;
        } catch (JsonParseException e) {
            throw BadInput.of("caution.not-a-list", where(e));
        }
    }

    /** The place in the text, e.g. "line 3 column 9 path $[0].id", without the words of the JSON library around it. */
    private static String where(JsonParseException problem) {
        String message = String.valueOf(problem.getMessage());
        int at = message.indexOf("line ");
        return at < 0
                ? "it ends too early"
                : message.substring(at).lines().findFirst().orElse("");
    }

    private static Caution complete(Written written, int number) {
        String id = present(written.id, "id", "number " + number);
        return new Caution(
                id, level(present(written.level, "level", id), id), symbol(present(written.symbol, "symbol", id), id));
    }

    private static String present(String text, String field, String id) {
        if (text == null || text.isBlank()) {
            throw BadInput.of("caution.incomplete", id, field);
        }
        return text.strip();
    }

    private static Caution.Level level(String text, String id) {
        return switch (text) {
            case "WARNING" -> Caution.Level.WARNING;
            case "CAUTION" -> Caution.Level.CAUTION;
            case "NOTICE" -> Caution.Level.NOTICE;
            default -> throw BadInput.of("caution.wrong", id, "level", text, LEVELS);
        };
    }

    private static String symbol(String text, String id) {
        if (!SYMBOLS.contains(text)) {
            throw BadInput.of("caution.wrong", id, "symbol", text, String.join(", ", new java.util.TreeSet<>(SYMBOLS)));
        }
        return text;
    }

    /** A caution as it stands in the file, anything may be missing. */
    private record Written(String id, String level, String symbol) {
        static final Written EMPTY = new Written(null, null, null);
    }
}
