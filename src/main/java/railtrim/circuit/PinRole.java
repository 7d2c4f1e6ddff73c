package railtrim.circuit;

/** What a regulator's pin is for. */
public enum PinRole {
    INPUT("input"),
    OUTPUT("output"),
    ADJUST("adjust"),
    GROUND("ground"),
    SENSE("sense"),
    CONTROL("control"),
    ENABLE("enable"),
    SWITCH("switch"),
    /** Serves the regulator alone (boost, soft start, compensation): takes no part in this job, but is not to be bridged or probed either. */
    HELPER("helper"),
    /** Joined to nothing inside. */
    NOT_CONNECTED("not-connected");

    private final String id;

    PinRole(String id) {
        this.id = id;
    }

    /** The name used in files. {@code adjust} stands for adjust, feedback or reference input; {@code control} for a second supply of the control circuit. */
    public String id() {
        return id;
    }

    public static PinRole of(String id) {
        for (PinRole role : values()) {
            if (role.id.equals(id)) {
                return role;
            }
        }
        throw railtrim.quantity.BadInput.of("circuit.pin-role-unknown", id);
    }
}
