package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people see and hear. The expected texts are the wording rules of this program; they have no outside source. */
class DisplayTest {
    private static final Locale BEFORE = Locale.getDefault();

    @AfterEach
    void backToTheOwnCountry() {
        Locale.setDefault(BEFORE);
    }

    @ParameterizedTest
    @CsvSource({
        "1769.553, OHM, 1.770 kΩ",
        "4700, OHM, 4.700 kΩ",
        "220, OHM, 220.0 Ω",
        "99.996, OHM, 100.0 Ω",
        "999.94, OHM, 999.9 Ω",
        "999.96, OHM, 1.000 kΩ",
        "1000000, OHM, 1.000 MΩ",
        "2200000000, OHM, 2.200 GΩ",
        "0.47, OHM, 0.4700 Ω",
        "0.2, OHM, 0.2000 Ω",
        "-0.2, OHM, −0.2000 Ω",
        "0, OHM, 0 Ω",
        "Infinity, OHM, ∞ Ω",
        "-Infinity, VOLT, −∞ V",
        "NaN, OHM, —",
        "3.555, VOLT, 3.555 V",
        "0.0378, VOLT, 37.80 mV",
        "-5.075808, VOLT, −5.076 V",
        "0.00006, AMPERE, 60.00 µA",
        "0.00000004, AMPERE, 40.00 nA",
        "0.010476667, AMPERE, 10.48 mA",
        "0.25, WATT, 250.0 mW",
        "3.6364, WATT, 3.636 W",
        "25, CELSIUS, 25.0 °C",
        "69.96, CELSIUS, 70.0 °C",
        "-0.04, CELSIUS, 0.0 °C",
        "2, PERCENT, 2 %",
        "0.5, PERCENT, 0.5 %",
        "12.345, PERCENT, 12.35 %",
        "100, PERCENT, 100 %",
        "0.001, PERCENT, 0 %",
        "30, SECOND, 30 s",
        "1.25, SECOND, 1.3 s",
        "60, SECOND, 60 s",
        "1800, SECOND, 30 min",
        "1801, SECOND, 1801 s",
        "25, COUNT, 25",
        "1000, COUNT, 1000",
        "0.0625, COUNT, 0.063",
    })
    void aValueIsWrittenWithFourDigitsAndItsUnit(double value, Unit unit, String written) {
        assertEquals(written, Display.of(value, unit));
    }

    @ParameterizedTest
    @CsvSource({
        "3.5548667, 3.555 V",
        "0.0378, 0.038 V",
        "12, 12.000 V",
        "-5.075808, −5.076 V",
        "-0.0001, 0.000 V",
        "0, 0.000 V",
        "NaN, —",
    })
    void aRailIsAlwaysInVoltsToTheMillivolt(double value, String written) {
        assertEquals(written, Display.volts(value));
    }

    @ParameterizedTest
    @CsvSource({
        "3.555, 0.037775, VOLT, 3.555 V ± 0.038 V",
        "3.555, 0.0996, VOLT, 3.56 V ± 0.10 V",
        "4700, 38, OHM, 4.700 kΩ ± 0.038 kΩ",
        "470, 120, OHM, 470 Ω ± 120 Ω",
        "220, 2.64, OHM, 220.0 Ω ± 2.6 Ω",
        "0.0157, 0.0012, VOLT, 15.7 mV ± 1.2 mV",
        "0.001, 0.25, VOLT, 0 mV ± 250 mV",
        "70, 1.5, CELSIUS, 70.0 °C ± 1.5 °C",
        "2, 0.25, PERCENT, 2.00 % ± 0.25 %",
        "-5.08, 0.02, VOLT, −5.080 V ± 0.020 V",
        "3.555, 0, VOLT, 3.555 V",
        "3.555, NaN, VOLT, 3.555 V",
        "Infinity, 1, OHM, ∞ Ω",
    })
    void valueAndUncertaintyEndAtTheSameDigit(double value, double expanded, Unit unit, String written) {
        assertEquals(written, Display.withUncertainty(value, expanded, unit));
    }

