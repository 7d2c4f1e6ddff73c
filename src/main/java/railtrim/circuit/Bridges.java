package railtrim.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import railtrim.circuit.Faults.Effect;
import railtrim.circuit.Faults.Fault;

/**
 * What a blob of solder or a slipped probe between two neighbouring pins does to the output. On a 1117 adjust and output are neighbours, and
 * bridging them drives the output to the input less the dropout; on a five-pin feedback type the same bridge gives the reference.
 */
public final class Bridges {
    private Bridges() {}

    /**
     * @param first number of the lower pin, from 1; {@code second} that of its neighbour
     * @param voltage magnitude of the output, volts; empty where it cannot be told
     * @param harmful above the highest voltage the load may have, a dead short of output or input, or an effect that cannot be told
     */
    public record Bridge(
            int first,
            int second,
            PinRole firstRole,
            PinRole secondRole,
            OptionalDouble voltage,
            boolean towardsInput,
            boolean harmful) {}

    /**
     * One bridge for each pair of neighbours.
     *
     * @param roles pin 1 first, at least as many as the outline has pins (a tab may follow)
     * @param supply null where input voltage and dropout are not known
     * @param highestAllowed magnitude, volts; {@link Double#NaN} where the rated range is not known, then stock counts
     * @throws IllegalArgumentException for too few roles
     */
    public static List<Bridge> table(
            Circuit circuit, Outline outline, List<PinRole> roles, Supply supply, double highestAllowed) {
        if (roles.size() < outline.pins()) {
            throw new IllegalArgumentException("a role for each pin");
        }
        List<Bridge> bridges = new ArrayList<>();
        for (int pin = 1; pin < outline.pins(); pin++) {
            if (neighbours(outline, pin)) {
                PinRole one = roles.get(pin - 1);
                PinRole two = roles.get(pin);
                Outcome outcome = outcome(circuit, one, two, supply, highestAllowed);
                bridges.add(new Bridge(
                        pin, pin + 1, one, two, outcome.voltage(), outcome.towardsInput(), outcome.harmful()));
            }
        }
        return bridges;
    }

    /** Whether pins {@code pin} and {@code pin + 1} stand side by side. Packages with two sides turn round once. */
    private static boolean neighbours(Outline outline, int pin) {
        return switch (outline) {
            case SOT_23 -> pin != 2;
            case SOT_23_5 -> pin != 3;
            case SOIC_8 -> pin != 4;
            default -> true;
        };
    }

    private record Outcome(OptionalDouble voltage, boolean towardsInput, boolean harmful) {
        /** Nothing sure can be said; treated as harmful. */
        static final Outcome UNKNOWN = new Outcome(OptionalDouble.empty(), false, true);
        /** The supply or the output is shorted: no voltage, but parts and supply get very hot. */
        static final Outcome DEAD_SHORT = new Outcome(OptionalDouble.of(0), false, true);
        /** The part stays on or goes off, whichever its enable pin asks for: the output is stock or nothing. */
        static final Outcome ON_OR_OFF = new Outcome(OptionalDouble.empty(), false, false);

        static Outcome of(Effect effect) {
            return new Outcome(effect.voltage(), effect.towardsInput(), effect.harmful());
        }
    }

    private static Outcome outcome(Circuit circuit, PinRole one, PinRole two, Supply supply, double highest) {
        Set<PinRole> pair = Set.copyOf(List.of(seen(one), seen(two)));
        if (pair.contains(PinRole.HELPER)) {
            return Outcome.UNKNOWN;
        } else if (pair.size() == 1) {
            return new Outcome(OptionalDouble.of(circuit.stock()), false, circuit.stock() > limit(circuit, highest));
        } else if (pair.equals(Set.of(PinRole.OUTPUT, PinRole.ADJUST))) {
            return Outcome.of(fault(circuit, Fault.UPPER_SHORT, supply, highest));
        } else if (pair.equals(Set.of(PinRole.ADJUST, PinRole.GROUND))) {
            return Outcome.of(fault(circuit, Fault.LOWER_SHORT, supply, highest));
        } else if (pair.equals(Set.of(PinRole.INPUT, PinRole.OUTPUT))
                || pair.equals(Set.of(PinRole.INPUT, PinRole.SWITCH))) {
            return straightThrough(circuit, supply, highest);
        } else if (pair.equals(Set.of(PinRole.INPUT, PinRole.ADJUST))
                && circuit.place().loweringLeg() == Leg.LOWER) {
            // The output follows the adjust pin up, as far as the input lets it: what an open lower leg does too.
            return Outcome.of(fault(circuit, Fault.LOWER_OPEN, supply, highest));
        } else if (pair.contains(PinRole.GROUND)
                && (pair.contains(PinRole.OUTPUT) || pair.contains(PinRole.INPUT) || pair.contains(PinRole.SWITCH))) {
            return Outcome.DEAD_SHORT;
        } else if (pair.contains(PinRole.ENABLE) && (pair.contains(PinRole.INPUT) || pair.contains(PinRole.GROUND))) {
            return Outcome.ON_OR_OFF;
        }
        return Outcome.UNKNOWN;
    }

    /** A sense pin lies on the output. */
    private static PinRole seen(PinRole role) {
        return role == PinRole.SENSE ? PinRole.OUTPUT : role;
    }

    /** The input comes out whole, without the dropout. */
    private static Outcome straightThrough(Circuit circuit, Supply supply, double highest) {
        if (supply == null) {
            return new Outcome(OptionalDouble.empty(), true, true);
        }
        double volts = supply.inputVolts();
        return new Outcome(OptionalDouble.of(volts), true, volts > limit(circuit, highest));
    }

    private static double limit(Circuit circuit, double highest) {
        return (Double.isNaN(highest) ? circuit.stock() : highest) * (1 + 1e-6);
    }

    private static Effect fault(Circuit circuit, Fault fault, Supply supply, double highest) {
        return Faults.table(circuit, Double.POSITIVE_INFINITY, supply, highest).stream()
                .filter(effect -> effect.fault() == fault)
                .findFirst()
                .orElseThrow();
    }
}
