package railtrim.procedure;

import java.util.List;
import java.util.Set;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;

/**
 * Which steps a person has to reckon with, as the job stands. Some count as not needed only for now: the way down will end, and mostly with a fault; and a
 * board that is off before its first power-up will be on when the way down begins. Without this, the count of steps would change with each switch.
 */
public final class Outlook {
    /** Asked of those who come back to the way down with the board off. */
    private static final Set<String> FROM_OFF = Set.of("down.back", "down.on");
    /** Come when the way down has ended. */
    private static final Set<String> AT_THE_END = Set.of("down.off", "fault.note", "fault.next");

    private final State state;

    public Outlook(State state) {
        this.state = state;
    }

    /** Whether a step was done, is at work, or has to be expected. */
    public boolean expected(StepState each) {
        String id = each.step().id();
        if (each.status() == Status.NOT_NEEDED) {
            return AT_THE_END.contains(id) && !state.figures().descent().ended();
        }
        return !FROM_OFF.contains(id) || state.current().step().phase().compareTo(Phase.STEP_DOWN) >= 0;
    }

    /** Whether a step that was done comes again only because the way down goes in rounds; nothing is wrong with what was answered. */
    public boolean nextRound(StepState each) {
        return each.status() == Status.STALE
                && each.step().phase() == Phase.STEP_DOWN
                && state.current().step().phase() == Phase.STEP_DOWN;
    }

    /** In their order. */
    public List<StepState> steps() {
        return state.steps().stream().filter(this::expected).toList();
    }
}
