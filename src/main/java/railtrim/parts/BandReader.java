package railtrim.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.parts.Bands.Colour;
import railtrim.parts.Markings.Reading;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

/**
 * Colour bands read back, from both ends: a row of bands does not always tell where it begins. Three and four bands have two digits, five and six have
 * three; then come the power of ten, the tolerance, and for six the temperature coefficient (IEC 60062).
 */
final class BandReader {
    private static final Map<String, Colour> OTHER_NAMES = Map.of("GRAY", Colour.GREY, "PURPLE", Colour.VIOLET);

    private static final Map<Colour, Double> TOLERANCES = Map.ofEntries(
            Map.entry(Colour.SILVER, 0.1),
            Map.entry(Colour.GOLD, 0.05),
            Map.entry(Colour.RED, 0.02),
            Map.entry(Colour.BROWN, 0.01),
            Map.entry(Colour.GREEN, 0.005),
            Map.entry(Colour.BLUE, 0.0025),
            Map.entry(Colour.VIOLET, 0.001),
            Map.entry(Colour.ORANGE, 0.0005),
            Map.entry(Colour.YELLOW, 0.0002),
            Map.entry(Colour.GREY, 0.0001));

    /** Parts per million and kelvin. */
    static final Map<Colour, Integer> TEMPCOS = Map.of(
            Colour.BLACK, 250,
            Colour.BROWN, 100,
            Colour.RED, 50,
            Colour.ORANGE, 15,
            Colour.YELLOW, 25,
            Colour.GREEN, 20,
            Colour.BLUE, 10,
            Colour.VIOLET, 5,
            Colour.GREY, 1);

    private static final Map<Colour, Integer> SMALL_EXPONENTS =
            Map.of(Colour.GOLD, -1, Colour.SILVER, -2, Colour.PINK, -3);

    private BandReader() {}

    /**
     * @return empty where the first word is no colour, so that it may be another kind of marking
     * @throws BadInput where some words are colours and some not, or no resistor has these bands
     */
    static Optional<List<Reading>> read(List<String> words) {
        if (words.isEmpty() || colour(words.get(0)).isEmpty()) {
            return Optional.empty();
        }
        List<Colour> bands = new ArrayList<>();
        for (String word : words) {
            bands.add(colour(word).orElseThrow(() -> BadInput.of("parts.mark.colour", word)));
        }
        if (bands.equals(List.of(Colour.BLACK))) {
            return Optional.of(
                    List.of(new Reading(0, OptionalDouble.empty(), OptionalDouble.empty(), "bands-1", List.of())));
        }
        if (bands.size() < 3 || bands.size() > 6) {
            throw BadInput.of("parts.mark.bands", String.valueOf(bands.size()));
        }
        List<Reading> readings = new ArrayList<>();
        Optional<Reading> forth = inOrder(bands, List.of());
        forth.ifPresent(readings::add);
        List<Colour> turned = new ArrayList<>(bands);
        Collections.reverse(turned);
        if (!turned.equals(bands)) {
            inOrder(turned, List.of(Message.of("parts.mark.other-end"))).ifPresent(readings::add);
        }
        if (readings.isEmpty()) {
            throw BadInput.of("parts.mark.no-such-bands", String.join(" ", words));
        }
        return Optional.of(readings);
    }

    private static Optional<Colour> colour(String word) {
        String name = word.toUpperCase(Locale.ROOT);
        if (OTHER_NAMES.containsKey(name)) {
            return Optional.of(OTHER_NAMES.get(name));
        }
        for (Colour colour : Colour.values()) {
            if (colour.name().equals(name)) {
                return Optional.of(colour);
            }
        }
        return Optional.empty();
    }

    private static Optional<Reading> inOrder(List<Colour> bands, List<Message> notes) {
        int digits = bands.size() >= 5 ? 3 : 2;
        int significand = 0;
        for (Colour band : bands.subList(0, digits)) {
            if (band.ordinal() > 9) {
                return Optional.empty();
            }
            significand = 10 * significand + band.ordinal();
        }
        Colour power = bands.get(digits);
        int exponent = power.ordinal() <= 9 ? power.ordinal() : SMALL_EXPONENTS.get(power);
        Optional<Double> tolerance =
                bands.size() == 3 ? Optional.of(0.2) : Optional.ofNullable(TOLERANCES.get(bands.get(digits + 1)));
        boolean leadingNought = bands.get(0) == Colour.BLACK;
        boolean tempcoKnown = bands.size() < 6 || TEMPCOS.containsKey(bands.get(5));
        if (tolerance.isEmpty() || leadingNought || !tempcoKnown) {
            return Optional.empty();
        }
        List<Message> doubts = new ArrayList<>(notes);
        if (bands.size() > 3 && bands.get(digits + 1) == Colour.GREY) {
            doubts.add(Message.of("parts.mark.grey"));
        }
        return Optional.of(new Reading(
                Markings.shifted(significand, exponent),
                OptionalDouble.of(tolerance.get()),
                bands.size() == 6 ? OptionalDouble.of(TEMPCOS.get(bands.get(5))) : OptionalDouble.empty(),
                "bands-" + bands.size(),
                doubts));
    }
}
