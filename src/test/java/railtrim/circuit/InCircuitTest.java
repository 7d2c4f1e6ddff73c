package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.InCircuit.Agreement;
import railtrim.circuit.InCircuit.Delta;
import railtrim.quantity.BadInput;

class InCircuitTest {
    private static final double OPEN = Double.POSITIVE_INFINITY;

    /** What a perfect meter reads on a board: each leg in parallel with the other one and the load in series. */
    private record Read(double leg, double other, double outGround) {
        static Read of(double leg, double other, double load) {
            return new Read(parallel(leg, other + load), parallel(other, leg + load), parallel(load, leg + other));
        }

        private static double parallel(double one, double two) {
            return one == 0 || two == 0 ? 0 : 1 / (1 / one + 1 / two);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // 120 Ω and 220 Ω read on the board for several loads, computed from the three-resistor network
        "1, 77.771, 78.065",
        "10, 78.857, 81.714",
        "100, 87.273, 110.000",
        "1000, 109.254, 183.881",
        "10000, 118.607, 215.319",
    })
    void theModelOfTheseTestsReadsWhatTheNetworkGives(double load, double upper, double lower) {
        Read read = Read.of(220, 120, load);
        assertEquals(upper, read.other(), 5e-4);
        assertEquals(lower, read.leg(), 5e-4);
    }

    @Test
    void threeReadingsGiveTheThreeResistors() {
        // Worked example: 78.857143, 81.714286, 9.714286 Ω → 120, 220, 10 Ω
        Delta delta = InCircuit.solve(78.857143, 81.714286, 9.714286);
        assertEquals(120, delta.outAdjust(), 1e-4);
        assertEquals(220, delta.adjustGround(), 1e-4);
        assertEquals(10, delta.outGround(), 1e-4);
    }

    @Test
    void anOpenLoadLeavesTheTwoLegs() {
        Delta delta = InCircuit.solve(120, 220, 340);
        assertEquals(120, delta.outAdjust(), 1e-9);
        assertEquals(220, delta.adjustGround(), 1e-9);
        assertEquals(OPEN, delta.outGround());
        // Read a little high, as a meter may: still an open load, not an impossible one
        assertEquals(220, InCircuit.solve(120, 220, 341).adjustGround(), 2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 2})
    void aLoadOfAnOhmOrSoHidesTheLegs(double load) {
        // The readings' own error, ±(0.8 % + 0.2 Ω), makes 1 Ω unusable and leaves 4.5 % and 8.1 % at 10 Ω (Monte
        // Carlo).
        Read read = Read.of(220, 120, load);
        assertEquals(
                "circuit.delta-too-coarse", refusal(() -> InCircuit.solve(read.other(), read.leg(), read.outGround())));
    }

    @ParameterizedTest
    @CsvSource({"200, 50, 60", "0, 220, 10", "120, 220, 900", "NaN, 220, 10", "-120, 220, 10", "Infinity, 220, 10"})
    void readingsThatAreNoThreeResistorsAreRefused(double outAdjust, double adjustGround, double outGround) {
        assertEquals("circuit.delta-impossible", refusal(() -> InCircuit.solve(outAdjust, adjustGround, outGround)));
    }

    @ParameterizedTest
    @CsvSource({
        // Standard deviation of the solved legs, per cent: Monte Carlo with ±0.8 % and ±0.2 Ω, each uniform
        "10, 4.5, 8.1",
        "100, 0.82, 1.30",
        "1000, 0.65, 1.03",
        "10000, 0.72, 1.11",
    })
    void theFormulaGivesTheScatterOfTheSolvedLegs(double load, double upperPercent, double lowerPercent) {
        Read read = Read.of(220, 120, load);
        double[] readings = {read.other(), read.leg(), read.outGround()};
        double[] standards = new double[3];
        for (int i = 0; i < 3; i++) {
            // ±0.8 % and ±0.2 Ω, drawn on their own: each half width over √3
            standards[i] = Math.hypot(0.008 * readings[i], 0.2) / Math.sqrt(3);
        }
        InCircuit.DeltaKnown known = InCircuit.solve(readings, standards);
        assertEquals(120, known.delta().outAdjust(), 1e-6);
        // At 10 Ω the sum bends within the errors, so that the drawn spread is the larger one.
        double slack = load < 100 ? 0.05 : 0.015;
        assertEquals(upperPercent, 100 * known.outAdjustUncertainty() / 120, slack * upperPercent);
        assertEquals(lowerPercent, 100 * known.adjustGroundUncertainty() / 220, slack * lowerPercent);
    }

