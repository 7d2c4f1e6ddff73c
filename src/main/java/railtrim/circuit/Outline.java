package railtrim.circuit;

import java.util.OptionalDouble;

/**
 * Package outlines with their pin count; the tab, where there is one, counts extra. The thermal resistance from junction to case is what data
 * sheets of small regulators print for the outline, rounded up; from memory, and it varies by maker.
 */
public enum Outline {
    TO_92("TO-92", 3, false, 80),
    TO_220("TO-220", 3, true, 5),
    TO_220_5("TO-220-5", 5, true, 4),
    TO_252("TO-252", 3, true, 10),
    TO_263("TO-263", 3, true, 5),
    TO_263_5("TO-263-5", 5, true, 4),
    SOT_223("SOT-223", 3, true, 15),
    SOT_23("SOT-23", 3, false, 110),
    SOT_23_5("SOT-23-5", 5, false, 80),
    SOIC_8("SOIC-8", 8, false, 40),
    PLAIN_3("3-pin", 3),
    PLAIN_4("4-pin", 4),
    PLAIN_5("5-pin", 5),
    PLAIN_6("6-pin", 6),
    PLAIN_7("7-pin", 7),
    PLAIN_8("8-pin", 8);

    private final String id;
    private final int pins;
    private final boolean tab;
    private final double junctionToCase;

    Outline(String id, int pins, boolean tab, double junctionToCase) {
        this.id = id;
        this.pins = pins;
        this.tab = tab;
        this.junctionToCase = junctionToCase;
    }

    /** Any other package: the person counts its pins; nothing more is known of it. */
    Outline(String id, int pins) {
        this(id, pins, false, Double.NaN);
    }

    public String id() {
        return id;
    }

    public int pins() {
        return pins;
    }

    public boolean hasTab() {
        return tab;
    }

    /** Whether this stands for any package with so many pins. */
    public boolean plain() {
        return Double.isNaN(junctionToCase);
    }

    /** Whether pins stand on both sides, counted round against the clock from the mark; else they stand in one row. */
    public boolean twoSides() {
        return this == SOIC_8 || this == SOT_23_5 || plain() && pins > 3;
    }

    /** Kelvin per watt, typical; empty for a package of which only the pins are known. */
    public OptionalDouble junctionToCase() {
        return plain() ? OptionalDouble.empty() : OptionalDouble.of(junctionToCase);
    }

    public static Outline of(String id) {
        for (Outline outline : values()) {
            if (outline.id.equals(id)) {
                return outline;
            }
        }
        throw railtrim.quantity.BadInput.of("circuit.outline-unknown", id);
    }
}
