package railtrim.circuit;

/** A resistor of the divider: {@code UPPER} is the one nearer the output, {@code LOWER} the one nearer ground. */
public enum Leg {
    UPPER,
    LOWER;

    public Leg other() {
        return this == UPPER ? LOWER : UPPER;
    }
}
