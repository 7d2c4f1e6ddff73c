package railtrim.quantity;

/**
 * Text from a person or a stranger's file as it may be shown: no control characters, none that turn the direction of writing round or cannot be
 * seen (Unicode categories Cc, Cf, Cs), on one line.
 */
public final class PlainText {
    private PlainText() {}

    public static String of(String raw) {
        StringBuilder shown = new StringBuilder(raw.length());
        raw.codePoints().forEach(point -> {
            int type = Character.getType(point);
            if (Character.isWhitespace(point)
                    || type == Character.LINE_SEPARATOR
                    || type == Character.SPACE_SEPARATOR) {
                shown.append(' ');
            } else if (type != Character.CONTROL && type != Character.FORMAT && type != Character.SURROGATE) {
                shown.appendCodePoint(point);
            }
        });
        return shown.toString().strip();
    }
}
