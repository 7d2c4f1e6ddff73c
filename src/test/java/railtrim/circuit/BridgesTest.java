package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import railtrim.circuit.Bridges.Bridge;
import railtrim.job.BuiltIn;

class BridgesTest {
    /** LM1117 120/220 Ω, 60 µA (SNOS412Q 8.1) and MIC29302 1.65 k/1 k, 40 nA (DS20006068A). */
    private static final Circuit FLOATING = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);

    private static final Circuit FEEDBACK = Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);

    private static final List<PinRole> OF_1117 = List.of(PinRole.ADJUST, PinRole.OUTPUT, PinRole.INPUT, PinRole.OUTPUT);
    private static final List<PinRole> OF_29302 =
            List.of(PinRole.ENABLE, PinRole.INPUT, PinRole.GROUND, PinRole.OUTPUT, PinRole.ADJUST, PinRole.GROUND);

    private static List<Bridge> of1117(Supply supply) {
        return Bridges.table(FLOATING, Outline.SOT_223, OF_1117, supply, Double.NaN);
    }

    @Test
    void onThe1117AdjustAndOutputAreNeighboursAndBridgingThemGivesTheInputLessTheDropout() {
        Bridge adjustOutput = of1117(new Supply(12, 1.2)).get(0);
        assertEquals(1, adjustOutput.first());
        assertEquals(2, adjustOutput.second());
        // By circuit simulation of the output–adjust resistor shorted: 10.8000 V
        assertEquals(10.8, adjustOutput.voltage().orElseThrow(), 1e-9);
        assertTrue(adjustOutput.towardsInput());
        assertTrue(adjustOutput.harmful());
    }

    @Test
    void onAFivePinFeedbackTypeOutputAndAdjustBridgedGiveTheReference() {
        List<Bridge> bridges = Bridges.table(FEEDBACK, Outline.TO_263_5, OF_29302, new Supply(5, 0.5), Double.NaN);
        assertEquals(4, bridges.size());
        Bridge outputAdjust = bridges.get(3);
        assertEquals(1.24, outputAdjust.voltage().orElseThrow(), 1e-9);
        assertFalse(outputAdjust.harmful());
        // Enable tied to the input leaves the part on, as most boards do anyway.
        assertFalse(bridges.get(0).harmful());
        // Input to ground and ground to output are dead shorts.
        assertEquals(OptionalDouble.of(0), bridges.get(1).voltage());
        assertTrue(bridges.get(1).harmful());
        assertTrue(bridges.get(2).harmful());
    }

    @Test
    void groundBridgedToTheFeedbackPinGivesTheInputLessTheDropout() {
        // TI SFFS315: feedback shorted to ground gives the input less the dropout
        List<PinRole> roles =
                List.of(PinRole.INPUT, PinRole.OUTPUT, PinRole.NOT_CONNECTED, PinRole.ADJUST, PinRole.GROUND);
        Bridge bridge = Bridges.table(FEEDBACK, Outline.SOT_23_5, roles, new Supply(5, 0.5), Double.NaN)
                .get(2);
        assertEquals(4, bridge.first());
        assertEquals(4.5, bridge.voltage().orElseThrow(), 1e-9);
        assertTrue(bridge.harmful());
    }

    @Test
    void outputBridgedToInputLetsTheWholeInputThrough() {
        Bridge bridge = of1117(new Supply(12, 1.2)).get(1);
        assertEquals(12, bridge.voltage().orElseThrow(), 1e-9);
        assertTrue(bridge.harmful());
    }

    @Test
    void withoutAnInputVoltageWhatGoesTowardsItHasNoFigureAndIsHarmful() {
        for (Bridge bridge : of1117(null)) {
            assertEquals(OptionalDouble.empty(), bridge.voltage());
            assertTrue(bridge.towardsInput());
            assertTrue(bridge.harmful());
        }
    }

    @Test
    void aNegativeRegulatorsAdjustAndInputBridgedDriveItFullyOn() {
        Circuit negative = Circuit.fromResistors(Place.NEGATIVE_OUT_ADJ, 1.25, 120, 365, 65e-6);
        List<PinRole> roles = List.of(PinRole.ADJUST, PinRole.INPUT, PinRole.OUTPUT, PinRole.INPUT);
        Bridge bridge = Bridges.table(negative, Outline.TO_220, roles, new Supply(12, 1.5), Double.NaN)
                .get(0);
        assertEquals(10.5, bridge.voltage().orElseThrow(), 1e-9);
        assertTrue(bridge.harmful());
    }

    @Test
    void whatCannotBeToldCountsAsHarmful() {
        List<PinRole> roles = List.of(PinRole.ADJUST, PinRole.SWITCH, PinRole.INPUT);
        Bridge bridge = Bridges.table(FEEDBACK, Outline.TO_92, roles, new Supply(5, 0.5), Double.NaN)
                .get(0);
        assertEquals(OptionalDouble.empty(), bridge.voltage());
        assertTrue(bridge.harmful());
    }

    /** A switch pin at ground is a dead short of the coil’s drive, at the input the input comes through whole; enable at ground switches off. */
    @Test
    void whatASwitchAndAnEnablePinDo() {
        assertBridge(PinRole.SWITCH, PinRole.GROUND, OptionalDouble.of(0), true);
        assertBridge(PinRole.INPUT, PinRole.SWITCH, OptionalDouble.of(5), true);
        assertBridge(PinRole.ENABLE, PinRole.GROUND, OptionalDouble.empty(), false);
        assertBridge(PinRole.ENABLE, PinRole.INPUT, OptionalDouble.empty(), false);
        assertBridge(PinRole.ENABLE, PinRole.OUTPUT, OptionalDouble.empty(), true);
        assertBridge(PinRole.CONTROL, PinRole.GROUND, OptionalDouble.empty(), true);
    }

    /** A sense pin lies on the output: bridged to it nothing changes; to adjust it does what the output does. */
    @Test
    void aSensePinCountsAsTheOutput() {
        assertBridge(PinRole.SENSE, PinRole.OUTPUT, OptionalDouble.of(FEEDBACK.stock()), false);
        assertBridge(PinRole.SENSE, PinRole.ADJUST, OptionalDouble.of(1.24), false);
        assertBridge(PinRole.SENSE, PinRole.GROUND, OptionalDouble.of(0), true);
    }

    private static void assertBridge(PinRole one, PinRole two, OptionalDouble volts, boolean harmful) {
        Bridge bridge = Bridges.table(
                        FEEDBACK, Outline.TO_92, List.of(one, two, PinRole.INPUT), new Supply(5, 0.5), Double.NaN)
                .get(0);
        assertEquals(volts.isPresent(), bridge.voltage().isPresent(), one + " to " + two);
        assertEquals(volts.orElse(0), bridge.voltage().orElse(0), 1e-9, one + " to " + two);
        assertEquals(harmful, bridge.harmful(), one + " to " + two);
    }

    /** An input of 5 V straight through harms a chip rated to 4.9 V, not one rated to 5 V or more; a stock above the rated voltage harms by itself. */
    @Test
    void harmIsToldByTheHighestRatedVoltage() {
        List<PinRole> through = List.of(PinRole.INPUT, PinRole.OUTPUT, PinRole.ADJUST);
        Supply five = new Supply(5, 0.5);
        assertTrue(Bridges.table(FEEDBACK, Outline.TO_92, through, five, 4.9)
                .get(0)
                .harmful());
        assertFalse(
                Bridges.table(FEEDBACK, Outline.TO_92, through, five, 5).get(0).harmful());
        List<PinRole> same = List.of(PinRole.OUTPUT, PinRole.OUTPUT, PinRole.ADJUST);
        assertTrue(
                Bridges.table(FEEDBACK, Outline.TO_92, same, five, 3.2).get(0).harmful());
        assertFalse(
                Bridges.table(FEEDBACK, Outline.TO_92, same, five, 3.3).get(0).harmful());
    }

    /** Pins 5 and 6 of a TPS54331 are VSENSE and COMP, 6 and 7 COMP and GND: the loop then does what nobody can tell. */
    @Test
    void aHelperPinBridgedToAnyOtherCountsAsHarmful() {
        List<PinRole> roles = RegulatorFamilies.of(BuiltIn.text("regulators.json"))
                .named("tps54331")
                .orElseThrow()
                .pinouts()
                .get(Outline.SOIC_8);
        for (Bridge bridge : Bridges.table(FEEDBACK, Outline.SOIC_8, roles, new Supply(5, 0.5), Double.NaN)) {
            if (bridge.firstRole() == PinRole.HELPER || bridge.secondRole() == PinRole.HELPER) {
                assertEquals(OptionalDouble.empty(), bridge.voltage());
                assertTrue(bridge.harmful());
            }
        }
        List<PinRole> two = List.of(PinRole.HELPER, PinRole.HELPER, PinRole.INPUT);
        assertTrue(Bridges.table(FEEDBACK, Outline.TO_92, two, new Supply(5, 0.5), Double.NaN)
                .get(0)
                .harmful());
    }

    /** Pins on opposite sides of a package are no neighbours: 2 and 3 of a SOT-23, 3 and 4 of a SOT-23-5, 4 and 5 of a SOIC-8. */
    @ParameterizedTest
    @EnumSource(Outline.class)
    void onlyPinsOnOneSideAreNeighbours(Outline outline) {
        List<PinRole> roles = java.util.Collections.nCopies(outline.pins() + 1, PinRole.NOT_CONNECTED);
        List<Integer> firsts = Bridges.table(FEEDBACK, outline, roles, null, Double.NaN).stream()
                .map(Bridge::first)
                .toList();
        int across =
                outline == Outline.SOT_23 ? 2 : outline == Outline.SOT_23_5 ? 3 : outline == Outline.SOIC_8 ? 4 : 0;
        assertFalse(firsts.contains(across));
        assertEquals(outline.pins() - (across == 0 ? 1 : 2), firsts.size());
    }

    @Test
    void aRoleIsNeededForEveryPin() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Bridges.table(FLOATING, Outline.SOIC_8, OF_1117, null, Double.NaN));
    }
}
