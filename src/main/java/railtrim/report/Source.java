package railtrim.report;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import railtrim.circuit.Leg;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Caution;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.procedure.Labels;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.procedure.Step;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.PlainText;
import railtrim.quantity.Quantity;
import railtrim.quantity.Unit;

/** What the parts of a checklist are made from, and the wordings they share. Everything that leaves here is plain text. */
record Source(State state, Procedure procedure, Words words, Replay replay) {
    private static final Set<String> LISTS_THAT_CHANGE = Set.of("trimmer.pick", "res.pick");
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

    Figures figures() {
        return state.figures();
    }

    List<Entry> entries() {
        return state.job().entries();
    }

    String say(String key, String... values) {
        return PlainText.of(words.of(key, (Object[]) values));
    }

    /** A message whose key was made from what stands in a stranger's file may have no words; then the key itself is shown. */
    String say(Message message) {
        return PlainText.of(words.has(message.key()) ? words.of(message) : message.key());
    }

    /** For keys made from what stands in a file: an unknown one is shown as it is. */
    String sayOr(String key, String otherwise) {
        return words.has(key) ? say(key) : PlainText.of(otherwise);
    }

    String notKnown() {
        return say("report.not-known");
    }

    String volts(OptionalDouble volts) {
        return volts.isPresent() ? Display.volts(volts.getAsDouble()) : notKnown();
    }

    /** A voltage of the rail as the meter shows it: of a negative rail with its minus sign. */
    String rail(OptionalDouble magnitude) {
        return volts(figures().sign().shown(magnitude));
    }

    String rail(double magnitude) {
        return figures().sign().volts(magnitude);
    }

    String text(Optional<String> text) {
        return text.map(PlainText::of).filter(plain -> !plain.isEmpty()).orElseGet(this::notKnown);
    }

    /** When the last thing was done to the board; a finished job that is only opened again has another entry, but is no younger. */
    Optional<Instant> ended() {
        return entries().stream()
                .filter(entry -> !(entry.fact() instanceof Fact.Resumed || entry.fact() instanceof Fact.Paused))
                .reduce((earlier, later) -> later)
                .map(Entry::time);
    }

    String when(Instant time) {
        return say("report.when", time(time));
    }

    /** For columns whose head says that it is UTC. */
    String time(Instant time) {
        return WHEN.format(time);
    }

    // ---- places ----

    /** "across the output and the feedback pin (output: pin 4; adjust: pin 5)"; what is on several pins, or on none that is known, is not numbered. */
    String leg() {
        return figures().place().map(this::leg).orElseGet(this::notKnown);
    }

    private String leg(Place place) {
        Stream<PinRole> ends = place.loweringLeg() == Leg.UPPER
                ? Stream.of(PinRole.OUTPUT, PinRole.ADJUST)
                : Stream.of(PinRole.ADJUST);
        String pins = ends.flatMap(role -> numbered(role).stream()).collect(Collectors.joining("; "));
        String across = say("report.leg." + place.id());
        return pins.isEmpty() ? across : say("report.leg.pins", across, pins);
    }

    private Optional<String> numbered(PinRole role) {
        return pin(role).map(number -> say("report.leg.pin", role(role), number));
    }

    /** As the drawing of the divider calls it: data sheets have other names for the same pin in another place. */
    String role(PinRole role) {
        Optional<Place> place = figures().place();
        if (place.equals(Optional.of(Place.FB_GND)) && role == PinRole.ADJUST) {
            return say("report.divider.feedback");
        } else if (place.equals(Optional.of(Place.SHUNT)) && role == PinRole.OUTPUT) {
            return say("report.divider.cathode");
        } else if (place.equals(Optional.of(Place.SHUNT)) && role == PinRole.ADJUST) {
            return say("report.divider.reference");
        } else if (place.equals(Optional.of(Place.SHUNT)) && role == PinRole.GROUND) {
            return say("report.divider.anode");
        }
        return say("report.role." + role.id());
    }

