package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.circuit.LineSolve.Point;
import railtrim.circuit.LineSolve.Solution;
import railtrim.quantity.BadInput;

class LineSolveTest {
    private static final double OPEN = Double.POSITIVE_INFINITY;

    @Test
    void twoReadingsGiveTheLegAndTheCurrent() {
        // 1/(|V| − Vref) = (1/x)(1/R + 1/Rt) on the LM1117 formula with 120/220 Ω: x = 10.476667 mA, R2 = 220.00, R1 =
        // 120.00
        Solution solution =
                LineSolve.solve(Place.OUT_ADJ, 1.25, List.of(point(OPEN, 3.55486667), point(1000, 3.13923497)));
        assertEquals(0.010476667, solution.legCurrent(), 5e-10);
        assertEquals(220.00, solution.leg(), 0.005);
        assertEquals(120.00, solution.circuit(60e-6).other(), 0.005);
        assertTrue(Double.isNaN(solution.legUncertainty()));
        assertEquals(0, solution.worstResidual(), 1e-9);
    }

    @Test
    void aThirdReadingOfTheSameCircuitLiesOnTheLine() {
        // The third point of the same circuit: 10 kΩ, 3.50525114 V
        List<Point> points = List.of(point(OPEN, 3.55486667), point(1000, 3.13923497), point(10_000, 3.50525114));
        assertTrue(LineSolve.solve(Place.OUT_ADJ, 1.25, points).worstResidual() < 2e-6);
    }

    @Test
    void aReadingFromAnotherCircuitStandsOffTheLine() {
        List<Point> points = List.of(point(OPEN, 3.55486667), point(1000, 3.13923497), point(10_000, 3.40));
        assertTrue(LineSolve.solve(Place.OUT_ADJ, 1.25, points).worstResidual() > 0.02);
    }

    @Test
    void itWorksForARegulatorWithFeedbackToGround() {
        Circuit circuit = Circuit.fromResistors(Place.FB_GND, 1.24, 1650, 1000, 40e-9);
        Solution solution = LineSolve.solve(
                Place.FB_GND, 1.24, List.of(point(OPEN, circuit.stock()), point(20_000, circuit.magnitude(20_000))));
        assertEquals(1650, solution.leg(), 1e-6);
        assertEquals(circuit.legCurrent(), solution.legCurrent(), 1e-12);
        assertEquals(1000, solution.circuit(40e-9).other(), 1e-6);
    }

    @Test
    void aSureReadingWeighsMoreThanAnUnsureOne() {
        Circuit circuit = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
        List<Point> points = List.of(
                new Point(OPEN, circuit.stock(), 0.001),
                new Point(1000, circuit.magnitude(1000), 0.001),
                new Point(5000, circuit.magnitude(5000) + 0.05, 0.5));
        Solution solution = LineSolve.solve(Place.OUT_ADJ, 1.25, points);
        assertEquals(220, solution.leg(), 0.01);
        assertEquals(0.05, solution.residuals().get(2), 1e-3);
    }

    /**
     * Weighted least squares worked out apart, by the normal equations with the weights 1/((u/(V − Vref)²)² + (slope·u(R)/R²)²) and the whole
     * covariance of slope and intercept.
     */
    @Test
    void everyReadingWeighsByItsOwnUncertaintyAndThatOfItsResistor() {
        Solution three = LineSolve.solve(
                Place.OUT_ADJ,
                1.25,
                List.of(
                        new Point(OPEN, 3.56, 0.01, 0),
                        new Point(10_000, 3.50, 0.01, 60),
                        new Point(1000, 3.14, 0.02, 8)));
        assertEquals(221.8023711984773, three.leg(), 1e-6);
        assertEquals(0.010394021990090192, three.legCurrent(), 1e-11);
        assertEquals(14.046039084274963, three.legUncertainty(), 1e-6);
        assertEquals(0.004581276308879723, three.residuals().get(0), 1e-9);
        assertEquals(-0.005393559737564058, three.residuals().get(1), 1e-9);
        assertEquals(0.003100139566996063, three.residuals().get(2), 1e-9);
        Solution four = LineSolve.solve(
                Place.OUT_ADJ,
                1.25,
                List.of(
                        new Point(OPEN, 3.56, 0.01, 0),
                        new Point(10_000, 3.50, 0.01, 600),
                        new Point(1000, 3.14, 0.002, 80),
                        new Point(500, 2.87, 0.004, 2)));
        assertEquals(211.2900816048339, four.leg(), 1e-6);
        assertEquals(3.0699148893512533, four.legUncertainty(), 1e-6);
        assertEquals(0.012175665419667636, four.worstResidual(), 1e-9);
    }

