package railtrim.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a number with its unit the way people write it: {@code 220R}, {@code 1k2}, {@code 4.7 kΩ}, {@code 3V555}, {@code 60uA}, {@code 2%}.
 *
 * <p>The grammar is its own, the same in every country. One decimal mark, point or comma, or a letter in its place (IEC 60062: 4R7, 4k7, 1M0,
 * R47; 3V3). No thousands marks, no exponents, no unit left out. Blanks may stand between number and unit only.
 */
public final class QuantityReader {
    private static final Pattern BLANK = Pattern.compile("[\\s\\p{Zs}]");
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\p{Cf}]");

    private static final int LONGEST = 40;
    private static final int MOST_DIGITS = 9;

    private QuantityReader() {}

    /**
     * @param expected the unit that has to be there (for {@link Unit#COUNT} no unit may be there, and the number is whole)
     * @throws BadInput with a message that says what was read, what is expected and what to do
     */
    public static Quantity read(String text, Unit expected) {
        String typed = withPlainBlanks(shortEnough(text));
        Typed parts = takeApart(typed, expected);
        Unit unit = parts.unitText().unit();
        if (parts.before().length() > MOST_DIGITS || parts.after().length() > MOST_DIGITS) {
            throw BadInput.of("quantity.too-many-digits", typed, Integer.toString(MOST_DIGITS));
        }
        if (unit != expected) {
            throw BadInput.of(
                    "quantity.other-unit", typed, Names.unit(unit), Names.unit(expected), Names.example(expected));
        }
        if (unit == Unit.COUNT && !parts.after().isEmpty()) {
            throw BadInput.of("quantity.not-whole", typed);
        }
        if (unit != Unit.OHM && parts.unitText().prefix().power() >= Prefix.MEGA.power()) {
            throw BadInput.of("quantity.capital-m", typed, parts.digits() + " m" + unit.symbol());
        }
        return new Quantity(parts.value(), unit, typed);
    }

    /**
     * What one count of the last place that was typed is worth, SI unit: {@code 1.50 V} has 0.01, {@code 4k7} has 100.
     *
     * @throws BadInput as {@link #read}
     */
    public static double lastDigit(String text, Unit expected) {
        Typed parts = takeApart(withPlainBlanks(shortEnough(text)), expected);
        return BigDecimal.ONE
                .scaleByPowerOfTen(
                        parts.unitText().prefix().power() - parts.after().length())
                .doubleValue();
    }

    /** @throws BadInput where the text is no number with a unit; size and kind of unit are not looked at yet */
    static Typed takeApart(String typed, Unit expected) {
        Optional<Typed> plain = PlainNumber.read(typed, expected);
        return plain.isPresent() ? plain.get() : Spelling.takeApart(typed, expected);
    }

    private static String shortEnough(String text) {
        if (text.length() > LONGEST) {
            throw BadInput.of(
                    "quantity.too-long", withPlainBlanks(text.substring(0, 20)) + "…", Integer.toString(LONGEST));
        }
        return text;
    }

    /** Every kind of blank as a plain one, none at the ends; characters that cannot be seen are shown as a box and so refused. */
    private static String withPlainBlanks(String text) {
        return PlainNumber.seen(text) ? text : blanked(text);
    }

    private static String blanked(String text) {
        String blanks = BLANK.matcher(text).replaceAll(" ");
        return UNSEEN.matcher(blanks).replaceAll("□").strip();
    }
}
