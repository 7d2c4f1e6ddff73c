package railtrim.procedure;

import java.util.ArrayList;
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
import railtrim.procedure.State.Status;
import railtrim.procedure.State.StepState;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Message;

/**
 * Works out where a job stands. A fact of a step counts while it is newer than everything the step rests on: a reopening, a newer reading
 * in a step it rests on, a new round of the way down, a power cycle in the middle of a powered stretch. What does not count any more makes
 * the step stale by itself.
 */
final class Standing {
    private static final Set<String> REASONS = Set.of("pressed", "smoke", "fault", "outside");

    private final List<Step> steps;
    private final RegulatorFamilies families;
    private final Recall recall;
    private final Job job;
    private final Map<String, List<Entry>> byStep;
    private final Map<String, Long> reopened = new HashMap<>();
    private final Map<String, Long> expired = new HashMap<>();
    private Power power = Power.OFF;
    private long lastOff;
    private Optional<Card> card = Optional.empty();

    private Standing(List<Step> steps, RegulatorFamilies families, Recall recall, Job job) {
        this.steps = steps;
        this.families = families;
        this.recall = recall;
        this.job = job;
        this.byStep = job.entries().stream()
                .collect(Collectors.groupingBy(entry -> entry.fact().step()));
    }

    static State of(List<Step> steps, RegulatorFamilies families, Recall recall, Job job) {
        Standing standing = new Standing(steps, families, recall, job);
        standing.readEvents();
        return standing.state();
    }

    // ---- events
    // --------------------------------------------------------------------------------------------------------

    private void readEvents() {
        boolean railProven = false;
        boolean zeroProven = false;
        String note = "";
        for (Entry entry : job.entries()) {
            Fact fact = entry.fact();
            if (fact instanceof Fact.Power change) {
                power = change.on() ? Power.ON : Power.OFF;
                lastOff = change.on() ? lastOff : entry.sequence();
            } else if (fact instanceof Fact.Reopened again) {
                reopened.put(again.step(), entry.sequence());
            } else if (fact instanceof Fact.Alarm alarm) {
                alarm(alarm, entry.sequence());
            } else if (fact instanceof Fact.Paused paused) {
                note = paused.note();
            } else if (fact instanceof Fact.Resumed resumed) {
                power = Power.UNKNOWN;
                railProven = false;
                zeroProven = false;
                if (!makingSafe()) {
                    card = Optional.of(new Card.Resume(
                            resumed.gapSeconds(), note.isBlank() ? Optional.empty() : Optional.of(note)));
                }
            } else if (fact instanceof Fact.Reading reading) {
                if (reading.field().equals("safe.rail") && dead(reading)) {
                    provenOff(entry.sequence());
                    card = makingSafe() ? Optional.empty() : card;
                } else if (reading.field().equals("resume.rail") && dead(reading)) {
                    provenOff(entry.sequence());
                    railProven = true;
                } else if (reading.field().equals("resume.zero")) {
                    zeroProven = reading.value() <= 1;
                }
            }
            if (railProven
                    && zeroProven
                    && card.filter(Card.Resume.class::isInstance).isPresent()) {
                card = Optional.empty();
            }
        }
    }

    private void provenOff(long sequence) {
        power = Power.OFF;
        lastOff = sequence;
    }

    private static boolean dead(Fact.Reading reading) {
        return Math.abs(reading.value()) <= Ranges.DEAD;
    }

    private boolean makingSafe() {
        return card.filter(Card.MakeSafe.class::isInstance).isPresent();
    }

