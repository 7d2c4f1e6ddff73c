package railtrim.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureCommandsTest {
    @ParameterizedTest
    @CsvSource({
        // IEC 60063 by rule and exceptions: neighbours in the clean table
        "E96, 237.2, 237, 237, 243",
        "E24, 693.86, 680, 680, 750",
        "E12, 10151.5, 10000, 10000, 12000",
        "E24, 4k7, 4700, 4700, 4700",
        "E192, 919R, 909, 920, 920",
        "e3, 30R, 22, 22, 47",
    })
    void preferredValuesRoundAValue(String series, String near, double below, double nearest, double above) {
        Ran ran = Ran.line("preferred --json --series " + series + " --near " + near);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(below, ran.number("below"), 1e-9);
        assertEquals(nearest, ran.number("nearest"), 1e-9);
        assertEquals(above, ran.number("above"), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        // (Vin − V)·I and V·I, worked out by hand
        "digital, 5V, 3.3V, 3.0V, 6.6000, 5.4545, 3.4000, 3.6364",
        "digital, 3.3V, 1.8V, 1.6V, 3.6000, 2.8444, 3.0000, 3.0222",
        "constant-current, 5V, 3.3V, 3.0V, 6.6, 6.0, 3.4, 4.0",
    })
    void heatMovesFromTheChipToTheRegulator(
            String load,
            String input,
            String stock,
            String target,
            double before,
            double after,
            double was,
            double is) {
        Ran ran = Ran.of(
                "heat",
                "--json",
                "--current",
                "2A",
                "--input",
                input,
                "--stock",
                stock,
                "--target",
                target,
                "--load",
                load);
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(before, ran.number("loadBefore"), 5e-5);
        assertEquals(after, ran.number("loadAfter"), 5e-5);
        assertEquals(was, ran.number("regulatorBefore"), 5e-5);
        assertEquals(is, ran.number("regulatorAfter"), 5e-5);
        assertTrue(ran.json().get("regulatorGetsHotter").getAsBoolean());
    }

    @Test
    void theChipsTemperatureFallsWithItsPower() {
        Ran ran = Ran.line("heat --json --input 5V --stock 3.3V --target 3.0V --current 2A --ambient 25C --chip 70C");
        // 25 + 45 · (3.0/3.3)², the current in proportion to the voltage
        assertEquals(25 + 45 * Math.pow(3.0 / 3.3, 2), ran.number("chipAfter"), 1e-9);
    }

    @Test
    void withoutACurrentPowersAreMultiples() {
        Ran ran = Ran.line("heat --json --input 5V --stock 3.3V --target 2.97V");
        assertTrue(ran.json().get("relative").getAsBoolean());
        // 0.9 of the voltage is 0.81 of the power
        assertEquals(0.81, ran.number("loadAfter") / ran.number("loadBefore"), 1e-9);
        assertFalse(ran.json().has("chipAfter"));
    }

    @ParameterizedTest
    @CsvSource({
        // Yato manual p12 (printed 0.016168); Tektronix FAQ (15.05 mV); the last two worked out by the same sum
        "1.396V, 0.8%, 5, 1mV, 0.016168, 0.009335",
        "0.5V, 3%, 5, 10uV, 0.015050, 0.008689",
        "3.555V, 0.5%, 2, 10mV, 0.037775, 0.021809",
        "3.555V, 0.5%, 2, 1mV, 0.019775, 0.011417",
        // ohms by the same sum: 0.8 % of 220 and two counts of 0.1
        "220R, 0.8%, 2, 0.1R, 1.96, 1.131607",
    })
    void aReadingCanBeOffByThePercentageAndTheDigits(
            String reading, String rdg, String digits, String resolution, double half, double standard) {
        Ran ran = Ran.of("accuracy", reading, "--rdg", rdg, "--digits", digits, "--resolution", resolution, "--json");
        assertEquals(0, ran.exit(), ran.err());
        assertEquals(half, ran.number("halfWidth"), 5e-7);
        assertEquals(standard, ran.number("standardUncertainty"), 1e-6);
    }
}
