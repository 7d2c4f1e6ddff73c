package railtrim.practice;

import java.util.LinkedHashMap;
import java.util.List;
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
 * @param expert what a perfectly informed expert would have set, under load
 * @param share of the power that expert could have saved which this job saves; empty where it did not finish or nothing could be saved
 * @param lostToMargin the part of it that was lost by aiming higher than that expert; {@code lostToResistor} by the resistor found for the aim,
 *     less than 0 where it came out lower
 * @param effort what the job took
 * @param slips in the order they were made
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
        OptionalDouble expert,
        OptionalDouble share,
        OptionalDouble lostToMargin,
        OptionalDouble lostToResistor,
        Effort effort,
        Set<Bench.Mishap> mishaps,
        List<SlipMade> slips,
        String resistor,
        Job job) {

    public enum Ending {
        FINISHED,
        /** The procedure said stop, in words. */
        STOPPED,
        /** The hand could not answer; nothing a person should meet. */
        STUCK
    }

    /**
     * @param readings taken off the meter and typed
     * @param runs ways down that were begun
     * @param minutes on the bench's clock, waiting included
     */
    public record Effort(int readings, int runs, int minutes) {}

    public int slipsCaught() {
        return (int) slips.stream().filter(SlipMade::caught).count();
    }

    public boolean harmed() {
        return aboveStock || belowFail;
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
        expert.ifPresent(volts -> values.put("expert", volts));
        share.ifPresent(part -> values.put("share", part));
        lostToMargin.ifPresent(part -> values.put("lostToMargin", part));
        lostToResistor.ifPresent(part -> values.put("lostToResistor", part));
        values.put("readings", effort.readings());
        values.put("runs", effort.runs());
        values.put("minutes", effort.minutes());
        values.put("slips", slips.size());
        values.put("slipsCaught", slipsCaught());
        if (!slips.isEmpty()) {
            values.put("slipList", slips.stream().map(Outcome::slip).toList());
        }
        if (!resistor.isEmpty()) {
            values.put("resistor", resistor);
        }
        values.put("facts", job.entries().size());
        return values;
    }

    private static Map<String, Object> slip(SlipMade made) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("slip", made.slip().id());
        values.put("step", made.step());
        values.put("field", made.field());
        values.put("noticed", made.noticed().id());
        if (!made.key().isEmpty()) {
            values.put("by", made.key());
            values.put("at", made.at());
        }
        return values;
    }
}
