package railtrim.procedure;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import railtrim.job.Fact;
import railtrim.quantity.Unit;

/**
 * How long the work lay still, and from that where it is taken up again. People think they are further on than they are, so a long break goes
 * back three steps or to the last hold point. What is asked again are readings: a powered stretch that was finished, and a joint that was made,
 * are events and stay.
 */
enum Break {
    /** Under ten minutes with the program open: the same step, once the rail is proven dead. */
    SHORT,
    /** Longer, or the program was closed. */
    LONG,
    /** A new day, a moved board, a crash with the board on, a clock set back, entries lost. A file from elsewhere brings no answers at all. */
    NEW_DAY;

    /** Longest short break, seconds. */
    static final long TEN_MINUTES = 600;

    /** From here on a break counts as a new day, seconds: six hours, this program's choice. */
    static final long SIX_HOURS = 6 * 3600;

    /** How many steps a long break goes back, at least. */
    private static final int BACK = 3;

    /**
     * @param gapSeconds less than zero where nobody knows
     * @param closed the program was closed in between
     * @param cutOff the record ends with the board on
     */
    static Break of(long gapSeconds, boolean closed, boolean cutOff) {
        if (gapSeconds < 0 || gapSeconds >= SIX_HOURS || closed && cutOff) {
            return NEW_DAY;
        }
        return closed || gapSeconds > TEN_MINUTES ? LONG : SHORT;
    }

    Break or(Break other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * Whether an answer given again after a break says what it said before: readings within 3 % (volts 1.5 %), which is what two readings by one
     * person differ by (common practice, no source), two dead rails, or the same choice.
     */
    static boolean same(Fact before, Fact now) {
        if (before instanceof Fact.Reading one && now instanceof Fact.Reading two) {
            double part = two.unit() == Unit.VOLT ? 0.015 : 0.03;
            boolean dead = RailFields.isDead(two.field()) && Math.abs(two.value()) <= Ranges.DEAD;
            return dead || Math.abs(two.value() - one.value()) <= part * Math.abs(one.value());
        }
        return before.equals(now);
    }

    /**
     * What a break asks for, given where the work stood.
     *
     * @param at the step the work stood at
     * @param again unpowered steps whose readings are taken again after a long break; what rests on them stays good while they come out the same
     * @param day the same after a new day
     * @param over powered steps that were cut off and have to be begun again from switching on, whatever the length of the break
     * @param dwellSeen seconds of the step's wait that are on record
     */
    record Reentry(String at, Set<String> again, Set<String> day, Set<String> over, long dwellSeen) {
        Set<String> after(Break gap) {
            return switch (gap) {
                case SHORT -> Set.of();
                case LONG -> again;
                case NEW_DAY -> day;
            };
        }
    }

    /**
     * @param current index of the step the work stood at
     * @param needed whether a step was needed, by index
     * @param begun whether a step has answers that count, by index
     */
    static Reentry reentry(List<Step> steps, int current, IntPredicate needed, IntPredicate begun, long dwellSeen) {
        int bound = bound(steps, current, needed, begun);
        int three = threeBack(current, needed);
        int hold = last(current, needed, step -> steps.get(step).hold());
        int coldHold = last(
                current,
                needed,
                step -> steps.get(step).hold() && steps.get(step).power() == PowerNeed.OFF);
        return new Reentry(
                steps.get(current).id(),
                unpowered(steps, Math.max(bound, unpoweredFrom(steps, Math.min(three, hold))), current),
                unpowered(steps, Math.max(bound, unpoweredFrom(steps, Math.min(three, coldHold))), current),
                cutOff(steps, current, begun),
                dwellSeen);
    }

    private static int threeBack(int current, IntPredicate needed) {
        int at = current;
        for (int back = 0; back < BACK && at > 0; ) {
            at--;
            back += needed.test(at) ? 1 : 0;
        }
        return at;
    }

    private static int last(int from, IntPredicate needed, IntPredicate wanted) {
        for (int i = from; i >= 0; i--) {
            if (needed.test(i) && wanted.test(i)) {
                return i;
            }
        }
        return 0;
    }

    private static int unpoweredFrom(List<Step> steps, int from) {
        int at = from;
        while (at > 0 && steps.get(at).power() != PowerNeed.OFF) {
            at--;
        }
        return at;
    }

    /** Behind this lies what cannot be read again without undoing work: before a finished powered stretch, or before a joint. */
    private static int bound(List<Step> steps, int current, IntPredicate needed, IntPredicate begun) {
        for (int i = current; i > 0; i--) {
            boolean joint =
                    steps.get(i).id().equals("solder") || steps.get(i).id().equals("fit");
            if (joint && begun.test(i)) {
                return i;
            }
            if (steps.get(i).power() == PowerNeed.TO_OFF && needed.test(i)) {
                return Math.min(i + 1, current);
            }
        }
        return 0;
    }

    private static Set<String> unpowered(List<Step> steps, int from, int to) {
        Set<String> ids = new HashSet<>();
        for (int i = from; i <= to; i++) {
            if (steps.get(i).power() == PowerNeed.OFF) {
                ids.add(steps.get(i).id());
            }
        }
        return ids;
    }

    private static Set<String> cutOff(List<Step> steps, int current, IntPredicate begun) {
        Step at = steps.get(current);
        if (at.power() == PowerNeed.OFF) {
            return Set.of();
        }
        if (at.power() == PowerNeed.TO_OFF) {
            return Set.of(at.id());
        }
        return stretch(steps, current, begun.test(current));
    }

    /**
     * The powered stretch that leads up to a step, from switching on, with the proof that has to come right before switching on.
     *
     * @param wasOn whether the board was on in the step itself
     */
    static Set<String> stretch(List<Step> steps, int current, boolean wasOn) {
        Set<String> ids = new HashSet<>();
        int on = current;
        while (on > 0 && steps.get(on).power() != PowerNeed.TO_ON) {
            ids.add(steps.get(on).id());
            on--;
        }
        ids.add(steps.get(on).id());
        if (on > 0 && (wasOn || on < current) && proofBeforePower(steps.get(on - 1))) {
            ids.add(steps.get(on - 1).id());
        }
        return ids;
    }

    /** The trimmer back at its maximum, or the board cold: the board being on undoes either. */
    private static boolean proofBeforePower(Step step) {
        return step.id().endsWith(".back") || step.id().equals("cool");
    }
}
