package railtrim.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers laid along a line of a drawing.
 *
 * @param low number at {@code from}, and {@code high} at {@code to}; {@code high} is above {@code low}
 */
public record Axis(double low, double high, double from, double to) {
    /** A little wider than the numbers are, so that none sits on the edge; numbers that are all the same get some room too. */
    public static Axis around(double lowest, double highest, double from, double to) {
        double room = Math.max((highest - lowest) * 0.08, Math.abs(highest) * 1e-4 + 1e-9);
        return new Axis(lowest - room, highest + room, from, to);
    }

    /** Where a number is, to a tenth of a point. */
    public double at(double number) {
        return Math.round(10 * (from + (number - low) / (high - low) * (to - from))) / 10.0;
    }

    /** Round numbers (1, 2 or 5 at the front) on the axis, about so many. */
    public List<Double> ticks(int about) {
        double rough = (high - low) / about;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double front = rough / power;
        double step = power * (front <= 1 ? 1 : front <= 2 ? 2 : front <= 5 ? 5 : 10);
        List<Double> ticks = new ArrayList<>();
        for (long n = (long) Math.ceil(low / step); n * step <= high; n++) {
            ticks.add(n * step);
        }
        return ticks;
    }
}
