package railtrim.quantity;

/** Units in words, for read-back and for messages. */
final class Names {
    private Names() {}

    /** {@code volts (V)}. */
    static String unit(Unit unit) {
        return unit == Unit.COUNT ? "a plain number" : plural(unit) + " (" + unit.symbol() + ")";
    }

    static String example(Unit unit) {
        return switch (unit) {
            case VOLT -> "3.555 V";
            case OHM -> "220 Ω";
            case AMPERE -> "60 µA";
            case WATT -> "0.25 W";
            case CELSIUS -> "25 °C";
            case PERCENT -> "2 %";
            case SECOND -> "30 s";
            case COUNT -> "25";
        };
    }

    static String plural(Unit unit) {
        return switch (unit) {
            case VOLT -> "volts";
            case OHM -> "ohms";
            case AMPERE -> "amperes";
            case WATT -> "watts";
            case CELSIUS -> "degrees Celsius";
            case PERCENT -> "per cent";
            case SECOND -> "seconds";
            case COUNT -> "";
        };
    }

    static String singular(Unit unit) {
        return switch (unit) {
            case VOLT -> "volt";
            case OHM -> "ohm";
            case AMPERE -> "ampere";
            case WATT -> "watt";
            case CELSIUS -> "degree Celsius";
            case PERCENT -> "per cent";
            case SECOND -> "second";
            case COUNT -> "";
        };
    }
}
