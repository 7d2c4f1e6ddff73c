package railtrim.parts;

import java.util.List;

/** Resistors at hand, from a CSV text with the columns {@code value,tolerance,count} (4k7,1%,10). */
public record PartsBox(List<Part> parts) {
    /** @param ohms more than 0; @param tolerance fraction; @param count 1 or more */
    public record Part(double ohms, double tolerance, int count) {}

    /** @throws railtrim.quantity.BadInput naming the line and what is wrong with it */
    public static PartsBox of(String csv) {
        throw new UnsupportedOperationException();
    }
}
