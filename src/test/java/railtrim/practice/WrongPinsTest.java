package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import railtrim.circuit.Leg;
import railtrim.quantity.Meter;

/** What a part or a blob of solder does where nothing belongs: between a supply and the adjust pin, the output or ground. Sums by hand. */
class WrongPinsTest {
    private static final Node.Pair INPUT_ADJUST = new Node.Pair(Node.INPUT, Node.ADJUST);
    private static final Node.Pair INPUT_OUTPUT = new Node.Pair(Node.INPUT, Node.OUTPUT);

    private static Bench bench(String board) {
        return new Bench(DemoBoards.named(board), Meter.fine(), Rehearsal.chance(7));
    }

    private static Part ohms(Bench bench, double ohms) {
        return bench.takeResistors(List.of(ohms), Part.Joined.SERIES, 0);
    }

    /**
     * The sound board, reference between OUT and ADJ: 10 kΩ from 5.06 V into the adjust pin. Kirchhoff there, with U at the pin:
     * 1.247/120.504 + 57 µA + (5.06 − U)/10 000 = U/198.78.
     */
    @Test
    void fromTheInputToTheAdjustPinItRaisesARegulatorThatFloats() {
        Bench bench = bench("sound-board");
        bench.solder(ohms(bench, 10_000), INPUT_ADJUST);
        bench.switchOn();
        double pin = (1.247 / 120.504 + 57e-6 + 5.06 / 10_000) / (1 / 198.78 + 1 / 10_000.0);
        assertEquals(1.247 + pin, bench.output(), 0.003);
        assertTrue(bench.output() > bench.board().stock() + 0.02);
        assertTrue(bench.mishaps().contains(Bench.Mishap.ABOVE_STOCK));
        // The reference stays where it sits.
        assertEquals(1.247, bench.volts(Node.OUTPUT, Node.ADJUST).value(), 0.002);
    }

    /** With feedback to ground the same part takes over some of the current of the upper leg, and the output falls. */
    @Test
    void fromTheInputToTheFeedbackPinItLowersARegulatorWithFeedbackToGround() {
        Bench bench = bench("network-blade");
        Board.Divider divider = bench.board().divider();
        bench.solder(ohms(bench, 100_000), INPUT_ADJUST);
        bench.switchOn();
        double reference = divider.reference().value();
        double comes = (divider.input() - reference) / 100_000;
        double upper = reference / divider.lower().value() + divider.bias() - comes;
        assertEquals(reference + upper * divider.upper().value(), bench.output(), 0.004);
        assertTrue(bench.mishaps().isEmpty());
    }

    /** 5 Ω from 5.06 V bring 349 mA at 3.31 V, less than the chip draws: the regulator gives the rest. 1 Ω would bring 1.75 A, more than it takes. */
    @Test
    void fromTheInputToTheOutputItFeedsTheChipPastTheRegulator() {
        Bench bench = bench("sound-board");
        Part part = ohms(bench, 5);
        bench.solder(part, INPUT_OUTPUT);
        bench.switchOn();
        assertEquals(bench.board().stock(), bench.output(), 0.005);
        assertTrue(bench.mishaps().isEmpty());
        bench.switchOff();
        bench.waitSeconds(60);
        bench.remove(part);
        bench.solder(ohms(bench, 1), INPUT_OUTPUT);
        bench.switchOn();
        // Idle it draws 0.6 of 1.2 A at stock, in proportion to the voltage, and the legs take what 57 µA from the pin
        // leave them:
        // (5.06 − V)/1 Ω = 0.72 A · V/stock + (V − 57 µA · 198.78 Ω)/319.28 Ω.
        double pin = 57e-6 * 198.78 / 319.284;
        assertEquals((5.06 + pin) / (1 + 0.72 / bench.board().stock() + 1 / 319.284), bench.output(), 0.0005);
        assertTrue(bench.mishaps().contains(Bench.Mishap.ABOVE_STOCK));
    }

    @Test
    void aBridgeFromTheInputToTheOutputKillsTheChip() {
        Bench bench = bench("sound-board");
        bench.bridge(INPUT_OUTPUT);
        bench.switchOn();
        assertEquals(5.06, bench.output(), 0.1);
        assertEquals(Seen.SMOKE, bench.seen());
        assertEquals(Bench.Mishap.DAMAGED, bench.lastMishap().orElseThrow());
    }

    @Test
    void aBridgeFromTheInputToGroundLeavesNothing() {
        Bench bench = bench("sound-board");
        bench.bridge(new Node.Pair(Node.INPUT, Node.GROUND));
        bench.switchOn();
        assertEquals(0, bench.output(), 1e-9);
        assertEquals(0, bench.volts(Node.INPUT, Node.GROUND).value(), 0.001);
        assertTrue(bench.mishaps().isEmpty());
        bench.switchOff();
        bench.waitSeconds(60);
        bench.clean();
        bench.switchOn();
        assertEquals(bench.board().stock(), bench.output(), 0.003);
    }

