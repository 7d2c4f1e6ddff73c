package railtrim.command;

import java.util.Map;

/**
 * What a command found out.
 *
 * @param exit {@link #DONE} or {@link #NO}
 * @param json keys in the order they are written; values are numbers, texts, truth values, lists and maps of these
 * @param sheet the same for people
 */
record Answer(int exit, Map<String, Object> json, Sheet sheet) {
    static final int DONE = 0;
    /** The answer is no: unsafe, refused, no candidate. */
    static final int NO = 1;

    static final int BAD_INPUT = 2;

    static Answer done(Map<String, Object> json, Sheet sheet) {
        return new Answer(DONE, json, sheet);
    }

    static Answer of(boolean yes, Map<String, Object> json, Sheet sheet) {
        return new Answer(yes ? DONE : NO, json, sheet);
    }
}
