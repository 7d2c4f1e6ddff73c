package railtrim.procedure;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Log;
import railtrim.procedure.State.Card;
import railtrim.procedure.State.StepState;
import railtrim.quantity.Message;

/** One job under way: offers go in, the procedure judges them, accepted facts are kept, and the new state comes out. */
public final class Course {
    private static final int SHORTEST_REASON = 3;

    private final Procedure procedure;
    private final Log log;
    private final Recall recall;
    private State state;

    public Course(Procedure procedure, Log log) {
        this.procedure = procedure;
        this.log = log;
        this.recall = new Recall();
        noteReturn();
        this.state = procedure.state(log.job(), recall);
    }

    /** A course that stands where {@code state} says, which was worked out from what the log holds. */
    Course(Procedure procedure, Log log, Recall recall, State state) {
        this.procedure = procedure;
        this.log = log;
        this.recall = recall;
        this.state = state;
    }

    /** However short it was closed: nobody watched the board meanwhile. A long gap the log has noted by itself. */
    private void noteReturn() {
        List<Entry> entries = log.job().entries();
        boolean nothingDone = entries.stream().allMatch(entry -> entry.fact() instanceof Fact.Proposed);
        if (log.readOnly() || nothingDone) {
            return;
        }
        Entry last = entries.get(entries.size() - 1);
        if (last.session() != log.session() && !(last.fact() instanceof Fact.Resumed)) {
            log.append(new Fact.Resumed(
                    "resume", Duration.between(last.time(), log.now()).toSeconds()));
        }
    }

    public Procedure procedure() {
        return procedure;
    }

    public State state() {
        return state;
    }

    // ---- answers ----

    /** Answers a number or text field of the current step or card. {@code sure}: "the meter really shows this". */
    public Verdict type(String field, String text, boolean sure) {
        return answer(field, place -> {
            if (place.field() instanceof Field.Number number) {
                return Judge.number(state.figures(), place.step().id(), number, text, sure);
            }
            if (place.field() instanceof Field.Text words && field.equals("resume.marking")) {
                return Judge.marking(state.figures(), place.step().id(), words, text, sure);
            }
            if (place.field() instanceof Field.Text words) {
                return Judge.text(state.figures(), place.step().id(), words, text);
            }
            return refuse("verdict.not-typed");
        });
    }

    public Verdict choose(String field, String option) {
        return answer(
                field,
                place -> place.field() instanceof Field.Choice choice
                        ? Judge.choice(state.figures(), place.step().id(), choice, option)
                        : refuse("verdict.no-such-answer", option));
    }

    /** Answers a {@link Field.Switch}: "I have switched it". */
    public Verdict turn(String field) {
        return answer(
                field,
                place -> place.field() instanceof Field.Switch change
                        ? new Verdict.Accept(new Fact.Power(place.step().id(), change.on()), List.of())
                        : refuse("verdict.no-such-answer", field));
    }

    private Verdict answer(String field, java.util.function.Function<Place, Verdict> judge) {
        if (returned()) {
            return refuse("verdict.welcome-back");
        }
        Optional<Place> place = place(field);
        if (place.isEmpty()) {
            return refuse("verdict.not-now");
        }
        Optional<Message> locked = locked(place.get());
        if (locked.isPresent()) {
            return new Verdict.Refuse(List.of(locked.get()));
        }
        Verdict verdict = judge.apply(place.get());
        if (verdict instanceof Verdict.Accept accept) {
            return dwellFirst(place.get(), accept.fact()).orElseGet(() -> keep(place.get(), accept));
        }
        return verdict;
    }

    /** Work laid down and taken up again in one sitting: noted once, unless it was short and the rail has been proven dead. */
    private boolean returned() {
        Optional<Entry> paused = laidDown();
        if (paused.isEmpty() || log.readOnly() || state.card().isPresent()) {
            return false;
        }
        long gap = Duration.between(paused.get().time(), log.now()).toSeconds();
        if (Break.of(gap, false, false) == Break.SHORT && state.power() == State.Power.OFF) {
            return false;
        }
        write(new Fact.Resumed("resume", gap));
        return state.card().isPresent();
    }

