package railtrim.parts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Colour bands of IEC 60062 for a resistor. */
public final class Bands {
    private Bands() {}

    public enum Colour {
        BLACK,
        BROWN,
        RED,
        ORANGE,
        YELLOW,
        GREEN,
        BLUE,
        VIOLET,
        GREY,
        WHITE,
        GOLD,
        SILVER,
        PINK
    }

    /** Makers print three digits on resistors this close or closer, also where two would do: 680 Ω 1 % is blue grey black black brown (common practice). */
    private static final double THREE_DIGITS_FROM_TOLERANCE = 0.02;

    /**
     * Four bands (three without a tolerance band) for values of two digits wider than 2 %, five for values of three digits and for 2 % or closer;
     * the last is the tolerance. Empty where value or tolerance cannot be written in bands.
     *
     * @param ohms more than 0
     * @param tolerance fraction; 0.2 is written by leaving the band out. 0.01 % is grey as on current colour cards; older charts have 0.05 % there
     */
    public static List<Colour> of(double ohms, double tolerance) {
        if (!(ohms > 0) || Double.isInfinite(ohms)) {
            return List.of();
        }
        // Twelve digits take off the last binary digit's noise of a value that was computed.
        BigDecimal value = new BigDecimal(ohms, new MathContext(12)).stripTrailingZeros();
        int digits = tolerance <= THREE_DIGITS_FROM_TOLERANCE + 1e-9 || value.precision() > 2 ? 3 : 2;
        if (value.precision() > digits) {
            return List.of();
        }
        int exponent = value.precision() - value.scale() - digits;
        Optional<Colour> multiplier = multiplier(exponent);
        Optional<List<Colour>> last = toleranceBand(tolerance);
        if (multiplier.isEmpty() || last.isEmpty()) {
            return List.of();
        }
        List<Colour> bands = new ArrayList<>();
        String significand =
                value.scaleByPowerOfTen(-exponent).toBigIntegerExact().toString();
        significand.chars().forEach(digit -> bands.add(Colour.values()[digit - '0']));
        bands.add(multiplier.get());
        bands.addAll(last.get());
        return List.copyOf(bands);
    }

    private static Optional<Colour> multiplier(int exponent) {
        return switch (exponent) {
            case -1 -> Optional.of(Colour.GOLD);
            case -2 -> Optional.of(Colour.SILVER);
            case -3 -> Optional.of(Colour.PINK);
            default -> exponent >= 0 && exponent <= 9 ? Optional.of(Colour.values()[exponent]) : Optional.empty();
        };
    }

    /** By tolerance in parts per ten thousand of a per cent, so that 0.005 as a fraction finds 0.5 %. */
    private static final Map<Long, List<Colour>> TOLERANCES = Map.ofEntries(
            Map.entry(200_000L, List.of()),
            Map.entry(100_000L, List.of(Colour.SILVER)),
            Map.entry(50_000L, List.of(Colour.GOLD)),
            Map.entry(20_000L, List.of(Colour.RED)),
            Map.entry(10_000L, List.of(Colour.BROWN)),
            Map.entry(5_000L, List.of(Colour.GREEN)),
            Map.entry(2_500L, List.of(Colour.BLUE)),
            Map.entry(1_000L, List.of(Colour.VIOLET)),
            Map.entry(500L, List.of(Colour.ORANGE)),
            Map.entry(200L, List.of(Colour.YELLOW)),
            Map.entry(100L, List.of(Colour.GREY)));

    private static Optional<List<Colour>> toleranceBand(double tolerance) {
        return Optional.ofNullable(TOLERANCES.get(Math.round(tolerance * 1e6)));
    }
}
