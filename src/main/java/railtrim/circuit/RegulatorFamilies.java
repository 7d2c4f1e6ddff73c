package railtrim.circuit;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.Strictness;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import railtrim.quantity.BadInput;

/** The families known by name, read from the text of {@code resources/regulators.json}. */
public final class RegulatorFamilies {
    private final List<RegulatorFamily> all;

    private RegulatorFamilies(List<RegulatorFamily> all) {
        this.all = List.copyOf(all);
    }

    /** @throws railtrim.quantity.BadInput naming the family and field that is wrong or missing */
    public static RegulatorFamilies of(String json) {
        List<RegulatorFamily> families = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (JsonElement element : list(json)) {
            RegulatorFamily family = FamilyReader.read(element);
            if (!ids.add(family.id())) {
                throw BadInput.of("circuit.family-wrong", family.id(), "id", "used twice");
            }
            families.add(family);
        }
        return new RegulatorFamilies(families);
    }

    public List<RegulatorFamily> all() {
        return all;
    }

    public Optional<RegulatorFamily> named(String id) {
        return all.stream().filter(family -> family.id().equals(id)).findFirst();
    }

    private static JsonArray list(String json) {
        Gson strict = new GsonBuilder().setStrictness(Strictness.STRICT).create();
        try {
            JsonElement whole = strict.fromJson(json, JsonElement.class);
            if (whole instanceof JsonObject object && object.get("families") instanceof JsonArray families) {
                return families;
            }
        } catch (JsonParseException e) {
            throw BadInput.of("circuit.families-unreadable", String.valueOf(e.getMessage()));
        }
        throw BadInput.of("circuit.families-unreadable", "no list “families”");
    }
}
