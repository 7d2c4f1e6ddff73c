package railtrim.job;

/** A line of a job file that cannot be trusted, and why. Stays inside this package: people are told the line's number and the reason in words. */
final class BadLine extends Exception {
    private static final long serialVersionUID = 1L;
    private final Why why;

    /** Each has its sentence in the bundle, {@code job.damaged.ID}. */
    enum Why {
        CHECKSUM("checksum"),
        NOT_JSON("not-json"),
        DOUBLE_KEY("double-key"),
        KEYS("keys"),
        VALUE("value"),
        UNKNOWN("unknown"),
        ORDER("order"),
        LIMIT("limit");

        private final String id;

        Why(String id) {
            this.id = id;
        }
    }

    BadLine(Why why) {
        super(why.id);
        this.why = why;
    }

    String key() {
        return "job.damaged." + why.id;
    }
}