    /** The pause that nothing but making safe has followed. */
    private Optional<Entry> laidDown() {
        List<Entry> entries = state.figures().job().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Fact fact = entries.get(i).fact();
            if (fact instanceof Fact.Paused) {
                return Optional.of(entries.get(i));
            }
            if (!(fact instanceof Fact.Alarm) && !fact.step().equals("safe")) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Verdict keep(Place place, Verdict.Accept accept) {
        if (log.readOnly()) {
            return refuse("verdict.read-only");
        }
        Optional<Fact> alarm = alarmBy(place, accept.fact());
        log.append(accept.fact());
        Optional<Fact> doubt = doubtBy(place, accept.fact());
        alarm.ifPresent(log::append);
        doubt.ifPresent(log::append);
        refresh();
        return new Verdict.Accept(accept.fact(), withNews(accept.says()));
    }

    /** After a break: another marking, or another resistance across the leg, and what rests on it is proven again. */
    private Optional<Fact> doubtBy(Place place, Fact fact) {
        Figures figures = state.figures();
        if (fact instanceof Fact.Note note
                && note.field().equals("resume.marking")
                && !Judge.sameMarking(figures.text("reg.marking").orElse(note.text()), note.text())) {
            return Optional.of(new Fact.Reopened("marking", note.text()));
        }
        if (fact instanceof Fact.Reading reading
                && reading.field().equals("resume.total")
                && place.field() instanceof Field.Number number
                && Judge.outside(figures, number, reading.value()).isPresent()) {
            String proof = figures.choice("fit.left").isPresent()
                    ? "fit"
                    : figures.number("solder.dead").isPresent() ? "solder" : "legs";
            return Optional.of(new Fact.Reopened(proof, reading.typed()));
        }
        return Optional.empty();
    }

    /** A fault seen, or a reading that calls for power off, writes its alarm with it. */
    private Optional<Fact> alarmBy(Place place, Fact fact) {
        if (fact instanceof Fact.Choice choice
                && choice.field().endsWith(".seen")
                && Descent.FAULTS.contains(choice.option())) {
            return Optional.of(new Fact.Alarm(choice.step(), choice.option().equals("smoke") ? "smoke" : "fault"));
        }
        if (fact instanceof Fact.Reading reading
                && place.field() instanceof Field.Number number
                && Judge.danger(state.figures(), number, reading.value()).isPresent()) {
            return Optional.of(new Fact.Alarm(reading.step(), "outside"));
        }
        return Optional.empty();
    }

    // ---- what may be answered now ----

    private record Place(Step step, Field field, Optional<StepState> standing) {}

    /** A field of the card, of the current step, or of the step that was answered last (to mend a slip at once). */
    private Optional<Place> place(String id) {
        if (state.card().isPresent()) {
            return cardStep().flatMap(step -> in(step, id, Optional.empty()));
        }
        Optional<Place> here = in(state.current().step(), id, Optional.of(state.current()));
        return here.isPresent() ? here : lastAnswered().flatMap(last -> in(last.step(), id, Optional.of(last)));
    }

    private Optional<Step> cardStep() {
        Card card = state.card().orElseThrow();
        if (card instanceof Card.MakeSafe) {
            return Optional.of(Steps.SAFE);
        }
        return card instanceof Card.Resume resume ? Optional.of(Steps.resume(resume.fields())) : Optional.empty();
    }

    private Optional<Place> in(Step step, String id, Optional<StepState> standing) {
        return step.fields().stream()
                .filter(field -> field.id().equals(id) && field.asked().test(state.figures()))
                .findFirst()
                .map(field -> new Place(step, field, standing));
    }

    /** Only a step with the power off: what was seen or read with the board on is not rewritten. */
    private Optional<StepState> lastAnswered() {
        List<Entry> entries = state.figures().job().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Fact fact = entries.get(i).fact();
            if (Figures.fieldOf(fact).isPresent()) {
                return state.steps().stream()
                        .filter(each -> each.step().id().equals(fact.step()))
                        .filter(each -> each.step().power() == PowerNeed.OFF
                                && each.step().phase() != Phase.FAULT)
                        .findFirst();
            }
        }
        return Optional.empty();
    }

