package railtrim.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.Power;
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/**
 * Works out where a job stands. A fact of a step counts while it is newer than everything the step rests on: a reopening, a newer reading
 * in a step it rests on, a new round of the way down, a power cycle in the middle of a powered stretch, a break in the work. What does not
 * count any more makes the step stale by itself.
 */
final class Standing {
    private static final Set<String> REASONS = Set.of("pressed", "smoke", "fault", "outside", Withdrawals.REASON);

    private final List<Step> steps;
    private final RegulatorFamilies families;
    private final Recall recall;
    private final Job job;
    private final List<Entry> entries;
    private final Map<Long, Break.Reentry> reentries;
    private final Map<String, List<Entry>> byStep;
    private final Map<String, Long> reopened = new HashMap<>();
    private final Map<String, Long> expired = new HashMap<>();
    private final Map<String, Long> again = new HashMap<>();
    private final Map<String, Long> dwellSeen = new HashMap<>();
    private Power power = Power.OFF;
    private long lastOff;
    private Optional<Card.MakeSafe> makingSafe = Optional.empty();
    private Optional<Pending> pending = Optional.empty();

    private Standing(
            List<Step> steps, RegulatorFamilies families, Recall recall, Job job, Map<Long, Break.Reentry> reentries) {
        this.steps = steps;
        this.families = families;
        this.recall = recall;
        this.job = job;
        this.entries = job.entries();
        this.reentries = reentries;
        this.byStep = byStep(entries);
        readEvents();
    }

    private static Map<String, List<Entry>> byStep(List<Entry> entries) {
        Map<String, List<Entry>> byStep = new HashMap<>();
        for (Entry entry : entries) {
            byStep.computeIfAbsent(entry.fact().step(), step -> new ArrayList<>())
                    .add(entry);
        }
        return byStep;
    }

    static State of(List<Step> steps, RegulatorFamilies families, Recall recall, Job job) {
        Map<Long, Break.Reentry> reentries = new HashMap<>();
        for (int i = 0; i < job.entries().size(); i++) {
            if (job.entries().get(i).fact() instanceof Fact.Resumed) {
                long sequence = job.entries().get(i).sequence();
                Job before = new Job(job.name(), job.entries().subList(0, i));
                recall.once(
                                List.of("reentry", before.entries()),
                                () -> new Standing(steps, families, recall, before, reentries).reentry())
                        .ifPresent(reentry -> reentries.put(sequence, reentry));
            }
        }
        return new Standing(steps, families, recall, job, reentries).state();
    }

    // ---- events
    // --------------------------------------------------------------------------------------------------------

