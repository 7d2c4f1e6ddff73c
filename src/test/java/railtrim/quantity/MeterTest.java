package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterTest {
    @ParameterizedTest
    @CsvSource({
        // 2000 counts: a reading of 1.999 still fits the range called 2, one of 2.00 does not (common practice, no
        // source).
        "0.1999, 0.0001",
        "0.2, 0.001",
        "1.999, 0.001",
        "2.0, 0.01",
        "3.555, 0.01",
        "-3.555, 0.01",
        "19.99, 0.01",
        "20, 0.1",
        "5000, 0.1",
        "0, 0.0001",
    })
    void aPlainMeterShowsVoltsOnTheSmallestRangeThatHoldsThem(double reading, double resolution) {
        assertEquals(resolution, Meter.basic().voltsAt(reading).resolution(), resolution * 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // Holdpeak 39B manual 6-5: 200 Ω range ±(1.0 % + 3)
        "128, 1.0, 3, 0.1",
        "199.9, 1.0, 3, 0.1",
        // Elenco M-1000D manual: ±(0.8 % + 2), 2 MΩ ±(1 % + 2)
        "220, 0.8, 2, 1",
        "4700, 0.8, 2, 10",
        "150000, 0.8, 2, 100",
        "470000, 1.0, 2, 1000",
        "10000000, 1.0, 2, 1000",
    })
    void aPlainMeterHasTheOhmAccuracyOfTheManuals(double reading, double percent, double digits, double resolution) {
        Accuracy accuracy = Meter.basic().ohmsAt(reading);
        assertEquals(new Accuracy(percent, digits, accuracy.resolution()), accuracy);
        assertEquals(resolution, accuracy.resolution(), resolution * 1e-9);
    }

    @Test
    void aCoreRailAboveTwoVoltsIsReadBetterByEachBetterMeter() {
        // Above 2 V a plain meter is down to steps of 10 mV.
        for (double volts : new double[] {2.05, 2.6, 3.3, 5}) {
            double basic = Meter.basic().voltsAt(volts).halfWidth(volts);
            double middle = Meter.middle().voltsAt(volts).halfWidth(volts);
            double fine = Meter.fine().voltsAt(volts).halfWidth(volts);
            assertTrue(fine < middle && middle < basic, volts + " V: " + fine + " " + middle + " " + basic);
        }
    }

    @Test
    void aMiddleMeterReadsACoreRailToAMillivolt() {
        // From memory: 6000 counts, ±(0.5 % + 3). 3.555 V on the 6 V range: 0.017775 + 0.003.
        assertEquals(0.020775, Meter.middle().voltsAt(3.555).halfWidth(3.555), 1e-9);
        assertEquals(0.9 / 100 * 220 + 0.2, Meter.middle().ohmsAt(220).halfWidth(220), 1e-9);
    }

    @Test
    void aFineMeterReadsACoreRailToATenthOfAMillivolt() {
        // From memory: 50,000 counts, ±(0.05 % + 5) and ±(0.1 % + 5).
        assertEquals(0.0017775 + 0.0005, Meter.fine().voltsAt(3.555).halfWidth(3.555), 1e-9);
        assertEquals(0.22 + 0.05, Meter.fine().ohmsAt(220).halfWidth(220), 1e-9);
    }

    @Test
    void aTypedMeterHasTheAccuracyThatWasTyped() {
        Meter meter = Meter.typed(6000, 0.7, 4, 1.2, 5);
        assertEquals("typed", meter.id());
        assertEquals(0.007 * 3.3 + 0.004, meter.voltsAt(3.3).halfWidth(3.3), 1e-12);
        assertEquals(0.012 * 128 + 0.5, meter.ohmsAt(128).halfWidth(128), 1e-12);
    }

    /** The same line of a manual means ten times the volts where the last place is ten times as large: 3.30 V on 20 V, 1.500 V on 2 V, 128.0 Ω on 200 Ω. */
    @Test
    void theDigitsOfATypedMeterAreCountsOfItsOwnLastPlace() {
        Meter meter = Meter.typed(2000, 0.7, 4, 1.2, 5);
        assertEquals(0.007 * 3.3 + 0.04, meter.voltsAt(3.3).halfWidth(3.3), 1e-12);
        assertEquals(0.007 * 1.5 + 0.004, meter.voltsAt(1.5).halfWidth(1.5), 1e-12);
        assertEquals(0.012 * 128 + 0.5, meter.ohmsAt(128).halfWidth(128), 1e-12);
        assertEquals(
                Meter.fine().voltsAt(3.3), Meter.typed(50_000, 0.05, 5, 0.1, 5).voltsAt(3.3));
    }

    @Test
    void anImpossibleTypedAccuracyIsRefused() {
        BadInput refused = assertThrows(BadInput.class, () -> Meter.typed(6000, -1, 2, 1, 2));
        assertEquals("quantity.accuracy-impossible", refused.told().key());
    }

    @Test
    void aMeterWithoutRangesCannotBeMade() {
        List<Meter.Range> volts = Meter.basic().volts();
        assertThrows(IllegalArgumentException.class, () -> new Meter("typed", volts, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Meter("typed", List.of(), volts));
    }

    private static Meter ofRows() {
        return Meter.ofRanges(
                List.of(
                        RangeRow.read("20 V 10 mV ±(0.8 % + 3)", Unit.VOLT),
                        RangeRow.read("2 V 1 mV ±(0.5 % + 2)", Unit.VOLT)),
                List.of(
                        RangeRow.read("200 Ω 0.1 Ω ±(1.0 % + 3)", Unit.OHM),
                        RangeRow.read("2 kΩ 1 Ω ±(0.8 % + 2)", Unit.OHM)));
    }

    /** Worked out by hand from the rows: 0.5 % of 1.5 V and 2 mV; 0.8 % of 3.3 V and 30 mV. */
    @Test
    void eachReadingHasTheAccuracyOfItsOwnRange() {
        assertEquals(0.0095, ofRows().voltsAt(1.5).halfWidth(1.5), 1e-12);
        assertEquals(0.0564, ofRows().voltsAt(3.3).halfWidth(3.3), 1e-12);
        assertEquals(1.58, ofRows().ohmsAt(128).halfWidth(128), 1e-12);
        assertEquals(3.76, ofRows().ohmsAt(220).halfWidth(220), 1e-12);
        assertEquals("rows", ofRows().id());
    }

    /** 1.50 V was read on the 20 V range: 0.8 % of it and 30 mV. 1.5000 V is from no range of this meter. */
    @Test
    void theLastDigitTellsTheRangeAReadingWasTakenOn() {
        assertEquals(0.042, ofRows().voltsAt(1.5, 0.01).halfWidth(1.5), 1e-12);
        assertEquals(0.0095, ofRows().voltsAt(1.5, 0.001).halfWidth(1.5), 1e-12);
        assertEquals(ofRows().voltsAt(1.5), ofRows().voltsAt(1.5, 0.0001));
        assertEquals(ofRows().voltsAt(3.3), ofRows().voltsAt(3.3, 0.001), "the 2 V range does not hold it");
        assertEquals(0.8, ofRows().ohmsAt(128, 1).percent(), 0);
    }

    @Test
    void aKindWithoutRowsIsReadAsByAPlainMeter() {
        Meter volts = Meter.ofRanges(List.of(RangeRow.read("6 V 1 mV ±(0.5 % + 3)", Unit.VOLT)), List.of());
        assertEquals(Meter.basic().ohmsAt(128), volts.ohmsAt(128));
        Meter ohms = Meter.ofRanges(List.of(), List.of(RangeRow.read("6 kΩ 1 Ω 0.9 % + 2", Unit.OHM)));
        assertEquals(Meter.basic().voltsAt(3.3), ohms.voltsAt(3.3));
    }

    /** 30 kΩ on a 200 kΩ range nobody copied: 0.8 % and two steps of 100 Ω, as on the 2 kΩ range before it with two steps of 1 Ω. */
    @Test
    void aboveTheLastRowTheMeterCountsAsOnItWithALargerLastDigit() {
        assertEquals(0.008 * 30_000 + 200, ofRows().ohmsAt(30_000).halfWidth(30_000), 1e-6);
        assertEquals(0.008 * 30 + 0.3, ofRows().voltsAt(30).halfWidth(30), 1e-9);
    }
}