    /** The number of the one pin that has this role. */
    Optional<String> pin(PinRole role) {
        List<Optional<PinRole>> pins = figures().pins();
        long count = figures().outline().map(Outline::pins).orElse(0);
        List<Integer> found = IntStream.range(0, (int) Math.min(count, pins.size()))
                .filter(i -> pins.get(i).equals(Optional.of(role)))
                .mapToObj(i -> i + 1)
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0).toString()) : Optional.empty();
    }

    // ---- fields ----

    String label(String field) {
        return Labels.numberedPin(field) ? Labels.of(words, field) : sayOr("field." + field + ".label", field);
    }

    /** The words of an answer that was picked, as they stood when it was picked. */
    String option(Entry entry, Fact.Choice choice) {
        return field(choice.step(), choice.field())
                .filter(Field.Choice.class::isInstance)
                .flatMap(field -> offered(entry, (Field.Choice) field, choice.option()))
                .map(this::say)
                .orElseGet(() -> PlainText.of(choice.option()));
    }

    /** Most lists of answers never change; the others are looked up as they were. */
    private Optional<Message> offered(Entry entry, Field.Choice field, String id) {
        Optional<Message> now = offered(figures(), field, id);
        return now.isPresent() && !LISTS_THAT_CHANGE.contains(field.id())
                ? now
                : replay.before(entry).flatMap(figures -> offered(figures, field, id));
    }

    private static Optional<Message> offered(Figures figures, Field.Choice field, String id) {
        return attempt(() -> field.options().apply(figures)).stream()
                .flatMap(List::stream)
                .filter(option -> option.id().equals(id))
                .map(Field.Option::label)
                .findFirst();
    }

    /** The answer to a choice that counts now, in words. */
    Optional<String> chosen(String field) {
        return figures()
                .choice(field)
                .flatMap(option -> figures().history(field).stream()
                        .filter(entry -> entry.fact() instanceof Fact.Choice choice
                                && choice.option().equals(option))
                        .reduce((earlier, later) -> later)
                        .map(entry -> option(entry, (Fact.Choice) entry.fact())));
    }

    Optional<Field> field(String step, String field) {
        return procedure.steps().stream()
                .filter(one -> one.id().equals(step))
                .map(Step::fields)
                .flatMap(List::stream)
                .filter(one -> one.id().equals(field))
                .findFirst();
    }

    /** The range that was shown before the reading was typed, and why. */
    Optional<Field.Expected> expected(Entry entry, Fact.Reading reading) {
        return field(reading.step(), reading.field())
                .filter(Field.Number.class::isInstance)
                .flatMap(field -> replay.before(entry)
                        .flatMap(figures -> attempt(
                                        () -> ((Field.Number) field).expected().apply(figures))
                                .flatMap(found -> found)));
    }

    /** Facts from a stranger's file may lead a sum where no measured board would: that reading then has no range. */
    private static <T> Optional<T> attempt(Supplier<T> sum) {
        try {
            return Optional.ofNullable(sum.get());
        } catch (BadInput e) {
            return Optional.empty();
        }
    }

    /** "3.555 V ± 0.022 V": two standard uncertainties of the meter; a unit the meter has no accuracy for is shown alone. */
    String withMeter(Fact.Reading reading) {
        if (reading.unit() != Unit.VOLT && reading.unit() != Unit.OHM) {
            return Display.of(reading.value(), reading.unit());
        }
        double shown = figures().sign(reading.field()).shown(reading.value());
        double expanded = 2 * figures().accuracy(reading).standardUncertainty(reading.value());
        return Display.withUncertainty(shown, expanded, reading.unit());
    }

    String readBack(Fact.Reading reading) {
        return PlainText.of(Display.inWords(new Quantity(reading.value(), reading.unit(), reading.typed())));
    }

    // ---- steps ----

    String title(String step) {
        return sayOr("step." + step + ".title", step);
    }

    String caution(String id) {
        try {
            Caution caution = procedure.caution(id);
            return say(
                    "report.caution",
                    say("report.signal." + caution.level().name().toLowerCase(Locale.ROOT)),
                    caution.hazard(words),
                    caution.consequence(words),
                    caution.avoidance(words));
        } catch (BadInput unknown) {
            return PlainText.of(id);
        }
    }
}
