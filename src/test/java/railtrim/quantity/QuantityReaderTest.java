package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityReaderTest {
    private static final Locale BEFORE = Locale.getDefault();

    /** A line of the table: what is typed, what is asked for, what it has to be. */
    record Line(String typed, Unit unit, String expected) {
        boolean refused() {
            return expected.startsWith("quantity.");
        }
    }

    @AfterEach
    void backToTheOwnCountry() {
        Locale.setDefault(BEFORE);
    }

    static Stream<Locale> countries() {
        return Stream.of(
                Locale.US,
                Locale.GERMANY,
                Locale.FRANCE,
                Locale.forLanguageTag("hi-IN-u-nu-deva"),
                Locale.forLanguageTag("ar-EG-u-nu-arab"),
                Locale.forLanguageTag("tr-TR"));
    }

    @ParameterizedTest
    @MethodSource("countries")
    void everyLineOfTheTableReadsTheSameInEveryCountry(Locale country) {
        Locale.setDefault(country);
        assertAll(table().stream().map(line -> () -> assertEquals(line.expected(), outcome(line), line.toString())));
    }

    @Test
    void theTableHasMoreThanTwoHundredLinesAndNoneTwice() {
        List<Line> table = table();
        assertTrue(table.size() >= 200, "lines: " + table.size());
        assertEquals(table.size(), Set.copyOf(table).size());
    }

    @Test
    void theTableMeetsEveryRefusalThereIsForATypedValue() {
        Set<String> met =
                table().stream().filter(Line::refused).map(Line::expected).collect(Collectors.toSet());
        Set<String> worded = new TreeSet<>(words().keySet());
        worded.removeIf(key -> !key.startsWith("quantity."));
        // The two refusals that are not about typed text, and the two of a row of a meter's manual.
        worded.removeAll(Set.of("quantity.accuracy-impossible", "quantity.uncertainty-impossible"));
        worded.removeAll(Set.of("quantity.range-row", "quantity.range-steps"));
        assertEquals(worded, new TreeSet<>(met));
    }

    @Test
    void everyRefusalSaysWhatWasReadAndUsesEveryValueItIsGiven() {
        for (Line line : table()) {
            if (!line.refused()) {
                continue;
            }
            Message told = refusal(line.typed(), line.unit());
            String pattern = words().getString(told.key());
            assertEquals(placesOf(pattern), told.values().size(), told.key() + ": values for " + pattern);
            String shown =
                    new MessageFormat(pattern, Locale.ROOT).format(told.values().toArray());
            assertTrue(shown.endsWith(".") && shown.length() <= 200, shown);
            assertFalse(shown.contains("{"), shown);
            assertFalse(
                    shown.codePoints()
                            .anyMatch(c -> Character.getType(c) == Character.FORMAT || Character.isISOControl(c)),
                    "invisible characters are never shown: " + line);
        }
    }

    @Test
    void aMissingUnitIsAskedForWithTheDigitsThatWereTyped() {
        // Wording rule of the house: say what was read, what is expected, what to do.
        assertEquals(Message.of("quantity.unit-missing", "3.555", "3.555 V", "3.555 mV"), refusal("3.555", Unit.VOLT));
        assertEquals(Message.of("quantity.unit-missing", "4,7", "4,7 Ω", "4,7 kΩ"), refusal("4,7", Unit.OHM));
    }

    @Test
    void aWrongUnitNamesBothUnits() {
        assertEquals(
                Message.of("quantity.other-unit", "4k7", "ohms (Ω)", "volts (V)", "3.555 V"),
                refusal("4k7", Unit.VOLT));
    }

    @Test
    void megavoltsAreTakenForASlipOfTheShiftKey() {
        assertEquals(Message.of("quantity.capital-m", "3555 MV", "3555 mV"), refusal("3555 MV", Unit.VOLT));
    }

    @Test
    void whatWasTypedIsKeptWithoutTheBlanksAround() {
        assertEquals("4k7 Ω", QuantityReader.read("  4k7 Ω ", Unit.OHM).typed());
        assertEquals("3,30 V", QuantityReader.read("3,30\u00A0V", Unit.VOLT).typed());
    }

    @Test
    void veryLongTextIsRefusedBeforeItIsLookedAt() {
        String endless = "1".repeat(3_000_000) + " V";
        assertEquals("quantity.too-long", refusal(endless, Unit.VOLT).key());
        assertTrue(refusal(endless, Unit.VOLT).values().get(0).length() <= 21);
    }

    /** Property: whatever the display writes, the reader reads back to the digits that were written. */
    @Test
    void whatTheDisplayWritesCanBeTypedBackIn() {
        long seed = 20260101;
        System.out.println("typed-back seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            Unit unit = List.of(Unit.VOLT, Unit.OHM, Unit.AMPERE, Unit.WATT).get(random.nextInt(4));
            // Ohms have no prefix below one, so nine decimals hold four digits down to 10 µΩ.
            double smallest = unit == Unit.OHM ? -5 : -11;
            double value =
                    (random.nextBoolean() ? 1 : -1) * Math.pow(10, smallest + random.nextDouble() * (5 - smallest));
            String written = Display.of(value, unit);
            double again = QuantityReader.read(written, unit).value();
            // Four significant digits: half a unit of the fourth is 5e-4 of the value at most.
            assertEquals(value, again, Math.abs(value) * 5.01e-4, written);
        }
    }

    /** Property: noise never gets past as a number, nor out as anything but a refusal. */
    @Test
    void randomTextIsReadOrRefusedInWordsButNeverAnythingElse() {
        long seed = 20260102;
        System.out.println("random-text seed " + seed);
        Random random = new Random(seed);
        String letters = "0123456789.,-+ kKmMuµnpGRVΩAWC%se'\u00A0\u2212xEeLO°";
        for (int i = 0; i < 100_000; i++) {
            String text = random.ints(1 + random.nextInt(10), 0, letters.length())
                    .mapToObj(at -> letters.substring(at, at + 1))
                    .collect(Collectors.joining());
            Unit unit = Unit.values()[random.nextInt(Unit.values().length)];
            try {
                Quantity quantity = QuantityReader.read(text, unit);
                assertEquals(unit, quantity.unit());
                // An oracle of another kind: the digits alone, in order, are those of the value.
                assertEquals(digitsOf(text), digitsOfTyped(quantity), text);
            } catch (BadInput refused) {
                assertTrue(
                        words().containsKey(refused.told().key()),
                        refused.told().key());
            }
        }
    }

    private static String digitsOf(String text) {
        return text.replaceAll("[^0-9]", "");
    }

    private static String digitsOfTyped(Quantity quantity) {
        Typed typed = QuantityReader.takeApart(quantity.typed(), quantity.unit());
        String digits = typed.before() + typed.after();
        // R47 gains a 0 that was not typed.
        return quantity.typed().matches("[+\\-\u2212]?[Rr].*") ? digits.substring(1) : digits;
    }

    @Test
    void theValueIsTheNearestDoubleOfTheDecimalDigits() {
        // 0.1 mV typed in millivolts is the same double as 0.0001 written in the program: one rounding only.
        assertEquals(0.0001, QuantityReader.read("0.1 mV", Unit.VOLT).value());
        assertEquals(4700.0, QuantityReader.read("4.7 kΩ", Unit.OHM).value());
        assertEquals(0.0000600, QuantityReader.read("60 µA", Unit.AMPERE).value());
    }

    private static String outcome(Line line) {
        try {
            double value = QuantityReader.read(line.typed(), line.unit()).value();
            BigDecimal expected = line.refused() ? null : new BigDecimal(line.expected());
            return expected != null && expected.doubleValue() == value && Double.compare(value, -0.0) != 0
                    ? line.expected()
                    : Double.toString(value);
        } catch (BadInput refused) {
            return refused.told().key();
        }
    }

    private static Message refusal(String typed, Unit unit) {
        return assertThrows(BadInput.class, () -> QuantityReader.read(typed, unit), typed)
                .told();
    }

    private static long placesOf(String pattern) {
        return Pattern.compile("\\{([0-9])}")
                .matcher(pattern)
                .results()
                .map(found -> found.group(1))
                .distinct()
                .count();
    }

    private static ResourceBundle words() {
        return ResourceBundle.getBundle("railtrim.words", Locale.ROOT);
    }

    private static List<Line> table() {
        try (InputStream in = QuantityReaderTest.class.getResourceAsStream("typed-readings.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(QuantityReaderTest::line)
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Line line(String line) {
        String[] columns = line.split("\\|", -1);
        assertEquals(3, columns.length, line);
        return new Line(unescaped(columns[0]), Unit.valueOf(columns[1]), columns[2]);
    }

    private static String unescaped(String text) {
        return Pattern.compile("\\\\u([0-9A-F]{4})")
                .matcher(text.replace("\\t", "\t"))
                .replaceAll(
                        found -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }
}
