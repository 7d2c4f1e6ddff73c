package railtrim.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes SI numbers for people: 3.555 V, 4.700 kΩ, 60.00 µA, 3.555 V ± 0.038 V. The same in every country: decimal point, no thousands marks,
 * a true minus sign. What is not finite is "∞" or "—".
 */
public final class Display {
    private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_UP);
    private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_UP);
    private static final char MINUS = '\u2212';

    private Display() {}

    /**
     * Four significant digits with an engineering prefix: {@code 1769.553 Ω} is "1.770 kΩ" (never in mΩ, which is too easily read as MΩ);
     * temperatures one decimal; per cent up to two
     * decimals; times of two minutes and more in whole minutes where they are; counts up to three decimals.
     */
    public static String of(double value, Unit unit) {
        if (!Double.isFinite(value)) {
            return notFinite(value, unit);
        }
        return switch (unit) {
            case VOLT, OHM, AMPERE, WATT -> engineering(value, unit);
            case CELSIUS -> fixed(value, 1) + " °C";
            case PERCENT -> upTo(value, 2) + " %";
            case SECOND -> time(value);
            case COUNT -> upTo(value, 3);
        };
    }

    /** As {@link #of} for a voltage, always in volts to the millivolt: "3.555 V". */
    public static String volts(double volts) {
        return Double.isFinite(volts) ? fixed(volts, 3) + " V" : notFinite(volts, Unit.VOLT);
    }

    /** About how many millivolts, so to the tenth below ten and from a volt on in volts: "7.5 mV", "38 mV", "1.2 V". */
    public static String millivolts(double volts) {
        double millivolts = 1000 * volts;
        if (Math.abs(millivolts) >= 1000) {
            return Math.round(millivolts / 100) / 10.0 + " V";
        }
        return Math.abs(millivolts) >= 10 ? Math.round(millivolts) + " mV" : Math.round(10 * millivolts) / 10.0 + " mV";
    }

    public static String ohms(double ohms) {
        return of(ohms, Unit.OHM);
    }

    /** The value printed on a part, as it is bought, without zeros that would look like precision: "820 Ω", "4.7 kΩ", "10 kΩ". */
    public static String part(double ohms) {
        return brief(ohms, Unit.OHM);
    }

    /** As {@link #of} without trailing zeros, for ends of a range that are round numbers: "1 V", "3.291 V", "300 °C". */
    public static String brief(double value, Unit unit) {
        String written = full(value, unit);
        int space = Math.max(written.indexOf(' '), 0);
        return written.indexOf('.') < 0
                ? written
                : written.substring(0, space).replaceFirst("\\.?0+$", "") + written.substring(space);
    }

    /** The two ends of a range, as {@link #ends} writes them. */
    public record Ends(String low, String high) {}

    /**
     * The ends of a range with as many digits as each other: both without trailing zeros where both are round numbers ("1 V", "60 V"), else both in
     * full ("2.830 V", "2.848 V").
     */
    public static Ends ends(double low, double high, Unit unit) {
        Ends brief = new Ends(brief(low, unit), brief(high, unit));
        Ends full = new Ends(full(low, unit), full(high, unit));
        boolean round = (low == 0 || !brief.low().equals(full.low()))
                && (high == 0 || !brief.high().equals(full.high()));
        return round || !Double.isFinite(low) || !Double.isFinite(high) ? brief : full;
    }

    private static String full(double value, Unit unit) {
        return unit == Unit.VOLT ? volts(value) : of(value, unit);
    }

    /**
     * Value and expanded uncertainty, both to the uncertainty's second significant digit: "3.555 V ± 0.038 V". The value alone where the
     * uncertainty is not known (0 or not finite).
     */
    public static String withUncertainty(double value, double expanded, Unit unit) {
        if (!Double.isFinite(value) || !Double.isFinite(expanded) || expanded == 0) {
            return of(value, unit);
        }
        Prefix prefix =
                takesPrefix(unit) ? prefixFor(Math.max(Math.abs(value), Math.abs(expanded)), unit) : Prefix.NONE;
        BigDecimal rounded = BigDecimal.valueOf(Math.abs(expanded))
                .scaleByPowerOfTen(-prefix.power())
                .round(TWO);
        // A width of 0.02 has one digit of its own; the second is a zero.
        BigDecimal width = rounded.setScale(rounded.scale() + 2 - rounded.precision());
        BigDecimal number = BigDecimal.valueOf(value)
                .scaleByPowerOfTen(-prefix.power())
                .setScale(width.scale(), RoundingMode.HALF_UP);
        String after = unit == Unit.COUNT ? "" : " " + prefix.symbol() + unit.symbol();
        return written(number) + after + " ± " + written(width) + after;
    }

    /**
     * The read-back: "three point five five five volts", "four point seven kilo-ohms". Says the digits of the text as typed, not a rounded
     * value; where the text is not one that could have been typed, says the value as {@link #of} writes it.
     */
    public static String inWords(Quantity quantity) {
        return SpokenDigits.of(typedOrWritten(quantity));
    }

    private static Typed typedOrWritten(Quantity quantity) {
        try {
            Quantity again = QuantityReader.read(quantity.typed(), quantity.unit());
            if (again.value() == quantity.value()) {
                return QuantityReader.takeApart(again.typed(), quantity.unit());
            }
        } catch (BadInput notTypedByHand) {
            // A value that was computed has no typed text of its own.
        }
        return QuantityReader.takeApart(of(quantity.value(), quantity.unit()), quantity.unit());
    }

    private static String engineering(double value, Unit unit) {
        if (value == 0) {
            return "0 " + unit.symbol();
        }
        Prefix prefix = prefixFor(value, unit);
        BigDecimal number = BigDecimal.valueOf(value).round(FOUR).scaleByPowerOfTen(-prefix.power());
        int digitsBefore = number.precision() - number.scale();
        int decimals = Math.max(0, Math.min(9, 4 - digitsBefore));
        return written(number.setScale(decimals, RoundingMode.HALF_UP)) + " " + prefix.symbol() + unit.symbol();
    }

    /** Chosen after rounding, so that 999.96 is 1.000 k. */
    private static Prefix prefixFor(double value, Unit unit) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(FOUR);
        Prefix prefix = Prefix.holding(rounded.precision() - rounded.scale() - 1);
        return unit == Unit.OHM && prefix.power() < 0 ? Prefix.NONE : prefix;
    }

    private static boolean takesPrefix(Unit unit) {
        return unit == Unit.VOLT || unit == Unit.OHM || unit == Unit.AMPERE || unit == Unit.WATT;
    }

    private static String time(double seconds) {
        return seconds >= 120 && seconds % 60 == 0 ? upTo(seconds / 60, 0) + " min" : upTo(seconds, 1) + " s";
    }

    private static String fixed(double value, int decimals) {
        return written(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    private static String upTo(double value, int decimals) {
        BigDecimal number = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return written(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros());
    }

    private static String written(BigDecimal number) {
        return number.toPlainString().replace('-', MINUS);
    }

    private static String notFinite(double value, Unit unit) {
        String sign = value < 0 ? MINUS + "∞" : "∞";
        return Double.isNaN(value) ? "—" : (sign + " " + unit.symbol()).strip();
    }
}
