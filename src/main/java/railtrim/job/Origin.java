package railtrim.job;

/** Whether a job was written here, as far as its own lines can tell. */
public enum Origin {
    /** Every line carries this installation's mark. */
    OWN,
    /** Written or changed elsewhere: it can be read and taken over as a plan, but nothing in it opens anything. */
    ELSEWHERE
}
