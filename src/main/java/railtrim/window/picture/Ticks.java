package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round numbers for a scale. */
final class Ticks {
    private Ticks() {}

    /** Multiples of 1, 2 or 5 times a power of ten from {@code low} to {@code high}, at most {@code most} of them. */
    static List<Double> between(double low, double high, int most) {
        double step = step((high - low) / most);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    private static double step(double least) {
        double ten = Math.pow(10, Math.floor(Math.log10(least)));
        for (double factor : new double[] {1, 2, 5}) {
            if (factor * ten >= least * (1 - 1e-9)) {
                return factor * ten;
            }
        }
        return 10 * ten;
    }

    /** With a true minus sign. */
    static String written(String form, double tick) {
        return String.format(Locale.ROOT, form, tick).replace('-', '\u2212');
    }

    /** Digits after the point that tell neighbouring ticks apart. */
    static int decimals(List<Double> ticks) {
        if (ticks.size() < 2) {
            return 2;
        }
        double step = ticks.get(1) - ticks.get(0);
        return (int) Math.max(0, Math.min(4, -Math.floor(Math.log10(step) + 1e-9)));
    }
}
