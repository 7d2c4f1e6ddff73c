package railtrim.command;

import java.util.List;
import railtrim.procedure.Caution;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.quantity.Message;

/** What the person has to answer next. */
sealed interface Question {
    /** A caution to be acknowledged on its own. */
    record Read(Caution caution) implements Question {}

    record Answer(Field field) implements Question {}

    /** Everything is answered, and it does not add up. @param backTo id of the step where the mend is likely to be */
    record Mend(List<Step.Finding> findings, String backTo) implements Question {}

    /** The job ends here unless an earlier answer is corrected. */
    record Ended(Message reason, String backTo) implements Question {}

    static Question of(Course course, State state) {
        if (state.card().isPresent()) {
            return ofCard(course, state, state.card().get());
        }
        State.StepState current = state.current();
        if (!current.open().isEmpty()) {
            return new Read(course.procedure().caution(current.open().get(0)));
        }
        if (!current.missing().isEmpty()) {
            return new Answer(course.field(current.missing().get(0)).orElseThrow());
        }
        String backTo = current.findings().stream()
                .filter(Step.Finding::blocks)
                .map(Step.Finding::backTo)
                .filter(id -> !id.isEmpty())
                .findFirst()
                .orElse(current.step().id());
        return new Mend(current.findings(), backTo);
    }

    private static Question ofCard(Course course, State state, State.Card card) {
        if (card instanceof State.Card.Stop stop) {
            return new Ended(stop.reason(), stop.backTo());
        }
        if (card instanceof State.Card.MakeSafe) {
            return new Answer(course.field("safe.rail").orElseThrow());
        }
        State.Card.Resume resume = (State.Card.Resume) card;
        return new Answer(course.field(resume.next(state.job().entries())).orElseThrow());
    }
}
