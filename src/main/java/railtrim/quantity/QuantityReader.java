package railtrim.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with its unit the way people write it: {@code 220R}, {@code 1k2}, {@code 4.7 kΩ}, {@code 3V555}, {@code 60uA}, {@code 2%}.
 *
 * <p>The grammar is its own, the same in every country. One decimal mark, point or comma, or a letter in its place (IEC 60062: 4R7, 4k7, 1M0,
 * R47; 3V3). No thousands marks, no exponents, no unit left out. Blanks may stand between number and unit only.
 */
public final class QuantityReader {
    private static final int LONGEST = 40;
    private static final int MOST_DIGITS = 9;

    private static final Pattern PLAIN = Pattern.compile("([+-]?)([0-9]*)(?:([.,])([0-9]*))?( *)(.*)");
    private static final Pattern LETTER_AS_MARK =
            Pattern.compile("([+-]?)([0-9]*)([RrkKMΩVv])([0-9]+)(?: *(Ω|[Oo][Hh][Mm][Ss]?))?");
    private static final Pattern SMALL_M_AS_MARK = Pattern.compile("[+-]?[0-9]+m[0-9]+.*");
    private static final Pattern EXPONENT = Pattern.compile("[+-]?[0-9.,]+ *[eE] *[+-]?[0-9]+.*");
    private static final Pattern GROUPED = Pattern.compile("[+-]?(?:[0-9][0-9.,]*[ '’_][0-9].*| +[0-9].*)");
    private static final Pattern TWO_MARKS =
            Pattern.compile("[+-]?[0-9]*[.,][0-9]*(?:[.,]|[RrkKMΩVv][0-9]).*|[+-]?[0-9]+[RrkKMΩVv][0-9]*[.,RrkKMVv].*");
    private static final Pattern OVER_RANGE = Pattern.compile("\\.?[oO0]\\.?[lL]\\.?(?: *[kKM]?Ω| *[m]?V)?");
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)[+-]?(?:nan|inf|infinity|∞).*");

    private QuantityReader() {}

    /**
     * @param expected the unit that has to be there (for {@link Unit#COUNT} no unit may be there, and the number is whole)
     * @throws BadInput with a message that says what was read, what is expected and what to do
     */
    public static Quantity read(String text, Unit expected) {
        String typed = withoutBlanksAround(shortEnough(text));
        Typed parts = takeApart(typed, expected);
        Unit unit = parts.unitText().unit();
        if (unit != expected) {
            throw BadInput.of(
                    "quantity.other-unit", typed, Names.unit(unit), Names.unit(expected), Names.example(expected));
        }
        return new Quantity(parts.value(), unit, typed);
    }

    /** @throws BadInput as {@link #read}, the unit's kind not yet compared */
    static Typed takeApart(String typed, Unit expected) {
        String text = oneSpelling(typed);
        refuseWhatIsNoNumber(text, typed, expected);
        Matcher letter = LETTER_AS_MARK.matcher(text);
        if (letter.matches()) {
            return letterAsMark(letter, typed);
        }
        Matcher plain = PLAIN.matcher(text);
        if (!plain.matches()) {
            throw unreadable(typed, expected);
        }
        return plain(plain, typed, expected);
    }

    private static void refuseWhatIsNoNumber(String text, String typed, Unit expected) {
        if (text.isEmpty()) {
            throw BadInput.of("quantity.empty", Names.example(expected));
        }
        if (text.chars().anyMatch(c -> c > '9' && Character.isDigit(c))) {
            throw BadInput.of("quantity.other-digits", typed, Names.example(expected));
        }
        if (OVER_RANGE.matcher(text).matches()) {
            throw BadInput.of("quantity.over-range", typed);
        }
        if (NO_NUMBER.matcher(text).matches()) {
            throw BadInput.of("quantity.not-finite", typed);
        }
        if (text.indexOf('–') == 0 || text.indexOf('—') == 0) {
            throw BadInput.of("quantity.dash", typed);
        }
        if (GROUPED.matcher(text).matches()) {
            throw BadInput.of("quantity.gap", typed, Names.example(expected));
        }
        if (EXPONENT.matcher(text).matches()) {
            throw BadInput.of("quantity.exponent", typed, Names.example(expected));
        }
        if (TWO_MARKS.matcher(text).matches()) {
            throw BadInput.of("quantity.two-marks", typed, Names.example(expected));
        }
        if (SMALL_M_AS_MARK.matcher(text).matches()) {
            throw BadInput.of("quantity.small-m", typed);
        }
    }

    private static Typed letterAsMark(Matcher text, String typed) {
        String mark = text.group(3);
        String before = text.group(2);
        boolean volts = mark.equalsIgnoreCase("V");
        if (volts && text.group(5) != null) {
            throw BadInput.of("quantity.two-units", typed);
        }
        if (before.isEmpty() && !mark.equalsIgnoreCase("R")) {
            throw BadInput.of("quantity.no-digit-before", typed, "0" + mark + text.group(4));
        }
        Prefix prefix = Prefix.of(mark).orElse(Prefix.NONE);
        UnitText unit = new UnitText(volts ? Unit.VOLT : Unit.OHM, prefix, 1);
        return checked(
                new Typed(text.group(1).equals("-"), before.isEmpty() ? "0" : before, text.group(4), unit), typed);
    }

    private static Typed plain(Matcher text, String typed, Unit expected) {
        String before = text.group(2);
        String mark = text.group(3);
        String after = mark == null ? "" : text.group(4);
        String rest = text.group(6).strip();
        if (before.isEmpty() && after.isEmpty()) {
            throw unreadable(typed, expected);
        }
        if (before.isEmpty()) {
            throw BadInput.of("quantity.no-digit-before", typed, text.group(1) + "0." + after + rest);
        }
        if (mark != null && after.isEmpty()) {
            throw BadInput.of("quantity.no-digit-after", typed, text.group(1) + before + rest);
        }
        UnitText unit = unit(text.group(1) + before + (mark == null ? "" : mark + after), rest, typed, expected);
        Typed parts = checked(new Typed(text.group(1).equals("-"), before, after, unit), typed);
        if (expected == Unit.COUNT && mark != null && unit.unit() == Unit.COUNT) {
            throw BadInput.of("quantity.not-whole", typed);
        }
        return parts;
    }

    private static UnitText unit(String number, String rest, String typed, Unit expected) {
        if (rest.isEmpty()) {
            if (expected != Unit.COUNT) {
                throw unitMissing(number, expected);
            }
            return new UnitText(Unit.COUNT, Prefix.NONE, 1);
        }
        if (rest.equals("m")) {
            throw BadInput.of("quantity.small-m", typed);
        }
        if (rest.matches("[°º]?[Ff]") && expected == Unit.CELSIUS) {
            throw BadInput.of("quantity.fahrenheit", typed);
        }
        UnitText unit = UnitText.read(rest).orElseThrow(() -> unknownUnit(typed, rest, expected));
        if (expected == Unit.COUNT) {
            throw BadInput.of("quantity.unit-not-wanted", typed, number);
        }
        if (unit.unit() != Unit.OHM && unit.prefix().power() >= Prefix.MEGA.power()) {
            throw BadInput.of(
                    "quantity.capital-m", typed, number + " m" + unit.unit().symbol());
        }
        return unit;
    }

    private static BadInput unitMissing(String number, Unit expected) {
        String first = number + " " + expected.symbol();
        return switch (expected) {
            case VOLT -> BadInput.of("quantity.unit-missing", number, first, number + " mV");
            case OHM -> BadInput.of("quantity.unit-missing", number, first, number + " kΩ");
            case AMPERE -> BadInput.of("quantity.unit-missing", number, first, number + " mA");
            case WATT -> BadInput.of("quantity.unit-missing", number, first, number + " mW");
            case SECOND -> BadInput.of("quantity.unit-missing", number, first, number + " min");
            default -> BadInput.of("quantity.unit-missing-one", number, first);
        };
    }

    private static BadInput unknownUnit(String typed, String rest, Unit expected) {
        // Digits after a letter are no unit: the whole cannot be read, so do not talk about a unit.
        return rest.chars().anyMatch(c -> c >= '0' && c <= '9') || !rest.matches("[\\p{L}°º℃% ]+")
                ? unreadable(typed, expected)
                : BadInput.of("quantity.unit-unknown", typed, rest, Names.unit(expected), Names.example(expected));
    }

    private static BadInput unreadable(String typed, Unit expected) {
        return BadInput.of("quantity.unreadable", typed, Names.example(expected));
    }

    private static Typed checked(Typed parts, String typed) {
        if (parts.before().length() > MOST_DIGITS || parts.after().length() > MOST_DIGITS) {
            throw BadInput.of("quantity.too-many-digits", typed, Integer.toString(MOST_DIGITS));
        }
        return parts;
    }

    private static String shortEnough(String text) {
        if (text.length() > LONGEST) {
            throw BadInput.of("quantity.too-long", text.substring(0, 20) + "…", Integer.toString(LONGEST));
        }
        return text;
    }

    private static String withoutBlanksAround(String text) {
        return text.replaceAll("^[\\s\\p{Zs}]+|[\\s\\p{Zs}]+$", "");
    }

    /** One sign for each of those that look alike: blanks, minus, ohm, micro. */
    private static String oneSpelling(String text) {
        return text.replaceAll("[\\s\\p{Zs}]", " ")
                .replace('\u2212', '-')
                .replace('\u2126', '\u03A9')
                .replace('\u03BC', '\u00B5');
    }
}
