package railtrim.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import railtrim.practice.Jobs;
import railtrim.procedure.State.StepState;

/** A whole job, played on a practice board. */
class OutlookTest {
    private static final List<State> JOB = Jobs.states("sound-board", 7);

    private static int counted(State state) {
        return new Outlook(state).steps().size();
    }

    @Test
    void switchingOnAndOffDoesNotChangeHowManyStepsThereAre() {
        TreeSet<Integer> before = new TreeSet<>();
        for (State state : JOB) {
            Phase phase = state.current().step().phase();
            if (phase.compareTo(Phase.IDENTIFY) >= 0 && phase.compareTo(Phase.STEP_DOWN) < 0) {
                before.add(counted(state));
            }
        }
        assertEquals(1, before.size(), before::toString);
    }

    @Test
    void theFaultIsToBeReckonedWithFromTheStartAndIsThereWhenItCame() {
        assertTrue(expected(JOB.get(0), "fault.note"));
        assertTrue(expected(JOB.get(0), "down.off"));
        State last = JOB.get(JOB.size() - 1);
        assertTrue(last.figures().descent().faulted());
        assertTrue(expected(last, "fault.note"));
    }

    @Test
    void aRoundThatWentWellIsNotToBeDoneAgain() {
        State second = JOB.stream()
                .filter(state -> state.current().step().id().equals("down.set")
                        && state.figures().descent().rounds() > 0)
                .findFirst()
                .orElseThrow();
        StepState watched = second.step("down.watch");
        assertEquals(State.Status.STALE, watched.status());
        assertTrue(new Outlook(second).nextRound(watched));
        State early = JOB.get(0);
        assertFalse(new Outlook(early).nextRound(early.step("down.watch")));
    }

    private static boolean expected(State state, String step) {
        return new Outlook(state).expected(state.step(step));
    }
}
