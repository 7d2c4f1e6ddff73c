package railtrim.circuit;

import java.util.List;
import java.util.Optional;

/** The families known by name, read from the text of {@code resources/regulators.json}. */
public final class RegulatorFamilies {
    private final List<RegulatorFamily> all;

    private RegulatorFamilies(List<RegulatorFamily> all) {
        this.all = List.copyOf(all);
    }

    /** @throws railtrim.quantity.BadInput naming the family and field that is wrong or missing */
    public static RegulatorFamilies of(String json) {
        throw new UnsupportedOperationException();
    }

    public List<RegulatorFamily> all() {
        return all;
    }

    public Optional<RegulatorFamily> named(String id) {
        return all.stream().filter(family -> family.id().equals(id)).findFirst();
    }
}
