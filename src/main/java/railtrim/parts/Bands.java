package railtrim.parts;

import java.util.List;

/** Colour bands of IEC 60062 for a resistor. */
public final class Bands {
    private Bands() {}

    public enum Colour {
        BLACK,
        BROWN,
        RED,
        ORANGE,
        YELLOW,
        GREEN,
        BLUE,
        VIOLET,
        GREY,
        WHITE,
        GOLD,
        SILVER,
        PINK
    }

    /** Four bands for values of two digits, five for three digits; the last is the tolerance. Empty where the value cannot be written in bands. */
    public static List<Colour> of(double ohms, double tolerance) {
        throw new UnsupportedOperationException();
    }
}
