package railtrim.circuit;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import railtrim.quantity.BadInput;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/**
 * Reads one family. Figures are written as in a data sheet, with their unit ({@code "1.25 V"}), so that no power of ten can slip; {@code null}
 * says that none is published. Every field has to be there: a forgotten one is an error, not a zero.
 */
final class FamilyReader {
    private static final Set<String> FIELDS = Set.of(
            "id",
            "name",
            "place",
            "reference",
            "bias",
            "minimumLoad",
            "dropout",
            "inputHighest",
            "otherLeg",
            "pinouts",
            "tab",
            "sources");

    private final JsonObject json;
    private final String id;

    private FamilyReader(JsonObject json) {
        this.json = json;
        this.id = json.get("id") instanceof JsonPrimitive given ? given.getAsString() : "?";
    }

    /** @throws BadInput naming the family and the field */
    static RegulatorFamily read(JsonElement element) {
        if (!element.isJsonObject()) {
            throw BadInput.of("circuit.family-wrong", "?", "family", element.toString());
        }
        return new FamilyReader(element.getAsJsonObject()).family();
    }

    private RegulatorFamily family() {
        for (String field : json.keySet()) {
            if (!FIELDS.contains(field)) {
                throw wrong(field, "not a field of a family");
            }
        }
        if (!text("id").matches("[a-z0-9-]{2,30}")) {
            throw wrong("id", id);
        }
        double[] reference = figures("reference", Unit.VOLT, 3);
        double[] bias = figures("bias", Unit.AMPERE, 2);
        double[] otherLeg = figures("otherLeg", Unit.OHM, 2);
        if (Double.isNaN(reference[1]) || reference[1] == 0) {
            throw wrong("reference", "a typical value is needed");
        }
        return new RegulatorFamily(
                id,
                text("name"),
                placed(),
                reference[0],
                reference[1],
                reference[2],
                bias[0],
                bias[1],
                figure("minimumLoad", field("minimumLoad"), Unit.AMPERE),
                figure("dropout", field("dropout"), Unit.VOLT),
                figure("inputHighest", field("inputHighest"), Unit.VOLT),
                otherLeg[0],
                otherLeg[1],
                pinouts(),
                field("tab").isJsonNull() ? null : role("tab", field("tab")),
                sources());
    }

    private Place placed() {
        try {
            return Place.of(text("place"));
        } catch (BadInput unknown) {
            throw wrong("place", text("place"));
        }
    }

    private Map<Outline, List<PinRole>> pinouts() {
        if (!field("pinouts").isJsonObject()) {
            throw wrong("pinouts", field("pinouts").toString());
        }
        Map<Outline, List<PinRole>> pinouts = new EnumMap<>(Outline.class);
        for (Map.Entry<String, JsonElement> entry :
                field("pinouts").getAsJsonObject().entrySet()) {
            Outline outline = outline(entry.getKey());
            List<PinRole> roles = new ArrayList<>();
            for (JsonElement pin : array("pinouts", entry.getValue())) {
                roles.add(role("pinouts", pin));
            }
            if (roles.size() != outline.pins()) {
                throw wrong("pinouts", outline.id() + ": " + roles.size() + " pins");
            }
            pinouts.put(outline, List.copyOf(roles));
        }
        return Map.copyOf(pinouts);
    }

    private Outline outline(String name) {
        try {
            return Outline.of(name);
        } catch (BadInput unknown) {
            throw wrong("pinouts", name);
        }
    }

    private PinRole role(String field, JsonElement given) {
        try {
            return PinRole.of(string(field, given));
        } catch (BadInput unknown) {
            throw wrong(field, given.toString());
        }
    }

    private List<String> sources() {
        List<String> sources = new ArrayList<>();
        for (JsonElement source : array("sources", field("sources"))) {
            sources.add(string("sources", source));
        }
        if (sources.isEmpty()) {
            throw wrong("sources", "none");
        }
        return List.copyOf(sources);
    }

    /** So many figures, smallest first; those not published do not count in the order. */
    private double[] figures(String name, Unit unit, int howMany) {
        JsonArray array = array(name, field(name));
        if (array.size() != howMany) {
            throw wrong(name, array.toString());
        }
        double[] figures = new double[howMany];
        double last = 0;
        for (int i = 0; i < howMany; i++) {
            figures[i] = figure(name, array.get(i), unit);
            if (figures[i] < last) {
                throw wrong(name, array.toString());
            }
            last = Double.isNaN(figures[i]) ? last : figures[i];
        }
        return figures;
    }

    private double figure(String name, JsonElement given, Unit unit) {
        if (given.isJsonNull()) {
            return Double.NaN;
        }
        double value;
        try {
            value = QuantityReader.read(string(name, given), unit).value();
        } catch (BadInput unreadable) {
            throw wrong(name, given.toString());
        }
        if (value < 0) {
            throw wrong(name, given.toString());
        }
        return value;
    }

    private JsonArray array(String name, JsonElement given) {
        if (!given.isJsonArray()) {
            throw wrong(name, given.toString());
        }
        return given.getAsJsonArray();
    }

    private String text(String name) {
        return string(name, field(name));
    }

    private String string(String name, JsonElement given) {
        if (!given.isJsonPrimitive()
                || !given.getAsJsonPrimitive().isString()
                || given.getAsString().isBlank()) {
            throw wrong(name, given.toString());
        }
        return given.getAsString();
    }

    private JsonElement field(String name) {
        JsonElement given = json.get(name);
        if (given == null) {
            throw wrong(name, "missing");
        }
        return given;
    }

    private BadInput wrong(String field, String what) {
        return BadInput.of("circuit.family-wrong", id, field, what);
    }
}
