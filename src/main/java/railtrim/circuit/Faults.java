package railtrim.circuit;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What each single fault of the divider does to the output, for the user's own circuit (references: the fault table of the adjustable regulators). */
public final class Faults {
    /** Keeps stock itself, computed another way, from counting as above stock. */
    private static final double ROUNDING = 1e-6;

    private Faults() {}

    public enum Fault {
        ADDED_OPEN("added-open"),
        ADDED_SHORT("added-short"),
        ADDED_WRONG_LEG("added-wrong-leg"),
        UPPER_OPEN("upper-open"),
        UPPER_SHORT("upper-short"),
        LOWER_OPEN("lower-open"),
        LOWER_SHORT("lower-short");

        private final String id;

        Fault(String id) {
            this.id = id;
        }

        public String id() {
            return id;
        }

        /** A fault of the added part; without one there is nothing to say about it. */
        private boolean needsAdded() {
            return this == ADDED_OPEN || this == ADDED_SHORT || this == ADDED_WRONG_LEG;
        }
    }

    /**
     * @param voltage magnitude of the output, volts; empty where it cannot be told (no input voltage known and the output goes towards it)
     * @param towardsInput the regulator is driven fully on, so that the output rises to what the input allows
     * @param harmful above the highest voltage the load may have (its rated maximum if known, else stock); true where it goes towards an
     *     input voltage that is not known
     */
    public record Effect(Fault fault, OptionalDouble voltage, boolean towardsInput, boolean harmful) {}

    /**
     * One effect for each {@link Fault}, in their order. A leg that opens is taken to open whole, the added part with it, as when the pad
     * under both lifts: with the added part still there the rise would be no worse.
     *
     * <p>Where the fault keeps the regulator regulating, the voltage follows from the law in {@link Circuit}. Where it drives it fully on
     * (feedback lost, or held where no output can satisfy it), the output is the input less the dropout: LM43601 sheet ZHCSCW6B for feedback
     * shorted to ground, ST B5973D rev 4 6.1 for feedback lost, EDN Design Idea 1416 (1994) for the open lower leg of a floating regulator.
     *
     * @param added ohms across the lowering leg, infinity for none (then the faults of the added part are left out)
     * @param supply null where input voltage and dropout are not known
     * @param highestAllowed magnitude, volts; {@link Double#NaN} where the rated range is not known
     */
    public static List<Effect> table(Circuit circuit, double added, Supply supply, double highestAllowed) {
        OptionalDouble ceiling = supply == null ? OptionalDouble.empty() : OptionalDouble.of(supply.ceiling());
        double limit = Double.isNaN(highestAllowed) ? circuit.stock() : highestAllowed;
        return Arrays.stream(Fault.values())
                .filter(fault -> Double.isFinite(added) || !fault.needsAdded())
                .map(fault -> effect(fault, unlimited(circuit, added, fault), ceiling, limit))
                .toList();
    }

    /** Magnitude the regulator would go to with no end to its input, volts; infinity where it is driven fully on. */
    private static double unlimited(Circuit circuit, double added, Fault fault) {
        return switch (fault) {
            case ADDED_OPEN -> circuit.stock();
            case ADDED_SHORT -> circuit.magnitude(0);
            case ADDED_WRONG_LEG -> acrossTheOtherLeg(circuit, added);
            case UPPER_OPEN -> open(circuit, added, Leg.UPPER);
            case UPPER_SHORT -> shorted(circuit, Leg.UPPER);
            case LOWER_OPEN -> open(circuit, added, Leg.LOWER);
            case LOWER_SHORT -> shorted(circuit, Leg.LOWER);
        };
    }

    /** The other resistor gets smaller, so the current into the leg, and with it the output, gets larger. */
    private static double acrossTheOtherLeg(Circuit circuit, double added) {
        double conductance = 1 / circuit.other() + 1 / added;
        return circuit.reference() + circuit.leg() * (circuit.reference() * conductance + circuit.bias());
    }

    private static double open(Circuit circuit, double added, Leg leg) {
        // With the other leg open only the pin's bias current still flows in the adjusted leg. The minimum load is lost
        // with it, so a real
        // part may stand somewhat higher when its load is light (SLVS297P 7.3.4).
        return leg == circuit.place().loweringLeg()
                ? Double.POSITIVE_INFINITY
                : circuit.reference() + circuit.bias() * circuit.total(added);
    }

    private static double shorted(Circuit circuit, Leg leg) {
        return leg == circuit.place().loweringLeg() ? circuit.magnitude(0) : Double.POSITIVE_INFINITY;
    }

    private static Effect effect(Fault fault, double unlimited, OptionalDouble ceiling, double limit) {
        boolean towardsInput = unlimited > ceiling.orElse(Double.MAX_VALUE);
        if (towardsInput && ceiling.isEmpty()) {
            return new Effect(fault, OptionalDouble.empty(), true, true);
        }
        double volts = Math.min(unlimited, ceiling.orElse(Double.MAX_VALUE));
        return new Effect(fault, OptionalDouble.of(volts), towardsInput, volts > limit * (1 + ROUNDING));
    }
}
