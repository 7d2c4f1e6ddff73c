package railtrim.procedure;

import java.util.Arrays;
import java.util.HashMap;
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
import railtrim.quantity.Message;

/**
 * Works out where a job stands. A fact of a step counts while it is newer than everything the step rests on: a reopening, a newer reading
 * in a step it rests on, a new round of the way down, a power cycle in the middle of a powered stretch, a break in the work. What does not
 * count any more makes the step stale by itself.
 */
final class Standing {
    private static final Set<String> REASONS = Set.of("pressed", "smoke", "fault", "outside", Withdrawals.REASON);

    final Route route;
    final RegulatorFamilies families;
    final Job job;
    final List<Entry> entries;
    private final List<Step> steps;
    private final Recall recall;
    private final Map<Long, Break.Reentry> reentries;
    private final List<Entry>[] byStep;
    private final long[] reopened;
    private final long[] expired;
    private final long[] again;
    private final long[] dwellSeen;
    private Power power = Power.OFF;
    private boolean live;
    private long lastOff;
    private Optional<Card.MakeSafe> makingSafe = Optional.empty();
    private Optional<Pending> pending = Optional.empty();

    private Standing(
            Route route, RegulatorFamilies families, Recall recall, Job job, Map<Long, Break.Reentry> reentries) {
        this.route = route;
        this.steps = route.steps();
        this.families = families;
        this.recall = recall;
        this.job = job;
        this.entries = job.entries();
        this.reentries = reentries;
        this.byStep = recall.factsByStep(route, entries);
        this.reopened = new long[steps.size()];
        this.expired = new long[steps.size()];
        this.again = new long[steps.size()];
        this.dwellSeen = new long[steps.size()];
        Arrays.fill(dwellSeen, -1);
        readEvents();
    }

    static State of(Route route, RegulatorFamilies families, Recall recall, Job job) {
        Map<Long, Break.Reentry> reentries = new HashMap<>();
        for (int i = 0; i < job.entries().size(); i++) {
            if (job.entries().get(i).fact() instanceof Fact.Resumed) {
                long sequence = job.entries().get(i).sequence();
                Job before = new Job(job.name(), job.entries().subList(0, i));
                recall.onceInThisJob(
                                List.of("reentry", sequence),
                                () -> new Standing(route, families, recall, before, reentries).reentry())
                        .ifPresent(reentry -> reentries.put(sequence, reentry));
            }
        }
        return new Standing(route, families, recall, job, reentries).state();
    }

    // ---- what happened to each step, by its place on the route ----

    /** Its facts in order. */
    List<Entry> facts(int place) {
        return byStep[place];
    }

    /** Sequence number of the fact that opened it anew, 0 for none. */
    long reopened(int place) {
        return reopened[place];
    }

    /** Up to here its states of the board have passed, 0 for none. */
    long expired(int place) {
        return expired[place];
    }

    /** Up to here its answers are asked for again, 0 for none. */
    long again(int place) {
        return again[place];
    }

    /** Seconds of its wait that are on record from before it was broken off, −1 for none. */
    long dwellSeen(int place) {
        return dwellSeen[place];
    }

    /** What the power is believed to be. */
    Power power() {
        return power;
    }

    /** Whether it was switched on and its rail has not been read dead since; that somebody says it is off is not enough. */
    boolean live() {
        return live;
    }

    /** When the board was last switched off or proven dead, 0 for never. */
    long lastOff() {
        return lastOff;
    }

    private void raise(long[] marks, String step, long to) {
        int place = route.place(step);
        if (place >= 0) {
            marks[place] = Math.max(marks[place], to);
        }
    }

    private void seen(String step, long seconds) {
        int place = route.place(step);
        if (place >= 0) {
            dwellSeen[place] = seconds;
        }
    }

    // ---- events ----