    @ParameterizedTest
    @CsvSource({
        "4k7, OHM, four point seven kilo-ohms",
        "4.7 kΩ, OHM, four point seven kilo-ohms",
        "4.70 k, OHM, four point seven zero kilo-ohms",
        "R47, OHM, zero point four seven ohms",
        "1M0, OHM, one point zero mega-ohms",
        "470 mΩ, OHM, four seven zero milli-ohms",
        "220R, OHM, two two zero ohms",
        "1 Ω, OHM, one ohm",
        "1 kΩ, OHM, one kilo-ohm",
        "1.0 Ω, OHM, one point zero ohms",
        "1.234 V, VOLT, one point two three four volts",
        "3V555, VOLT, three point five five five volts",
        "3555 mV, VOLT, three five five five millivolts",
        "−5.08 V, VOLT, minus five point zero eight volts",
        "-5.08V, VOLT, minus five point zero eight volts",
        "+5 V, VOLT, five volts",
        "60uA, AMPERE, six zero microamperes",
        "40 nA, AMPERE, four zero nanoamperes",
        "250 mW, WATT, two five zero milliwatts",
        "25 °C, CELSIUS, two five degrees Celsius",
        "1 C, CELSIUS, one degree Celsius",
        "2 %, PERCENT, two per cent",
        "30 s, SECOND, three zero seconds",
        "5 min, SECOND, five minutes",
        "1 min, SECOND, one minute",
        "25, COUNT, two five",
    })
    void theReadBackSaysTheDigitsAsTyped(String typed, Unit unit, String spoken) {
        assertEquals(spoken, Display.inWords(QuantityReader.read(typed, unit)));
    }

    @Test
    void theEndsOfARangeHaveAsManyDigitsAsEachOther() {
        assertEquals(new Display.Ends("2.830 V", "2.848 V"), Display.ends(2.83, 2.848, Unit.VOLT));
        assertEquals(new Display.Ends("46.95 Ω", "95.00 Ω"), Display.ends(46.951, 95.0, Unit.OHM));
        assertEquals(new Display.Ends("1 V", "60 V"), Display.ends(1, 60, Unit.VOLT));
        assertEquals(new Display.Ends("300 °C", "370 °C"), Display.ends(300, 370, Unit.CELSIUS));
        assertEquals(new Display.Ends("188 Ω", "417 Ω"), Display.ends(188, 417, Unit.OHM));
        assertEquals(new Display.Ends("0 Ω", "1 Ω"), Display.ends(0, 1, Unit.OHM));
        assertEquals("3 V", Display.ends(3, Double.POSITIVE_INFINITY, Unit.VOLT).low());
    }

    @Test
    void aCommaIsReadBackAsAPoint() {
        assertEquals("one point two three four volts", Display.inWords(QuantityReader.read("1,234 V", Unit.VOLT)));
    }

    @Test
    void aComputedValueIsReadBackAsItIsWritten() {
        assertEquals("three point five five five volts", Display.inWords(new Quantity(3.55486667, Unit.VOLT, "")));
        assertEquals("one point seven seven zero kilo-ohms", Display.inWords(new Quantity(1769.553, Unit.OHM, "x")));
        assertEquals("two point five", Display.inWords(new Quantity(2.5, Unit.COUNT, "2.5")));
    }

    @Test
    void typedTextThatSaysAnotherValueIsNotReadBack() {
        // As in a file that was tampered with: what counts is the value.
        assertEquals("three point three zero zero volts", Display.inWords(new Quantity(3.3, Unit.VOLT, "2.5 V")));
    }

    @Test
    void hugeValuesFromAFileCanStillBeSaid() {
        assertEquals(
                "one zero zero zero zero zero zero zero zero zero zero zero zero gigavolts",
                Display.inWords(new Quantity(1e21, Unit.VOLT, "")));
    }

    @Test
    void theCountryDoesNotChangeTheDigits() {
        for (String tag : new String[] {"de-DE", "fr-FR", "hi-IN-u-nu-deva", "ar-EG-u-nu-arab"}) {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertEquals("−1.770 kΩ", Display.of(-1769.553, Unit.OHM));
            assertEquals("3.555 V ± 0.038 V", Display.withUncertainty(3.555, 0.037775, Unit.VOLT));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.00004, 0.0 mV",
        "0.00996, 10.0 mV",
        "0.0075, 7.5 mV",
        "0.01, 10 mV",
        "0.0384, 38 mV",
        "0.9994, 999 mV",
        "1, 1.0 V",
        "1.25, 1.3 V",
        "-0.0384, -38 mV",
        "-0.0075, -7.5 mV"
    })
    void aboutHowManyMillivoltsHasNoMoreDigitsThanThat(double volts, String expected) {
        assertEquals(expected, Display.millivolts(volts));
    }
}