    private void readEvents() {
        String note = "";
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            Fact fact = entry.fact();
            if (fact instanceof Fact.Power change) {
                power = change.on() ? Power.ON : Power.OFF;
                lastOff = change.on() ? lastOff : entry.sequence();
            } else if (fact instanceof Fact.Reopened reopening) {
                reopened.put(reopening.step(), entry.sequence());
            } else if (fact instanceof Fact.Alarm alarm) {
                alarm(alarm, i);
            } else if (fact instanceof Fact.Paused paused) {
                note = paused.note();
            } else if (fact instanceof Fact.Resumed resumed) {
                resumed(resumed, i, note);
            } else if (fact instanceof Fact.Reading reading && reading.field().equals("safe.rail") && dead(reading)) {
                provenOff(entry.sequence());
                makingSafe = Optional.empty();
                pending.ifPresent(Pending::railDead);
            } else if (fact.step().equals("resume")) {
                welcome(entry);
            }
            if (pending.filter(Pending::over).isPresent()) {
                pending = Optional.empty();
            }
        }
    }

    /** Taken up again. What was cut off is over; how much is read again depends on how long the break was, and on what the person then says. */
    private void resumed(Fact.Resumed resumed, int index, String note) {
        Entry entry = entries.get(index);
        Break.Reentry reentry = reentries.get(entry.sequence());
        if (reentry == null) {
            return;
        }
        boolean closed = index > 0 && entries.get(index - 1).session() != entry.session();
        Break gap = Break.of(resumed.gapSeconds(), closed, power == Power.ON)
                .or(pending.map(open -> open.gap).orElse(Break.SHORT));
        reentry.over().forEach(step -> expired.put(step, entry.sequence()));
        reentry.after(gap).forEach(step -> again.put(step, entry.sequence()));
        dwellSeen.put(reentry.at(), reentry.dwellSeen());
        if (!touched(index)) {
            return;
        }
        power = Power.UNKNOWN;
        pending = Optional.of(new Pending(gap, resumed.gapSeconds(), note, reentry, known()));
    }

    /** Whether the board was worked on yet: no probe was on it before its rail was first proven dead, and no power comes before that. */
    private boolean touched(int before) {
        return entries.subList(0, before).stream()
                .anyMatch(entry -> entry.fact() instanceof Fact.Power
                        || entry.fact() instanceof Fact.Reading reading && RailFields.isRail(reading.field()));
    }

    /** Which of the facts that tell one board from another are on record. */
    private Set<String> known() {
        return Set.of("reg.marking", "leg.ohms").stream()
                .filter(field -> entries.stream()
                        .anyMatch(entry -> Figures.fieldOf(entry.fact())
                                .filter(field::equals)
                                .isPresent()))
                .collect(Collectors.toSet());
    }

    /** An answer on the card after a break. */
    private void welcome(Entry entry) {
        if (pending.isEmpty()) {
            return;
        }
        Pending open = pending.get();
        if (entry.fact() instanceof Fact.Reading reading) {
            switch (reading.field()) {
                case "resume.rail" -> {
                    if (dead(reading)) {
                        provenOff(entry.sequence());
                        open.railDead();
                    }
                }
                case "resume.zero" -> open.answered("resume.zero", reading.value() <= 1);
                case "resume.total" -> open.answered("resume.total", true);
                default -> {}
            }
        } else if (entry.fact() instanceof Fact.Choice choice && choice.field().equals("resume.where")) {
            open.answered("resume.where", true);
            if (!choice.option().equals("as-left")) {
                open.gap = Break.NEW_DAY;
                open.reentry.day().forEach(step -> again.merge(step, entry.sequence(), Math::max));
            }
        } else if (entry.fact() instanceof Fact.Note) {
            open.answered("resume.marking", true);
        }
    }

    private void provenOff(long sequence) {
        power = Power.OFF;
        lastOff = sequence;
    }

    private static boolean dead(Fact.Reading reading) {
        return Math.abs(reading.value()) <= Ranges.DEAD;
    }

    /** Smoke, or a reading that does not fit the circuit, sends the work back to the last proof with the power off. */
    private void alarm(Fact.Alarm alarm, int index) {
        long sequence = entries.get(index).sequence();
        makingSafe = Optional.of(new Card.MakeSafe(Message.of("alarm." + known(alarm.reason()))));
        Step at = steps.stream()
                .filter(step -> step.id().equals(alarm.step()))
                .findFirst()
                .orElse(null);
        // What was said of the power is taken back: the careful belief is that it is on.
        power = alarm.reason().equals(Withdrawals.REASON) ? Power.ON : power;
        if (at == null) {
            return;
        }
        if (at.dwellSeconds() > 0) {
            dwellSeen.put(at.id(), Dwell.passed(entries, index, at.id()));
        }
        boolean powered = at.power() == PowerNeed.ON || at.power() == PowerNeed.TO_ON;
        if (powered && !alarm.reason().equals("fault")) {
            expired.merge(at.id(), sequence, Math::max);
            if (at.power() == PowerNeed.TO_ON) {
                Break.stretch(steps, steps.indexOf(at), true).forEach(step -> expired.merge(step, sequence, Math::max));
            }
        }
        boolean wiring = alarm.reason().equals("smoke") || alarm.reason().equals("outside") && doubtsWiring(at);
        if (wiring && Checks.REWORK.containsKey(at.phase())) {
            reopened.merge(Checks.REWORK.get(at.phase()), sequence, Math::max);
        }
        if (alarm.reason().equals("fault") && at.id().equals("fit.soak")) {
            reopened.merge("solder", sequence, Math::max);
        }
    }

    /** A reason that only a file made by hand can hold has no words; the board is to be made safe all the same. */
    private static String known(String reason) {
        return REASONS.contains(reason) ? reason : "pressed";
    }

    private static boolean doubtsWiring(Step step) {
        return step.power() == PowerNeed.TO_ON || step.phase() == Phase.FIRST_POWER || step.phase() == Phase.FIT;
    }

    // ---- state
    // ---------------------------------------------------------------------------------------------------------

    private State state() {
        Pass pass = settled();
        return pass.state(pass.current());
    }

    /** Where the work stands for one who takes it up after this. Empty where it is finished: nothing is taken up. */
    private Optional<Break.Reentry> reentry() {
        Pass pass = settled();
        int current = pass.current();
        if (current < 0) {
            return Optional.empty();
        }
        Step at = steps.get(current);
        long seen = 0;
        if (at.dwellSeconds() > 0 && !entries.isEmpty()) {
            Entry last = entries.get(entries.size() - 1);
            seen = Math.max(0, last.tick() - Dwell.began(entries, entries.size(), at.id(), last.session())) / 1000;
        }
        // On the way down, switching on again brings the proof before it with it.
        boolean down = at.phase() == Phase.STEP_DOWN && at.power() == PowerNeed.ON;
        return Optional.of(Break.reentry(
                steps,
                current,
                i -> pass.looks.get(i).needed()
                        || down && i < current && steps.get(i).phase() == Phase.STEP_DOWN,
                i -> !pass.looks.get(i).counting().isEmpty(),
                seen));
    }

    private Pass settled() {
        Pass pass = new Pass();
        int current = pass.current();
        if (current >= 0 && power != Power.ON && wasOn(pass.looks.get(current))) {
            powerUpAgain(current);
            pass = new Pass();
        }
        return pass;
    }

    /** A step for which the board had been switched on. */
    private static boolean wasOn(Look look) {
        return look.step().power() == PowerNeed.ON
                || look.step().power() == PowerNeed.TO_ON && !look.counting().isEmpty();
    }

    /** A powered step with the board off: switching on comes again, and with it every voltage of that stretch. */
    private void powerUpAgain(int current) {
        Break.stretch(steps, current, true).forEach(step -> expired.merge(step, lastOff, Math::max));
    }

    /** One look at all steps in order. */
    private final class Pass {
        private final Figures figures = new Figures(job, families, recall);
        private final Map<String, Long> freshest = new HashMap<>();
        private final List<Look> looks = new ArrayList<>();

        private final long lastMove = Descent.lastMove(entries);
        private int firstOpen = -1;

        Pass() {
            figures.power(power);
            boolean asBefore = true;
            for (int i = 0; i < steps.size(); i++) {
                Step step = steps.get(i);
                long base = base(step);
                Basis basis = basis(step, base);
                Optional<Kept> kept = asBefore ? recall.look(step.id(), basis) : Optional.empty();
                if (kept.isPresent()) {
                    looks.add(again(kept.get()));
                } else {
                    looks.add(look(step, base));
                    Kept now = new Kept(basis, looks.get(i), freshest.get(step.id()));
                    asBefore = asBefore && recall.saysTheSame(step.id(), now);
                    recall.keep(step.id(), now);
                }
                firstOpen = firstOpen < 0 && !looks.get(i).done() && !offAlready(i) ? i : firstOpen;
            }
        }

        private long base(Step step) {
            return Math.max(reopened.getOrDefault(step.id(), 0L), Math.max(rested(step), loop(step)));
        }

        private Basis basis(Step step, long base) {
            boolean early = step.phase().compareTo(Phase.STEP_DOWN) < 0;
            return new Basis(
                    byStep.getOrDefault(step.id(), List.of()),
                    reopened.getOrDefault(step.id(), 0L),
                    base,
                    expired.getOrDefault(step.id(), 0L),
                    again.getOrDefault(step.id(), 0L),
                    dwellSeen.getOrDefault(step.id(), -1L),
                    firstOpen >= 0,
                    early ? 0 : lastMove,
                    early ? Power.UNKNOWN : power);
        }

        /** Nothing changed up to here, so this step looks as it did. */
        private Look again(Kept kept) {
            figures.take(kept.look().counting());
            freshest.put(kept.look().step().id(), kept.freshest());
            return kept.look();
        }

        private Look look(Step step, long base) {
            List<Entry> all = byStep.getOrDefault(step.id(), List.of());
            long reopening = reopened.getOrDefault(step.id(), 0L);
            List<Entry> counting = new ArrayList<>();
            for (Entry entry : all) {
                if (counts(step, entry, base)) {
                    counting.add(entry);
                }
            }
            figures.take(counting);
            freshest.put(step.id(), freshest(step, counting, base));
            boolean needed = step.needed().test(figures);
            if (!needed) {
                return new Look(step, false, false, false, List.of(), List.of(), List.of(), counting);
            }
            boolean skipped = step.skippable() && all.stream().anyMatch(entry -> leftOut(entry, base));
            List<String> open = skipped ? List.of() : open(step, all, reopening);
            List<String> missing = skipped ? List.of() : missing(step, counting);
            List<Finding> findings = counting.isEmpty() ? new ArrayList<>() : outside(step, counting);
            findings.addAll(
                    counting.isEmpty() && current() >= 0
                            ? List.of()
                            : step.checks().apply(figures));
            boolean before = false;
            for (Entry entry : all) {
                before |= Figures.fieldOf(entry.fact()).isPresent();
            }
            if (before
                    && !skipped
                    && step.fields().stream().noneMatch(field -> field.asked().test(figures))) {
                // Answered once, and now not even the question is known: it will come when what it rests on is
                // answered.
                missing = step.fields().stream().map(Field::id).limit(1).toList();
            }
            Look look = new Look(step, true, skipped, before, open, missing, findings, counting);
            if (!look.done()) {
                findings.addAll(0, wait(step, all));
            }
            return look;
        }

        /** A file can say that any step was left out, and for no reason; the procedure knows better. */
        private boolean leftOut(Entry entry, long base) {
            return entry.sequence() > base
                    && entry.fact() instanceof Fact.Skipped skip
                    && Course.isReason(skip.reason());
        }

        /** Newer than all it rests on, not a state of the board that has passed since, and not said before the wait was over. */
        private boolean counts(Step step, Entry entry, long base) {
            Optional<String> field = Figures.fieldOf(entry.fact());
            if (field.isEmpty() || entry.sequence() <= base) {
                return false;
            }
            boolean passed = entry.sequence() <= expired.getOrDefault(step.id(), 0L);
            return !(passed && !Lasting.is(step.id(), field.get()))
                    && (step.dwellSeconds() == 0 || Dwell.kept(entries, place(entry), step));
        }

        /** Index of one of the job's entries; without gaps its sequence number tells it. */
        private int place(Entry entry) {
            int place = (int) entry.sequence() - 1;
            boolean here = place >= 0 && place < entries.size() && entries.get(place) == entry;
            return here ? place : entries.indexOf(entry);
        }

        /** A reading taken again after a break that came out as before leaves what rests on it as it is. */
        private long freshest(Step step, List<Entry> counting, long base) {
            long since = again.getOrDefault(step.id(), Long.MAX_VALUE);
            long freshest = base;
            Map<String, Entry> before = new HashMap<>();
            for (Entry entry : counting) {
                Optional<Entry> earlier = Optional.ofNullable(
                        before.put(Figures.fieldOf(entry.fact()).orElseThrow(), entry));
                boolean asBefore = entry.sequence() > since
                        && earlier.filter(one -> Break.same(one.fact(), entry.fact()))
                                .isPresent();
                freshest = asBefore ? freshest : Math.max(freshest, entry.sequence());
            }
            return freshest;
        }

        private long rested(Step step) {
            long newest = 0;
            for (String id : step.restsOn()) {
                newest = Math.max(newest, freshest.getOrDefault(id, 0L));
            }
            return newest;
        }

        private long loop(Step step) {
            return switch (step.id()) {
                case "down.back", "down.on", "down.load" -> lastOff;
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

        private List<String> missing(Step step, List<Entry> counting) {
            long since = again.getOrDefault(step.id(), 0L);
            Set<String> answered = new HashSet<>();
            for (Entry entry : counting) {
                Figures.fieldOf(entry.fact())
                        .filter(field -> entry.sequence() > since || Lasting.is(step.id(), field))
                        .ifPresent(answered::add);
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
        private List<Finding> wait(Step step, List<Entry> all) {
            if (step.dwellSeconds() == 0) {
                return List.of();
            }
            List<Finding> findings = new ArrayList<>();
            Optional<Entry> early = all.stream()
                    .filter(entry -> !Dwell.kept(entries, place(entry), step))
                    .reduce((one, other) -> other);
            if (early.isPresent()) {
                findings.add(Checks.warns(
                        "dwell.too-soon",
                        Display.of(Dwell.passed(entries, place(early.get()), step.id()), Unit.SECOND),
                        Display.of(step.dwellSeconds(), Unit.SECOND)));
            } else if (dwellSeen.containsKey(step.id())) {
                findings.add(Checks.says(
                        "dwell.broken-off",
                        Display.of(Math.min(step.dwellSeconds(), dwellSeen.get(step.id())), Unit.SECOND),
                        Display.of(step.dwellSeconds(), Unit.SECOND)));
            }
            return findings;
        }

        private List<Finding> outside(Step step, List<Entry> counting) {
            List<Finding> findings = new ArrayList<>();
            for (Field field : step.fields()) {
                if (field instanceof Field.Number number) {
                    figures.entry(number.id())
                            .filter(counting::contains)
                            .filter(entry -> number.asked().test(figures))
                            .flatMap(entry -> Judge.outside(figures, number, ((Fact.Reading) entry.fact()).value()))
                            .ifPresent(findings::add);
                }
            }
            return findings;
        }

        /** Index of the first step looked at that is not done, −1 when all are. */
        int current() {
            return firstOpen;
        }

        /** A step that only switches off is spared where the rail was proven dead after the powered steps before it, as by making safe. */
        private boolean offAlready(int index) {
            Look look = looks.get(index);
            if (look.step().power() != PowerNeed.TO_OFF || !look.counting().isEmpty()) {
                return false;
            }
            long lastWork = 0;
            for (int i = index - 1; i >= 0 && looks.get(i).step().power().endsOn(); i--) {
                for (Entry entry : looks.get(i).counting()) {
                    lastWork = Math.max(lastWork, entry.sequence());
                }
            }
            return lastOff > lastWork;
        }

        State state(int current) {
            List<StepState> states = new ArrayList<>();
            for (int i = 0; i < looks.size(); i++) {
                states.add(looks.get(i).as(status(i, current)));
            }
            Optional<Card> shown = shownCard(current);
            StepState now = states.get(current < 0 ? states.size() - 1 : current);
            return new State(job, figures, List.copyOf(states), now, shown, power, current < 0 && shown.isEmpty());
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
            if (makingSafe.isPresent()) {
                return Optional.of(makingSafe.get());
            }
            if (pending.isPresent()) {
                return Optional.of(pending.get().card());
            }
            if (current >= 0 && power == Power.ON && wantsOff(looks.get(current))) {
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

    /** A break that is not yet answered for. */
    private static final class Pending {
        private Break gap;
        private final long seconds;
        private final String note;
        private final Break.Reentry reentry;
        private final Set<String> known;
        private final Set<String> answered = new HashSet<>();

        Pending(Break gap, long seconds, String note, Break.Reentry reentry, Set<String> known) {
            this.gap = gap;
            this.seconds = seconds;
            this.note = note;
            this.reentry = reentry;
            this.known = known;
        }

        void railDead() {
            answered.add("resume.rail");
        }

        void answered(String field, boolean well) {
            if (well) {
                answered.add(field);
            } else {
                answered.remove(field);
            }
        }

        /** What is asked: the rail always; more the longer the break was. */
        private List<String> asked() {
            List<String> fields = new ArrayList<>(List.of("resume.rail"));
            if (gap != Break.SHORT) {
                fields.add("resume.zero");
            }
            if (gap == Break.LONG || answered.contains("resume.where")) {
                fields.add("resume.where");
            }
            if (gap == Break.NEW_DAY && known.contains("reg.marking")) {
                fields.add("resume.marking");
            }
            if (gap == Break.NEW_DAY && known.contains("leg.ohms")) {
                fields.add("resume.total");
            }
            return fields;
        }

        boolean over() {
            return answered.containsAll(asked());
        }

        Card.Resume card() {
            return new Card.Resume(seconds, note.isBlank() ? Optional.empty() : Optional.of(note), asked());
        }
    }

    /**
     * All that decides how a step looks, apart from the steps before it.
     *
     * @param all facts of the step; a job only grows, so the same number with the same last one are the same
     * @param openBefore whether a step before it is not done
     * @param lastMove last fact that moves the way down or the trimmer, on which the steps from there on depend; 0 for those before; {@code power}
     *     likewise
     */
    private record Basis(
            List<Entry> all,
            long reopening,
            long base,
            long expired,
            long again,
            long dwellSeen,
            boolean openBefore,
            long lastMove,
            Power power) {}

    /** How a step looked the last time, and on what that rested. */
    record Kept(Object basis, Look look, long freshest) {
        /** Whether steps after it cannot tell the one from the other: the same facts count, and they are as fresh. */
        boolean saysAs(Kept other) {
            return freshest == other.freshest && look.counting().equals(other.look.counting());
        }
    }

    record Look(
            Step step,
            boolean needed,
            boolean skipped,
            boolean before,
            List<String> open,
            List<String> missing,
            List<Finding> findings,
            List<Entry> counting) {

        boolean done() {
            return !needed
                    || skipped
                    || open.isEmpty() && missing.isEmpty() && findings.stream().noneMatch(Finding::blocks);
        }

        StepState as(Status status) {
            return new StepState(step, status, open, missing, findings, counting);
        }
    }
}
