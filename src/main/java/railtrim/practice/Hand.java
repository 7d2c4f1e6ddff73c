package railtrim.practice;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.procedure.Step;

/**
 * A hand that does what the procedure asks on a bench, and says what a careful person would say. It knows the board only through the
 * meter and its label. Where an answer was not taken it measures again, and then stands by its reading.
 */
public final class Hand implements Worker {
    /** So often one question is answered before the hand gives up. */
    private static final int PATIENCE = 3;

    /** So often it goes back to the same step from the same place. */
    private static final int MOST_TIMES_BACK = 8;

    /** What is read once more where a step of the way down does not add up: these are not struck out and done over. */
    private static final Map<String, String> ON_THE_WAY_DOWN = Map.of(
            "down.back", "down.max", "down.on", "down.start", "down.set", "down.volts", "down.off", "down.off.rail");

    private final Workpiece piece;
    private final Map<String, Skill> skills = new HashMap<>();
    private final Map<String, Integer> reopened = new HashMap<>();
    private String lastQuestion = "";
    private int asked;

    public Hand(Bench bench) {
        this(new Workpiece(bench));
    }

    Hand(Workpiece piece) {
        this.piece = piece;
        DeskSkills.teach(skills, piece);
        MeterSkills.teach(skills, piece);
        TrimmerSkills.teach(skills, piece);
        ResistorSkills.teach(skills, piece);
    }

    @Override
    public Answer next(State state, Course course) {
        Optional<State.Card> card = state.card();
        if (card.isPresent()) {
            return answerCard(card.get(), state, course);
        }
        if (state.complete()) {
            return new Answer.Done();
        }
        State.StepState current = state.current();
        if (!current.open().isEmpty()) {
            return new Answer.Acknowledged(current.open().get(0));
        }
        if (current.missing().isEmpty() || wrongAlready(current)) {
            return mend(current, state, course);
        }
        return answer(current.missing().get(0), state, course);
    }

    /** Nothing more is done in a step whose first answers do not add up; only on the way down the next question may settle it. */
    private static boolean wrongAlready(State.StepState current) {
        return !current.step().id().equals("down.set")
                && current.findings().stream().anyMatch(Step.Finding::blocks);
    }

    private Answer answerCard(State.Card card, State state, Course course) {
        if (card instanceof State.Card.Stop) {
            return new Answer.Done();
        }
        if (card instanceof State.Card.MakeSafe) {
            piece.trimmerToMaximum();
            piece.switchTo(false);
            return answer("safe.rail", state, course);
        }
        piece.switchTo(false);
        State.Card.Resume resume = (State.Card.Resume) card;
        return answer(resume.next(state.job().entries()), state, course);
    }

    private Answer answer(String id, State state, Course course) {
        String question = id + "@" + state.job().last();
        asked = question.equals(lastQuestion) ? asked + 1 : 1;
        lastQuestion = question;
        if (asked > PATIENCE) {
            return new Answer.Stuck(id + ": the answer was not taken");
        }
        Optional<Field> field = course.field(id);
        if (field.isEmpty()) {
            return new Answer.Stuck(id + ": asked for, but not a field of this step");
        }
        if (field.get() instanceof Field.Switch turn) {
            piece.switchTo(turn.on());
            return new Answer.Switched(id);
        }
        return insist(measure(id, field.get(), state, course));
    }

    /** A second reading is taken the same way as the first. */
    private Answer measure(String id, Field field, State state, Course course) {
        Skill skill = skills.get(id);
        if (field instanceof Field.Number number && number.again().isPresent() && skill == null) {
            skill = skills.get(number.again().get());
        }
        return skill == null
                ? new Answer.Stuck(id + ": nothing is known about this question")
                : skill.answer(new Skill.Asked(id, state, course));
    }

    private Answer insist(Answer answer) {
        return answer instanceof Answer.Typed typed ? new Answer.Typed(typed.field(), typed.text(), asked > 1) : answer;
    }

    /** Everything is answered and still it does not add up: do that step once more, as the procedure says. */
    private Answer mend(State.StepState current, State state, Course course) {
        for (Step.Finding finding : current.findings()) {
            if (finding.blocks()) {
                Optional<String> once =
                        Optional.ofNullable(ON_THE_WAY_DOWN.get(current.step().id()));
                if (once.isPresent()) {
                    return answer(once.get(), state, course);
                }
                String backTo = finding.backTo().isEmpty() ? current.step().id() : finding.backTo();
                if (reopened.merge(current.step().id() + ">" + backTo, 1, Integer::sum) <= MOST_TIMES_BACK) {
                    return new Answer.Reopened(backTo, "It did not add up; measuring again.");
                }
                return new Answer.Stuck(current.step().id() + ": still blocked by "
                        + finding.message().key());
            }
        }
        return new Answer.Stuck(current.step().id() + ": nothing is asked and nothing is wrong");
    }
}
