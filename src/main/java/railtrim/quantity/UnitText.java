package railtrim.quantity;

import java.util.Locale;
import java.util.Optional;

/** What was written after the digits: a unit with its prefix, and what one of it is in the SI unit. */
record UnitText(Unit unit, Prefix prefix, int seconds) {
    private static UnitText of(Unit unit, Prefix prefix) {
        return new UnitText(unit, prefix, 1);
    }

    boolean minutes() {
        return seconds == 60;
    }

    /**
     * @param text without blanks at either end, ohm sign as U+03A9, micro sign as U+00B5, not empty
     * @param expected k, K and M alone stand for kilo-ohms and mega-ohms where ohms are expected
     * @return empty where this is no unit known here
     */
    static Optional<UnitText> read(String text, Unit expected) {
        Optional<UnitText> bare = bare(text);
        if (bare.isPresent()) {
            return bare;
        }
        Optional<Prefix> prefix = Prefix.of(text.substring(0, 1));
        if (expected == Unit.OHM && (text.equals("k") || text.equals("K") || text.equals("M"))) {
            return Optional.of(of(Unit.OHM, prefix.get()));
        }
        Optional<UnitText> rest = bare(text.substring(1));
        return prefix.isPresent() && rest.isPresent() && rest.get().takesPrefix()
                ? Optional.of(of(rest.get().unit(), prefix.get()))
                : Optional.empty();
    }

    private boolean takesPrefix() {
        return unit != Unit.CELSIUS && unit != Unit.PERCENT && !minutes();
    }

    private static Optional<UnitText> bare(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "v", "volt", "volts" -> Optional.of(of(Unit.VOLT, Prefix.NONE));
            case "ω", "ohm", "ohms", "r" -> Optional.of(of(Unit.OHM, Prefix.NONE));
            case "a", "amp", "amps", "ampere", "amperes" -> Optional.of(of(Unit.AMPERE, Prefix.NONE));
            case "w", "watt", "watts" -> Optional.of(of(Unit.WATT, Prefix.NONE));
            case "c", "°c", "ºc", "℃", "degc" -> Optional.of(of(Unit.CELSIUS, Prefix.NONE));
            case "%", "percent", "per cent" -> Optional.of(of(Unit.PERCENT, Prefix.NONE));
            case "s", "sec", "secs", "second", "seconds" -> Optional.of(of(Unit.SECOND, Prefix.NONE));
            case "min", "mins", "minute", "minutes" -> Optional.of(new UnitText(Unit.SECOND, Prefix.NONE, 60));
            default -> Optional.empty();
        };
    }
}
