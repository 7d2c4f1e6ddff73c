package railtrim.quantity;

import java.util.Optional;

/** The powers of ten people write before a unit. {@code K} is read as kilo; {@code m} and {@code M} are never taken for each other. */
enum Prefix {
    PICO("p", "pico", -12),
    NANO("n", "nano", -9),
    MICRO("µ", "micro", -6),
    MILLI("m", "milli", -3),
    NONE("", "", 0),
    KILO("k", "kilo", 3),
    MEGA("M", "mega", 6),
    GIGA("G", "giga", 9);

    private final String symbol;
    private final String spoken;
    private final int power;

    Prefix(String symbol, String spoken, int power) {
        this.symbol = symbol;
        this.spoken = spoken;
        this.power = power;
    }

    String symbol() {
        return symbol;
    }

    String spoken() {
        return spoken;
    }

    int power() {
        return power;
    }

    /** @param letter one letter, µ already as U+00B5 */
    static Optional<Prefix> of(String letter) {
        return switch (letter) {
            case "p" -> Optional.of(PICO);
            case "n" -> Optional.of(NANO);
            case "u", "µ" -> Optional.of(MICRO);
            case "m" -> Optional.of(MILLI);
            case "k", "K" -> Optional.of(KILO);
            case "M" -> Optional.of(MEGA);
            case "G" -> Optional.of(GIGA);
            default -> Optional.empty();
        };
    }

    /** The largest prefix that leaves a number of at least 1 before it, for a number whose first digit stands at 10^exponent. */
    static Prefix holding(int exponent) {
        Prefix best = PICO;
        for (Prefix prefix : values()) {
            if (prefix.power <= exponent) {
                best = prefix;
            }
        }
        return best;
    }
}
