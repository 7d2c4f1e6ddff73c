package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Power;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/**
 * One look at the steps in order. It goes as far as the first step that is not done, and as far as there are facts: a step beyond both can stop
 * nothing and tells nothing but what it will ask, which is worked out when somebody wants to see it.
 */
final class Pass {
    private final Standing at;
    private final Route route;
    private final List<Entry> entries;
    private final Recall recall;
    private final Figures figures;
    private final long[] freshest;
    private final List<Look> looks;
    private final long lastMove;
    private int firstOpen = -1;

    /** @param whole to look at every step */
    Pass(Standing at, Recall recall, boolean whole) {
        this.at = at;
        this.route = at.route;
        this.entries = at.entries;
        this.recall = recall;
        this.figures = new Figures(at.job, at.families, recall);
        this.freshest = new long[route.size()];
        this.looks = new ArrayList<>(route.size());
        this.lastMove = Descent.lastMove(entries);
        figures.power(at.power());
        boolean asBefore = true;
        int last = lastWithFacts();
        for (int i = 0; i < route.size(); i++) {
            if (!whole && firstOpen >= 0 && i > last) {
                break;
            }
            asBefore = lookAt(i, asBefore);
        }
        if (!asBefore) {
            recall.forgetLooks(looks.size());
        }
    }

    private int lastWithFacts() {
        int last = route.size() - 1;
        while (last >= 0 && at.facts(last).isEmpty()) {
            last--;
        }
        return last;
    }

    /** @param asBefore whether all steps before it say what they said the last time; the answer is whether this one does, too */
    private boolean lookAt(int i, boolean asBefore) {
        Step step = route.step(i);
        long base = base(i);
        Look.Basis basis = basis(i, base);
        Look.Kept before = recall.look(i);
        boolean same = before != null;
        if (asBefore && before != null && before.basis().sameAs(basis)) {
            figures.take(before.look().counting());
            freshest[i] = before.freshest();
            looks.add(before.look());
        } else {
            looks.add(look(i, step, base));
            Look.Kept now = new Look.Kept(basis, looks.get(i), freshest[i]);
            same = before != null && before.saysAs(now);
            recall.keep(i, now);
        }
        firstOpen = firstOpen < 0 && !looks.get(i).done() && !offAlready(i) ? i : firstOpen;
        return asBefore && same;
    }

    private long base(int i) {
        return Math.max(at.reopened(i), Math.max(rested(i), loop(route.step(i))));
    }

    private Look.Basis basis(int i, long base) {
        boolean early = route.step(i).phase().compareTo(Phase.STEP_DOWN) < 0;
        return new Look.Basis(
                at.facts(i),
                at.reopened(i),
                base,
                at.expired(i),
                at.again(i),
                at.dwellSeen(i),
                firstOpen >= 0,
                early ? 0 : lastMove,
                early ? Power.UNKNOWN : at.power());
    }

    private Look look(int i, Step step, long base) {
        List<Entry> all = at.facts(i);
        List<Entry> counting = new ArrayList<>();
        for (Entry entry : all) {
            if (counts(i, step, entry, base)) {
                counting.add(entry);
            }
        }
        figures.take(counting);
        freshest[i] = freshest(i, counting, base);
        if (!step.needed().test(figures)) {
            return Look.notNeeded(step, counting);
        }
        boolean skipped = step.skippable() && anyLeavesOut(all, base);
        List<String> open = skipped ? List.of() : open(step, all, at.reopened(i));
        List<String> missing = skipped ? List.of() : missing(i, step, counting);
        List<Finding> findings = counting.isEmpty() ? new ArrayList<>() : outside(step, counting);
        findings.addAll(
                counting.isEmpty() && current() >= 0 ? List.of() : step.checks().apply(figures));
        boolean before = anyAnswer(all);
        if (before && !skipped && nothingAsked(step)) {
            // Answered once, and now not even the question is known: it will come when what it rests on is
            // answered.
            missing = List.of(step.fields().get(0).id());
        }
        Look look = Look.of(step, skipped, before, open, missing, findings, counting);
        if (!look.done()) {
            findings.addAll(0, wait(i, step, all));
        }
        return look;
    }

