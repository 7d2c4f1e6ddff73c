package railtrim.procedure;

/** The stretches of the way, in order. */
public enum Phase {
    PREPARE,
    IDENTIFY,
    BASELINE,
    TRIMMER,
    WIRE,
    FIRST_POWER,
    STEP_DOWN,
    FAULT,
    BACK_OFF,
    RESISTOR,
    FIT,
    RECORD;

    /** Part of its keys in the text bundle: {@code phase.first-power}. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
