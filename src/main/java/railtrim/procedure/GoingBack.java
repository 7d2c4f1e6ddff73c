package railtrim.procedure;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.State.Power;

/**
 * Which steps are opened anew with the one a person goes back to. What is read with the board on is never read again by itself: the board has been in
 * their hands since, so the proof with the power off that comes before switching on is made again as well.
 */
final class GoingBack {
    /** From such an answer on the board may be wired otherwise than it was last proven. */
    private static final Set<String> IRON =
            Set.of("solder.dead", "solder.pair", "setting.trimmer", "fit.dead", "fit.pair", "fit.left");

    /** Where work starts again after something went wrong with the board on: the last proof with the power off. */
    static final Map<Phase, String> REWORK = Map.of(
            Phase.IDENTIFY, "clip",
            Phase.BASELINE, "legs",
            Phase.FIRST_POWER, "proof",
            Phase.STEP_DOWN, "proof",
            Phase.FAULT, "proof",
            Phase.BACK_OFF, "proof",
            Phase.RESISTOR, "setting",
            Phase.FIT, "fit");

    private GoingBack() {}

    /**
     * @param index of the entry that opens a step anew
     * @param power as it was believed to be before that
     * @return ids of the steps it opens, among them its own
     */
    static Set<String> opens(Route route, List<Entry> entries, int index, Power power) {
        String id = entries.get(index).fact().step();
        Set<String> opened = new HashSet<>(Set.of(id));
        int place = route.place(id);
        int on = place < 0 ? -1 : switchingOn(route, place);
        if (on < 0) {
            return opened;
        }
        Step switching = route.step(on);
        int ours = lastSwitchedOn(entries, index, change -> change.step().equals(switching.id()));
        boolean oursIsLast = ours >= 0 && ours == lastSwitchedOn(entries, index, change -> true);
        if (oursIsLast && power == Power.ON && place > on) {
            return opened;
        }
        if (ironSince(entries, ours, index)) {
            opened.add(REWORK.get(switching.phase()));
        } else {
            opened.addAll(proofs(route, on));
        }
        return opened;
    }

    /** Place of the step that switches on for this one; −1 where it needs no power. Waiting till the board is cold proves nothing by itself. */
    private static int switchingOn(Route route, int place) {
        Step step = route.step(place);
        if (step.id().equals("cool")) {
            return route.place("cold");
        }
        if (step.power() != PowerNeed.ON && step.power() != PowerNeed.TO_ON) {
            return -1;
        }
        int on = place;
        while (on > 0 && route.step(on).power() != PowerNeed.TO_ON) {
            on--;
        }
        return on;
    }

    /** The steps with the power off that switching on rests on. */
    private static Set<String> proofs(Route route, int on) {
        Set<String> proofs = new HashSet<>();
        for (int earlier : route.restsOn(on)) {
            if (route.step(earlier).power() == PowerNeed.OFF) {
                proofs.add(route.step(earlier).id());
            }
        }
        return proofs;
    }

    /** Index of the last switching on of which this holds; −1 for none. */
    private static int lastSwitchedOn(List<Entry> entries, int before, Predicate<Fact.Power> which) {
        for (int i = before - 1; i >= 0; i--) {
            if (entries.get(i).fact() instanceof Fact.Power change && change.on() && which.test(change)) {
                return i;
            }
        }
        return -1;
    }

    private static boolean ironSince(List<Entry> entries, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            String field = Figures.answered(entries.get(i).fact());
            if (field != null && IRON.contains(field)) {
                return true;
            }
        }
        return false;
    }
}