    @ParameterizedTest
    @CsvSource({
        // Standard deviation of the solved legs, per cent: Monte Carlo with ±0.8 % and ±0.2 Ω, each uniform and drawn
        // on its own
        "100, 0.82, 1.30",
        "1000, 0.65, 1.03",
        "10000, 0.72, 1.11",
    })
    void theSolvedLegsScatterAsTheReadingsErrorsSay(double load, double upperPercent, double lowerPercent) {
        Random random = seeded(20260107);
        Read read = Read.of(220, 120, load);
        int trials = 40_000;
        double upper = 0;
        double lower = 0;
        for (int i = 0; i < trials; i++) {
            Delta delta = InCircuit.solve(
                    gainAndZero(random, read.other()),
                    gainAndZero(random, read.leg()),
                    gainAndZero(random, read.outGround()));
            upper += Math.pow(delta.outAdjust() / 120 - 1, 2) / trials;
            lower += Math.pow(delta.adjustGround() / 220 - 1, 2) / trials;
        }
        assertEquals(upperPercent, Math.sqrt(upper) * 100, 0.02);
        assertEquals(lowerPercent, Math.sqrt(lower) * 100, 0.02);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 1, 3, 10, 30, 100, 300, 1000, 10_000, Double.POSITIVE_INFINITY})
    void theReadingsAgreeAtEveryLoadAndBoundTheTrueLeg(double load) {
        Agreement agreement = check(Read.of(220, 120, load), 3.55486667);
        assertTrue(agreement.agrees());
        assertEquals(0, agreement.worst(), 0.1);
        assertEquals(220, agreement.leg(), 220 * 0.01);
        assertTrue(agreement.legLow() < 220 && 220 < agreement.legHigh(), agreement::toString);
        // However small the load, the powered ratio keeps the leg known to better than a tenth.
        assertTrue(agreement.legHigh() / agreement.legLow() < 1.15, agreement::toString);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 30, 100, 1000, 10_000, Double.POSITIVE_INFINITY})
    void swappedLegsAreFoundOut(double load) {
        Read read = Read.of(220, 120, load);
        Agreement swapped = check(new Read(read.other(), read.leg(), read.outGround()), 3.55486667);
        assertFalse(swapped.agrees(), swapped::toString);
        assertTrue(swapped.swappedFits());
        assertTrue(swapped.worst() > 3);
        assertFalse(check(read, 3.55486667).swappedFits());
    }

    @Test
    void aLoadNearAShortMakesBothLegsReadAlike() {
        // With the output nearly shorted both read R1 ∥ R2: swapping them changes nothing, and does no harm.
        Agreement agreement = check(Read.of(220, 120, 0), 3.55486667);
        assertTrue(agreement.agrees() && agreement.swappedFits());
        assertEquals(220, agreement.leg(), 2.2);
    }

    @Test
    void aThousandTimesTooMuchInOneReadingIsFoundOut() {
        Read read = Read.of(220, 120, 100);
        assertFalse(
                check(new Read(read.leg() * 1000, read.other(), 0), 3.55486667).agrees());
        assertFalse(
                check(new Read(read.leg(), read.other() * 1000, 0), 3.55486667).agrees());
        // In both, the pin current gives it away: 60 µA through a kilo-ohm leg would be a voltage of its own.
        assertFalse(check(new Read(read.leg() * 1000, read.other() * 1000, 0), 3.55486667)
                .agrees());
    }

    @Test
    void anOutputThatBelongsToAnotherDividerIsFoundOut() {
        // 220 Ω and 120 Ω with no load give 3.55 V and not 2.6 V.
        Agreement agreement = check(Read.of(220, 120, OPEN), 2.6);
        assertFalse(agreement.agrees());
        assertFalse(agreement.swappedFits());
    }

    @Test
    void atTwiceTheReferenceTheLoadCannotBeTold() {
        // Both legs alike: they read alike with every load, between half of the true leg and all of it.
        Agreement agreement = InCircuit.check(0.6, 0, 0, 1.2, 0.002, 7500, 30, 7500, 30);
        assertTrue(agreement.agrees() && agreement.swappedFits());
        assertEquals(7500, agreement.legLow(), 100);
        assertEquals(15_000, agreement.legHigh(), 200);
        assertEquals(11_250, agreement.leg(), 150);
    }

    @Test
    void theSameSumHoldsWhereverTheReferenceSits() {
        for (Place place : Place.values()) {
            Circuit circuit = place.loweringLeg() == Leg.LOWER
                    ? Circuit.fromResistors(place, 1.25, 120, 220, 60e-6)
                    : Circuit.fromResistors(place, 1.25, 220, 120, 60e-6);
            Read read = Read.of(220, 120, 50);
            Agreement agreement =
                    InCircuit.check(1.25, 0.0125, 60e-6, circuit.stock(), 0.01, read.leg(), 0.6, read.other(), 0.6);
            assertTrue(agreement.agrees());
            assertEquals(220, agreement.leg(), 2.2);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -5, Double.NaN, Double.POSITIVE_INFINITY})
    void aLegThatReadsNothingIsRefused(double ohms) {
        assertEquals("circuit.not-positive", refusal(() -> check(new Read(ohms, 87, 0), 3.55)));
        assertEquals("circuit.not-positive", refusal(() -> check(new Read(87, ohms, 0), 3.55)));
    }

    @Test
    void aStockVoltageAtTheReferenceIsRefused() {
        assertEquals("circuit.stock-not-above-reference", refusal(() -> check(Read.of(220, 120, 10), 1.25)));
    }

    /** Property: honest readings agree and bound the true leg, whatever the board, the load and the meter's errors. */
    @Test
    void honestReadingsOfAnyBoardAgree() {
        Random random = seeded(20260108);
        int boards = 3000;
        int outside = 0;
        for (int i = 0; i < boards; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double other = circuit.other();
            double load = RandomBoards.between(random, 0.5, 100_000);
            Read read = Read.of(circuit.leg(), other, load);
            double referenceHalfWidth = circuit.reference() * 0.01;
            double stockHalfWidth = 0.005 * circuit.stock() + 0.003;
            double trueReference = circuit.reference() + referenceHalfWidth * spread(random);
            Agreement agreement = InCircuit.check(
                    trueReference,
                    referenceHalfWidth,
                    circuit.bias(),
                    circuit.stock() + stockHalfWidth * spread(random),
                    stockHalfWidth / Math.sqrt(3),
                    misread(random, read.leg()),
                    uncertainty(read.leg()),
                    misread(random, read.other()),
                    uncertainty(read.other()));
            assertTrue(agreement.agrees(), () -> circuit + " load " + load + " " + agreement);
            boolean inside = agreement.legLow() <= circuit.leg() && circuit.leg() <= agreement.legHigh();
            outside += inside ? 0 : 1;
        }
        // Two standard uncertainties either side: about one in twenty may fall outside, and fewer with rectangular
        // errors.
        assertTrue(outside <= boards / 20, "outside: " + outside + " of " + boards);
    }

    private static Agreement check(Read read, double stock) {
        return InCircuit.check(
                1.25,
                0.012,
                60e-6,
                stock,
                0.01,
                read.leg(),
                uncertainty(read.leg()),
                read.other(),
                uncertainty(read.other()));
    }

    private static double uncertainty(double ohms) {
        return (0.008 * Math.abs(ohms) + 0.2) / Math.sqrt(3);
    }

    private static double misread(Random random, double ohms) {
        return ohms + (0.008 * ohms + 0.2) * spread(random);
    }

    private static double gainAndZero(Random random, double ohms) {
        return ohms * (1 + 0.008 * spread(random)) + 0.2 * spread(random);
    }

    private static double spread(Random random) {
        return 2 * random.nextDouble() - 1;
    }

    private static Random seeded(long seed) {
        System.out.println("in-circuit seed " + seed);
        return new Random(seed);
    }

    private static String refusal(Runnable tried) {
        return assertThrows(BadInput.class, tried::run).told().key();
    }
}
