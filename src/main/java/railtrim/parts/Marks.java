package railtrim.parts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import railtrim.parts.Bands.Colour;

/** How a value is marked: the other way round from {@link Markings}. */
public final class Marks {
    private Marks() {}

    /** @param scheme as in {@link Markings.Reading} */
    public record Mark(String scheme, String text) {}

    /**
     * Every way this value can be marked, bands first.
     *
     * @param ohms more than 0
     * @param tolerance fraction
     * @param tempco parts per million and kelvin; empty leaves the sixth band out
     */
    public static List<Mark> of(double ohms, double tolerance, OptionalDouble tempco) {
        List<Mark> marks = new ArrayList<>();
        bands(ohms, tolerance, tempco).ifPresent(marks::add);
        Optional<BigDecimal> value = ohms > 0 && Double.isFinite(ohms)
                ? Optional.of(new BigDecimal(ohms, new MathContext(12)).stripTrailingZeros())
                : Optional.empty();
        value.flatMap(Marks::rkm).ifPresent(marks::add);
        value.flatMap(each -> digits(each, 2)).ifPresent(marks::add);
        value.flatMap(each -> digits(each, 3)).ifPresent(marks::add);
        eia(ohms).ifPresent(marks::add);
        return List.copyOf(marks);
    }

    private static Optional<Mark> bands(double ohms, double tolerance, OptionalDouble tempco) {
        List<Colour> bands = new ArrayList<>(Bands.of(ohms, tolerance));
        if (bands.isEmpty()) {
            return Optional.empty();
        }
        if (tempco.isPresent() && bands.size() == 5) {
            BandReader.TEMPCOS.entrySet().stream()
                    .filter(entry -> entry.getValue() == tempco.getAsDouble())
                    .map(Map.Entry::getKey)
                    .forEach(bands::add);
        }
        String text = bands.stream()
                .map(colour -> colour.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
        return Optional.of(new Mark("bands-" + bands.size(), text));
    }

    /** The letter in place of the point, with up to four digits: 4K7, R47, 470R. */
    private static Optional<Mark> rkm(BigDecimal ohms) {
        int exponent = ohms.precision() - ohms.scale() - 1;
        int group = Math.max(0, Math.min(9, Math.floorDiv(exponent, 3) * 3));
        String letter = switch (group) {
            case 0 -> "R";
            case 3 -> "K";
            case 6 -> "M";
            default -> "G";
        };
        String number = ohms.scaleByPowerOfTen(-group).stripTrailingZeros().toPlainString();
        String[] parts = number.split("\\.");
        String whole = parts[0].equals("0") ? "" : parts[0];
        String rest = parts.length > 1 ? parts[1] : "";
        return whole.length() + rest.length() <= 4
                ? Optional.of(new Mark("rkm", whole + letter + rest))
                : Optional.empty();
    }

    /** Two or three digits and the number of noughts; not below 10 or 100 Ω, where a letter is used. */
    private static Optional<Mark> digits(BigDecimal ohms, int digits) {
        int noughts = ohms.precision() - ohms.scale() - digits;
        if (ohms.precision() > digits || noughts < 0 || noughts > 9) {
            return Optional.empty();
        }
        String significand =
                ohms.scaleByPowerOfTen(-noughts).toBigIntegerExact().toString();
        return Optional.of(new Mark("digits-" + (digits + 1), significand + noughts));
    }

    private static Optional<Mark> eia(double ohms) {
        if (!(ohms >= 0.1 && ohms < 99.9e6) || !Series.E96.contains(ohms)) {
            return Optional.empty();
        }
        int[] values = Series.E96.significands();
        String letters = "ZYXABCDEF";
        for (int power = -3; power <= 5; power++) {
            for (int place = 0; place < values.length; place++) {
                double value = Markings.shifted(values[place], power);
                if (Math.abs(value - ohms) < 1e-9 * ohms) {
                    return Optional.of(new Mark(
                            "eia-96", String.format(Locale.ROOT, "%02d%c", place + 1, letters.charAt(power + 3))));
                }
            }
        }
        return Optional.empty();
    }
}
