package railtrim.procedure;

/** The power state a step needs. Changing it is a step of its own. */
public enum PowerNeed {
    OFF,
    ON,
    TO_ON,
    TO_OFF;

    /** Whether the board is on while this step is worked on. */
    public boolean startsOn() {
        return this == ON || this == TO_OFF;
    }

    public boolean endsOn() {
        return this == ON || this == TO_ON;
    }
}
