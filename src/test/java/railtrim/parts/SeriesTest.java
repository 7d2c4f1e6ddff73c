package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.quantity.BadInput;

class SeriesTest {
    /** Sums of all significands, computed from clean copies of the tables of IEC 60063:2015. */
    @ParameterizedTest
    @CsvSource({"E24, 901", "E48, 18313", "E96, 37070", "E192, 74599"})
    void theSignificandsAddUpToTheSumOfTheStandardsTable(Series series, int sum) {
        assertEquals(sum, IntStream.of(series.significands()).sum());
        assertEquals(series.steps(), series.significands().length);
    }

    /** IEC 60063, the table everybody has on the wall. */
    @Test
    void theTwelveCommonValuesAreTheTwelveCommonValues() {
        assertArrayEquals(new int[] {10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82}, Series.E12.significands());
        assertArrayEquals(new int[] {10, 15, 22, 33, 47, 68}, Series.E6.significands());
        assertArrayEquals(new int[] {10, 22, 47}, Series.E3.significands());
    }

    /** IEC 60063: the eight values of E24 that the rule does not give, and the one of E192. */
    @Test
    void theExceptionsOfTheStandardAreKept() {
        for (int value : new int[] {27, 30, 33, 36, 39, 43, 47, 82}) {
            assertTrue(Arrays.binarySearch(Series.E24.significands(), value) >= 0, "E24 has " + value);
        }
        assertTrue(Arrays.binarySearch(Series.E192.significands(), 920) >= 0);
        assertFalse(Arrays.binarySearch(Series.E192.significands(), 919) >= 0);
    }

    /** Public copies of the table that are wrong have 297, 491 and 959. */
    @Test
    void misprintsOfPublicCopiesAreNotIn() {
        for (int value : new int[] {297, 491, 959}) {
            assertFalse(Arrays.binarySearch(Series.E192.significands(), value) >= 0, "E192 has no " + value);
        }
        for (int value : new int[] {298, 499, 953}) {
            assertTrue(Arrays.binarySearch(Series.E96.significands(), value) >= 0
                    || Arrays.binarySearch(Series.E192.significands(), value) >= 0);
        }
    }

    /** IEC 60063: E24 is not a subset of E96; these eighteen are missing there. */
    @Test
    void eighteenCommonValuesAreMissingInTheOnePerCentSeries() {
        int[] missing = IntStream.of(Series.E24.significands())
                .map(value -> value * 10)
                .filter(value -> Arrays.binarySearch(Series.E96.significands(), value) < 0)
                .toArray();
        assertArrayEquals(
                new int[] {120, 160, 180, 220, 240, 270, 300, 330, 360, 390, 430, 470, 510, 560, 620, 680, 820, 910},
                missing);
    }

    @ParameterizedTest
    @EnumSource(Series.class)
    void significandsRise(Series series) {
        int[] values = series.significands();
        for (int i = 1; i < values.length; i++) {
            assertTrue(values[i] > values[i - 1]);
        }
    }

    /** The two neighbours in the E96 table; 237/237.2 is nearer than 243/237.2. */
    @Test
    void neighboursOfAComputedValueAreFound() {
        assertEquals(new Series.Near(237, 237, 243), Series.E96.near(237.2));
        assertEquals(new Series.Near(3.3, 3.3, 4.7), Series.E6.near(3.5));
    }

    /** Between 10 and 22 the ratio decides: the middle is √220 = 14.83. */
    @Test
    void nearestIsByRatio() {
        assertEquals(10, Series.E3.near(14.8).nearest());
        assertEquals(22, Series.E3.near(14.9).nearest());
    }

    @Test
    void aboveTheLastOfADecadeComesTheFirstOfTheNext() {
        assertEquals(new Series.Near(910, 1000, 1000), Series.E24.near(980));
        assertEquals(new Series.Near(9.88, 9.88, 10), Series.E192.near(9.89));
    }

    @ParameterizedTest
    @EnumSource(Series.class)
    void aPreferredValueIsItsOwnNeighbourInEveryDecade(Series series) {
        double[] all = series.between(0.1, 1e7);
        assertEquals(8 * series.steps() + 1, all.length);
        for (double value : all) {
            assertEquals(new Series.Near(value, value, value), series.near(value));
            assertTrue(series.contains(value));
        }
    }

    @Test
    void betweenTakesBothEnds() {
        assertArrayEquals(new double[] {4700, 10_000, 22_000}, Series.E3.between(4700, 22_000));
        assertArrayEquals(new double[] {0.47, 1, 2.2}, Series.E3.between(0.47, 2.2));
        assertEquals(0, Series.E3.between(11, 12).length);
        assertEquals(0, Series.E3.between(22, 10).length);
    }

    @Test
    void anyValueLiesBetweenItsNeighbours() {
        long seed = 60063;
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            double value = Math.pow(10, random.nextDouble() * 8 - 1);
            Series series = Series.values()[random.nextInt(Series.values().length)];
            Series.Near near = series.near(value);
            String what = "seed " + seed + ", " + series + " near " + value + ": " + near;
            assertTrue(near.below() <= value * (1 + 1e-9) && value <= near.above() * (1 + 1e-9), what);
            assertTrue(near.nearest() == near.below() || near.nearest() == near.above(), what);
            assertTrue(series.between(near.below(), near.above()).length <= 2, what);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e14, 1e-6})
    void whatIsNoResistanceHasNoPreferredValue(double value) {
        assertThrows(BadInput.class, () -> Series.E24.near(value));
        assertThrows(BadInput.class, () -> Series.E24.between(value, 1000));
        assertThrows(BadInput.class, () -> Series.E24.between(1000, value));
    }

    /** 470 is in E24 and in none of the one per cent series, 475 the other way round (IEC 60063). */
    @Test
    void aValueBelongsToTheSeriesItIsPrintedIn() {
        assertTrue(Series.E24.contains(470));
        assertTrue(Series.E24.contains(4.7e6));
        assertFalse(Series.E24.contains(475));
        assertTrue(Series.E96.contains(475));
        assertFalse(Series.E96.contains(470));
        assertFalse(Series.E24.contains(470.001));
    }
}
