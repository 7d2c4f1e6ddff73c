package railtrim.report;

import railtrim.quantity.PlainText;

/** Text as it may stand in a checklist, see {@link PlainText}. */
final class Plain {
    private Plain() {}

    static String text(String raw) {
        return PlainText.of(raw);
    }
}
