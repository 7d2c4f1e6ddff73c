package railtrim.practice;

import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.quantity.Unit;

/** What a slip makes of a reading that is about to be typed. Empty where it would change nothing. */
final class SlipText {
    private static final Pattern READING = Pattern.compile("(-?)([0-9]+)(\\.([0-9]+))? ([kMmµ]?)(V|Ω|A|°C|%)");

    private SlipText() {}

    static Optional<String> of(Slip slip, String text, RandomGenerator chance) {
        Matcher reading = READING.matcher(text);
        if (!reading.matches() || reading.group(2).matches("0+") && !hasDigits(reading.group(4))) {
            return Optional.empty();
        }
        String sign = reading.group(1);
        String whole = reading.group(2);
        String part = reading.group(4) == null ? "" : reading.group(4);
        String prefix = reading.group(5);
        String unit = reading.group(6);
        return switch (slip) {
            case PREFIX -> otherPrefix(prefix, unit).map(other -> number(sign, whole, part) + " " + other + unit);
            case DECIMAL ->
                Optional.of((chance.nextBoolean() ? right(sign, whole, part) : left(sign, whole, part)) + " " + prefix
                        + unit);
            case COMMA -> part.isEmpty() ? Optional.empty() : Optional.of(sign + whole + part + " " + prefix + unit);
            case UNIT -> Optional.of(number(sign, whole, part) + " " + (unit.equals("V") ? "Ω" : "V"));
            case SWAPPED_PROBES -> Optional.of(sign.isEmpty() ? "-" + text : text.substring(1));
            default -> Optional.empty();
        };
    }

    /** Read on a range ten or a hundred times as large. */
    static Optional<String> coarse(VirtualMeter meter, Unit unit, double value, RandomGenerator chance) {
        return meter.onLargerRange(unit, value, 1 + chance.nextInt(2)).map(Shown::text);
    }

    private static boolean hasDigits(String part) {
        return part != null && !part.matches("0*");
    }

    private static Optional<String> otherPrefix(String prefix, String unit) {
        return switch (unit + prefix) {
            case "Ω" -> Optional.of("k");
            case "Ωk", "Vm" -> Optional.of("");
            case "ΩM" -> Optional.of("k");
            case "V" -> Optional.of("m");
            default -> Optional.empty();
        };
    }

    private static String right(String sign, String whole, String part) {
        return part.isEmpty() ? number(sign, whole + "0", "") : number(sign, whole + part.charAt(0), part.substring(1));
    }

    private static String left(String sign, String whole, String part) {
        String kept = whole.length() == 1 ? "0" : whole.substring(0, whole.length() - 1);
        return number(sign, kept, whole.charAt(whole.length() - 1) + part);
    }

    private static String number(String sign, String whole, String part) {
        String short0 = whole.replaceFirst("^0+(?=[0-9])", "");
        return sign + short0 + (part.isEmpty() ? "" : "." + part);
    }
}
