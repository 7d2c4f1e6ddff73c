package railtrim.circuit;

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
    SOIC_8("SOIC-8", 8, false, 40);

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

    public String id() {
        return id;
    }

    public int pins() {
        return pins;
    }

    public boolean hasTab() {
        return tab;
    }

    /** Kelvin per watt, typical. */
    public double junctionToCase() {
        return junctionToCase;
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
