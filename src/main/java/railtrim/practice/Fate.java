package railtrim.practice;

import java.util.random.RandomGenerator;

/** What the chip and the regulator go through: how warm they are, what voltages the chip had, and whether it failed. */
final class Fate {
    private final Board board;
    private final double warmAtStock;
    private double chipWarmth;
    private double regulatorWarmth;
    private double runOffset;
    private boolean failed;
    private double highest;
    private double lowest = Double.POSITIVE_INFINITY;

    Fate(Board board, Draw draw) {
        this.board = board;
        this.warmAtStock = draw.warmAtStock();
    }

    /** A fresh start: a fault seen before is gone, and this run's fail voltage lies where chance puts it. */
    void powerUp(RandomGenerator chance) {
        failed = false;
        runOffset = board.failing().spread() * Math.max(-3, Math.min(3, chance.nextGaussian()));
    }

    /** The chip has this voltage now. */
    void feel(double volts, Board.Work work) {
        highest = Math.max(highest, volts);
        lowest = Math.min(lowest, volts);
        failed |= work != Board.Work.IDLE && volts < failsBelow(work);
    }

    /** Time passes at this voltage behind this input, 0 for off; both parts near the warmth their power would give them in the end. */
    void warm(double seconds, double volts, double amperes, double input) {
        Board.Warmth warmth = board.warmth();
        chipWarmth += share(seconds, warmth.seconds()) * (volts * amperes * warmth.chip() - chipWarmth);
        regulatorWarmth += share(seconds, warmth.regulatorSeconds())
                * (regulatorWatts(volts, amperes, input) * warmth.regulator() - regulatorWarmth);
    }

    private static double share(double seconds, double constant) {
        return 1 - Math.exp(-seconds / constant);
    }

    boolean failed() {
        return failed;
    }

    double highest() {
        return highest;
    }

    double lowest() {
        return lowest;
    }

    double chipTemperature() {
        return board.warmth().room() + chipWarmth;
    }

    double regulatorTemperature() {
        return board.warmth().room() + regulatorWarmth;
    }

    /** Between the cold and the hot fail voltage, by how warm the chip is against its warmth at stock. */
    private double failsBelow(Board.Work work) {
        double full = warmAtStock - board.warmth().room();
        double share = full <= 0 ? 1 : Math.max(0, Math.min(1, chipWarmth / full));
        double cold = board.failing().cold();
        double shift = work == Board.Work.OTHER
                ? board.load().other().map(Board.Other::failsHigher).orElse(0.0)
                : 0;
        return cold + share * (board.failing().hot() - cold) + shift + runOffset;
    }

    private double regulatorWatts(double volts, double amperes, double input) {
        if (board.regulator().switching()) {
            // A switching regulator of these years loses about a fifth of what it delivers (common practice, no
            // source).
            return 0.2 * volts * amperes;
        }
        return volts > 0 ? (input - volts) * amperes : 0;
    }
}
