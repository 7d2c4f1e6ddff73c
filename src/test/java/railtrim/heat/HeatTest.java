package railtrim.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.heat.Heat.LoadKind;
import railtrim.heat.Heat.Powers;
import railtrim.quantity.BadInput;

class HeatTest {
    /** Computed from (Vin − V)·I and V·I with I in proportion to V; shown to four decimals. */
    @ParameterizedTest
    @CsvSource({
        "5.0, 3.3, 3.0, 2, 3.4000, 3.6364, 6.6000, 5.4545, 10.0000, 9.0909",
        "3.3, 1.8, 1.6, 2, 3.0000, 3.0222, 3.6000, 2.8444, 6.6000, 5.8667"
    })
    void aDigitalLoadGetsCoolerAndItsRegulatorHotterAboveHalfTheInput(
            double input,
            double stock,
            double target,
            double current,
            double regulatorBefore,
            double regulatorAfter,
            double loadBefore,
            double loadAfter,
            double totalBefore,
            double totalAfter) {
        Powers powers = Heat.powers(input, stock, target, current, LoadKind.DIGITAL);
        assertEquals(regulatorBefore, powers.regulatorBefore(), 5e-5);
        assertEquals(regulatorAfter, powers.regulatorAfter(), 5e-5);
        assertEquals(loadBefore, powers.loadBefore(), 5e-5);
        assertEquals(loadAfter, powers.loadAfter(), 5e-5);
        assertEquals(totalBefore - totalAfter, powers.saved(), 1e-4);
        assertTrue(powers.regulatorGetsHotter());
        assertFalse(powers.relative());
    }

    /** The same two cases with the current held: +6.95 % and +0.74 % become 4.0000 W and 3.4000 W. */
    @ParameterizedTest
    @CsvSource({"5.0, 3.3, 3.0, 2, 4.0000", "3.3, 1.8, 1.6, 2, 3.4000"})
    void withConstantCurrentTheRegulatorTakesWhatTheLoadGivesUp(
            double input, double stock, double target, double current, double regulatorAfter) {
        Powers powers = Heat.powers(input, stock, target, current, LoadKind.CONSTANT_CURRENT);
        assertEquals(regulatorAfter, powers.regulatorAfter(), 5e-5);
        assertEquals(0, powers.saved(), 1e-9);
        assertTrue(powers.regulatorGetsHotter());
    }

    /** MCP1726 data sheet DS21936C, page 19: (3.63 − 2.4375)·1 A = 1.192 W, exactly 1.1925 W. */
    @Test
    void aPublishedRegulatorLossComesOut() {
        Powers powers = Heat.powers(3.63, 2.4375, 2.4375, 1, LoadKind.DIGITAL);
        assertEquals(1.1925, powers.regulatorBefore(), 1e-9);
        assertFalse(powers.regulatorGetsHotter());
    }

    /** The loss V·(Vin − V) has its maximum at half the input: 12 V to 5 V and on to 4.5 V lies below. */
    @Test
    void belowHalfTheInputTheRegulatorGetsCoolerToo() {
        Powers powers = Heat.powers(12, 5, 4.5, 1, LoadKind.DIGITAL);
        assertEquals(7.0, powers.regulatorBefore(), 1e-9);
        assertEquals(6.75, powers.regulatorAfter(), 1e-9);
        assertFalse(powers.regulatorGetsHotter());
    }

    /** At 0.9 of the voltage a digital load takes 0.81 of its power (E = C·V² for each transition). */
    @Test
    void withoutACurrentFiguresAreMultiplesOfTheLoadsPowerBefore() {
        Powers powers = Heat.powers(5, 3, 2.7, Double.NaN, LoadKind.DIGITAL);
        assertTrue(powers.relative());
        assertEquals(1, powers.loadBefore(), 1e-12);
        assertEquals(0.81, powers.loadAfter(), 1e-12);
        assertEquals(2.0 / 3, powers.regulatorBefore(), 1e-12);
        assertEquals(0.69, powers.regulatorAfter(), 1e-12);
    }

    @Test
    void withoutAnInputVoltageOnlyTheLoadIsKnown() {
        Powers powers = Heat.powers(Double.NaN, 3.3, 3.0, 2, LoadKind.DIGITAL);
        assertEquals(5.4545, powers.loadAfter(), 5e-5);
        assertTrue(Double.isNaN(powers.regulatorAfter()));
        assertFalse(powers.regulatorGetsHotter());
    }

    /** 25 + (70 − 25)·5.4545/6.6 = 62.19 °C. */
    @Test
    void theChipsRiseAboveTheRoomGoesWithItsPower() {
        assertEquals(62.1901, Heat.temperatureAfter(25, 70, 6.6, 5.454545), 1e-4);
        assertEquals(70, Heat.temperatureAfter(25, 70, 1, 1));
        assertEquals(25, Heat.temperatureAfter(25, 70, 1, 0));
    }

    /** MCP1726 data sheet DS21936C, page 19: 1.192 W through 41 K/W makes 48.8 K (exactly 48.8925 K with 1.1925 W); here the other way round. */
    @Test
    void theThermalResistanceIsTheRiseForEachWatt() {
        assertEquals(41, Heat.thermalResistance(50, 50 + 48.8925, 1.1925), 1e-9);
        // Something colder than the room says that the thermometer is wrong, not that the sum is.
        assertEquals(-5, Heat.thermalResistance(25, 15, 2), 1e-12);
    }

