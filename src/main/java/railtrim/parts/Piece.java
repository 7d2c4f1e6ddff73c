package railtrim.parts;

/**
 * A resistor that can be had.
 *
 * @param ohms more than 0
 * @param tolerance fraction
 * @param count how many there are
 */
record Piece(double ohms, double tolerance, int count) {
    double least() {
        return ohms * (1 - tolerance);
    }

    double greatest() {
        return ohms * (1 + tolerance);
    }
}
