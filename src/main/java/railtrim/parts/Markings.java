package railtrim.parts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

/**
 * What a marking on a resistor means: letter codes and digits (IEC 60062), EIA-96 codes, and colour bands by {@link BandReader}. Where a
 * marking can be read in more than one way, all ways are given, the usual one first; a meter decides.
 */
public final class Markings {
    private Markings() {}

    /**
     * @param ohms 0 for a jumper
     * @param tolerance fraction; empty where the marking does not tell
     * @param tempco parts per million and kelvin; empty where the marking does not tell
     * @param scheme bands-3 to bands-6, bands-1, rkm, digits-3, digits-4, eia-96, jumper
     * @param notes what is doubtful about this reading
     */
    public record Reading(
            double ohms, OptionalDouble tolerance, OptionalDouble tempco, String scheme, List<Message> notes) {
        public Reading {
            notes = List.copyOf(notes);
        }
    }

    /** Tolerance letters of IEC 60062, fractions; from memory. */
    static final Map<Character, Double> TOLERANCE_LETTERS = Map.ofEntries(
            Map.entry('L', 0.0001),
            Map.entry('P', 0.0002),
            Map.entry('W', 0.0005),
            Map.entry('B', 0.001),
            Map.entry('C', 0.0025),
            Map.entry('D', 0.005),
            Map.entry('F', 0.01),
            Map.entry('G', 0.02),
            Map.entry('J', 0.05),
            Map.entry('K', 0.1),
            Map.entry('M', 0.2),
            Map.entry('N', 0.3));

    private static final String LETTERS = "([LPWBCDFGJKMN])?";
    private static final Pattern RKM = Pattern.compile("(\\d{0,4})([RKMG])(\\d{0,4})" + LETTERS);
    private static final Pattern DIGITS = Pattern.compile("([1-9]\\d{1,2})(\\d)" + LETTERS);
    private static final Pattern EIA_96 = Pattern.compile("(\\d\\d)([ZYRXSABHCDEF])");
    private static final Pattern JUMPER = Pattern.compile("0{1,4}");
    private static final Pattern NUMBER_AND_LETTER = Pattern.compile("\\d\\d[A-Z]");

    private static final Map<Character, Integer> RKM_EXPONENTS = Map.of('R', 0, 'K', 3, 'M', 6, 'G', 9);

    private static final Map<Character, Integer> EIA_EXPONENTS = Map.ofEntries(
            Map.entry('Z', -3),
            Map.entry('Y', -2),
            Map.entry('R', -2),
            Map.entry('X', -1),
            Map.entry('S', -1),
            Map.entry('A', 0),
            Map.entry('B', 1),
            Map.entry('H', 1),
            Map.entry('C', 2),
            Map.entry('D', 3),
            Map.entry('E', 4),
            Map.entry('F', 5));

    /** @throws BadInput for what is no marking, saying what was read and what would be one */
    public static List<Reading> read(String marking) {
        String clean = marking.strip();
        if (clean.length() > 80) {
            throw BadInput.of("parts.mark.unknown", clean.substring(0, 40) + "…");
        }
        String[] words = clean.split("[\\s,/;-]+");
        Optional<List<Reading>> bands = BandReader.read(Arrays.asList(words));
        if (bands.isPresent()) {
            return bands.get();
        }
        String code = clean.toUpperCase(Locale.ROOT).replaceAll("\\s", "");
        List<Reading> readings = new ArrayList<>();
        if (JUMPER.matcher(code).matches()) {
            readings.add(plain(0, OptionalDouble.empty(), "jumper", List.of()));
        }
        digits(code).ifPresent(readings::add);
        rkm(code, clean).forEach(readings::add);
        eia(code).ifPresent(readings::add);
        if (readings.isEmpty()) {
            String key = NUMBER_AND_LETTER.matcher(code).matches() ? "parts.mark.eia" : "parts.mark.unknown";
            throw BadInput.of(key, clean);
        }
        return readings.size() == 1 ? List.copyOf(readings) : doubtful(readings);
    }

    private static List<Reading> doubtful(List<Reading> readings) {
        return readings.stream()
                .map(each -> {
                    List<Message> notes = new ArrayList<>(each.notes());
                    notes.add(Message.of("parts.mark.several"));
                    return new Reading(each.ohms(), each.tolerance(), each.tempco(), each.scheme(), notes);
                })
                .toList();
    }

    /** 103 is 10 and three noughts, 4992 is 499 and two: the last digit counts the noughts. */
    private static Optional<Reading> digits(String code) {
        Matcher match = DIGITS.matcher(code);
        if (!match.matches()) {
            return Optional.empty();
        }
        double ohms = Integer.parseInt(match.group(1)) * Math.pow(10, Integer.parseInt(match.group(2)));
        int digits = match.group(1).length() + 1;
        List<Message> notes =
                match.group(2).equals("0") ? List.of(Message.of("parts.mark.nought", code)) : List.<Message>of();
        return Optional.of(plain(ohms, letter(match.group(3)), "digits-" + digits, notes));
    }

    /** The letter stands where the point is: 4K7, R47, 470R. A small m could also be milli. */
    private static List<Reading> rkm(String code, String typed) {
        Matcher match = RKM.matcher(code);
        if (!match.matches() || match.group(1).isEmpty() && match.group(3).isEmpty()) {
            return List.of();
        }
        double number = Double.parseDouble("0" + match.group(1) + "." + match.group(3) + "0");
        char letter = match.group(2).charAt(0);
        double ohms = shifted(number, RKM_EXPONENTS.get(letter));
        OptionalDouble tolerance = letter(match.group(4));
        List<Reading> readings = new ArrayList<>();
        readings.add(plain(ohms, tolerance, "rkm", List.of()));
        if (letter == 'M' && typed.indexOf('m') >= 0) {
            readings.add(plain(shifted(number, -3), tolerance, "rkm", List.of(Message.of("parts.mark.milli"))));
        }
        return readings;
    }

    /** Two digits are the place in the E96 series, counted from 1; the letter is the power of ten. */
    private static Optional<Reading> eia(String code) {
        Matcher match = EIA_96.matcher(code);
        if (!match.matches()) {
            return Optional.empty();
        }
        int place = Integer.parseInt(match.group(1));
        int[] values = Series.E96.significands();
        if (place < 1 || place > values.length) {
            return Optional.empty();
        }
        char letter = match.group(2).charAt(0);
        List<Message> notes = "RSH".indexOf(letter) >= 0
                ? List.of(Message.of("parts.mark.rare-letter", String.valueOf(letter)))
                : List.<Message>of();
        return Optional.of(
                plain(shifted(values[place - 1], EIA_EXPONENTS.get(letter)), OptionalDouble.of(0.01), "eia-96", notes));
    }

    private static Reading plain(double ohms, OptionalDouble tolerance, String scheme, List<Message> notes) {
        return new Reading(ohms, tolerance, OptionalDouble.empty(), scheme, notes);
    }

    private static OptionalDouble letter(String letter) {
        return letter == null ? OptionalDouble.empty() : OptionalDouble.of(TOLERANCE_LETTERS.get(letter.charAt(0)));
    }

    /** Times a power of ten, by dividing where that is exact. */
    static double shifted(double number, int exponent) {
        return exponent >= 0 ? number * Math.pow(10, exponent) : number / Math.pow(10, -exponent);
    }
}
