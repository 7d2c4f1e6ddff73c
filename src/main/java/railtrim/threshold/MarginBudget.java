package railtrim.threshold;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import railtrim.quantity.Accuracy;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;
import railtrim.quantity.RailSign;

/**
 * How far to stay away from the fault, line by line, each with where its number is from.
 *
 * <p>There is no published standard for these margins. Where the person's own runs give a number, it is taken; the rest are allowances, fractions of the
 * stock voltage, chosen by this program and called so in every basis. The lines are added up, not combined as squares: they need not be independent,
 * and a supply that is a little higher than needed costs little.
 *
 * @param fail where counting starts, {@link FailVoltage#fail()}, volts
 * @param sum of all lines, volts
 * @param rootSumSquare what the lines would come to if they were independent, volts, for comparison only
 * @param recommended {@code fail + sum}, up to the next 5 mV, volts
 * @param worthDoing false where {@code recommended} is within 1.5 % of stock: the heat saved is then under 3 %
 */
public record MarginBudget(
        List<Line> lines, double fail, double sum, double rootSumSquare, double recommended, boolean worthDoing) {
    /** Allowances of our own, as fractions of stock. */
    static final double SPREAD_ALLOWANCE = 0.03;

    static final double DRIFT_ALLOWANCE = 0.005;
    static final double LOAD_ALLOWANCE = 0.01;
    static final double COLD_ALLOWANCE = 0.01;
    public static final double AGEING_ALLOWANCE = 0.01;
    static final double LEAST_GAIN = 0.015;

    private static final double STEPS_PER_VOLT = 200;

    public MarginBudget {
        lines = List.copyOf(lines);
    }

    /** @param id spread, step, meter, drift, load, cold, ageing; {@code measured} or an allowance of ours; {@code basis} says which and why. */
    public record Line(String id, double volts, boolean measured, Message basis) {}

    /**
     * @param step size of the last decrement, volts, 0 or more
     * @param meterUncertainty standard, of the difference of two voltage readings, volts, 0 or more
     * @param stock magnitude, volts: allowances are fractions of it
     * @param oneRange whether the meter shows the fault and the setting on the same range: then what is in proportion to the reading cancels
     * @param tried what the runs covered
     * @param confidence of the spread's bound, 0.5 to 0.999, usually 0.95; {@code coverage} likewise, usually 0.99
     * @param sign how the voltages are written where a line says what it is based on
     */
    public record Given(
            FailVoltage fail,
            double stock,
            double step,
            double meterUncertainty,
            boolean oneRange,
            Tried tried,
            double confidence,
            double coverage,
            RailSign sign) {
        /** Of a positive rail. */
        public Given(
                FailVoltage fail,
                double stock,
                double step,
                double meterUncertainty,
                boolean oneRange,
                Tried tried,
                double confidence,
                double coverage) {
            this(fail, stock, step, meterUncertainty, oneRange, tried, confidence, coverage, new RailSign(false));
        }

        /** The usual confidence of 95 % that 99 % of all later runs fail lower. */
        public static Given usual(FailVoltage fail, double stock, double step, double meterUncertainty, Tried tried) {
            return new Given(fail, stock, step, meterUncertainty, true, tried, 0.95, 0.99);
        }

        /**
         * The same, with fault and setting read by one meter: on one range of it, or where the margin reaches into the next, on two.
         *
         * @param range accuracy of the range a voltage is read on, as {@link railtrim.quantity.Meter#voltsAt(double)}
         */
        public Given readOn(DoubleFunction<Accuracy> range) {
            Accuracy low = range.apply(fail.fail());
            Given same = withMeter(low.differenceUncertainty(fail.fail()), true);
            double setting = MarginBudget.of(same).recommended();
            Accuracy high = range.apply(setting);
            double apart = Math.hypot(low.standardUncertainty(fail.fail()), high.standardUncertainty(setting));
            return low.equals(high) ? same : withMeter(apart, false);
        }

        private Given withMeter(double uncertainty, boolean one) {
            return new Given(fail, stock, step, uncertainty, one, tried, confidence, coverage, sign);
        }

        Given with(FailVoltage expected, Tried covered) {
            return new Given(expected, stock, step, meterUncertainty, oneRange, covered, confidence, coverage, sign);
        }
    }

    /** @throws railtrim.quantity.BadInput for values outside the ranges of {@link Given} */
    public static MarginBudget of(Given given) {
        check(given.stock() > 0 && Double.isFinite(given.stock()), "threshold.stock", given.stock());
        check(given.step() >= 0 && given.step() < given.stock(), "threshold.step", given.step());
        check(
                given.meterUncertainty() >= 0 && given.meterUncertainty() < given.stock(),
                "threshold.meter",
                given.meterUncertainty());
        check(probability(given.confidence()), "threshold.probability", given.confidence());
        check(probability(given.coverage()), "threshold.probability", given.coverage());

        List<Line> lines = new BudgetLines(given).all();
        double sum = lines.stream().mapToDouble(Line::volts).sum();
        double squares =
                lines.stream().mapToDouble(line -> line.volts() * line.volts()).sum();
        double fail = given.fail().fail();
        double recommended = roundedUp(fail + sum);
        boolean worthDoing = recommended <= given.stock() * (1 - LEAST_GAIN);
        return new MarginBudget(lines, fail, sum, Math.sqrt(squares), recommended, worthDoing);
    }

    /** To the next 5 mV; a nanovolt is not worth 5 mV. */
    private static double roundedUp(double volts) {
        return Math.ceil((volts - 1e-9) * STEPS_PER_VOLT) / STEPS_PER_VOLT;
    }

    private static boolean probability(double value) {
        return value >= 0.5 && value <= 0.999;
    }

    private static void check(boolean holds, String key, double... read) {
        if (!holds) {
            throw new BadInput(new Message(
                    key, Arrays.stream(read).mapToObj(String::valueOf).toList()));
        }
    }
}
