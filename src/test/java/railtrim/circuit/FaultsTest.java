package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.circuit.Faults.Effect;
import railtrim.circuit.Faults.Fault;

class FaultsTest {
    private static final double UNKNOWN = Double.NaN;
    private static final double NOTHING = Double.POSITIVE_INFINITY;

    private static final Circuit FLOATING = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    private static final Circuit FEEDBACK = Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);
    private static final Supply TWELVE = new Supply(12, 1.2);
    private static final Supply FIVE = new Supply(5, 0.5);

    @ParameterizedTest
    @CsvSource({
        // LM1117 circuit on 12 V less 1.2 V; voltages by circuit simulation of each fault
        "ADDED_OPEN, 3.55487, false, false",
        "ADDED_SHORT, 1.25, false, false",
        "ADDED_WRONG_LEG, 3.830, false, true",
        "UPPER_SHORT, 10.8, true, true",
        "LOWER_OPEN, 10.8, true, true",
        "LOWER_SHORT, 1.25, false, false",
    })
    void aFloatingRegulatorFaultsAsSimulated(Fault fault, double volts, boolean towardsInput, boolean harmful) {
        assertFault(volts, towardsInput, harmful, FLOATING, 1000, TWELVE, fault);
    }

    @ParameterizedTest
    @CsvSource({
        // MIC29302 circuit on 5 V less 0.5 V; voltages by circuit simulation of each fault
        "ADDED_OPEN, 3.28607, false, false",
        "ADDED_SHORT, 1.24, false, false",
        "ADDED_WRONG_LEG, 3.388, false, true",
        "UPPER_OPEN, 4.5, true, true",
        "UPPER_SHORT, 1.24, false, false",
        "LOWER_OPEN, 1.24007, false, false",
        "LOWER_SHORT, 4.5, true, true",
    })
    void aFeedbackRegulatorFaultsAsSimulated(Fault fault, double volts, boolean towardsInput, boolean harmful) {
        assertFault(volts, towardsInput, harmful, FEEDBACK, 20_000, FIVE, fault);
    }

    @Test
    void withTheOtherLegOpenOnlyThePinCurrentIsLeftInTheAdjustedLeg() {
        // 1.25 V + 60 µA · 220 Ω = 1.2632 V, by simulation; with 1 kΩ across the leg a little less
        assertFault(1.26320, false, false, FLOATING, NOTHING, TWELVE, Fault.UPPER_OPEN);
        assertFault(1.25 + 60e-6 * 180.3279, false, false, FLOATING, 1000, TWELVE, Fault.UPPER_OPEN);
    }

    @Test
    void aNegativeRegulatorFaultsLikeAFloatingOneInMagnitude() {
        Circuit negative = Circuit.fromResistors(Place.NEGATIVE_OUT_ADJ, 1.25, 120, 365, 65e-6);
        Supply supply = new Supply(12, 1.5);
        assertFault(10.5, true, true, negative, 1000, supply, Fault.LOWER_OPEN);
        assertFault(10.5, true, true, negative, 1000, supply, Fault.UPPER_SHORT);
        assertFault(1.25, false, false, negative, 1000, supply, Fault.LOWER_SHORT);
    }

    @Test
    void aShuntReferenceFollowsTheFeedbackColumn() {
        // TL431: from memory, it follows the feedback regulators, the input being whatever feeds it
        Circuit shunt = Circuit.fromResistors(Place.SHUNT, 2.495, 10_000, 10_000, 2e-6);
        assertFault(12, true, true, shunt, NOTHING, new Supply(12, 0), Fault.UPPER_OPEN);
        assertFault(12, true, true, shunt, NOTHING, new Supply(12, 0), Fault.LOWER_SHORT);
        assertFault(2.515, false, false, shunt, NOTHING, new Supply(12, 0), Fault.LOWER_OPEN);
    }

    @Test
    void withoutTheInputVoltageAFaultTowardsItCountsAsHarmful() {
        Effect open = effect(FLOATING, 1000, null, UNKNOWN, Fault.LOWER_OPEN);
        assertEquals(OptionalDouble.empty(), open.voltage());
        assertTrue(open.towardsInput());
        assertTrue(open.harmful());
        // The wrong leg still has a figure of its own.
        assertFault(3.830, false, true, FLOATING, 1000, null, Fault.ADDED_WRONG_LEG);
    }

    @Test
    void theHighestAllowedVoltageDecidesWhatIsHarmful() {
        assertTrue(effect(FLOATING, 1000, TWELVE, 3.6, Fault.ADDED_WRONG_LEG).harmful());
        assertFalse(effect(FLOATING, 1000, TWELVE, 3.9, Fault.ADDED_WRONG_LEG).harmful());
        // A rail that already stands above its rated maximum does harm by going back to stock.
        assertTrue(effect(FLOATING, 1000, TWELVE, 3.3, Fault.ADDED_OPEN).harmful());
        assertFalse(effect(FEEDBACK, 20_000, new Supply(3.7, 0.4), 3.3, Fault.UPPER_OPEN)
                .harmful());
    }

    @Test
    void theWrongLegNeverPassesWhatTheInputAllows() {
        assertFault(10.8, true, true, FLOATING, 10, TWELVE, Fault.ADDED_WRONG_LEG);
        assertFault(10.8, true, true, FLOATING, 0, TWELVE, Fault.ADDED_WRONG_LEG);
    }

    @Test
    void everyFaultIsToldOnceInAFixedOrder() {
        List<Fault> told = Faults.table(FLOATING, 1000, TWELVE, UNKNOWN).stream()
                .map(Effect::fault)
                .toList();
        assertEquals(Arrays.asList(Fault.values()), told);
        assertEquals(
                List.of(
                        "added-open",
                        "added-short",
                        "added-wrong-leg",
                        "upper-open",
                        "upper-short",
                        "lower-open",
                        "lower-short"),
                told.stream().map(Fault::id).toList());
    }

    /** Property: what is added to the right leg can come off or short without harm, on every board. */
    @Test
    void onTheRightLegNeitherOpenNorShortIsHarmful() {
        long seed = 20260104;
        System.out.println("faults seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double added = RandomBoards.between(random, circuit.leg() / 20, circuit.leg() * 100);
            Supply supply = new Supply(circuit.stock() + 3, 1);
            List<Effect> table = Faults.table(circuit, added, supply, UNKNOWN);
            assertFalse(of(table, Fault.ADDED_OPEN).harmful(), circuit::toString);
            assertFalse(of(table, Fault.ADDED_SHORT).harmful(), circuit::toString);
            assertTrue(of(table, Fault.ADDED_WRONG_LEG).harmful(), circuit::toString);
            boolean lower = circuit.place().loweringLeg() == Leg.LOWER;
            assertTrue(of(table, lower ? Fault.LOWER_OPEN : Fault.UPPER_OPEN).harmful(), circuit::toString);
            assertTrue(of(table, lower ? Fault.UPPER_SHORT : Fault.LOWER_SHORT).harmful(), circuit::toString);
        }
    }

    private static void assertFault(
            double volts,
            boolean towardsInput,
            boolean harmful,
            Circuit circuit,
            double added,
            Supply supply,
            Fault fault) {
        Effect effect = effect(circuit, added, supply, UNKNOWN, fault);
        // The simulated figures are printed to four digits at least.
        assertEquals(volts, effect.voltage().orElseThrow(), 5e-4, effect::toString);
        assertEquals(towardsInput, effect.towardsInput(), effect::toString);
        assertEquals(harmful, effect.harmful(), effect::toString);
    }

    private static Effect effect(Circuit circuit, double added, Supply supply, double highest, Fault fault) {
        return of(Faults.table(circuit, added, supply, highest), fault);
    }

    private static Effect of(List<Effect> table, Fault fault) {
        return table.stream()
                .filter(effect -> effect.fault() == fault)
                .findFirst()
                .orElseThrow();
    }
}