    private Optional<Message> locked(Place place) {
        if (place.standing().isEmpty()) {
            return Optional.empty();
        }
        if (!place.standing().get().open().isEmpty()) {
            return Optional.of(Message.of("verdict.caution-first"));
        }
        boolean switchWaits = !(place.field() instanceof Field.Switch)
                && place.step().fields().stream()
                        .filter(Field.Switch.class::isInstance)
                        .anyMatch(each -> place.standing().get().missing().contains(each.id()));
        if (switchWaits) {
            return Optional.of(Message.of("verdict.switch-first"));
        }
        List<Field> fields = place.step().fields();
        return unproven(place.standing().get())
                .filter(proof -> fields.indexOf(place.field()) > fields.indexOf(proof))
                .map(proof -> Message.of(RailFields.isDead(proof.id()) ? "verdict.rail-first" : "verdict.pins-first"));
    }

    /** The first proof of a step that is still to come or does not read as it has to. */
    private Optional<Field> unproven(StepState standing) {
        Figures figures = state.figures();
        return standing.step().proofs().stream()
                .filter(proof -> proof.asked().test(figures))
                .filter(proof -> standing.missing().contains(proof.id())
                        || Judge.outside(
                                        figures,
                                        (Field.Number) proof,
                                        figures.number(proof.id()).orElse(Double.NaN))
                                .isPresent())
                .findFirst();
    }

    /** The reading for which the deed of the step at work waits. */
    public Optional<String> deedWaitsFor() {
        return state.card().isPresent()
                ? Optional.empty()
                : unproven(state.current()).map(Field::id);
    }

    /** Whether a field takes an answer now. */
    public boolean open(String id) {
        return place(id).filter(place -> locked(place).isEmpty()).isPresent();
    }

    /** A field of the current step or of the card before it. */
    public Optional<Field> field(String id) {
        return place(id).map(Place::field);
    }

    /** The step behind the make-safe or resume card, empty without one. */
    public Optional<Step> cardFields() {
        return state.card().isPresent() ? cardStep() : Optional.empty();
    }

    /** The expected range shown before entry, empty where nothing can be expected or where it would give away a hidden first reading. */
    public Optional<Field.Expected> expected(String id) {
        return field(id)
                .filter(Field.Number.class::isInstance)
                .map(Field.Number.class::cast)
                .filter(number -> number.again().isEmpty())
                .flatMap(number -> Judge.expected(state.figures(), number));
    }

    // ---- dwell ----

    /** Seconds of dwell still to wait before the current step's readings are taken, 0 when none. */
    public long dwellLeft() {
        return dwellLeft(state.current().step());
    }

    private long dwellLeft(Step step) {
        if (step.dwellSeconds() == 0) {
            return 0;
        }
        List<Entry> entries = state.figures().job().entries();
        long gone = (log.ticks() - Dwell.began(entries, entries.size(), step.id(), log.session())) / 1000;
        return Math.max(0, step.dwellSeconds() - gone);
    }

    private Optional<Verdict> dwellFirst(Place place, Fact fact) {
        long left = dwellLeft(place.step());
        boolean early = left > 0 && Dwell.waits(fact);
        return early ? Optional.of(refuse("verdict.dwell", String.valueOf(left))) : Optional.empty();
    }

    // ---- the rest ----

    public Verdict acknowledge(String caution) {
        if (returned()) {
            return refuse("verdict.welcome-back");
        }
        if (state.card().isPresent() || !state.current().open().contains(caution)) {
            return refuse("verdict.not-now");
        }
        return write(new Fact.Acknowledged(state.current().step().id(), caution));
    }

    /** Make safe, from anywhere; reasons: {@code pressed}, {@code smoke}, {@code fault}. */
    public Verdict alarm(String reason) {
        return write(new Fact.Alarm(state.current().step().id(), reason));
    }

    /** Go back to a finished step to do it again; what rests on it becomes stale. */
    public Verdict reopen(String step, String reason) {
        Optional<StepState> found = state.steps().stream()
                .filter(each -> each.step().id().equals(step))
                .findFirst();
        boolean safeCard =
                state.card().filter(card -> !(card instanceof Card.Stop)).isPresent();
        if (found.isEmpty()
                || safeCard
                || found.get().entries().isEmpty() && found.get().status() != State.Status.SKIPPED) {
            return refuse("verdict.not-now");
        }
        boolean wayDown = found.get().step().phase() == Phase.STEP_DOWN || step.equals("fault.note");
        if (wayDown) {
            return refuse("verdict.way-down-again");
        }
        return write(new Fact.Reopened(step, reason.strip()));
    }

