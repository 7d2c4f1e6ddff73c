package railtrim.procedure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.procedure.Field.Expected;
import railtrim.procedure.Step.Finding;
import railtrim.procedure.Step.Finding.Kind;
import railtrim.quantity.Display;
import railtrim.quantity.Message;

/** Whether a board that had the iron on it is bare again: where it is measured anew as it came, nothing may still be across its legs. */
final class AsItCame {
    private static final double ALIKE = 0.02;

    private AsItCame() {}

    /** Whether something had been soldered on by the time a question was answered. What is soldered later changes nothing about it. */
    static boolean hadIronAt(Figures figures, String field) {
        return figures.entry(field)
                .filter(entry -> firstIron(figures) < entry.sequence())
                .isPresent();
    }

    /** From this reading on the iron may have been at work, whether or not it was told where. */
    private static long firstIron(Figures figures) {
        return figures.history("solder.dead").stream()
                .mapToLong(Entry::sequence)
                .findFirst()
                .orElse(Long.MAX_VALUE);
    }

    /** What was read of a field before anything was soldered on; empty where nothing was. */
    private static OptionalDouble before(Figures figures, String field) {
        long iron = firstIron(figures);
        return figures.history(field).stream()
                .filter(entry -> entry.sequence() < iron)
                .mapToDouble(AsItCame::read)
                .reduce((one, later) -> later);
    }

    private static double read(Entry entry) {
        return Math.abs(((Fact.Reading) entry.fact()).value());
    }

    /** What the bare leg has to read before the board gets power again, ohms: a part across it can only make it less. */
    static Optional<Expected> leg(Figures figures) {
        OptionalDouble leg = before(figures, "leg.ohms");
        return leg.isEmpty()
                ? Optional.empty()
                : Ranges.likeOhms(
                        figures, OptionalDouble.of(figures.lessLeads(leg.getAsDouble())), ALIKE, "expected.leg-bare");
    }

    /** Said while a field is asked again on a board that something was soldered to. */
    static List<Finding> takeOffFirst(Figures figures, String field) {
        boolean askedAgain = figures.entry(field).isEmpty()
                && !figures.history("solder.pair").isEmpty();
        return askedAgain ? List.of(Findings.says("verdict.take-off-first")) : List.of();
    }

    /** Either leg less than before the iron: seen in ohms, while the power is off. */
    static List<Finding> ohms(Figures figures, String field) {
        if (!hadIronAt(figures, field) || before(figures, field).isEmpty()) {
            return List.of();
        }
        double before = before(figures, field).orElseThrow();
        double low = Ranges.likeOhms(figures, OptionalDouble.of(before), ALIKE, "expected.leg-bare")
                .orElseThrow()
                .low();
        return lower(figures, field, before, before - low, "");
    }

    /** The rail less than it was on any start before the iron. */
    static List<Finding> rail(Figures figures) {
        if (!hadIronAt(figures, "base.rail") || before(figures, "base.rail").isEmpty()) {
            return List.of();
        }
        double before = before(figures, "base.rail").orElseThrow();
        return lower(figures, "base.rail", before, 2 * Ranges.repeatAt(figures, before), "legs");
    }

    /** Something is still across a leg, unless two readings after the iron say the same: then the one before it was wrong. */
    private static List<Finding> lower(Figures figures, String field, double before, double slack, String backTo) {
        double now = read(figures.entry(field).orElseThrow());
        if (now >= before - slack) {
            return List.of();
        }
        long iron = firstIron(figures);
        boolean twice = figures.history(field).stream()
                        .filter(entry -> entry.sequence() > iron)
                        .filter(entry -> Math.abs(read(entry) - now) <= slack)
                        .count()
                > 1;
        Message lower =
                Message.of("verdict.lower-than-it-came", shown(figures, field, before), shown(figures, field, now));
        return List.of(new Finding(twice ? Kind.WARNS : Kind.BLOCKS, lower, twice ? "" : backTo));
    }

    private static String shown(Figures figures, String field, double value) {
        return Display.of(
                value, ((Fact.Reading) figures.entry(field).orElseThrow().fact()).unit());
    }
}
