package railtrim.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Course;
import railtrim.procedure.Field;
import railtrim.procedure.State;
import railtrim.quantity.Unit;

/** How each slip is done, on the bench or on paper, and how it is put right. */
final class SlipDeeds {
    /** From one evening to the next day, seconds. */
    private static final double NIGHT = 15 * 3600;

    private final Worker hand;
    private final Workpiece piece;
    private final RandomGenerator chance;
    private final List<Runnable> work = new ArrayList<>();
    private final Map<String, Node.Pair> probesAt = new HashMap<>();
    private Optional<Answer> done = Optional.empty();
    private boolean lost;
    private Optional<Part.Fixed> rightResistor = Optional.empty();

    SlipDeeds(Worker hand, Workpiece piece, RandomGenerator chance) {
        this.hand = hand;
        this.piece = piece;
        this.chance = chance;
    }

    /** The answer of a hand that does not slip here, but may still have its probes where they do not belong. */
    Answer honest(State state, Course course) {
        Answer answer = hand.next(state, course);
        if (answer instanceof Answer.Typed typed && probesAt.containsKey(typed.field())) {
            Node.Pair wrong = probesAt.remove(typed.field());
            return new Answer.Typed(typed.field(), piece.ohms(wrong).text(), typed.sure());
        }
        if (lost && answer instanceof Answer.Picked picked && picked.field().equals("solder.pair")) {
            lost = false;
            piece.trimmer.ifPresent(part -> piece.bench.solder(part, piece.otherLeg()));
        }
        return answer;
    }

    /** Makes the slip, where that is possible now. */
    Optional<Answer> commit(Slip slip, Field field, State state, Course course) {
        String id = field.id();
        return switch (slip) {
            case PREFIX, DECIMAL, COMMA, UNIT, SWAPPED_PROBES ->
                typed(state, course, (typed, reading) -> SlipText.of(slip, typed.text(), chance));
            case STALE -> typed(state, course, (typed, reading) -> before(state, (Field.Number) field, typed.text()));
            case RANGE -> typed(state, course, (typed, reading) -> onLargerRange((Field.Number) field, typed.text()));
            case PROBE_SLIP -> typed(state, course, (typed, reading) -> elsewhere((Field.Number) field, typed.text()));
            case NO_LEAD_ZERO -> Optional.of(new Answer.Typed(id, "0.0 Ω", false));
            case SWAPPED_LEGS -> Optional.of(swapLegs(state, course));
            case WRONG_ANSWER -> neighbour((Field.Choice) field, state, course);
            case WRONG_LEG ->
                id.equals("solder.leg") ? lost(state, course) : solderedAt(piece.otherLeg(), state, course);
            case WRONG_PIN -> solderedAt(somewhere(), state, course);
            case BRIDGE -> bridged(state, course);
            case DRY_JOINT -> dry(state, course);
            case SWAPPED_RESISTOR -> otherResistor((Field.Choice) field, state, course);
            case TRIMMER_AT_MINIMUM -> {
                piece.trimmer.ifPresent(part -> piece.turnAll(part, 0));
                yield Optional.of(hand.next(state, course));
            }
            case OVERSHOOT -> overshot(state, course);
            case LEFT_ON, LEFT_OFF -> {
                piece.bench.waitSeconds(10);
                yield Optional.of(new Answer.Switched(id));
            }
            case LIVE -> {
                piece.switchTo(true);
                yield Optional.of(honest(state, course));
            }
            case MISSED_FAULT -> missed(id, state, course);
            case NO_COLD_START -> unwaited(id, state);
            case NEXT_DAY -> {
                if (chance.nextBoolean()) {
                    piece.bench.switchOff();
                }
                piece.bench.waitSeconds(NIGHT);
                yield Optional.of(new Answer.WentHome());
            }
        };
    }

    // ---- on paper ----

