package railtrim.quantity;

/** Reads a number with its unit the way people write it: {@code 220R}, {@code 1k2}, {@code 4.7 kΩ}, {@code 3V555}, {@code 60uA}, {@code 2%}. */
public final class QuantityReader {
    private QuantityReader() {}

    /**
     * @param expected the unit that has to be there (for {@link Unit#COUNT} no unit may be there)
     * @throws BadInput with a message that says what was read, what is expected and what to do
     */
    public static Quantity read(String text, Unit expected) {
        throw new UnsupportedOperationException();
    }
}
