package railtrim.quantity;

import java.util.stream.Collectors;

/** Says typed digits one by one, so that a slipped point or a missing digit is heard. */
final class SpokenDigits {
    private static final String[] DIGITS = {
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
    };

    private SpokenDigits() {}

    static String of(Typed typed) {
        String sign = typed.negative() ? "minus " : "";
        String point = typed.after().isEmpty() ? "" : " point " + digits(typed.after());
        return (sign + digits(typed.before()) + point + " " + unit(typed)).strip();
    }

    private static String digits(String digits) {
        return digits.chars().mapToObj(c -> DIGITS[c - '0']).collect(Collectors.joining(" "));
    }

    private static String unit(Typed typed) {
        UnitText unit = typed.unitText();
        if (unit.minutes()) {
            return typed.isOne() ? "minute" : "minutes";
        }
        String name = typed.isOne() ? Names.singular(unit.unit()) : Names.plural(unit.unit());
        // "kilo-ohms" with a hyphen: two vowels meet. The others run together: "millivolts".
        return unit.prefix().spoken() + (unit.unit() == Unit.OHM && unit.prefix() != Prefix.NONE ? "-" : "") + name;
    }
}
