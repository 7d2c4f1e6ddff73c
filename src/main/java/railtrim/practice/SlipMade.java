package railtrim.practice;

import java.util.Locale;

/**
 * One slip, and whether it was noticed.
 *
 * @param field the question it was made at
 * @param key of the message that caught it; empty where nothing did; {@code at} the question that was being answered then, empty for none
 */
public record SlipMade(Slip slip, String step, String field, Noticed noticed, String key, String at) {
    /** When a slip was noticed. Harm is a chip above its stock voltage, soldering or measuring ohms on a live board. */
    public enum Noticed {
        BEFORE_HARM,
        AFTER_HARM,
        NEVER;

        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public boolean caught() {
        return noticed != Noticed.NEVER;
    }
}
