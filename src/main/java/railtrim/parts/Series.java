package railtrim.parts;

/** Preferred value series of IEC 60063:2015, by rule and exceptions. */
public enum Series {
    E3(3),
    E6(6),
    E12(12),
    E24(24),
    E48(48),
    E96(96),
    E192(192);

    private final int steps;

    Series(int steps) {
        this.steps = steps;
    }

    public int steps() {
        return steps;
    }

    /** Significands: two digits (10–91) for E3 to E24, three digits (100–988) for E48 to E192, ascending. */
    public int[] significands() {
        throw new UnsupportedOperationException();
    }

    /** Ascending preferred values from {@code low} to {@code high} inclusive, ohms. */
    public double[] between(double low, double high) {
        throw new UnsupportedOperationException();
    }

    /** {@code below} and {@code above} equal the value itself where it is a preferred value. */
    public record Near(double below, double nearest, double above) {}

    /** Nearest by ratio. @throws railtrim.quantity.BadInput for a value that is not positive and finite */
    public Near near(double value) {
        throw new UnsupportedOperationException();
    }
}
