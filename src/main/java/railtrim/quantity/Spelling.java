package railtrim.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The whole grammar of {@link QuantityReader}: every spelling that is read, and what is said of those that are not. */
final class Spelling {
    private static final Pattern PLAIN = Pattern.compile("([+-]?)([0-9]*)(?:([.,])([0-9]*))?( *)(.*)");
    private static final Pattern LETTER_AS_MARK = Pattern.compile("([+-]?)([0-9]*)([RrkKMΩVv])([0-9]+) *([^0-9.,]*)");
    private static final Pattern SMALL_M_AS_MARK = Pattern.compile("[+-]?[0-9]+m[0-9]+.*");
    private static final Pattern EXPONENT = Pattern.compile("[+-]?[0-9.,]+ *[eE] *[+-]?[0-9]+.*");
    private static final Pattern GAP = Pattern.compile("[+-]?(?:[0-9][0-9.,]*[ '’_]+[0-9.,].*| +[0-9].*)");
    private static final Pattern TWO_MARKS = Pattern.compile(
            "[+-]?(?:[0-9]*[.,][0-9]*(?:[.,]|[RrkKMΩVv][0-9])|[0-9]*[RrkKMΩVv][0-9]+[.,RrkKMΩVv][0-9]).*");
    private static final Pattern OVER_RANGE = Pattern.compile("\\.?[oO0]\\.?[lL]\\.?(?: *[kKM]?Ω| *m?V)?");
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)[+-]?(?:nan|inf|infinity|∞).*");
    private static final Pattern LOOKS_LIKE_A_UNIT = Pattern.compile("[\\p{L}°º℃%][\\p{L}°º℃% /]*");

    private Spelling() {}

    /** @throws BadInput where the text is no number with a unit; size and kind of unit are not looked at yet */
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
        if (text.codePoints().anyMatch(c -> c > '9' && Character.isDigit(c))) {
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
        if (GAP.matcher(text).matches()) {
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
        Unit unit = mark.equalsIgnoreCase("V") ? Unit.VOLT : Unit.OHM;
        if (!text.group(5).isEmpty() && !(unit == Unit.OHM && text.group(5).matches("Ω|(?i:ohms?)"))) {
            throw BadInput.of("quantity.two-units", typed);
        }
        if (before.isEmpty() && !mark.equalsIgnoreCase("R")) {
            throw BadInput.of("quantity.no-digit-before", typed, text.group(1) + "0" + mark + text.group(4));
        }
        UnitText unitText = new UnitText(unit, Prefix.of(mark).orElse(Prefix.NONE), 1);
        String whole = before.isEmpty() ? "0" : before;
        return new Typed(text.group(1).equals("-"), whole, text.group(4), unitText);
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
        return new Typed(text.group(1).equals("-"), before, after, unit);
    }

    private static UnitText unit(String number, String rest, String typed, Unit expected) {
        if (expected == Unit.COUNT) {
            return noUnit(number, rest, typed);
        }
        if (rest.isEmpty()) {
            throw unitMissing(number, expected);
        }
        if (rest.equals("m")) {
            throw BadInput.of("quantity.small-m", typed);
        }
        if (rest.matches("[°º]?[Ff]") && expected == Unit.CELSIUS) {
            throw BadInput.of("quantity.fahrenheit", typed);
        }
        return UnitText.read(rest, expected).orElseThrow(() -> unknownUnit(typed, rest, expected));
    }

    private static UnitText noUnit(String number, String rest, String typed) {
        if (LOOKS_LIKE_A_UNIT.matcher(rest).matches()) {
            throw BadInput.of("quantity.unit-not-wanted", typed, number);
        }
        if (!rest.isEmpty()) {
            throw unreadable(typed, Unit.COUNT);
        }
        return new UnitText(Unit.COUNT, Prefix.NONE, 1);
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
        // Anything but letters is no unit: the whole cannot be read, so do not talk about a unit.
        return LOOKS_LIKE_A_UNIT.matcher(rest).matches()
                ? BadInput.of("quantity.unit-unknown", typed, rest, Names.unit(expected), Names.example(expected))
                : unreadable(typed, expected);
    }

    private static BadInput unreadable(String typed, Unit expected) {
        return BadInput.of("quantity.unreadable", typed, Names.example(expected));
    }

    /** One sign for each of those that look alike: minus, ohm, micro. */
    private static String oneSpelling(String text) {
        return text.replace('\u2212', '-').replace('\u2126', '\u03A9').replace('\u03BC', '\u00B5');
    }
}