    /** Without the supply of its control circuit a regulator of that kind gives nothing. */
    @Test
    void aShortedControlSupplyLeavesNothing() {
        Bench bench = bench("storage-controller");
        assertTrue(bench.board().divider().controlSupply().isPresent());
        bench.bridge(new Node.Pair(Node.CONTROL, Node.GROUND));
        bench.switchOn();
        assertEquals(0, bench.output(), 1e-9);
    }

    /**
     * The input gives way by 0.03 Ω, the control supply is stiff, and solder has 0.05 Ω: the input goes 3/8 of the way up to 5.04 V. The output stays,
     * for the regulator holds it, and all the more heat stays in the regulator.
     */
    @Test
    void joinedToTheControlSupplyTheInputRisesAndTheRegulatorGetsHotter() {
        Bench good = bench("storage-controller");
        Bench bridged = bench("storage-controller");
        Board.Divider divider = good.board().divider();
        assertEquals(0.03, divider.inputOhms());
        bridged.bridge(new Node.Pair(Node.INPUT, Node.CONTROL));
        for (Bench each : List.of(good, bridged)) {
            each.switchOn();
            each.runLoad(1800);
        }
        assertEquals(good.output(), bridged.output(), 1e-6);
        double amperes = good.board().amperes(good.output(), Board.Work.NAMED, good.chipTemperature());
        double input = 3.41 + 0.375 * (5.04 - 3.41) - 0.03 * 0.625 * amperes;
        assertEquals(input, bridged.volts(Node.INPUT, Node.GROUND).value(), 0.003);
        double hotter = 12 * amperes * (input - (3.41 - 0.03 * amperes));
        assertEquals(hotter, bridged.regulatorTemperature() - good.regulatorTemperature(), 0.3);
        assertTrue(bridged.mishaps().isEmpty());
    }

    @Test
    void lotsOfSolderRunToAPinBesideOneOfThoseThatWereSoldered() {
        Set<String> seen = new java.util.TreeSet<>();
        for (int seed = 0; seed < 20; seed++) {
            Bench bench = new Bench(DemoBoards.named("sound-board"), Meter.fine(), Rehearsal.chance(seed));
            bench.solder(ohms(bench, 1000), Node.Pair.of(Leg.LOWER), Bench.Manner.PLENTY);
            seen.add(bench.bridged().orElseThrow().toString());
        }
        // Pins in their order: adjust, output, input. Only adjust is soldered to, and ground is no pin of this
        // regulator.
        assertEquals(Set.of(new Node.Pair(Node.ADJUST, Node.OUTPUT).toString()), seen);
    }

    /** SO-8: pins 4 and 5 lie on the same short side, but on either side of the body. On this one they are ground and adjust. */
    @Test
    void pinsOnTwoSidesAreNoNeighboursRoundTheCorner() {
        Board.Regulator coded = DemoBoards.named("playout-module").regulator();
        assertTrue(coded.outline().twoSides());
        assertFalse(Pins.neighbours(coded).contains(new Node.Pair(Node.GROUND, Node.ADJUST)));
        // Pin 3 leads nowhere useful, enable is joined to the input and sense to the output.
        assertEquals(
                List.of(
                        new Node.Pair(Node.INPUT, Node.CONTROL),
                        new Node.Pair(Node.ADJUST, Node.INPUT),
                        new Node.Pair(Node.INPUT, Node.OUTPUT)),
                Pins.neighbours(coded));
        assertEquals(
                List.of(new Node.Pair(Node.ADJUST, Node.OUTPUT), new Node.Pair(Node.OUTPUT, Node.INPUT)),
                Pins.neighbours(DemoBoards.named("sound-board").regulator()));
    }

    /** A touch holds for two minutes at least and half an hour at most, and heating the joint again makes it good. */
    @Test
    void aTouchLeavesADryJointThatCanBeHeatedAgain() {
        for (int seed = 0; seed < 10; seed++) {
            Bench bench = new Bench(DemoBoards.named("sound-board"), Meter.fine(), Rehearsal.chance(seed));
            Part part = ohms(bench, 1000);
            bench.solder(part, Node.Pair.of(Leg.LOWER), Bench.Manner.TOUCH);
            bench.switchOn();
            bench.waitSeconds(110);
            assertEquals(bench.board().withAdded(1000), bench.output(), 0.005);
            assertTrue(bench.isDry(part) && !bench.isLoose(part));
            bench.waitSeconds(1700);
            assertEquals(bench.board().stock(), bench.output(), 0.005);
            assertTrue(bench.isLoose(part));
            bench.switchOff();
            bench.waitSeconds(60);
            bench.heat(part);
            bench.switchOn();
            bench.waitSeconds(3600);
            assertEquals(bench.board().withAdded(1000), bench.output(), 0.005);
            assertFalse(bench.isDry(part));
        }
    }
}
