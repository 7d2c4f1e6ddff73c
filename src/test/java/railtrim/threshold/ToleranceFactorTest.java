package railtrim.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToleranceFactorTest {
    /** n = 10: Owen's factors for 95 % confidence, 2.3546 for 90 % and 3.9811 for 99 % coverage (printed tables: 2.355, 3.981). */
    @ParameterizedTest
    @CsvSource({"10, 0.95, 0.90, 2.3546", "10, 0.95, 0.99, 3.9811"})
    void tenRunsHaveOwensFactor(int runs, double confidence, double coverage, double factor) {
        assertEquals(factor, ToleranceFactor.oneSided(runs, confidence, coverage), 5e-5);
    }

    /** From memory of the printed tables (three decimals), the last row of the example in NIST/SEMATECH e-Handbook 7.2.6.3 by the non-central t distribution. */
    @ParameterizedTest
    @CsvSource({
        "2, 0.95, 0.99, 37.094",
        "3, 0.95, 0.99, 10.553",
        "4, 0.95, 0.99, 7.042",
        "5, 0.95, 0.99, 5.741",
        "20, 0.95, 0.99, 3.295",
        "43, 0.99, 0.90, 1.8740"
    })
    void fewRunsHaveTheFactorOfThePrintedTables(int runs, double confidence, double coverage, double factor) {
        assertEquals(factor, ToleranceFactor.oneSided(runs, confidence, coverage), 1e-3);
    }

    @Test
    void moreRunsNeedLessAndNeverLessThanTheNormalQuantile() {
        double before = Double.POSITIVE_INFINITY;
        for (int runs : new int[] {2, 3, 4, 5, 6, 8, 10, 15, 20, 50, 100, 300, 1000}) {
            double factor = ToleranceFactor.oneSided(runs, 0.95, 0.99);
            assertTrue(factor < before, runs + " runs: " + factor);
            // 99 % of a normal population lie below 2.3263 standard deviations (any table).
            assertTrue(factor > 2.3263, runs + " runs: " + factor);
            before = factor;
        }
    }

    /** What the factor promises, tried out: in 95 of 100 samples of five, mean + k·s lies above the true 99 % point. */
    @Test
    @Tag("drawn")
    void theBoundHoldsAsOftenAsPromised() {
        long seed = 1963;
        Random random = new Random(seed);
        double factor = ToleranceFactor.oneSided(5, 0.95, 0.99);
        int samples = 40_000;
        int held = 0;
        for (int i = 0; i < samples; i++) {
            double sum = 0;
            double squares = 0;
            for (int j = 0; j < 5; j++) {
                double value = random.nextGaussian();
                sum += value;
                squares += value * value;
            }
            double mean = sum / 5;
            double s = Math.sqrt((squares - 5 * mean * mean) / 4);
            if (mean + factor * s >= 2.326348) {
                held++;
            }
        }
        // Five standard deviations of a share of 0.95 in 40,000 are 0.0054.
        assertEquals(0.95, (double) held / samples, 0.0055, "seed " + seed);
    }

    /** At half coverage and half confidence the bound is about the mean; two values at 99.9 % both know next to nothing. */
    @Test
    void theEndsOfTheRangeBelongToIt() {
        assertEquals(0, ToleranceFactor.oneSided(1000, 0.5, 0.5), 1e-3);
        assertTrue(ToleranceFactor.oneSided(2, 0.999, 0.999) > 1000);
    }

    @ParameterizedTest
    @CsvSource({"1, 0.95, 0.99", "10, 1.0, 0.99", "10, 0.95, 0.4", "1001, 0.95, 0.99"})
    void outsideItsRangeThereIsNoFactor(int runs, double confidence, double coverage) {
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSided(runs, confidence, coverage));
    }
}