    /** Steps that would have to be done again if {@code step} were reopened. */
    public List<Step> relocks(String step) {
        State after = procedure.state(state.job()
                .with(new Entry(state.job().last() + 1, java.time.Instant.EPOCH, 0, 0, new Fact.Reopened(step, ""))));
        return state.steps().stream()
                .filter(each -> each.status() == State.Status.DONE || each.status() == State.Status.SKIPPED)
                .map(StepState::step)
                .filter(each -> !each.id().equals(step))
                .filter(each -> undone(after.step(each.id()).status()))
                .toList();
    }

    /**
     * What taking back the last entry would do.
     *
     * @param entry that no longer counts then
     * @param again titles to be done again besides the step it belongs to, in order
     * @param proveDead whether it was a change of power, so that nobody knows how the board stands until its rail is read
     */
    public record TakingBack(Entry entry, List<Step> again, boolean proveDead) {}

    /** The entry that could be taken back now; empty where the last thing that happened is none that can be. */
    public Optional<Entry> lastEntry() {
        return log.readOnly()
                ? Optional.empty()
                : Withdrawals.last(state.figures().job());
    }

    /** What taking it back would do. Works through the whole job once more. */
    public Optional<TakingBack> takingBack() {
        return lastEntry().map(entry -> {
            State after = procedure.state(state.job()
                    .with(new Entry(
                            state.job().last() + 1,
                            entry.time(),
                            entry.session(),
                            entry.tick(),
                            new Fact.Withdrawn(entry.fact().step(), entry.sequence()))));
            List<Step> again = state.steps().stream()
                    .filter(each -> each.status() == State.Status.DONE || each.status() == State.Status.SKIPPED)
                    .map(StepState::step)
                    .filter(each -> !each.id().equals(entry.fact().step()))
                    .filter(each -> undone(after.step(each.id()).status()))
                    .toList();
            return new TakingBack(entry, again, entry.fact() instanceof Fact.Power);
        });
    }

    private static boolean undone(State.Status status) {
        return status == State.Status.STALE || status == State.Status.CURRENT || status == State.Status.LOCKED;
    }

    /** Takes back the last entry. It stays on record. */
    public Verdict takeBack() {
        if (log.readOnly()) {
            return refuse("verdict.read-only");
        }
        return lastEntry()
                .map(entry -> write(new Fact.Withdrawn(entry.fact().step(), entry.sequence())))
                .orElseGet(() -> refuse("verdict.nothing-to-take-back"));
    }

    /** Leave out the current step where that is allowed. */
    public Verdict skip(String reason) {
        if (state.card().isPresent() || !state.current().step().skippable()) {
            return refuse("verdict.not-skippable");
        }
        if (!isReason(reason)) {
            return refuse("verdict.reason-short");
        }
        return write(new Fact.Skipped(state.current().step().id(), reason.strip()));
    }

    static boolean isReason(String reason) {
        return reason.strip().length() >= SHORTEST_REASON;
    }

    /** Lays the work down with a note; a powered board is made safe first. */
    public Verdict pause(String note) {
        String step = state.current().step().id();
        Verdict verdict = write(new Fact.Paused(step, note.strip()));
        return verdict instanceof Verdict.Accept && state.power() != State.Power.OFF ? alarm("pressed") : verdict;
    }

    private Verdict write(Fact fact) {
        if (log.readOnly()) {
            return refuse("verdict.read-only");
        }
        log.append(fact);
        refresh();
        return new Verdict.Accept(fact, withNews(List.of()));
    }

    /** What became of the file the job is kept in comes first. */
    private List<Message> withNews(List<Message> says) {
        return Stream.concat(log.news().stream(), says.stream()).toList();
    }

    private void refresh() {
        state = procedure.state(log.job(), recall);
    }

    private static Verdict refuse(String key, String... values) {
        return new Verdict.Refuse(List.of(Message.of(key, values)));
    }
}
