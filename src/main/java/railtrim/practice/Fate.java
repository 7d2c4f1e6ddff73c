package railtrim.practice;

import java.util.random.RandomGenerator;

/** What the chip and the regulator go through: how warm they are, what voltages the chip had, and whether it failed. */
final class Fate {
    private final Board board;
    private double chipWarmth;
    private double regulatorWarmth;
    private double runOffset;
    private boolean failed;
    private double highest;
    private double lowest = Double.POSITIVE_INFINITY;

    Fate(Board board) {
        this.board = board;
    }

    /** A fresh start: a fault seen before is gone, and this run's fail voltage lies where chance puts it. */
    void powerUp(RandomGenerator chance) {
        failed = false;
        runOffset = board.failing().spread() * Math.max(-3, Math.min(3, chance.nextGaussian()));
    }

    /** The chip has this voltage now. */
    void feel(double volts, boolean loaded) {
        highest = Math.max(highest, volts);
        lowest = Math.min(lowest, volts);
        failed |= loaded && volts < failsBelow();
    }

    /** Time passes at this voltage, 0 for off; both parts near the warmth their power would give them in the end. */
    void warm(double seconds, double volts, boolean loaded) {
        double share = 1 - Math.exp(-seconds / board.warmth().seconds());
        double chip = chipWatts(volts, loaded) * board.warmth().chip();
        double regulator = regulatorWatts(volts, loaded) * board.warmth().regulator();
        chipWarmth += share * (chip - chipWarmth);
        regulatorWarmth += share * (regulator - regulatorWarmth);
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
    private double failsBelow() {
        double full = chipWatts(board.stock(), true) * board.warmth().chip();
        double share = full <= 0 ? 1 : Math.max(0, Math.min(1, chipWarmth / full));
        double cold = board.failing().cold();
        return cold + share * (board.failing().hot() - cold) + runOffset;
    }

    private double chipWatts(double volts, boolean loaded) {
        return volts * board.amperes(volts, loaded);
    }

    private double regulatorWatts(double volts, boolean loaded) {
        if (board.regulator().switching()) {
            // A switching regulator of these years loses about a fifth of what it delivers (common practice, no
            // source).
            return 0.2 * chipWatts(volts, loaded);
        }
        return volts > 0 ? (board.divider().input() - volts) * board.amperes(volts, loaded) : 0;
    }
}
