package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.job.Fact;
import railtrim.procedure.Field.Expected;
import railtrim.procedure.Field.Outside;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Quantity;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** Judges an offered answer: can it be, is it what was expected, and if not, what slip is likely. */
final class Judge {
    private static final int LONGEST_TEXT = 2000;

    private Judge() {}

    // ---- numbers ----

    static Verdict number(Figures figures, String step, Field.Number field, String text, boolean sure) {
        Quantity quantity;
        try {
            quantity = QuantityReader.read(text, field.unit());
        } catch (BadInput bad) {
            return new Verdict.Refuse(List.of(bad.told()));
        }
        double value = quantity.value();
        if (value < field.hardLow() || value > field.hardHigh()) {
            return new Verdict.Refuse(List.of(Message.of(
                    "verdict.impossible",
                    text.strip(),
                    Display.brief(field.hardLow(), field.unit()),
                    Display.brief(field.hardHigh(), field.unit()))));
        }
        Fact fact = new Fact.Reading(step, field.id(), value, field.unit(), text.strip());
        Optional<Message> danger = danger(figures, field, value);
        if (danger.isPresent()) {
            List<Message> says = new ArrayList<>(List.of(danger.get()));
            expected(figures, field)
                    .flatMap(range -> slip(figures, field, value, range))
                    .ifPresent(says::add);
            return new Verdict.Accept(fact, says);
        }
        Optional<Expected> expected = expected(figures, field);
        boolean asExpected = expected.isEmpty() || inside(figures, field, value, expected.get());
        List<Message> odd = new ArrayList<>(asExpected ? List.of() : askAgain(figures, field, value, expected.get()));
        MeterRows.oddDigits(figures, field, value, text).ifPresent(odd::add);
        return odd.isEmpty() || sure ? new Verdict.Accept(fact, List.of()) : new Verdict.AskAgain(odd);
    }

    static Optional<Expected> expected(Figures figures, Field.Number field) {
        return field.expected().apply(figures);
    }

    /** A reading that calls for power off at once, whatever else it is. */
    static Optional<Message> danger(Figures figures, Field.Number field, double value) {
        Optional<Expected> expected = expected(figures, field);
        if (field.outside() == Outside.MAKE_SAFE
                && expected.isPresent()
                && !inside(figures, field, value, expected.get())) {
            return Optional.of(outsideMessage(field, value, expected.get()));
        }
        if (RailFields.isLowered(field.id()) && figures.stock().isPresent()) {
            double magnitude = Math.abs(value);
            double slack = 2 * Ranges.repeat(figures);
            if (magnitude > Ranges.ceiling(figures)) {
                return Optional.of(Message.of(
                        "verdict.above-stock",
                        Display.volts(value),
                        figures.sign().volts(figures.stock().getAsDouble())));
            }
            if (figures.floor().isPresent() && magnitude < figures.floor().getAsDouble() - slack) {
                return Optional.of(Message.of(
                        "verdict.below-floor",
                        Display.volts(value),
                        figures.sign().volts(figures.floor().getAsDouble())));
            }
        }
        return Optional.empty();
    }

    /** What a written reading outside its range means for its step. */
    static Optional<Finding> outside(Figures figures, Field.Number field, double value) {
        return expected(figures, field)
                .filter(expected -> !inside(figures, field, value, expected))
                .map(expected -> {
                    Message message = outsideMessage(field, value, expected);
                    return field.outside() == Outside.ODD
                            ? new Finding(Finding.Kind.WARNS, message, "")
                            : new Finding(Finding.Kind.BLOCKS, message, Mend.stepFor(field.id(), value));
                });
    }

    private static boolean inside(Figures figures, Field.Number field, double value, Expected expected) {
        double compared = compared(figures, field, value);
        double hair = 1e-9 * Math.max(1, Math.abs(compared));
        return compared >= expected.low() - hair && compared <= expected.high() + hair;
    }

    /** Resistances are compared without the leads; the reference without its sign, which depends on which clip is red. */
    private static double compared(Figures figures, Field.Number field, double value) {
        boolean leads = field.unit() == Unit.OHM && !field.id().endsWith(".zero");
        if (leads) {
            return figures.lessLeads(value);
        }
        return field.id().equals("ref.volts") ? Math.abs(value) : value;
    }

    private static List<Message> askAgain(Figures figures, Field.Number field, double value, Expected expected) {
        List<Message> says = new ArrayList<>();
        says.add(outsideMessage(field, value, expected));
        slip(figures, field, value, expected).ifPresent(says::add);
        return says;
    }

    private static Message outsideMessage(Field.Number field, double value, Expected expected) {
        if (field.again().isPresent()) {
            return Message.of("verdict.again-differs", Display.of(value, field.unit()));
        }
        if (Mend.notUp(field.id(), value)) {
            return Message.of("verdict.rail-not-up", Display.volts(value));
        }
        Display.Ends ends = Display.ends(expected.low(), expected.high(), field.unit());
        return Message.of(
                field.measured() ? "verdict.outside" : "verdict.outside-written",
                Display.of(value, field.unit()),
                ends.low(),
                ends.high());
    }

