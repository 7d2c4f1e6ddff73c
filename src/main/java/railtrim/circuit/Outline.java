package railtrim.circuit;

/** Package outlines with their pin count; the tab, where there is one, counts extra. */
public enum Outline {
    TO_92("TO-92", 3, false),
    TO_220("TO-220", 3, true),
    TO_220_5("TO-220-5", 5, true),
    TO_252("TO-252", 3, true),
    TO_263("TO-263", 3, true),
    TO_263_5("TO-263-5", 5, true),
    SOT_223("SOT-223", 3, true),
    SOT_23("SOT-23", 3, false),
    SOT_23_5("SOT-23-5", 5, false),
    SOIC_8("SOIC-8", 8, false);

    private final String id;
    private final int pins;
    private final boolean tab;

    Outline(String id, int pins, boolean tab) {
        this.id = id;
        this.pins = pins;
        this.tab = tab;
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

    public static Outline of(String id) {
        for (Outline outline : values()) {
            if (outline.id.equals(id)) {
                return outline;
            }
        }
        throw railtrim.quantity.BadInput.of("circuit.outline-unknown", id);
    }
}
