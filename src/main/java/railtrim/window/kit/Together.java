package railtrim.window.kit;

/** Keeps a number and its unit on one line: "0.1 V" at the end of a line would else leave its V to the next. */
public final class Together {
    /** A space at which no line is broken. */
    private static final char NO_BREAK = '\u00a0';
    /** What units begin with, and per cent. */
    private static final String UNITS = "VΩAWkMmµn°%";

    private Together() {}

    /** The text with an unbreakable space between each number and its unit, and behind ±. */
    public static String of(String text) {
        int space = text == null ? -1 : text.indexOf(' ');
        if (space < 0) {
            return text;
        }
        char[] letters = text.toCharArray();
        for (int i = Math.max(1, space); i < letters.length - 1; i++) {
            if (letters[i] == ' ' && belong(text, i)) {
                letters[i] = NO_BREAK;
            }
        }
        return new String(letters);
    }

    /** The text with ordinary spaces, for other programs. */
    public static String plain(String text) {
        return text.replace(NO_BREAK, ' ');
    }

    private static boolean belong(String text, int space) {
        char before = text.charAt(space - 1);
        return before == '±' || Character.isDigit(before) && isUnit(text, space + 1);
    }

    /** A word of at most three signs, so that "3 mistakes" is none. */
    private static boolean isUnit(String text, int start) {
        int end = start;
        while (end < text.length() && (Character.isLetter(text.charAt(end)) || "°%Ω".indexOf(text.charAt(end)) >= 0)) {
            end++;
        }
        return end > start && end - start <= 2 && UNITS.indexOf(text.charAt(start)) >= 0;
    }
}
