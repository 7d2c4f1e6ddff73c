package railtrim.window.picture;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.PinRole;

/** Where a probe goes in this step. */
record Spot(Probe probe, PinRole role) {
    enum Probe {
        RED,
        BLACK
    }

    /** A step says it as {@code "red:OUTPUT"}; anything else it says is for other pictures and is left out. */
    static List<Spot> of(List<String> said) {
        return said.stream().flatMap(each -> one(each).stream()).toList();
    }

    private static Optional<Spot> one(String said) {
        int colon = said.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        return named(Probe.values(), said.substring(0, colon))
                .flatMap(probe ->
                        named(PinRole.values(), said.substring(colon + 1)).map(role -> new Spot(probe, role)));
    }

    private static <T extends Enum<T>> Optional<T> named(T[] all, String name) {
        return Arrays.stream(all)
                .filter(each -> each.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    /** Whether the step asks for one lead of the added part to be lifted. */
    static boolean lift(List<String> said) {
        return said.contains("lift");
    }
}
