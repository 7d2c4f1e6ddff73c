package railtrim.heat;

import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/** Power and temperature before and after lowering the voltage. Watts, volts, amperes, °C. */
public final class Heat {
    private Heat() {}

    /** How the load's current follows its voltage. */
    public enum LoadKind {
        /** Current in proportion to voltage, as switching logic at one clock. */
        DIGITAL,
        /** The same current at any voltage. */
        CONSTANT_CURRENT
    }

    /**
     * Powers in watts when the current is known; otherwise as multiples of the load's power before (then {@code relative} is true).
     * A switching regulator's loss is not (Vin − V)·I: for it regulator figures are NaN.
     */
    public record Powers(
            double loadBefore,
            double loadAfter,
            double regulatorBefore,
            double regulatorAfter,
            boolean relative,
            boolean regulatorGetsHotter) {
        public double saved() {
            return loadBefore + regulatorBefore - loadAfter - regulatorAfter;
        }
    }

    /**
     * A linear regulator passes the load's current and turns the rest of the input voltage into heat: (Vin − V)·I. Voltages are magnitudes.
     *
     * @param input volts, at least {@code stock}; NaN where it is not known or the regulator is a switching one: regulator figures are then NaN
     * @param stock volts, more than 0
     * @param target volts, more than 0 and not above {@code stock}
     * @param current amperes at stock, more than 0; NaN where not known
     * @throws railtrim.quantity.BadInput for values outside these ranges
     */
    public static Powers powers(double input, double stock, double target, double current, LoadKind kind) {
        check(stock > 0 && target > 0 && target <= stock, "heat.voltages", volts(target), volts(stock));
        check(Double.isNaN(input) || input >= stock, "heat.input", volts(input), volts(stock));
        check(Double.isNaN(current) || current > 0, "heat.current", String.valueOf(current));
        boolean relative = Double.isNaN(current);
        // Without a current, one that makes the load's power before 1: every figure is then a multiple of it.
        double before = relative ? 1 / stock : current;
        double after = switch (kind) {
            case DIGITAL -> before * target / stock;
            case CONSTANT_CURRENT -> before;
        };
        double regulatorBefore = (input - stock) * before;
        double regulatorAfter = (input - target) * after;
        return new Powers(
                stock * before,
                target * after,
                regulatorBefore,
                regulatorAfter,
                relative,
                regulatorAfter > regulatorBefore);
    }

    /**
     * Chip temperature after: ambient + (before − ambient)·Pafter/Pbefore, °C. The heat takes the same way out of the chip, so its rise above the
     * room goes with its power.
     *
     * @param powerBefore more than 0; {@code powerAfter} 0 or more; same unit, watts or multiples
     * @throws railtrim.quantity.BadInput for values outside these ranges
     */
    public static double temperatureAfter(double ambient, double before, double powerBefore, double powerAfter) {
        check(
                powerBefore > 0 && powerAfter >= 0 && Double.isFinite(powerBefore) && Double.isFinite(powerAfter),
                "heat.powers",
                String.valueOf(powerBefore),
                String.valueOf(powerAfter));
        check(
                Double.isFinite(ambient) && Double.isFinite(before),
                "heat.temperatures",
                String.valueOf(ambient),
                String.valueOf(before));
        return ambient + (before - ambient) * powerAfter / powerBefore;
    }

    private static void check(boolean holds, String key, String... values) {
        if (!holds) {
            throw BadInput.of(key, values);
        }
    }

    private static String volts(double volts) {
        return Double.isFinite(volts) ? Display.volts(volts) : String.valueOf(volts);
    }
}
