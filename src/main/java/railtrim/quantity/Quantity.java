package railtrim.quantity;

/**
 * A number in SI units as it was typed: {@code 4k7} is 4700 {@link Unit#OHM}.
 *
 * @param typed the text as typed, without blanks around it; for a value that was computed, as {@link Display} writes it
 */
public record Quantity(double value, Unit unit, String typed) {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw BadInput.of("quantity.not-finite", typed);
        }
    }
}
