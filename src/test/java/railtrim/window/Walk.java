package railtrim.window;

import railtrim.practice.Answer;

/** Gives a hand's answers to a desk, without mouse and keyboard. */
final class Walk {
    private Walk() {}

    static void give(Desk desk, Answer answer) {
        if (answer instanceof Answer.Typed typed) {
            desk.type(typed.field(), typed.text(), typed.sure());
        } else if (answer instanceof Answer.Picked picked) {
            desk.choose(picked.field(), picked.option());
        } else if (answer instanceof Answer.Acknowledged acknowledged) {
            desk.acknowledge(acknowledged.caution());
        } else if (answer instanceof Answer.Switched switched) {
            desk.turn(switched.field());
        } else if (answer instanceof Answer.Alarmed alarmed) {
            desk.alarm(alarmed.reason());
        } else if (answer instanceof Answer.Reopened reopened) {
            desk.reopen(reopened.step(), reopened.reason());
        } else {
            throw new IllegalArgumentException("nothing to give: " + answer);
        }
    }
}
