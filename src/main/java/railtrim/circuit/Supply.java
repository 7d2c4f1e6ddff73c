package railtrim.circuit;

/** What feeds the regulator: its input voltage and the least it needs above the output, both as magnitudes in volts. */
public record Supply(double inputVolts, double dropoutVolts) {
    /** The most the output can reach, magnitude, volts. */
    public double ceiling() {
        return Math.max(0, inputVolts - dropoutVolts);
    }
}