    private void readEvents() {
        String note = "";
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            Fact fact = entry.fact();
            live = fact instanceof Fact.Power change ? live || change.on() : live && !provesDead(fact);
            if (fact instanceof Fact.Power change) {
                power = change.on() ? Power.ON : Power.OFF;
                lastOff = change.on() ? lastOff : entry.sequence();
            } else if (fact instanceof Fact.Reopened) {
                GoingBack.opens(route, entries, i, power).forEach(step -> raise(reopened, step, entry.sequence()));
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
                .or(pending.map(Pending::gap).orElse(Break.SHORT));
        reentry.over().forEach(step -> raise(expired, step, entry.sequence()));
        reentry.after(gap).forEach(step -> raise(again, step, entry.sequence()));
        seen(reentry.at(), reentry.dwellSeen());
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
                open.gap(Break.NEW_DAY);
                open.reentry().day().forEach(step -> raise(again, step, entry.sequence()));
            }
        } else if (entry.fact() instanceof Fact.Note) {
            open.answered("resume.marking", true);
        }
    }

    private void provenOff(long sequence) {
        power = Power.OFF;
        lastOff = sequence;
    }

    private static boolean provesDead(Fact fact) {
        return fact instanceof Fact.Reading reading && RailFields.isDead(reading.field()) && dead(reading);
    }

    private static boolean dead(Fact.Reading reading) {
        return Math.abs(reading.value()) <= Ranges.DEAD;
    }

    /** Smoke, or a reading that does not fit the circuit, sends the work back to the last proof with the power off. */
    private void alarm(Fact.Alarm alarm, int index) {
        long sequence = entries.get(index).sequence();
        makingSafe = Optional.of(new Card.MakeSafe(Message.of("alarm." + known(alarm.reason()))));
        int place = route.place(alarm.step());
        // What was said of the power is taken back: the careful belief is that it is on.
        power = alarm.reason().equals(Withdrawals.REASON) ? Power.ON : power;
        if (place < 0) {
            return;
        }
        Step at = route.step(place);
        if (at.dwellSeconds() > 0) {
            seen(at.id(), Dwell.passed(entries, index, at.id()));
        }
        boolean powered = at.power() == PowerNeed.ON || at.power() == PowerNeed.TO_ON;
        if (powered && !alarm.reason().equals("fault")) {
            raise(expired, at.id(), sequence);
            if (at.power() == PowerNeed.TO_ON) {
                Break.stretch(steps, place, true).forEach(step -> raise(expired, step, sequence));
            }
        }
        boolean wiring = alarm.reason().equals("smoke") || alarm.reason().equals("outside") && doubtsWiring(at);
        if (wiring && GoingBack.REWORK.containsKey(at.phase())) {
            raise(reopened, GoingBack.REWORK.get(at.phase()), sequence);
        }
        if (alarm.reason().equals("fault") && at.id().equals("fit.soak")) {
            raise(reopened, "solder", sequence);
        }
    }

    /** A reason that only a file made by hand can hold has no words; the board is to be made safe all the same. */
    private static String known(String reason) {
        return REASONS.contains(reason) ? reason : "pressed";
    }

    private static boolean doubtsWiring(Step step) {
        return step.power() == PowerNeed.TO_ON || step.phase() == Phase.FIRST_POWER || step.phase() == Phase.FIT;
    }

    // ---- state ----

    private State state() {
        Pass pass = settled();
        recall.latest(this);
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
                i -> pass.look(i).needed()
                        || down && i < current && steps.get(i).phase() == Phase.STEP_DOWN,
                i -> !pass.look(i).counting().isEmpty(),
                seen));
    }

    private Pass settled() {
        Pass pass = new Pass(this, recall, false);
        int current = pass.current();
        if (current >= 0 && power != Power.ON && wasOn(pass.look(current))) {
            powerUpAgain(current);
            pass = new Pass(this, recall, false);
        }
        return pass;
    }

    /** A look at every step. A job that has gone on since has left other looks behind, which say nothing of this one. */
    Pass whole() {
        return new Pass(this, recall.isLatest(this) ? recall : recall.elsewhere(), true);
    }

    /** What stands before everything else whatever the steps look like. */
    Optional<Card> card() {
        return makingSafe.isPresent() ? makingSafe.map(Card.class::cast) : pending.map(Pending::card);
    }

    /** A step for which the board had been switched on. */
    private static boolean wasOn(Look look) {
        return look.step().power() == PowerNeed.ON
                || look.step().power() == PowerNeed.TO_ON && !look.counting().isEmpty();
    }

    /** A powered step with the board off: switching on comes again, and with it every voltage of that stretch. */
    private void powerUpAgain(int current) {
        Break.stretch(steps, current, true).forEach(step -> raise(expired, step, lastOff));
    }
}
