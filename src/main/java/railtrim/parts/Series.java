package railtrim.parts;

import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import railtrim.quantity.BadInput;

/**
 * Preferred value series of IEC 60063:2015, by rule and exceptions.
 *
 * <p>The rule is a geometric series over one decade, rounded: 24 values to two digits, 192 values to three. The standard keeps nine older
 * values that the rule does not give. The shorter series take every second, fourth or eighth value of the longer one, after the exceptions.
 */
public enum Series {
    E3(3),
    E6(6),
    E12(12),
    E24(24),
    E48(48),
    E96(96),
    E192(192);

    /** What the rule gives, and what the standard has instead. */
    private static final Map<Integer, Integer> TWO_DIGIT_EXCEPTIONS =
            Map.of(26, 27, 29, 30, 32, 33, 35, 36, 38, 39, 42, 43, 46, 47, 83, 82);

    private static final Map<Integer, Integer> THREE_DIGIT_EXCEPTIONS = Map.of(919, 920);

    /** Values outside are no resistor anybody sells: ten micro-ohms to ten teraohms. */
    private static final double SMALLEST = 1e-5;

    private static final double LARGEST = 1e13;

    private final int steps;

    Series(int steps) {
        this.steps = steps;
    }

    public int steps() {
        return steps;
    }

    /** Significands: two digits (10–91) for E3 to E24, three digits (100–988) for E48 to E192, ascending. */
    public int[] significands() {
        boolean twoDigits = steps <= 24;
        int finest = twoDigits ? 24 : 192;
        int firstOfDecade = twoDigits ? 10 : 100;
        Map<Integer, Integer> exceptions = twoDigits ? TWO_DIGIT_EXCEPTIONS : THREE_DIGIT_EXCEPTIONS;
        return IntStream.range(0, steps)
                .map(i -> i * (finest / steps))
                .map(i -> (int) Math.round(firstOfDecade * Math.pow(10, (double) i / finest)))
                .map(value -> exceptions.getOrDefault(value, value))
                .toArray();
    }

    /**
     * Ascending preferred values from {@code low} to {@code high} inclusive, ohms; none where {@code high} is below {@code low}.
     *
     * @throws BadInput unless both are from 10 µΩ to 10 TΩ
     */
    public double[] between(double low, double high) {
        check(low);
        check(high);
        int[] significands = significands();
        return IntStream.rangeClosed(decadeOf(low), decadeOf(high))
                .mapToObj(decade -> IntStream.of(significands).mapToDouble(s -> ohms(s, decade)))
                .flatMapToDouble(DoubleStream::sequential)
                .filter(value -> low <= value && value <= high)
                .toArray();
    }

    /** {@code below} and {@code above} equal the value itself where it is a preferred value. */
    public record Near(double below, double nearest, double above) {}

    /**
     * Nearest by ratio.
     *
     * @throws BadInput unless the value is from 10 µΩ to 10 TΩ
     */
    public Near near(double value) {
        check(value);
        double[] around = between(Math.max(SMALLEST, value / 10), Math.min(LARGEST, value * 10));
        double below = around[0];
        double above = around[around.length - 1];
        for (double preferred : around) {
            if (preferred <= value || same(preferred, value)) {
                below = preferred;
            }
        }
        for (int i = around.length - 1; i >= 0; i--) {
            if (around[i] >= value || same(around[i], value)) {
                above = around[i];
            }
        }
        return new Near(below, value / below <= above / value ? below : above, above);
    }

    /** Whether the value is one of this series. */
    public boolean contains(double value) {
        return same(near(value).nearest(), value);
    }

    /** 47 in decade 3 of a two-digit series is 4700: a whole number wherever ohms are whole, so that 4700 typed is 4700 found. */
    private double ohms(int significand, int decade) {
        int exponent = decade - (steps <= 24 ? 1 : 2);
        return exponent >= 0 ? significand * Math.pow(10, exponent) : significand / Math.pow(10, -exponent);
    }

    private static int decadeOf(double value) {
        return (int) Math.floor(Math.log10(value) + 1e-12);
    }

    /** Two ways of writing the same value may differ in the last binary digit; neighbours of E192 differ by more than 1 %. */
    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= 1e-9 * b;
    }

    private static void check(double value) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
            throw BadInput.of("parts.series.range", String.valueOf(value));
        }
    }
}
