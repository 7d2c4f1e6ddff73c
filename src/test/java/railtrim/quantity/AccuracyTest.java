package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AccuracyTest {
    @ParameterizedTest
    @CsvSource({
        // Yato multimeter manual p. 12: 1.396 V, ±(0.8 % + 5) at 1 mV, printed half width 0.016168; u = a/√3 (GUM
        // 4.3.7)
        "1.396, 0.8, 5, 0.001, 0.016168, 0.009335",
        // Tektronix FAQ on accuracy: 0.5 V, ±(3 % + 5) at 10 µV, 15.05 mV
        "0.5, 3, 5, 0.00001, 0.015050, 0.008689",
        // Keithley 2701 service manual: 10 V, ±(30 ppm of reading + 5 ppm of range), 9.99965 to 10.00035
        "10, 0.003, 5, 0.00001, 0.000350, 0.000202",
        // The same formula by hand: 3.555 V, ±(0.5 % + 2) at 10 mV and at 1 mV
        "3.555, 0.5, 2, 0.01, 0.037775, 0.021809",
        "3.555, 0.5, 2, 0.001, 0.019775, 0.011417",
        // A negative rail is as uncertain as a positive one.
        "-3.555, 0.5, 2, 0.001, 0.019775, 0.011417",
        "0, 0.5, 2, 0.001, 0.002, 0.001155",
    })
    void halfWidthAndStandardUncertaintyAreThoseOfTheManuals(
            double reading, double percent, double digits, double resolution, double halfWidth, double uncertainty) {
        Accuracy accuracy = new Accuracy(percent, digits, resolution);
        assertEquals(halfWidth, accuracy.halfWidth(reading), 5e-7);
        assertEquals(uncertainty, accuracy.standardUncertainty(reading), 5e-7);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 100.1, Double.NaN, Double.POSITIVE_INFINITY})
    void anImpossiblePercentIsRefused(double percent) {
        assertRefused(() -> new Accuracy(percent, 2, 0.001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 1e6, Double.NaN})
    void impossibleDigitsAreRefused(double digits) {
        assertRefused(() -> new Accuracy(0.5, digits, 0.001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void aResolutionThatIsNoStepIsRefused(double resolution) {
        assertRefused(() -> new Accuracy(0.5, 2, resolution));
    }

    @Test
    void aPerfectMeterIsAllowed() {
        assertEquals(0, new Accuracy(0, 0, 0.001).halfWidth(5));
    }

    private static void assertRefused(Runnable made) {
        BadInput refused = assertThrows(BadInput.class, made::run);
        assertEquals("quantity.accuracy-impossible", refused.told().key());
    }

    /** 3.3 V on a 6000-count meter of ±(0.5 % + 3): 0.57 of 16.5 mV is 9.405 mV; √((9.405² + 2·1²)/3) = 5.491 mV. A whole reading has 11.26 mV. */
    @Test
    void twoReadingsNearEachOtherDifferByLessThanEitherIsOff() {
        Accuracy accuracy = new Accuracy(0.5, 3, 0.001);
        assertEquals(0.005491, accuracy.differenceUncertainty(3.3), 1e-6);
        assertEquals(0.005491, accuracy.differenceUncertainty(-3.3), 1e-6);
        assertEquals(0.011258, accuracy.standardUncertainty(3.3), 1e-6);
    }
}
