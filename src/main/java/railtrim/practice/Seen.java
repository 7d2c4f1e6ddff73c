package railtrim.practice;

/** What a person sees the load do. */
public enum Seen {
    WELL("well"),
    /** Wrong picture, sound or data. */
    GLITCH("glitch"),
    /** Restarts or hangs. */
    RESET("reset"),
    /** The test counts errors. */
    ERRORS("errors"),
    /** Smoke, smell or far too hot: the chip had more than it can stand. */
    SMOKE("smoke");

    private final String id;

    Seen(String id) {
        this.id = id;
    }

    /** Name of the answer in the procedure's choices. */
    public String id() {
        return id;
    }
}