    /** What the hand did after all, where a slip came to nothing; given once. */
    Optional<Answer> afterAll() {
        Optional<Answer> answer = done;
        done = Optional.empty();
        return answer;
    }

    private interface Change {
        Optional<String> of(Answer.Typed typed, State state);
    }

    /** Does the work and types something else. Where nothing else can be made of it, the honest answer stands and it is no slip. */
    private Optional<Answer> typed(State state, Course course, Change change) {
        Answer answer = honest(state, course);
        if (answer instanceof Answer.Typed typed) {
            Optional<String> wrong = change.of(typed, state);
            if (wrong.isPresent() && !wrong.get().equals(typed.text())) {
                return Optional.of(new Answer.Typed(typed.field(), wrong.get(), false));
            }
        }
        done = Optional.of(answer);
        return Optional.empty();
    }

    private static Optional<String> before(State state, Field.Number field, String text) {
        List<Entry> entries = state.job().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).fact() instanceof Fact.Reading reading && reading.unit() == field.unit()) {
                return Optional.of(reading.typed());
            }
        }
        return Optional.empty();
    }

    private Optional<String> onLargerRange(Field.Number field, String text) {
        double value = railtrim.quantity.QuantityReader.read(text, field.unit()).value();
        return SlipText.coarse(piece.bench.meter(), field.unit(), value, chance);
    }

    /** The red probe on a pin beside the one that was meant; empty where the meter shows the same there. */
    private Optional<String> elsewhere(Field.Number field, String meant) {
        List<Node> pins = new ArrayList<>(List.of(Node.INPUT, Node.ADJUST));
        if (field.unit() == Unit.OHM) {
            pins.add(Node.OUTPUT);
        }
        while (!pins.isEmpty()) {
            Node.Pair pair = new Node.Pair(pins.remove(chance.nextInt(pins.size())), Node.GROUND);
            String shown = (field.unit() == Unit.VOLT ? piece.volts(pair) : piece.ohms(pair)).text();
            if (!shown.equals(meant) && !shown.equals(Shown.OVERLOAD)) {
                return Optional.of(shown);
            }
        }
        return Optional.empty();
    }

    /** Takes the two pins of the other leg for the right ones, with the probes and then with the iron. */
    private Optional<Answer> lost(State state, Course course) {
        lost = true;
        probesAt.put("solder.leg", piece.otherLeg());
        return Optional.of(honest(state, course));
    }

    /** The probes showed that these are not the pins. */
    void found() {
        lost = false;
    }

    private Answer swapLegs(State state, Course course) {
        probesAt.put("leg.ohms", piece.otherLeg());
        probesAt.put("leg.reversed", piece.otherLeg());
        probesAt.put("other.ohms", piece.leg());
        return honest(state, course);
    }

    private Optional<Answer> neighbour(Field.Choice field, State state, Course course) {
        Answer answer = hand.next(state, course);
        if (answer instanceof Answer.Picked picked) {
            List<String> others = field.options().apply(state.figures()).stream()
                    .map(Field.Option::id)
                    .filter(option -> !option.equals(picked.option()))
                    .toList();
            if (!others.isEmpty()) {
                return Optional.of(new Answer.Picked(field.id(), others.get(chance.nextInt(others.size()))));
            }
        }
        done = Optional.of(answer);
        return Optional.empty();
    }

    // ---- with the iron ----

    private Optional<Part> added(State state) {
        boolean fitting = state.current().step().id().equals("fit");
        return fitting ? piece.resistor.map(Part.class::cast) : piece.trimmer.map(Part.class::cast);
    }

    private Optional<Answer> solderedAt(Node.Pair pair, State state, Course course) {
        return added(state).map(part -> {
            Answer answer = hand.next(state, course);
            piece.bench.solder(part, pair);
            return answer;
        });
    }

    private Node.Pair somewhere() {
        return chance.nextBoolean() ? Node.Pair.RAIL : new Node.Pair(Node.INPUT, Node.OUTPUT);
    }

    private Optional<Answer> bridged(State state, Course course) {
        return added(state).map(part -> {
            Answer answer = hand.next(state, course);
            piece.bench.bridge(chance.nextBoolean() ? piece.leg() : piece.otherLeg());
            return answer;
        });
    }

    /** Opens after at most an hour with the board on. */
    private Optional<Answer> dry(State state, Course course) {
        return added(state).map(part -> {
            Answer answer = hand.next(state, course);
            piece.bench.leaveDry(part, 3600 * chance.nextDouble());
            return answer;
        });
    }

    private Optional<Answer> otherResistor(Field.Choice field, State state, Course course) {
        List<Field.Option> options = field.options().apply(state.figures());
        Answer answer = hand.next(state, course);
        if (options.size() < 2 || !(answer instanceof Answer.Picked)) {
            done = Optional.of(answer);
            return Optional.empty();
        }
        rightResistor = piece.resistor;
        ResistorSkills.Combination other = ResistorSkills.Combination.of(
                options.get(1 + chance.nextInt(options.size() - 1)).id());
        piece.resistor = Optional.of(piece.bench.takeResistors(other.values(), other.joined(), 0.01));
        return Optional.of(answer);
    }

    // ---- with the board on ----

    /** A good deal too far, before the eye comes back to the meter. */
    private Optional<Answer> overshot(State state, Course course) {
        Answer answer = hand.next(state, course);
        if (piece.trimmer.isEmpty() || !(answer instanceof Answer.Typed typed)) {
            done = Optional.of(answer);
            return Optional.empty();
        }
        Part.Trimmer part = piece.trimmer.get();
        piece.bench.turn(part, part.trimmer().travel() * (0.5 + 0.45 * chance.nextDouble()));
        return Optional.of(new Answer.Typed(typed.field(), piece.rail().text(), false));
    }

    private Optional<Answer> missed(String id, State state, Course course) {
        Answer answer = hand.next(state, course);
        boolean fault = answer instanceof Answer.Picked picked
                && picked.field().equals(id)
                && !picked.option().equals(Seen.WELL.id())
                && !picked.option().equals("enough");
        if (fault) {
            return Optional.of(new Answer.Picked(id, Seen.WELL.id()));
        }
        done = Optional.of(answer);
        return Optional.empty();
    }

    private static Optional<Answer> unwaited(String id, State state) {
        if (id.equals("cool.how")) {
            return Optional.of(new Answer.Picked(id, "room-temperature"));
        }
        return state.figures().history(id).size() == 1 ? Optional.of(new Answer.Picked(id, "cold")) : Optional.empty();
    }

    // ---- putting right ----

    /** Whether the slip can be seen on the bench now: a dry joint only once it has opened. */
    boolean shows(Slip slip) {
        return slip != Slip.DRY_JOINT || piece.bench.opened();
    }

    /** Takes note of what has to be put right; wiring only with the power off. */
    void putRight(Slip slip) {
        switch (slip) {
            case LEFT_ON, LIVE -> piece.switchTo(false);
            case LEFT_OFF, TRIMMER_AT_MINIMUM, OVERSHOOT, NEXT_DAY -> {}
            case SWAPPED_RESISTOR -> {
                piece.resistor.ifPresent(wrong -> work.add(() -> piece.bench.remove(wrong)));
                piece.resistor = rightResistor.or(() -> piece.resistor);
            }
            default -> work.add(this::rewire);
        }
    }

    private void rewire() {
        piece.bench.clean();
        piece.trimmer.filter(piece.bench::isSoldered).ifPresent(part -> piece.bench.solder(part, piece.leg()));
        piece.resistor.filter(piece.bench::isSoldered).ifPresent(part -> piece.bench.solder(part, piece.leg()));
    }

    boolean hasWork() {
        return !work.isEmpty();
    }

    void work() {
        piece.switchTo(false);
        work.forEach(Runnable::run);
        work.clear();
    }
}