    /** Smoke, or a reading that does not fit the circuit, sends the work back to the last proof with the power off. */
    private void alarm(Fact.Alarm alarm, long sequence) {
        card = Optional.of(new Card.MakeSafe(Message.of("alarm." + known(alarm.reason()))));
        Step at = steps.stream()
                .filter(step -> step.id().equals(alarm.step()))
                .findFirst()
                .orElse(null);
        if (at == null) {
            return;
        }
        boolean powered = at.power() == PowerNeed.ON || at.power() == PowerNeed.TO_ON;
        if (powered && !alarm.reason().equals("fault")) {
            expired.merge(at.id(), sequence, Math::max);
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
        Pass pass = new Pass();
        int current = pass.current();
        if (current >= 0 && steps.get(current).power() == PowerNeed.ON && power != Power.ON) {
            powerUpAgain(current);
            pass = new Pass();
            current = pass.current();
        }
        return pass.state(current);
    }

    /** A powered step with the board off: switching on comes again, and before it the proof that the trimmer is back at its maximum. */
    private void powerUpAgain(int current) {
        int on = current;
        while (on > 0 && steps.get(on).power() != PowerNeed.TO_ON) {
            on--;
        }
        expired.merge(steps.get(on).id(), lastOff, Math::max);
        if (on > 0 && steps.get(on - 1).id().endsWith(".back")) {
            expired.merge(steps.get(on - 1).id(), lastOff, Math::max);
        }
    }

    /** One look at all steps in order. */
    private final class Pass {
        private final Figures figures = new Figures(job, families, recall);
        private final Map<String, Long> freshest = new HashMap<>();
        private final List<Look> looks = new ArrayList<>();

        Pass() {
            figures.power(power);
            for (Step step : steps) {
                looks.add(look(step));
            }
        }

        private Look look(Step step) {
            List<Entry> all = byStep.getOrDefault(step.id(), List.of());
            long reopening = reopened.getOrDefault(step.id(), 0L);
            long base = Math.max(
                    reopening, Math.max(rested(step), Math.max(loop(step), expired.getOrDefault(step.id(), 0L))));
            List<Entry> counting = all.stream()
                    .filter(entry -> entry.sequence() > base
                            && Figures.fieldOf(entry.fact()).isPresent())
                    .toList();
            figures.take(counting);
            freshest.put(
                    step.id(),
                    counting.stream().mapToLong(Entry::sequence).max().orElse(base));
            boolean needed = step.needed().test(figures);
            if (!needed) {
                return new Look(step, false, false, false, List.of(), List.of(), List.of(), counting);
            }
            boolean skipped =
                    all.stream().anyMatch(entry -> entry.sequence() > base && entry.fact() instanceof Fact.Skipped);
            List<String> open = skipped ? List.of() : open(step, all, reopening);
            List<String> missing = skipped ? List.of() : missing(step, counting);
            List<Finding> findings = new ArrayList<>(outside(step, counting));
            findings.addAll(
                    counting.isEmpty() && current() >= 0
                            ? List.of()
                            : step.checks().apply(figures));
            boolean before =
                    all.stream().anyMatch(entry -> Figures.fieldOf(entry.fact()).isPresent());
            return new Look(step, true, skipped, before, open, missing, findings, counting);
        }

        private long rested(Step step) {
            return step.restsOn().stream()
                    .mapToLong(id -> freshest.getOrDefault(id, 0L))
                    .max()
                    .orElse(0);
        }

        private long loop(Step step) {
            return switch (step.id()) {
                case "down.back", "down.on" -> lastOff;
                case "down.set", "down.watch" -> figures.descent().roundBase();
                case "down.off", "fault.note", "fault.next" -> figures.descent().terminal();
                case "budget" -> figures.descent().lateFault();
                default -> 0;
            };
        }

        private List<String> open(Step step, List<Entry> all, long reopening) {
            Set<String> acknowledged = all.stream()
                    .filter(entry -> entry.sequence() > reopening && entry.fact() instanceof Fact.Acknowledged)
                    .map(entry -> ((Fact.Acknowledged) entry.fact()).caution())
                    .collect(Collectors.toSet());
            return step.cautions().stream()
                    .filter(caution -> !acknowledged.contains(caution))
                    .toList();
        }

        private List<String> missing(Step step, List<Entry> counting) {
            Set<String> answered = counting.stream()
                    .flatMap(entry -> Figures.fieldOf(entry.fact()).stream())
                    .collect(Collectors.toSet());
            return step.fields().stream()
                    .filter(field -> !(field instanceof Field.Text text) || text.required())
                    .filter(field -> field.asked().test(figures))
                    .map(Field::id)
                    .filter(id -> !answered.contains(id))
                    .toList();
        }

        private List<Finding> outside(Step step, List<Entry> counting) {
            List<Finding> findings = new ArrayList<>();
            for (Field field : step.fields()) {
                if (field instanceof Field.Number number && number.asked().test(figures)) {
                    figures.entry(number.id())
                            .filter(counting::contains)
                            .flatMap(entry -> Judge.outside(figures, number, ((Fact.Reading) entry.fact()).value()))
                            .ifPresent(findings::add);
                }
            }
            return findings;
        }

        /** Index of the first step looked at that is not done, −1 when all are. */
        int current() {
            for (int i = 0; i < looks.size(); i++) {
                if (!looks.get(i).done() && !offAlready(i)) {
                    return i;
                }
            }
            return -1;
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
            if (card.isPresent()) {
                return card;
            }
            if (current >= 0 && power == Power.ON && wantsOff(looks.get(current))) {
                return Optional.of(new Card.MakeSafe(Message.of("alarm.needs-off")));
            }
            for (Look look : looks) {
                for (Finding finding : look.findings()) {
                    if (finding.kind() == Finding.Kind.STOPS) {
                        return Optional.of(
                                new Card.Stop(finding.message(), look.step().id()));
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

    private record Look(
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