    private boolean nothingAsked(Step step) {
        for (Field field : step.fields()) {
            if (field.asked().test(figures)) {
                return false;
            }
        }
        return !step.fields().isEmpty();
    }

    private static boolean anyAnswer(List<Entry> all) {
        for (Entry entry : all) {
            if (Figures.answered(entry.fact()) != null) {
                return true;
            }
        }
        return false;
    }

    private boolean anyLeavesOut(List<Entry> all, long base) {
        for (Entry entry : all) {
            if (leftOut(entry, base)) {
                return true;
            }
        }
        return false;
    }

    /** A file can say that any step was left out, and for no reason; the procedure knows better. */
    private boolean leftOut(Entry entry, long base) {
        return entry.sequence() > base && entry.fact() instanceof Fact.Skipped skip && Course.isReason(skip.reason());
    }

    /** Newer than all it rests on, not a state of the board that has passed since, and not said before the wait was over. */
    private boolean counts(int i, Step step, Entry entry, long base) {
        String field = Figures.answered(entry.fact());
        if (field == null || entry.sequence() <= base) {
            return false;
        }
        boolean passed = entry.sequence() <= at.expired(i);
        return !(passed && !Lasting.is(step.id(), field))
                && (step.dwellSeconds() == 0 || Dwell.kept(entries, place(entry), step));
    }

    /** Index of one of the job's entries; without gaps its sequence number tells it. */
    private int place(Entry entry) {
        int place = (int) entry.sequence() - 1;
        boolean here = place >= 0 && place < entries.size() && entries.get(place) == entry;
        return here ? place : entries.indexOf(entry);
    }

    /** A reading taken again after a break that came out as before leaves what rests on it as it is. */
    private long freshest(int i, List<Entry> counting, long base) {
        long since = at.again(i) > 0 ? at.again(i) : Long.MAX_VALUE;
        long freshest = base;
        Map<String, Entry> before = new HashMap<>();
        for (Entry entry : counting) {
            if (since < Long.MAX_VALUE) {
                Entry earlier = before.put(Figures.answered(entry.fact()), entry);
                if (entry.sequence() > since && earlier != null && Break.same(earlier.fact(), entry.fact())) {
                    continue;
                }
            }
            freshest = Math.max(freshest, entry.sequence());
        }
        return freshest;
    }

    private long rested(int i) {
        long newest = 0;
        for (int earlier : route.restsOn(i)) {
            newest = Math.max(newest, freshest[earlier]);
        }
        return newest;
    }

    private long loop(Step step) {
        return switch (step.id()) {
            case "down.back", "down.on", "down.load" -> at.lastOff();
            case "down.set", "down.watch" -> figures.descent().roundBase();
            case "down.off", "fault.note", "fault.next" -> figures.descent().terminal();
            case "budget" -> figures.descent().lateFault();
            default -> 0;
        };
    }

    private List<String> open(Step step, List<Entry> all, long reopening) {
        if (step.cautions().isEmpty()) {
            return List.of();
        }
        List<String> open = new ArrayList<>(step.cautions());
        for (Entry entry : all) {
            if (entry.sequence() > reopening && entry.fact() instanceof Fact.Acknowledged acknowledged) {
                open.remove(acknowledged.caution());
            }
        }
        return open;
    }

    private List<String> missing(int i, Step step, List<Entry> counting) {
        long since = at.again(i);
        Set<String> answered = new HashSet<>();
        for (Entry entry : counting) {
            String field = Figures.answered(entry.fact());
            if (entry.sequence() > since || Lasting.is(step.id(), field)) {
                answered.add(field);
            }
        }
        List<String> missing = new ArrayList<>();
        for (Field field : step.fields()) {
            boolean wanted = !(field instanceof Field.Text text) || text.required();
            if (wanted && !answered.contains(field.id()) && field.asked().test(figures)) {
                missing.add(field.id());
            }
        }
        return missing;
    }

