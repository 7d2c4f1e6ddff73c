package railtrim.threshold;

import railtrim.quantity.BadInput;

/**
 * What a number of trials without a single fault shows: with reliability R each, n in a row all succeed with chance Rⁿ. So at confidence C the
 * reliability is at least (1 − C)^(1/n), and n = ln(1 − C)/ln R trials are needed to show R (success-run theorem; exact for independent trials).
 */
public final class SuccessRun {
    private SuccessRun() {}

    /** Least reliability shown. @param successes 1 or more; @param confidence above 0, below 1 */
    public static double reliability(int successes, double confidence) {
        check(successes >= 1, String.valueOf(successes));
        inside(confidence);
        return Math.pow(1 - confidence, 1.0 / successes);
    }

    /** Fewest trials, all good, that show a reliability. @param reliability above 0, below 1; {@code confidence} likewise */
    public static int needed(double reliability, double confidence) {
        inside(reliability);
        inside(confidence);
        return (int) Math.ceil(Math.log(1 - confidence) / Math.log(reliability) - 1e-9);
    }

    private static void inside(double share) {
        check(share > 0 && share < 1, String.valueOf(share));
    }

    private static void check(boolean holds, String read) {
        if (!holds) {
            throw BadInput.of("threshold.success-run", read);
        }
    }
}
