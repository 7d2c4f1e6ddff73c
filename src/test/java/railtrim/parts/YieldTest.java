package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.parts.Boards.floating;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.parts.Resistors.Arrangement;
import railtrim.parts.Resistors.Candidate;

class YieldTest {
    private static final long SEED = 2019;

    private static RandomGenerator chance() {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
    }

    private static Candidate of(Arrangement arrangement, Double... values) {
        return new Candidate(List.of(values), arrangement, 0, floating().magnitude(700), 0, 0, 0);
    }

    private static Yield drawn(Candidate candidate, double tolerance, double leg, double low, double high) {
        return Yield.of(floating(), leg, candidate, tolerance, low, high, 200_000, chance());
    }

    /** Uniform ±1 % of 1 kΩ is 10/√3 Ω; with 0.3407 mV/Ω (x·R²/(R+Rt)², computed) 1.967 mV. */
    @Test
    void theSpreadOfASingleResistorIsThatOfItsToleranceTimesItsSensitivity() {
        Yield yield = drawn(of(Arrangement.SINGLE, 1000.0), 0.01, 0, 0, 9);
        assertEquals(3.139235, yield.mean(), 2e-5, "seed " + SEED);
        assertEquals(floating().sensitivity(1000) * 10 / Math.sqrt(3), yield.deviation(), 1e-5, "seed " + SEED);
        assertEquals(1, yield.inside());
    }

    /** Half of all uniform resistors lie above their nominal value, and so does the output. */
    @Test
    void aLimitAtTheNominalVoltageLosesHalf() {
        double nominal = floating().magnitude(1000);
        assertEquals(
                0.5, drawn(of(Arrangement.SINGLE, 1000.0), 0.01, 0, nominal, 9).inside(), 0.005);
        assertEquals(
                0.5, drawn(of(Arrangement.SINGLE, 1000.0), 0.01, 0, 0, nominal).inside(), 0.005);
        assertEquals(0, drawn(of(Arrangement.SINGLE, 1000.0), 0.01, 0, 3.2, 9).inside());
    }

    /** Every arrangement with no tolerance is the circuit’s own voltage: 1.5 kΩ and so on by hand. */
    @ParameterizedTest
    @CsvSource({
        "SERIES, 470, 220, 0, 690",
        "SERIES, 470, 220, 10, 700",
        "PARALLEL, 1000, 1000, 0, 500",
        "PARALLEL, 1500, 1500, 1500, 500",
        "SERIES_PARALLEL, 1000, 1000, 1000, 1500",
        "PARALLEL_SERIES, 1000, 500, 500, 500"
    })
    void everyArrangementAddsUp(Arrangement arrangement, double a, double b, double c, double ohms) {
        Candidate candidate = c == 0 ? of(arrangement, a, b) : of(arrangement, a, b, c);
        Yield yield = drawn(candidate, 0, 0, 0, 9);
        assertEquals(floating().magnitude(ohms), yield.mean(), 1e-9);
        assertEquals(0, yield.deviation(), 1e-6);
    }

    /** Two equal parts in series scatter 1/√2 as much as one of twice the value, whatever the leg. */
    @Test
    void twoPartsAverageTheirErrors() {
        double one = drawn(of(Arrangement.SINGLE, 1000.0), 0.05, 0, 0, 9).deviation();
        double two = drawn(of(Arrangement.SERIES, 500.0, 500.0), 0.05, 0, 0, 9).deviation();
        assertEquals(1 / Math.sqrt(2), two / one, 0.01, "seed " + SEED);
        assertTrue(drawn(of(Arrangement.SINGLE, 1000.0), 0.05, 5, 0, 9).deviation() > one);
    }

    @Test
    void noDrawnBoardLiesOutsideTheWorstCase() {
        Resistors.Wish wish = new Resistors.Wish(3.0, 2.9, 0.05, 3);
        for (Candidate candidate : Resistors.choose(floating(), 3, wish, Series.E12)) {
            Yield yield = Yield.of(
                    floating(),
                    3,
                    candidate,
                    0.05,
                    candidate.lowest() - 1e-9,
                    candidate.highest() + 1e-9,
                    5_000,
                    chance());
            assertEquals(1, yield.inside(), candidate + " seed " + SEED);
        }
    }

    // ---- power ----

    /** P(T) = P70·(155 − T)/85: 0.1 W at 100 °C is 0.064706 W (computed). */
    @Test
    void aHotPartTakesLess() {
        assertEquals(0.064706, Packages.CHIP_0805.powerAt(100), 5e-7);
        assertEquals(0.1, Packages.CHIP_0805.powerAt(70));
        assertEquals(0.1, Packages.CHIP_0805.powerAt(25));
        assertEquals(0, Packages.CHIP_0805.powerAt(155));
        assertEquals(0, Packages.CHIP_0805.powerAt(200));
    }

    /** Half of the rating (common practice): 0.0625 W for 0402 and 0603, 0.1 W 0805 and so on; thick film, makers’ standard ratings. */
    @ParameterizedTest
    @CsvSource({
        "0.004, 2, 70, 0402, 0204",
        "0.03125, 2, 70, 0402, 0204",
        "0.0313, 2, 70, 0805, 0204",
        "0.004, 60, 70, 0603, 0204",
        "0.06, 2, 70, 1206, 0204",
        "0.2, 2, 70, 2010, 0204",
        "0.25, 2, 70, 2010, 0207",
        "0.5, 2, 70, 2512, –",
        "0.6, 2, 70, –, –",
        "0.03, 2, 112.5, 1206, 0204",
        "0.004, 2, 160, –, –",
        "0.004, 250, 70, 2010, 0207"
    })
    void theSmallestSizeIsUsedToHalf(double watts, double volts, double ambient, String chip, String leaded) {
        assertEquals(chip, id(Packages.smallestChip(watts, volts, ambient)));
        assertEquals(leaded, id(Packages.smallestLeaded(watts, volts, ambient)));
    }

    /** Chips: standard ratings of thick film at 70 °C (RND series). Leaded: MRS16 and MRS25 (Vishay 28724). */
    @ParameterizedTest
    @CsvSource({
        "CHIP_0402, 0.0625",
        "CHIP_0603, 0.0625",
        "CHIP_0805, 0.1",
        "CHIP_1206, 0.125",
        "CHIP_1210, 0.25",
        "CHIP_2010, 0.5",
        "CHIP_2512, 1",
        "LEADED_0204, 0.4",
        "LEADED_0207, 0.6",
    })
    void eachSizeTakesWhatItsMakersState(Packages size, double watts) {
        assertEquals(watts, size.ratedPower(), 1e-12);
    }

    private static String id(Optional<Packages> size) {
        return size.map(Packages::id).orElse("–");
    }
}