    /** What was and what was not seen of a wait that was broken off, and an answer that came too soon. */
    private List<Finding> wait(int i, Step step, List<Entry> all) {
        if (step.dwellSeconds() == 0) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Optional<Entry> early = all.stream()
                .filter(entry -> !Dwell.kept(entries, place(entry), step))
                .reduce((one, other) -> other);
        if (early.isPresent()) {
            findings.add(Findings.warns(
                    "dwell.too-soon",
                    Display.of(Dwell.passed(entries, place(early.get()), step.id()), Unit.SECOND),
                    Display.of(step.dwellSeconds(), Unit.SECOND)));
        } else if (at.dwellSeen(i) >= 0) {
            findings.add(Findings.says(
                    "dwell.broken-off",
                    Display.of(Math.min(step.dwellSeconds(), at.dwellSeen(i)), Unit.SECOND),
                    Display.of(step.dwellSeconds(), Unit.SECOND)));
        }
        return findings;
    }

    private List<Finding> outside(Step step, List<Entry> counting) {
        List<Finding> findings = new ArrayList<>();
        for (Field field : step.fields()) {
            if (field instanceof Field.Number number) {
                Entry entry = figures.latest(number.id());
                if (entry != null && counting.contains(entry) && number.asked().test(figures)) {
                    Judge.outside(figures, number, ((Fact.Reading) entry.fact()).value())
                            .ifPresent(findings::add);
                }
            }
        }
        return findings;
    }

    /** Index of the first step looked at that is not done, −1 when all are. */
    int current() {
        return firstOpen;
    }

    /** A step that only switches off is spared where the rail was proven dead after the powered steps before it, as by making safe; not one gone back to. */
    private boolean offAlready(int index) {
        Look look = looks.get(index);
        if (look.step().power() != PowerNeed.TO_OFF || !look.counting().isEmpty()) {
            return false;
        }
        long lastWork = at.reopened(index);
        for (int i = index - 1; i >= 0 && looks.get(i).step().power().endsOn(); i--) {
            for (Entry entry : looks.get(i).counting()) {
                lastWork = Math.max(lastWork, entry.sequence());
            }
        }
        return at.lastOff() > lastWork;
    }

    Look look(int i) {
        return looks.get(i);
    }

    /** The state with {@code current} as the step at work, −1 for none. */
    State state(int current) {
        Optional<Card> shown = shownCard(current);
        StepState now = asked(current < 0 ? looks.size() - 1 : current);
        State.Way way = new State.Way(() -> way(now));
        return new State(at.job, figures, way, now, shown, at.power(), current < 0 && shown.isEmpty());
    }

    private StepState asked(int i) {
        return looks.get(i).as(status(i, firstOpen));
    }

    /** Every step; {@code now} as it is. */
    private List<StepState> way(StepState now) {
        Pass whole = looks.size() == route.size() ? this : at.whole();
        List<StepState> states = new ArrayList<>();
        for (int i = 0; i < route.size(); i++) {
            StepState state = whole.asked(i);
            states.add(state.step() == now.step() ? now : state);
        }
        return List.copyOf(states);
    }

    private Status status(int index, int current) {
        Look look = looks.get(index);
        if (index == current) {
            return Status.CURRENT;
        }
        if (!look.needed()) {
            return Status.NOT_NEEDED;
        }
        if (look.skipped()) {
            return Status.SKIPPED;
        }
        if (look.done()) {
            return Status.DONE;
        }
        if (offAlready(index) && (current < 0 || index < current)) {
            return Status.NOT_NEEDED;
        }
        return look.before() ? Status.STALE : Status.LOCKED;
    }

    private Optional<Card> shownCard(int current) {
        Optional<Card> first = at.card();
        if (first.isPresent()) {
            return first;
        }
        if ((at.power() == Power.ON || at.live()) && (current < 0 || wantsOff(looks.get(current)))) {
            return Optional.of(new Card.MakeSafe(Message.of("alarm.needs-off")));
        }
        for (Look look : looks) {
            for (Finding finding : look.findings()) {
                if (finding.kind() == Finding.Kind.STOPS) {
                    String backTo = finding.backTo().isEmpty() ? look.step().id() : finding.backTo();
                    return Optional.of(new Card.Stop(finding.message(), backTo));
                }
            }
        }
        return Optional.empty();
    }

    private boolean wantsOff(Look look) {
        return look.step().power() == PowerNeed.OFF
                || look.step().power() == PowerNeed.TO_ON && look.counting().isEmpty();
    }
}
