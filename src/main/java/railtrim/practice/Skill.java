package railtrim.practice;

import railtrim.procedure.Course;
import railtrim.procedure.Figures;
import railtrim.procedure.State;

/** How a hand answers one field: by doing what it asks on the bench and saying what came of it. */
interface Skill {
    /** @param field id of the field asked for */
    record Asked(String field, State state, Course course) {
        Figures figures() {
            return state.figures();
        }

        Answer typed(Shown shown) {
            return shown.overload()
                    ? new Answer.Stuck(field + ": the meter shows " + shown.text())
                    : new Answer.Typed(field, shown.text(), false);
        }

        Answer typed(String text) {
            return new Answer.Typed(field, text, false);
        }

        Answer picked(String option) {
            return new Answer.Picked(field, option);
        }
    }

    Answer answer(Asked asked);
}
