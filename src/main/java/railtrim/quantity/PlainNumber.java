package railtrim.quantity;

import java.util.Optional;

/**
 * The commonest spelling of all, read without any pattern: digits, perhaps a point or comma with digits after it, and a unit in plain letters,
 * as {@code 3.555V}, {@code 220R}, {@code 2%}. All else is left to {@link Spelling}, which reads these the same.
 */
final class PlainNumber {
    private PlainNumber() {}

    /** @return empty where this is another spelling, or no number at all */
    static Optional<Typed> read(String typed, Unit expected) {
        int whole = digits(typed, 0);
        boolean marked = whole < typed.length() && (typed.charAt(whole) == '.' || typed.charAt(whole) == ',');
        int end = marked ? digits(typed, whole + 1) : whole;
        boolean digitsMissing = whole == 0 || marked && end == whole + 1;
        if (digitsMissing || expected == Unit.COUNT || !isUnit(typed, end)) {
            return Optional.empty();
        }
        Optional<UnitText> unit = UnitText.read(typed.substring(end), expected);
        String after = marked ? typed.substring(whole + 1, end) : "";
        return unit.isPresent()
                ? Optional.of(new Typed(false, typed.substring(0, whole), after, unit.get()))
                : Optional.empty();
    }

    /** Where the digits from {@code from} on end. */
    private static int digits(String text, int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    /** Letters to the end, at least one; no unit begins with an L, but a meter’s over-range sign may look like 0L. */
    private static boolean isUnit(String text, int from) {
        if (from == text.length() || text.charAt(from) == 'L' || text.charAt(from) == 'l') {
            return false;
        }
        for (int i = from; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean plain = letter >= 'a' && letter <= 'z' || letter >= 'A' && letter <= 'Z' || letter == '%';
            if (!plain) {
                return false;
            }
        }
        return true;
    }

    /** Whether every character is one that is seen and is plain ASCII: no blank of any kind. */
    static boolean seen(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) <= ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }
}