    /** What one measurement implies, the other sum has to give back: half the power, half the rise. */
    @Test
    void thermalResistanceAndPredictedTemperatureAgree() {
        double resistance = Heat.thermalResistance(25, 70, 6.6);
        assertEquals(25 + resistance * 3.3, Heat.temperatureAfter(25, 70, 6.6, 3.3), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "25, 70, 0, heat.powers",
        "25, 70, -1, heat.powers",
        "25, 70, NaN, heat.powers",
        "25, 70, Infinity, heat.powers",
        "NaN, 70, 1, heat.temperatures",
        "25, Infinity, 1, heat.temperatures"
    })
    void aThermalResistanceNeedsAPowerAndTwoTemperatures(double room, double hot, double power, String key) {
        BadInput refusal = assertThrows(BadInput.class, () -> Heat.thermalResistance(room, hot, power));
        assertEquals(key, refusal.told().key());
    }

    /** By hand: a SOT-223 case at 80 °C that turns 2 W into heat through 15 K/W is at 110 °C inside; without power it is as warm as its case. */
    @Test
    void theJunctionIsWarmerThanItsCaseByPowerTimesResistance() {
        assertEquals(110, Heat.junction(80, 2, 15), 1e-12);
        assertEquals(80, Heat.junction(80, 0, 15), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "80, -0.001, 15, heat.powers",
        "80, Infinity, 15, heat.powers",
        "80, NaN, 15, heat.powers",
        "80, 2, 0, heat.powers",
        "80, 2, -15, heat.powers",
        "NaN, 2, 15, heat.temperatures"
    })
    void aJunctionEstimateNeedsAPowerAResistanceAndACase(double atCase, double watts, double resistance, String key) {
        BadInput refusal = assertThrows(BadInput.class, () -> Heat.junction(atCase, watts, resistance));
        assertEquals(key, refusal.told().key());
    }

    /** By hand, 3.3 V to 3.0 V at 2 A with 30 % leaking: 0.7·2·3.0/3.3 + 0.3·2 = 1.872727 A, 5.618182 W. */
    @Test
    void theLeakingShareOfTheCurrentDoesNotFall() {
        Powers powers = Heat.powers(5, 3.3, 3.0, 2, 0.3);
        assertEquals(5.618182, powers.loadAfter(), 1e-6);
        assertEquals(3.745455, powers.regulatorAfter(), 1e-6);
    }

    @Test
    void aShareIsFromNoneToAll() {
        assertEquals(
                "heat.leakage",
                assertThrows(BadInput.class, () -> Heat.powers(5, 3.3, 3, 2, -0.01))
                        .told()
                        .key());
        assertEquals(
                "heat.leakage",
                assertThrows(BadInput.class, () -> Heat.powers(5, 3.3, 3, 2, 1.01))
                        .told()
                        .key());
        assertEquals(6.6, Heat.powers(5, 3.3, 3.3, 2, 0).loadAfter(), 1e-12);
        assertEquals(6.0, Heat.powers(5, 3.3, 3.0, 2, 1).loadAfter(), 1e-12);
    }

    @Test
    void aRefusalSaysTheVoltagesWithTheirUnit() {
        BadInput refusal = assertThrows(BadInput.class, () -> Heat.powers(5, 3, 3.1, 1, 0));
        assertEquals(java.util.List.of("3.100 V", "3.000 V"), refusal.told().values());
        BadInput open = assertThrows(BadInput.class, () -> Heat.powers(5, 3, Double.NaN, 1, 0));
        assertEquals(java.util.List.of("NaN", "3.000 V"), open.told().values());
    }

    /** The input may be as low as the stock voltage itself: then the regulator takes nothing. */
    @Test
    void anInputAtTheStockVoltageLeavesTheRegulatorNothing() {
        assertEquals(0, Heat.powers(3.3, 3.3, 3.0, 2, 0).regulatorBefore(), 1e-12);
    }

    @Test
    void aLowerVoltageNeverHeatsTheLoad() {
        long seed = 7;
        Random random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            double stock = 0.8 + 11 * random.nextDouble();
            double target = stock * (0.5 + 0.5 * random.nextDouble());
            double input = stock + 10 * random.nextDouble();
            LoadKind kind = LoadKind.values()[random.nextInt(2)];
            Powers powers = Heat.powers(input, stock, target, 0.01 + random.nextDouble(), kind);
            String what = "seed " + seed + " case " + i;
            assertTrue(powers.loadAfter() <= powers.loadBefore() * (1 + 1e-12), what);
            assertTrue(powers.saved() >= -1e-9, what);
            // What the supply gives is what load and regulator take.
            double current = powers.loadAfter() / target;
            assertEquals(input * current, powers.loadAfter() + powers.regulatorAfter(), 1e-9, what);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "5, 0, 0, 1, heat.voltages",
        "5, 3, 3.1, 1, heat.voltages",
        "5, 3, -1, 1, heat.voltages",
        "2.9, 3, 2.5, 1, heat.input",
        "5, 3, 2.5, 0, heat.current",
        "5, 3, 2.5, -1, heat.current"
    })
    void figuresThatCannotBeAreRefusedInWords(double input, double stock, double target, double current, String key) {
        BadInput refusal =
                assertThrows(BadInput.class, () -> Heat.powers(input, stock, target, current, LoadKind.DIGITAL));
        assertEquals(key, refusal.told().key());
    }

    @Test
    void aTemperatureNeedsAPowerBefore() {
        assertThrows(BadInput.class, () -> Heat.temperatureAfter(25, 70, 0, 1));
        assertThrows(BadInput.class, () -> Heat.temperatureAfter(25, 70, 1, -1));
        assertThrows(BadInput.class, () -> Heat.temperatureAfter(Double.NaN, 70, 1, 1));
    }
}
