package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows as hand meters' manuals print them; the figures are of common meters, from memory, except where a manual is named. */
class RangeRowTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "6 V 1 mV ±(0.5 % + 3); VOLT; 5.999; 0.5; 3; 0.001",
                "6.000V 0.001V 0.5%+3; VOLT; 5.999; 0.5; 3; 0.001",
                "600mV, 0.1 mV, ±(0.5% of reading + 3 digits); VOLT; 0.5999; 0.5; 3; 0.0001",
                "20V | 10mV | ±0.5%rdg ± 2dgt; VOLT; 19.99; 0.5; 2; 0.01",
                "5.999 V 1 mV ±(0,5 % + 3); VOLT; 5.999; 0.5; 3; 0.001",
                "4 V, 1mV, (0.8% + 1); VOLT; 3.999; 0.8; 1; 0.001",
                "20 V 10 mV +/-(0.5 % + 2); VOLT; 19.99; 0.5; 2; 0.01",
                // Holdpeak 39B manual 6-5: 200 Ω range ±(1.0 % + 3)
                "200 Ω 0.1 Ω ±(1.0 % + 3); OHM; 199.9; 1.0; 3; 0.1",
                "200R 0.1R 1.0%+3; OHM; 199.9; 1.0; 3; 0.1",
                "6 kΩ 1 Ω 0.9 % + 2; OHM; 5999; 0.9; 2; 1",
                "20k 10 ohm 0.8%rdg+2d; OHM; 19990; 0.8; 2; 10",
                "2 MΩ, 1 kΩ, ±(1 % + 2); OHM; 1999000; 1; 2; 1000",
            })
    void aRowIsReadAsManualsPrintIt(
            String text, Unit unit, double fullScale, double percent, double digits, double resolution) {
        Meter.Range range = RangeRow.read(text, unit);
        assertEquals(fullScale, range.fullScale(), fullScale * 1e-9);
        assertEquals(percent, range.accuracy().percent(), 1e-12);
        assertEquals(digits, range.accuracy().digits(), 0);
        assertEquals(resolution, range.accuracy().resolution(), resolution * 1e-9);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "6 V",
                "6 V 1 mV",
                "6 V 0.5 % + 3",
                "±(0.5 % + 3)",
                "6 V 1 mV 0.5 + 3",
                "6 V 1 mV 0.5 %",
                "nothing odd"
            })
    void aRowWithAPieceMissingIsRefusedWithAnExample(String text) {
        BadInput refused = assertThrows(BadInput.class, () -> RangeRow.read(text, Unit.VOLT));
        assertEquals("quantity.range-row", refused.told().key());
        assertTrue(refused.told().values().get(1).contains("V"));
    }

    @Test
    void aRangeThatDoesNotGoWithItsLastDigitIsRefused() {
        BadInput coarse = assertThrows(BadInput.class, () -> RangeRow.read("6 V 100 mV ±(0.5 % + 3)", Unit.VOLT));
        assertEquals("quantity.range-steps", coarse.told().key());
        BadInput fine = assertThrows(BadInput.class, () -> RangeRow.read("600 V 1 µV ±(0.5 % + 3)", Unit.VOLT));
        assertEquals("quantity.range-steps", fine.told().key());
        assertEquals(
                0.1,
                RangeRow.read("19.9 V 0.1 V ±(1 % + 1)", Unit.VOLT).accuracy().resolution(),
                1e-12);
    }

    @Test
    void aRowOfOhmsIsNoneOfVolts() {
        assertThrows(BadInput.class, () -> RangeRow.read("600 Ω 0.1 Ω ±(0.9 % + 2)", Unit.VOLT));
        assertThrows(BadInput.class, () -> RangeRow.read("6 V 1 mV ±(0.9 % + 2)", Unit.OHM));
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 V 1 mV ±(25 % + 3)", "6 V 1 mV ±(0.5 % + 2000)"})
    void anAccuracyNoMeterHasIsRefused(String text) {
        BadInput refused = assertThrows(BadInput.class, () -> RangeRow.read(text, Unit.VOLT));
        assertEquals("quantity.accuracy-impossible", refused.told().key());
    }

    @Test
    void aRowIsWrittenSoThatItReadsBackTheSame() {
        assertEquals(
                "6 V, 1 mV, ±(0.5 % + 3)",
                RangeRow.written(RangeRow.read("6.000V 0.001V 0.5%+3", Unit.VOLT), Unit.VOLT));
        for (Meter meter : List.of(Meter.basic(), Meter.middle(), Meter.fine())) {
            for (Meter.Range range : meter.volts()) {
                assertSame(range, RangeRow.read(RangeRow.written(range, Unit.VOLT), Unit.VOLT));
            }
            for (Meter.Range range : meter.ohms()) {
                assertSame(range, RangeRow.read(RangeRow.written(range, Unit.OHM), Unit.OHM));
            }
        }
    }

    private static void assertSame(Meter.Range one, Meter.Range other) {
        assertEquals(one.fullScale(), other.fullScale(), one.fullScale() * 1e-9);
        assertEquals(one.accuracy().percent(), other.accuracy().percent(), 1e-12);
        assertEquals(one.accuracy().digits(), other.accuracy().digits(), 0);
        assertEquals(
                one.accuracy().resolution(),
                other.accuracy().resolution(),
                one.accuracy().resolution() * 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "1.50 V, VOLT, 0.01",
        "1.500V, VOLT, 0.001",
        "1500 mV, VOLT, 0.001",
        "3V555, VOLT, 0.001",
        "12 V, VOLT, 1",
        "4k7, OHM, 100",
        "4.70 kΩ, OHM, 10",
        "220.0 Ω, OHM, 0.1",
    })
    void theLastDigitIsTheLastPlaceThatWasTyped(String text, Unit unit, double expected) {
        assertEquals(expected, QuantityReader.lastDigit(text, unit), expected * 1e-9);
    }
}