    @Test
    void readingsWithoutTheStockVoltageAreEnough() {
        Circuit circuit = Circuit.fromStock(Place.OUT_ADJ, 1.25, 2.6, 128, 0);
        Solution solution = LineSolve.solve(
                Place.OUT_ADJ, 1.25, List.of(point(1200, circuit.magnitude(1200)), point(220, circuit.magnitude(220))));
        assertEquals(128, solution.leg(), 1e-6);
        assertEquals(2.6, solution.circuit(0).stock(), 1e-9);
    }

    /** Property: predicted readings of any board give that board back. */
    @Test
    void solvingUndoesPredicting() {
        long seed = 20260105;
        System.out.println("line seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            List<Point> points = new ArrayList<>(List.of(new Point(OPEN, circuit.stock(), 0.01)));
            int more = 1 + random.nextInt(5);
            for (int j = 0; j < more; j++) {
                double added = RandomBoards.between(random, circuit.leg() / 5, circuit.leg() * 30);
                points.add(new Point(added, circuit.magnitude(added), 0.001 + 0.02 * random.nextDouble()));
            }
            Solution solution = LineSolve.solve(circuit.place(), circuit.reference(), points);
            assertEquals(circuit.leg(), solution.leg(), circuit.leg() * 1e-9, circuit::toString);
            assertEquals(circuit.legCurrent(), solution.legCurrent(), circuit.legCurrent() * 1e-9, circuit::toString);
            assertTrue(solution.worstResidual() < 1e-9, circuit::toString);
        }
    }

    /** The stated uncertainty is the spread that readings with such errors really show. */
    @Test
    void theStatedUncertaintyOfTheLegIsItsSpreadOverManyReadings() {
        long seed = 20260106;
        System.out.println("spread seed " + seed);
        Random random = new Random(seed);
        Circuit circuit = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
        double[] added = {OPEN, 3000, 1000, 500};
        double uncertainty = 0.003;
        int trials = 20_000;
        double sum = 0;
        double squares = 0;
        double stated = 0;
        for (int i = 0; i < trials; i++) {
            List<Point> points = new ArrayList<>();
            for (double ohms : added) {
                points.add(new Point(ohms, circuit.magnitude(ohms) + uncertainty * random.nextGaussian(), uncertainty));
            }
            Solution solution = LineSolve.solve(Place.OUT_ADJ, 1.25, points);
            sum += solution.leg();
            squares += solution.leg() * solution.leg();
            stated += solution.legUncertainty() / trials;
        }
        double mean = sum / trials;
        double spread = Math.sqrt(squares / trials - mean * mean);
        assertEquals(220, mean, 0.2);
        // 20,000 trials give the spread to half a per cent; the formula is of first order in the errors.
        assertEquals(spread, stated, spread * 0.03);
    }

    @Test
    void oneResistanceTwiceIsNoLine() {
        assertEquals("circuit.line-too-few", refusal(List.of()));
        assertEquals("circuit.line-too-few", refusal(List.of(point(1000, 3))));
        assertEquals("circuit.line-too-few", refusal(List.of(point(1000, 3), point(1000, 3.1))));
    }

    @Test
    void aSmallerResistorThatRaisedTheOutputIsOnTheWrongLeg() {
        assertEquals("circuit.line-rises", refusal(List.of(point(OPEN, 3.5), point(1000, 3.8))));
        assertEquals("circuit.line-rises", refusal(List.of(point(OPEN, 3.5), point(1000, 3.5))));
    }

    @Test
    void readingsNoDividerCouldGiveAreRefused() {
        // Three times the conductance for ten times the voltage above the reference: no leg is left over.
        assertEquals("circuit.line-no-leg", refusal(List.of(point(3000, 11.25), point(1000, 2.25))));
    }

    @Test
    void aReadingAtTheReferenceOrWithAShortIsRefused() {
        assertEquals("circuit.line-not-above-reference", refusal(List.of(point(OPEN, 3.5), point(10, 1.25))));
        assertEquals("circuit.line-not-above-reference", refusal(List.of(point(OPEN, 3.5), point(10, Double.NaN))));
        assertEquals("circuit.line-short", refusal(List.of(point(OPEN, 3.5), point(0, 1.3))));
        assertEquals("circuit.line-short", refusal(List.of(point(OPEN, 3.5), point(-5, 1.3))));
        assertEquals("circuit.not-positive", refusal(List.of(point(OPEN, 3.5), new Point(1000, 3, Double.NaN))));
    }

    private static Point point(double added, double volts) {
        return new Point(added, volts, 0);
    }

    private static String refusal(List<Point> points) {
        return assertThrows(BadInput.class, () -> LineSolve.solve(Place.OUT_ADJ, 1.25, points))
                .told()
                .key();
    }
}
