package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.quantity.BadInput;

class CircuitTest {
    private static final double MICROVOLTS = 2e-6;
    private static final double NOTHING = Double.POSITIVE_INFINITY;

    /** Floating example: LM1117 formula, SNOS412Q 8.1, with 120 Ω / 220 Ω and 60 µA. */
    private static Circuit floating() {
        return Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    }

    /** Feedback to ground: 29xx2 formula 1.240(R1/R2 + 1), DS20006068A, with 1.65 kΩ / 1 kΩ and 40 nA. */
    private static Circuit feedback() {
        return Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);
    }

    static Stream<Arguments> dataSheetFormulas() {
        return Stream.of(
                // LM2596 sheet SNVS124C p. 12: 1.23 V, 1 kΩ, 15.4 kΩ 1 %; the formula has no pin current
                Arguments.of("LM2596", Place.FB_GND, 1.23, 15_400, 1000, 0, 20.172),
                // TPS54531 sheet SLVSBI5B prints 4.96 V for 10.2 kΩ / 1.96 kΩ; exact value by its formula
                Arguments.of("TPS54531", Place.FB_GND, 0.8, 10_200, 1960, 0, 4.963265),
                // LM317 formula, SLVS044
                Arguments.of("LM317", Place.OUT_ADJ, 1.25, 240, 720, 50e-6, 5.036000),
                // LM1117 formula, SNOS412Q 8.1
                Arguments.of("LM1117", Place.OUT_ADJ, 1.25, 120, 220, 60e-6, 3.554867),
                // LT1086 formula, data sheet p. 9
                Arguments.of("LT1086", Place.OUT_ADJ, 1.25, 121, 365, 55e-6, 5.040736),
                // LM337 formula, SNVSAX3
                Arguments.of("LM337", Place.NEGATIVE_OUT_ADJ, 1.25, 120, 365, 65e-6, -5.075808),
                // MIC29302 formula 1.240(R1/R2 + 1), DS20006068A
                Arguments.of("MIC29302", Place.FB_GND, 1.24, 1650, 1000, 40e-9, 3.286066),
                // 0.6 V reference, SLVSDC9B
                Arguments.of("0.6 V converter", Place.FB_GND, 0.6, 10_000, 10_000, 0, 1.2),
                // TL431 sheet SLVS543R table 10-1; the sign of Iref is plus, against the misprint in the text
                Arguments.of("TL431", Place.SHUNT, 2.495, 10_000, 10_000, 2e-6, 5.01));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dataSheetFormulas")
    void theOutputIsThatOfTheDataSheetFormula(
            String name, Place place, double reference, double upper, double lower, double bias, double output) {
        Circuit circuit = Circuit.fromResistors(place, reference, upper, lower, bias);
        assertEquals(output, circuit.signed(circuit.stock()), MICROVOLTS);
    }

    @Test
    void aResistorAcrossTheRightLegLowersTheOutput() {
        // Closed form of the LM1117 formula with 10 kΩ, 1 kΩ, 2 Ω across the lower leg
        assertEquals(3.50525114, floating().magnitude(10_000), MICROVOLTS);
        assertEquals(3.13923497, floating().magnitude(1000), MICROVOLTS);
        assertEquals(1.27076, floating().magnitude(2), 5e-6);
        // and of the 29xx2 formula with 20 kΩ and 2 Ω across the upper one
        assertEquals(3.13013, feedback().magnitude(20_000), 5e-6);
        assertEquals(1.24248, feedback().magnitude(2), 5e-6);
    }

    @Test
    void theTwoFamiliesWithNearlyTheSameReferenceAreLoweredOnOppositeLegs() {
        assertEquals(220, floating().leg());
        assertEquals(1650, feedback().leg());
        assertEquals(Leg.LOWER, Place.OUT_ADJ.loweringLeg());
        assertEquals(Leg.LOWER, Place.NEGATIVE_OUT_ADJ.loweringLeg());
        assertEquals(Leg.UPPER, Place.FB_GND.loweringLeg());
        assertEquals(Leg.UPPER, Place.SHUNT.loweringLeg());
    }

    @Test
    void theSizeForATargetIsThatOfTheSizingFormula() {
        // Rt = 1/(x/(Vtarget − Vref) − 1/R), computed from the two formulas above
        assertEquals(1769.553, floating().addedFor(3.3), 0.0005);
        assertEquals(693.860, floating().addedFor(3.0), 0.0005);
        assertEquals(10_151.50, feedback().addedFor(3.0), 0.005);
    }

    @Test
    void aTrimmerOfTenKilohmsStartsTwoPerCentDown() {
        // To start within 2 % of stock less reference: Rt ≥ R(1 − p)/p = 220·0.98/0.02
        Circuit circuit = floating();
        double start = circuit.stock() - 0.02 * (circuit.stock() - circuit.reference());
        assertEquals(10_780, circuit.addedFor(start), 1e-6);
        // The same law: a 10 kΩ trimmer 10 % below its nominal value
        assertEquals(3.49987, circuit.magnitude(9000), 5e-6);
        assertEquals(3.55487, circuit.stock(), 5e-6);
    }

    @Test
    void aTrimmerGetsCoarserOnTheWayDown() {
        // dV/dRt = x·R²/(R + Rt)², in mV/Ω; 400 Ω a turn gives 1.9 mV a turn at 10 kΩ and 136 at 1 kΩ
        assertEquals(0.00485, floating().sensitivity(10_000) * 1e3, 5e-6);
        assertEquals(0.3407, floating().sensitivity(1000) * 1e3, 5e-5);
        assertEquals(1.9, floating().sensitivity(10_000) * 400 * 1e3, 0.05);
        assertEquals(136, floating().sensitivity(1000) * 400 * 1e3, 0.5);
        assertEquals(0, floating().sensitivity(NOTHING));
    }

    @Test
    void theTrimmersCurrentPassesItsLimitNearOneHundredOhms() {
        // 10 kΩ at 0.5 W: √(0.5/10000) = 7.07 mA. The leg's current splits by conductance; it reaches that below about
        // 106 Ω.
        Circuit circuit = floating();
        double limit = Math.sqrt(0.5 / 10_000);
        double through106 = (circuit.magnitude(106) - circuit.reference()) / 106;
        assertEquals(limit, through106, limit * 1e-3);
        // At zero all of x = 10.5 mA flows through it.
        assertEquals(0.0105, circuit.legCurrent(), 5e-5);
    }

    @Test
    void theChainOfAnOldBoardComesOutAsOnTheBench() {
        // Common practice, no source: a leg of 128 Ω with about 1.2 kΩ across reads about 116 Ω, with 220 Ω about 81 Ω;
        // with a 1.25 V reference and 2.6 V stock that is about 2.47 V and 2.10 V.
        Circuit circuit = Circuit.fromStock(Place.OUT_ADJ, 1.25, 2.6, 128, 0);
        assertEquals(116, circuit.total(1200), 0.5);
        assertEquals(81, circuit.total(220), 0.5);
        assertEquals(2.47, circuit.magnitude(1200), 0.005);
        assertEquals(2.10, circuit.magnitude(220), 0.005);
    }

    @Test
    void theToleranceOfTheDividerIsThatOfTheExactFormula() {
        // SLVA423 (2010) for the misconception that it is 2T; algebra: 1.238 … 1.262 V, 120/220 Ω ±1 %, pin current
        // left out
        assertEquals(3.541667, tolerance(1.25, 1, 1), 5e-7);
        assertEquals(3.462723, tolerance(1.238, 1.01, 0.99), 5e-7);
        assertEquals(3.622407, tolerance(1.262, 0.99, 1.01), 5e-7);
        // The two resistors alone: 2kT with k = 1 − Vref/Vout = 0.647059 is 1.294 %, not 2 %
        double share = 1 - 1.25 / tolerance(1.25, 1, 1);
        assertEquals(0.647059, share, 5e-7);
        double resistorsAlone = tolerance(1.25, 0.99, 1.01) / tolerance(1.25, 1, 1) - 1;
        assertEquals(2 * share * 0.01, resistorsAlone, 2e-4);
        // Linear worst case with the reference's 0.96 %: 2.2541 %; root of squares: 1.3263 %
        assertEquals(0.022541, 2 * share * 0.01 + 0.012 / 1.25, 5e-7);
        assertEquals(0.013263, Math.hypot(Math.sqrt(2) * share * 0.01, 0.012 / 1.25), 5e-7);
    }

    @Test
    void manyBoardsSpreadAsTheToleranceSays() {
        // Uniform Monte Carlo of the case above: standard deviation 0.02712 V (four million draws; analytic the same)
        long seed = 7;
        System.out.println("tolerance seed " + seed);
        Random random = new Random(seed);
        int boards = 200_000;
        double[] volts = new double[boards];
        for (int i = 0; i < boards; i++) {
            double reference = 1.25 + 0.012 * (2 * random.nextDouble() - 1);
            volts[i] = tolerance(
                    reference, 1 + 0.01 * (2 * random.nextDouble() - 1), 1 + 0.01 * (2 * random.nextDouble() - 1));
        }
        double mean = Arrays.stream(volts).average().orElseThrow();
        double variance = Arrays.stream(volts).map(v -> (v - mean) * (v - mean)).sum() / (boards - 1);
        // The standard deviation of 200,000 draws is itself good to about 0.2 %.
        assertEquals(0.02712, Math.sqrt(variance), 0.02712 * 0.006);
        Arrays.sort(volts);
        assertEquals(3.4730, volts[(int) (boards * 0.00135)], 0.002);
        assertEquals(3.6117, volts[(int) (boards * 0.99865)], 0.002);
    }

    private static double tolerance(double reference, double upper, double lower) {
        return Circuit.fromResistors(Place.OUT_ADJ, reference, 120 * upper, 220 * lower, 0)
                .stock();
    }

    @Test
    void theOtherResistorComesBackOutOfTheCurrent() {
        assertEquals(120, floating().other(), 1e-9);
        assertEquals(1000, feedback().other(), 1e-6);
        assertEquals(Double.POSITIVE_INFINITY, new Circuit(Place.SHUNT, 2.5, 1000, 1e-6, 2e-6).other());
    }

    @Test
    void nothingAddedIsStockAndAShortIsTheReference() {
        Circuit circuit = floating();
        assertEquals(circuit.stock(), circuit.magnitude(NOTHING));
        assertEquals(circuit.reference(), circuit.magnitude(0));
        assertEquals(circuit.leg(), circuit.total(NOTHING));
    }

    @Test
    void aTargetOutsideReferenceAndStockIsRefused() {
        assertEquals(
                "circuit.target-not-above-reference", refusal(() -> floating().addedFor(1.25)));
        assertEquals(
                "circuit.target-not-above-reference", refusal(() -> floating().addedFor(Double.NaN)));
        assertEquals(
                "circuit.target-not-below-stock",
                refusal(() -> floating().addedFor(floating().stock())));
        assertEquals("circuit.target-not-below-stock", refusal(() -> floating().addedFor(5)));
    }

    @Test
    void aStockVoltageAtTheReferenceCannotBeLowered() {
        assertEquals(
                "circuit.stock-not-above-reference",
                refusal(() -> Circuit.fromStock(Place.OUT_ADJ, 1.25, 1.25, 220, 0)));
        assertEquals(
                "circuit.stock-not-above-reference",
                refusal(() -> Circuit.fromStock(Place.OUT_ADJ, 1.25, Double.NaN, 220, 0)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aResistorOrReferenceThatIsNoneIsRefused(double wrong) {
        assertEquals("circuit.not-positive", refusal(() -> Circuit.fromStock(Place.OUT_ADJ, wrong, 3.3, 220, 0)));
        assertEquals("circuit.not-positive", refusal(() -> Circuit.fromStock(Place.OUT_ADJ, 1.25, 3.3, wrong, 0)));
        assertEquals("circuit.not-positive", refusal(() -> Circuit.fromResistors(Place.OUT_ADJ, 1.25, wrong, 220, 0)));
        assertEquals("circuit.not-positive", refusal(() -> Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, wrong, 0)));
        assertEquals("circuit.not-positive", refusal(() -> new Circuit(Place.OUT_ADJ, 1.25, 220, wrong, 0)));
    }

    @Test
    void aPinCurrentThatIsNotKnownHasToBeGivenAsZero() {
        assertEquals(
                "circuit.not-positive", refusal(() -> Circuit.fromStock(Place.OUT_ADJ, 1.25, 3.3, 220, Double.NaN)));
    }

    /** Nothing of nothing can be worked out, and the refusal names the very value. */
    @Test
    void aValueThatIsNotAboveZeroIsRefusedAndNamed() {
        assertNamed("0 V", () -> new Circuit(Place.OUT_ADJ, 0, 220, 0.01, 0));
        assertNamed("−1.250 V", () -> new Circuit(Place.OUT_ADJ, -1.25, 220, 0.01, 0));
        assertNamed("0 Ω", () -> new Circuit(Place.OUT_ADJ, 1.25, 0, 0.01, 0));
        assertNamed("0 A", () -> new Circuit(Place.OUT_ADJ, 1.25, 220, 0, 0));
        assertNamed("0 Ω", () -> Circuit.fromStock(Place.OUT_ADJ, 1.25, 3.3, 0, 0));
        assertNamed("0 V", () -> Circuit.fromStock(Place.OUT_ADJ, 0, 3.3, 220, 0));
        assertNamed("0 Ω", () -> Circuit.fromResistors(Place.OUT_ADJ, 1.25, 0, 220, 0));
        assertNamed("0 Ω", () -> Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 0, 0));
        assertNamed("−5.000 Ω", () -> floating().total(-5));
    }

    private static void assertNamed(String value, org.junit.jupiter.api.function.Executable sum) {
        BadInput refusal = org.junit.jupiter.api.Assertions.assertThrows(BadInput.class, sum);
        assertEquals(value, refusal.told().values().get(0));
    }

    /** Where the pin current alone makes up the leg's current there is no second resistor to speak of. */
    @Test
    void withoutCurrentInTheOtherResistorItIsInfinite() {
        assertEquals(Double.POSITIVE_INFINITY, new Circuit(Place.OUT_ADJ, 1.25, 220, 60e-6, 60e-6).other());
        assertEquals(1.25 / 1e-6, new Circuit(Place.OUT_ADJ, 1.25, 220, 61e-6, 60e-6).other(), 1);
    }

    @Test
    void aNegativeResistanceIsRefused() {
        assertEquals("circuit.ohms-negative", refusal(() -> floating().magnitude(-1)));
        assertEquals("circuit.ohms-negative", refusal(() -> floating().magnitudeOfTotal(-1)));
        assertEquals("circuit.ohms-negative", refusal(() -> floating().sensitivity(Double.NaN)));
    }

    /** Property: sizing undoes prediction, more resistance never gives less voltage, and the output stays between reference and stock. */
    @Test
    void predictionAndSizingBelongTogetherOnEveryBoard() {
        long seed = 20260103;
        System.out.println("circuit seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 20_000; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double added = RandomBoards.between(random, circuit.leg() / 50, circuit.leg() * 200);
            double more = added * (1 + random.nextDouble());
            double volts = circuit.magnitude(added);
            assertTrue(volts >= circuit.reference() && volts <= circuit.stock(), () -> circuit + " " + added);
            assertTrue(circuit.magnitude(more) >= volts, () -> circuit + " " + added + " " + more);
            assertEquals(added, circuit.addedFor(volts), added * 1e-8, circuit::toString);
            // The slope the trimmer is judged by is the slope of the law.
            double step = added * 1e-5;
            double slope = (circuit.magnitude(added + step) - circuit.magnitude(added - step)) / (2 * step);
            assertEquals(slope, circuit.sensitivity(added), Math.abs(slope) * 1e-4);
        }
    }

    private static String refusal(Runnable tried) {
        return assertThrows(BadInput.class, tried::run).told().key();
    }
}
