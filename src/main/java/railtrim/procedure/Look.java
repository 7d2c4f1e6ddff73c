package railtrim.procedure;

import java.util.List;
import railtrim.job.Entry;
import railtrim.procedure.State.Power;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step.Finding;

/**
 * How a step looks by the facts that count.
 *
 * @param needed false where the job so far makes it pointless; {@code skipped} where it was left out
 * @param before whether it ever had an answer
 * @param open cautions still to be acknowledged; {@code missing} the fields still to be answered
 * @param counting facts of the step that count, in order
 * @param done nothing is left to do in it
 */
record Look(
        Step step,
        boolean needed,
        boolean skipped,
        boolean before,
        List<String> open,
        List<String> missing,
        List<Finding> findings,
        List<Entry> counting,
        boolean done) {

    static Look notNeeded(Step step, List<Entry> counting) {
        return new Look(step, false, false, false, List.of(), List.of(), List.of(), counting, true);
    }

    static Look of(
            Step step,
            boolean skipped,
            boolean before,
            List<String> open,
            List<String> missing,
            List<Finding> findings,
            List<Entry> counting) {
        boolean done = skipped || open.isEmpty() && missing.isEmpty() && !blocked(findings);
        return new Look(step, true, skipped, before, open, missing, findings, counting, done);
    }

    private static boolean blocked(List<Finding> findings) {
        for (Finding finding : findings) {
            if (finding.blocks()) {
                return true;
            }
        }
        return false;
    }

    StepState as(Status status) {
        return new StepState(step, status, open, missing, findings, counting);
    }

    /**
     * All that decides how a step looks, apart from the steps before it.
     *
     * @param all facts of the step
     * @param openBefore whether a step before it is not done
     * @param lastMove last fact that moves the way down or the trimmer, on which the steps from there on depend; 0 for those before; {@code power}
     *     likewise
     */
    record Basis(
            List<Entry> all,
            long reopening,
            long base,
            long expired,
            long again,
            long dwellSeen,
            boolean openBefore,
            long lastMove,
            Power power) {

        boolean sameAs(Basis other) {
            return base == other.base
                    && lastMove == other.lastMove
                    && power == other.power
                    && openBefore == other.openBefore
                    && reopening == other.reopening
                    && expired == other.expired
                    && again == other.again
                    && dwellSeen == other.dwellSeen
                    && same(all, other.all);
        }
    }

    /** How a step looked the last time, and on what that rested. */
    record Kept(Basis basis, Look look, long freshest) {
        /** Whether steps after it cannot tell the one from the other: the same facts count, and they are as fresh. */
        boolean saysAs(Kept other) {
            return freshest == other.freshest && same(look.counting, other.look.counting);
        }
    }

    /** Mostly these are the very same facts, so that they need not be compared word by word. */
    private static boolean same(List<Entry> one, List<Entry> other) {
        if (one == other) {
            return true;
        }
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            Entry mine = one.get(i);
            Entry theirs = other.get(i);
            if (mine != theirs && !mine.equals(theirs)) {
                return false;
            }
        }
        return true;
    }
}
