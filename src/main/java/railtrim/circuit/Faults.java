package railtrim.circuit;

import java.util.List;
import java.util.OptionalDouble;

/** What each single fault of the divider does to the output, for the user's own circuit (references: the fault table of the adjustable regulators). */
public final class Faults {
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
    }

    /**
     * @param voltage magnitude of the output, volts; empty where it cannot be told (no input voltage known and the output goes towards it)
     * @param harmful above the highest voltage the load may have (its rated maximum if known, else stock)
     */
    public record Effect(Fault fault, OptionalDouble voltage, boolean towardsInput, boolean harmful) {}

    /**
     * @param added ohms across the lowering leg, infinity for none
     * @param supply null where input voltage and dropout are not known
     * @param highestAllowed magnitude, volts; {@link Double#NaN} where the rated range is not known
     */
    public static List<Effect> table(Circuit circuit, double added, Supply supply, double highestAllowed) {
        throw new UnsupportedOperationException();
    }
}
