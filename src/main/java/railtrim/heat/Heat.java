package railtrim.heat;

import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/** Power and temperature before and after lowering the voltage. Watts, volts, amperes, °C. */
public final class Heat {
    /** The usual highest junction temperature of the makers' data sheets for regulators of this kind, °C; from memory. */
    public static final double HOTTEST_JUNCTION = 125;

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

    /** As {@link #powers(double, double, double, double, double)}: a digital load without leakage, or a constant current, which is all "leakage". */
    public static Powers powers(double input, double stock, double target, double current, LoadKind kind) {
        return powers(input, stock, target, current, kind == LoadKind.CONSTANT_CURRENT ? 1 : 0);
    }

    /**
     * A linear regulator passes the load's current and turns the rest of the input voltage into heat: (Vin − V)·I. Voltages are magnitudes.
     *
     * <p>The part of the current that switches goes with the voltage at one clock (E = C·V² for each transition); the part that leaks is taken
     * to stay as it is, which is the careful side: real leakage falls with the voltage and with a cooler chip. Leakage was up to about 30 % of
     * the power of a 1.3 V process (Cambridge lecture notes on system-on-chip), next to nothing in chips of 2.5 V and more.
     *
     * @param input volts, at least {@code stock}; NaN where it is not known or the regulator is a switching one: regulator figures are then NaN
     * @param stock volts, more than 0
     * @param target volts, more than 0 and not above {@code stock}
     * @param current amperes at stock, more than 0; NaN where not known
     * @param leakage share of the current at stock that does not follow the voltage, 0 to 1
     * @throws railtrim.quantity.BadInput for values outside these ranges
     */
    public static Powers powers(double input, double stock, double target, double current, double leakage) {
        check(stock > 0 && target > 0 && target <= stock, "heat.voltages", volts(target), volts(stock));
        check(Double.isNaN(input) || input >= stock, "heat.input", volts(input), volts(stock));
        check(Double.isNaN(current) || current > 0, "heat.current", String.valueOf(current));
        check(leakage >= 0 && leakage <= 1, "heat.leakage", String.valueOf(leakage));
        boolean relative = Double.isNaN(current);
        // Without a current, one that makes the load's power before 1: every figure is then a multiple of it.
        double before = relative ? 1 / stock : current;
        double after = before * ((1 - leakage) * target / stock + leakage);
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

    /**
     * The thermal resistance that a measured temperature implies: (T − room)/P, kelvin per watt. It is that of the way from the point measured
     * to the room, fan and board included, and stays the same when the voltage is lowered; where it does not, load, fan or thermometer changed.
     *
     * @param power watts, more than 0 (or a multiple, then the result is kelvin per multiple)
     * @throws railtrim.quantity.BadInput for a power not above 0, or a temperature that is not a number
     */
    public static double thermalResistance(double room, double temperature, double power) {
        check(power > 0 && Double.isFinite(power), "heat.powers", String.valueOf(power), String.valueOf(power));
        check(
                Double.isFinite(room) && Double.isFinite(temperature),
                "heat.temperatures",
                String.valueOf(room),
                String.valueOf(temperature));
        return (temperature - room) / power;
    }

    /**
     * Junction temperature, case + P·θjc, °C. An estimate: the case is taken to be measured at the tab or on the body above the die.
     *
     * @param junctionToCase kelvin per watt, more than 0
     * @throws railtrim.quantity.BadInput for values outside these ranges
     */
    public static double junction(double caseTemperature, double watts, double junctionToCase) {
        check(
                watts >= 0 && Double.isFinite(watts) && junctionToCase > 0,
                "heat.powers",
                String.valueOf(watts),
                String.valueOf(junctionToCase));
        check(
                Double.isFinite(caseTemperature),
                "heat.temperatures",
                String.valueOf(caseTemperature),
                String.valueOf(caseTemperature));
        return caseTemperature + watts * junctionToCase;
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
