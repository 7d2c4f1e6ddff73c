package railtrim.procedure;

import java.util.Set;

/** Which fields are readings of the output rail, and which of those are taken with something across the leg. */
final class RailFields {
    private static final Set<String> DEAD = Set.of(
            "clip.dead",
            "ref.off.rail",
            "base.off.rail",
            "solder.dead",
            "down.off.rail",
            "set.off.rail",
            "cold.off.rail",
            "fit.dead",
            "fit.off.rail",
            "safe.rail",
            "resume.rail");
    private static final Set<String> STOCK = Set.of("base.rail", "stock.volts");
    private static final Set<String> LOWERED = Set.of(
            "first.volts",
            "first.loaded",
            "down.start",
            "down.volts",
            "set.start",
            "set.volts",
            "soak.volts",
            "cold.volts",
            "fit.volts",
            "fit.loaded");

    /** Voltages of the rail that nobody reads off a meter: they are typed without a sign. */
    private static final Set<String> WISHED = Set.of("rated.low", "rated.high", "aim.lowest", "target.volts");

    private RailFields() {}

    static boolean isRail(String field) {
        return isDead(field) || isStock(field) || isLowered(field);
    }

    static boolean isWished(String field) {
        return WISHED.contains(field);
    }

    /** Readings that prove the rail dead. */
    static boolean isDead(String field) {
        return DEAD.contains(field);
    }

    /** Readings of the board as it came, switched on. */
    static boolean isStock(String field) {
        return STOCK.contains(field);
    }

    /** Readings that must never lie above stock or below the floor. */
    static boolean isLowered(String field) {
        return LOWERED.contains(field);
    }
}
