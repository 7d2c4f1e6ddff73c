package railtrim.practice;

/** What a hand does next, once its work on the bench is done: what it would type, pick or press. */
public sealed interface Answer {
    /** @param sure whether the hand measured again and the meter really shows this */
    record Typed(String field, String text, boolean sure) implements Answer {}

    record Picked(String field, String option) implements Answer {}

    record Acknowledged(String caution) implements Answer {}

    /** The board was switched, as the field asks. */
    record Switched(String field) implements Answer {}

    record Alarmed(String reason) implements Answer {}

    record Reopened(String step, String reason) implements Answer {}

    /** Walks away in the middle of it, and is back the next day. */
    record WentHome() implements Answer {}

    /** Nothing is left to do: the job is complete, or the procedure says stop. */
    record Done() implements Answer {}

    /** @param why what was asked and could not be answered */
    record Stuck(String why) implements Answer {}
}
