package railtrim.job;

import railtrim.quantity.Unit;

/** Something that happened. A job is nothing but these, in order. Every fact names the step it belongs to. */
public sealed interface Fact {
    String step();

    /** A number read off the meter (or chosen), SI units, with the text as typed. */
    record Reading(String step, String field, double value, Unit unit, String typed) implements Fact {}

    /** One of several answers. */
    record Choice(String step, String field, String option) implements Fact {}

    /** Free words. */
    record Note(String step, String field, String text) implements Fact {}

    /** One caution, acknowledged on its own. */
    record Acknowledged(String step, String caution) implements Fact {}

    /** The person says they switched the board on or off. */
    record Power(String step, boolean on) implements Fact {}

    /** Make safe was pressed, or something was smelled, seen or measured that calls for it. */
    record Alarm(String step, String reason) implements Fact {}

    /** The person goes back to a finished step to do it again. */
    record Reopened(String step, String reason) implements Fact {}

    /** A step that may be left out, left out, with the reason typed. */
    record Skipped(String step, String reason) implements Fact {}

    /** Work laid down, with a note for later. */
    record Paused(String step, String note) implements Fact {}

    /**
     * Work taken up again after so many seconds by the wall clock. Less than zero where nobody knows how long the gap was, because the
     * clock was set back or entries were lost: it counts as a long one.
     */
    record Resumed(String step, long gapSeconds) implements Fact {}

    /**
     * What a job made elsewhere says about a field, as text: an answer's id, or what was typed. It answers nothing; the person reads it beside the
     * field and looks for themselves.
     */
    record Proposed(String step, String field, String value) implements Fact {}

    /** The entry with this sequence number, the last one that counted, is taken back. It stays on record, and no longer counts. */
    record Withdrawn(String step, long entry) implements Fact {}
}
