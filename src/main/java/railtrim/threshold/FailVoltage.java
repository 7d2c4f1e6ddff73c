package railtrim.threshold;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Where it fails and how sure that is, from the runs that ended in a fault.
 *
 * @param fail highest voltage at which a fault was seen, or, where none was, the lowest voltage that was good
 * @param faultSeen false where the floor was reached without a fault
 * @param bracketLow fault voltage of the run that failed highest; {@code bracketHigh} last good voltage before it
 * @param mean of the runs' bracket middles, volts
 * @param spread standard deviation of the runs' bracket middles with the bracket's width counted, volts; NaN with one run
 * @param runs number of runs that ended in a fault
 */
public record FailVoltage(
        double fail, boolean faultSeen, double bracketLow, double bracketHigh, double mean, double spread, int runs) {
    /** @throws railtrim.quantity.BadInput for no trials */
    public static FailVoltage of(List<Trial> trials) {
        throw new UnsupportedOperationException();
    }

    public OptionalDouble spreadKnown() {
        return Double.isNaN(spread) ? OptionalDouble.empty() : OptionalDouble.of(spread);
    }
}
