package railtrim.heat;

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

    /** @param current amperes at stock, NaN where not known */
    public static Powers powers(double input, double stock, double target, double current, LoadKind kind) {
        throw new UnsupportedOperationException();
    }

    /** Chip temperature after: ambient + (before − ambient)·Pafter/Pbefore, °C. */
    public static double temperatureAfter(double ambient, double before, double powerBefore, double powerAfter) {
        throw new UnsupportedOperationException();
    }
}