    /**
     * A factor of 1000 is the wrong prefix, of 10 a misread decimal, a wrong sign the probes swapped. Where nothing at all is expected, as on a
     * dead rail, any reading could be made to fit so; there no slip is offered, for it would talk a live board dead.
     */
    private static Optional<Message> slip(Figures figures, Field.Number field, double value, Expected expected) {
        if (inside(figures, field, -value, expected) && value != 0) {
            return Optional.of(Message.of("verdict.slip-sign"));
        }
        boolean nothing = expected.low() < 0 && expected.high() > 0;
        for (double factor : nothing ? new double[0] : new double[] {1000, 0.001, 10, 0.1}) {
            if (value != 0 && inside(figures, field, value * factor, expected)) {
                return Optional.of(
                        field.again().isPresent()
                                ? Message.of("verdict.slip-hidden")
                                : Message.of("verdict.slip", Display.of(value * factor, field.unit())));
            }
        }
        return field.again().isPresent() ? otherLeg(figures, field, value) : elsewhere(figures, field, value);
    }

    /** A reading that belongs to another place on the board: the probes are on the wrong pins, or a joint is open. */
    private static Optional<Message> elsewhere(Figures figures, Field.Number field, double value) {
        if (field.unit() == Unit.OHM) {
            double ohms = figures.lessLeads(value);
            boolean acrossTheLeg = field.id().endsWith(".total") || field.id().endsWith(".low");
            if (acrossTheLeg && like(ohms, figures.readLeg(), 0.02)) {
                return Optional.of(Message.of("verdict.slip-bare-leg"));
            }
            Optional<Message> other = otherLeg(figures, field, value);
            if (other.isPresent()) {
                return other;
            }
        }
        if (field.unit() == Unit.VOLT && RailFields.isRail(field.id())) {
            if (like(Math.abs(value), figures.input(), 0.02)) {
                return Optional.of(Message.of("verdict.slip-input"));
            }
            if (like(Math.abs(value), figures.reference(), 0.02)) {
                return Optional.of(Message.of("verdict.slip-reference"));
            }
        }
        return Optional.empty();
    }

    /** Said of a second reading too: it gives nothing away of the first. */
    private static Optional<Message> otherLeg(Figures figures, Field.Number field, double value) {
        return field.unit() == Unit.OHM
                        && !field.id().endsWith(".other")
                        && like(figures.lessLeads(value), figures.readOther(), 0.02)
                ? Optional.of(Message.of("verdict.slip-other-leg"))
                : Optional.empty();
    }

    private static boolean like(double value, OptionalDouble other, double part) {
        return other.isPresent() && Math.abs(value - other.getAsDouble()) <= part * other.getAsDouble();
    }

    // ---- words and answers ----

    static Verdict text(Figures figures, String step, Field.Text field, String typed) {
        String clean = typed.strip().replaceAll("[\\p{Cntrl}&&[^\\n]]", "");
        if (clean.isEmpty() && field.required()) {
            return new Verdict.Refuse(List.of(Message.of("verdict.text-empty")));
        }
        if (clean.length() > LONGEST_TEXT) {
            return new Verdict.Refuse(List.of(
                    Message.of("verdict.text-long", String.valueOf(clean.length()), String.valueOf(LONGEST_TEXT))));
        }
        try {
            return new Verdict.Accept(
                    new Fact.Note(step, field.id(), clean), field.readBack().apply(figures, clean));
        } catch (BadInput bad) {
            return new Verdict.Refuse(List.of(bad.told()));
        }
    }

    /**
     * The marking read again after a new day, which tells this board from another.
     *
     * @param sure the person has looked twice: then it is kept, and the marking is asked again with all that rests on it
     */
    static Verdict marking(Figures figures, String step, Field.Text field, String typed, boolean sure) {
        Verdict verdict = text(figures, step, field, typed);
        String noted = figures.text("reg.marking").orElse("");
        return !(verdict instanceof Verdict.Accept) || sure || sameMarking(noted, typed)
                ? verdict
                : new Verdict.AskAgain(List.of(Message.of("verdict.other-marking", typed.strip(), noted)));
    }

    /** Letters and digits alone, in any case; a second line or a date code more or less is no other part. */
    static boolean sameMarking(String one, String other) {
        String first = bare(one);
        String second = bare(other);
        return first.equals(second)
                || second.length() >= 3 && first.contains(second)
                || first.length() >= 3 && second.contains(first);
    }

    private static String bare(String marking) {
        return marking.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    static Verdict choice(Figures figures, String step, Field.Choice field, String option) {
        boolean offered = field.options().apply(figures).stream()
                .anyMatch(each -> each.id().equals(option));
        return offered
                ? new Verdict.Accept(new Fact.Choice(step, field.id(), option), List.of())
                : new Verdict.Refuse(List.of(Message.of("verdict.no-such-answer", option)));
    }
}
