package railtrim.threshold;

import java.util.List;
import railtrim.quantity.Message;

/** How far to stay away from the fault, line by line, each with where its number is from. */
public record MarginBudget(
        List<Line> lines, double fail, double sum, double rootSumSquare, double recommended, boolean worthDoing) {
    /** @param id spread, step, meter, drift, load, cold, ageing; {@code measured} or an allowance of ours; {@code basis} says which and why. */
    public record Line(String id, double volts, boolean measured, Message basis) {}

    /**
     * @param step size of the last decrement, volts
     * @param meterUncertainty standard, of one voltage reading, volts
     * @param stock magnitude, volts: allowances are fractions of it
     * @param coldStartTried whether a run began cold
     * @param otherLoadsTried whether more than one load was tried
     */
    public record Given(
            FailVoltage fail,
            double stock,
            double step,
            double meterUncertainty,
            boolean coldStartTried,
            boolean otherLoadsTried,
            double confidence,
            double coverage) {}

    public static MarginBudget of(Given given) {
        throw new UnsupportedOperationException();
    }
}
