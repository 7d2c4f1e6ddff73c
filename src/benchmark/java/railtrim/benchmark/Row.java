package railtrim.benchmark;

import java.util.Arrays;
import java.util.Locale;

/** One line of the table: what was measured, what it is held against, both within the same run. */
public final class Row {
    private static final String LINE = "%-50s %10s  %-42s %7s  %s%n";

    private Row() {}

    public static void head() {
        System.out.printf(LINE, "what", "value", "against", "ratio", "wished for");
    }

    /** Milliseconds. */
    public static void print(String what, double value, String against, double other, String wished) {
        print(what, value, "ms", against, other, wished);
    }

    public static void print(String what, double value, String unit, String against, double other, String wished) {
        print(what, value, unit, against, other, value / other, wished);
    }

    /** @param ratio taken pair by pair where there were pairs, so it may differ from that of the two medians */
    public static void print(
            String what, double value, String unit, String against, double other, double ratio, String wished) {
        String held = against + " (" + number(other) + " " + unit + ")";
        System.out.printf(
                LINE, what, number(value) + " " + unit, held, String.format(Locale.ROOT, "%.2f", ratio), wished);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 10 ? "%.3f" : "%.0f", value);
    }

    public static double median(double... values) {
        return percentile(0.5, values);
    }

    public static double percentile(double part, double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(part * sorted.length) - 1];
    }
}
