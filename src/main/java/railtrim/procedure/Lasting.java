package railtrim.procedure;

import java.util.Set;

/**
 * Answers that stay true whatever happens to the board's power and however long the work lies still: what the board and its parts are, and what
 * the person decided. Everything else is a state of the board at one moment and expires.
 */
final class Lasting {
    private static final Set<String> STEPS = Set.of(
            "scope",
            "chip",
            "ranges",
            "marking",
            "datasheet",
            "pins",
            "place",
            "aim",
            "pick",
            "fault.note",
            "fault.next",
            "budget",
            "choose",
            "record");
    private static final Set<String> FIELDS = Set.of(
            "meter.class",
            "meter.volt.percent",
            "meter.volt.digits",
            "meter.ohm.percent",
            "meter.ohm.digits",
            "load.name",
            "current.known",
            "load.current",
            "temp.how");

    private Lasting() {}

    static boolean is(String step, String field) {
        return STEPS.contains(step) || FIELDS.contains(field);
    }
}
