package railtrim.window;

import java.util.List;
import java.util.Optional;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Field;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Sums;

/** Looks up how a field stands in the job. */
final class Standings {
    /** After so many answers in one sitting the same words are noise; the question mark beside the field still has them. */
    private static final int FAMILIAR = 2;

    private Standings() {}

    static FieldView.Standing of(Desk desk, StepState state, Field field) {
        boolean open = desk.open(field);
        boolean askedAgain = desk.working() && state.missing().contains(field.id());
        Optional<String> answer = askedAgain ? Optional.empty() : answer(field.id(), state.entries());
        if (answer.isEmpty() && !desk.working()) {
            // A step that is walked again and again keeps its last answer in view until the person goes on.
            answer = answer(field.id(), desk.state().figures().history(field.id()));
        }
        return new FieldView.Standing(
                open,
                answer,
                familiar(desk, field),
                answer.isPresent() && desk.hidden().contains(field.id()),
                open ? desk.course().expected(field.id()) : Optional.empty(),
                open ? Sums.expected(field, desk.state().figures()) : Optional.empty(),
                desk.said(field.id()));
    }

    static FieldView.Standing ofCard(Desk desk, Field field) {
        return new FieldView.Standing(
                true,
                Optional.empty(),
                false,
                false,
                desk.course().expected(field.id()),
                Sums.expected(field, desk.state().figures()),
                desk.said(field.id()));
    }

    /** Entries stand in the order of their sittings, so the last few tell. */
    private static boolean familiar(Desk desk, Field field) {
        List<Entry> answers = desk.state().figures().history(field.id());
        if (answers.size() < FAMILIAR) {
            return false;
        }
        List<Entry> all = desk.state().job().entries();
        int sitting = all.get(all.size() - 1).session();
        return answers.get(answers.size() - FAMILIAR).session() == sitting;
    }

    private static Optional<String> answer(String field, List<Entry> entries) {
        Optional<String> latest = Optional.empty();
        for (Entry entry : entries) {
            Optional<String> said = said(field, entry.fact());
            latest = said.isPresent() ? said : latest;
        }
        return latest;
    }

    private static Optional<String> said(String field, Fact fact) {
        if (fact instanceof Fact.Reading reading && reading.field().equals(field)) {
            return Optional.of(reading.typed());
        }
        if (fact instanceof Fact.Choice choice && choice.field().equals(field)) {
            return Optional.of(choice.option());
        }
        if (fact instanceof Fact.Note note && note.field().equals(field)) {
            return Optional.of(note.text());
        }
        if (fact instanceof Fact.Power power && field.endsWith("switch") && field.startsWith(power.step())) {
            return Optional.of(Boolean.toString(power.on()));
        }
        return Optional.empty();
    }
}
