package railtrim.circuit;

import railtrim.quantity.BadInput;
import railtrim.quantity.RailSign;

/** Where the reference sits, and so which leg of the divider lowers the output when a resistor is put across it. */
public enum Place {
    OUT_ADJ("out-adj"),
    FB_GND("fb-gnd"),
    NEGATIVE_OUT_ADJ("negative-out-adj"),
    SHUNT("shunt");

    private final String id;

    Place(String id) {
        this.id = id;
    }

    /** The name used on the command line and in files. */
    public String id() {
        return id;
    }

    /** The leg whose parallel resistor brings the output nearer the reference. */
    public Leg loweringLeg() {
        return this == OUT_ADJ || this == NEGATIVE_OUT_ADJ ? Leg.LOWER : Leg.UPPER;
    }

    public boolean negative() {
        return this == NEGATIVE_OUT_ADJ;
    }

    /** How the meter shows the output of such a regulator. */
    public RailSign sign() {
        return new RailSign(negative());
    }

    public static Place of(String id) {
        for (Place place : values()) {
            if (place.id.equals(id)) {
                return place;
            }
        }
        throw BadInput.of("circuit.place-unknown", id);
    }
}
