package railtrim.practice;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import railtrim.job.Job;

/**
 * How one rehearsal went, judged by the board's hidden truth. Voltages are magnitudes.
 *
 * @param ending how it ended; @param reason in words where it did not finish, else empty
 * @param stock true output without load before anything was done
 * @param fail the highest voltage at which any run can fail
 * @param fitted true output under load with the resistor that was fitted
 * @param lowest true output under load at the worst corner of the chosen resistors' tolerance; {@code highest} without load at the other
 * @param highestSeen the most the chip ever had
 * @param aboveStock the chip had more than its stock voltage at some time, or would at a corner of the tolerance
 * @param belowFail the fixed resistor can hold the chip where it may fail
 * @param resistor as picked, e.g. "series:470+220", empty where none was
 */
public record Outcome(
        String board,
        String place,
        long seed,
        Ending ending,
        String reason,
        double stock,
        double fail,
        OptionalDouble target,
        OptionalDouble fitted,
        OptionalDouble lowest,
        OptionalDouble highest,
        double highestSeen,
        boolean aboveStock,
        boolean belowFail,
        Set<Bench.Mishap> mishaps,
        int slips,
        int slipsCaught,
        String resistor,
        Job job) {

    public enum Ending {
        FINISHED,
        /** The procedure said stop, in words. */
        STOPPED,
        /** The hand could not answer; nothing a person should meet. */
        STUCK
    }

    public boolean finished() {
        return ending == Ending.FINISHED;
    }

    public boolean stopped() {
        return ending == Ending.STOPPED;
    }

    /** Plain values by name, ready to be written as a JSON object; what is not known is left out. */
    public Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("board", board);
        values.put("place", place);
        values.put("seed", seed);
        values.put("finished", finished());
        values.put("stopped", stopped());
        if (!reason.isEmpty()) {
            values.put("reason", reason);
        }
        values.put("stock", stock);
        values.put("fail", fail);
        target.ifPresent(volts -> values.put("target", volts));
        fitted.ifPresent(volts -> values.put("fitted", volts));
        lowest.ifPresent(volts -> values.put("lowest", volts));
        highest.ifPresent(volts -> values.put("highest", volts));
        values.put("highestSeen", highestSeen);
        values.put("aboveStock", aboveStock);
        values.put("belowFail", belowFail);
        values.put("slips", slips);
        values.put("slipsCaught", slipsCaught);
        if (!resistor.isEmpty()) {
            values.put("resistor", resistor);
        }
        values.put("facts", job.entries().size());
        return values;
    }
}
