package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.quantity.BadInput;

class ToleranceTest {
    /** LM1117: 1.238–1.262 V, 120/220 Ω ±1 %, pin current left out. */
    private static final Circuit LM1117 = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 0);

    private static final Tolerance PUBLISHED = Tolerance.of(LM1117, 1.238, 1.262, 0.01);

    @Test
    void theWorstCornersOfTheLm1117AreExact() {
        // Vref·(1 + R2(1±T)/(R1(1∓T))), worked out to six decimals
        assertEquals(3.541667, PUBLISHED.nominal(), 5e-7);
        assertEquals(3.462723, PUBLISHED.lowest(), 5e-7);
        assertEquals(3.622407, PUBLISHED.highest(), 5e-7);
    }

    @Test
    void twoResistorsMoveTheOutputByLessThanTwiceTheirTolerance() {
        // k = 1 − 1.25/3.541667 = 0.647059: 2kT = 1.2941 % (SLVA423: not 2T); with the reference's 0.96 % it is 2.2541
        // %
        assertEquals(2 * 0.647059 * 0.01, PUBLISHED.linear(), 1e-8);
        assertEquals(0.022541, PUBLISHED.linear() + 0.012 / 1.25, 1e-6);
        assertEquals(Math.sqrt(2) * 0.647059 * 0.01, PUBLISHED.rootSumSquare(), 1e-8);
        // Reference and both resistors as squares: 1.3263 %
        assertEquals(0.013263, Math.hypot(PUBLISHED.rootSumSquare(), 0.012 / 1.25), 1e-6);
    }

    @Test
    void theSpreadOfDrawnBoardsIsTheFormulas() {
        assertEquals(0.02712, PUBLISHED.standard(), 5e-6);
        long seed = 20260205;
        System.out.println("tolerance seed " + seed);
        Random random = new Random(seed);
        double[] drawn = new double[400_000];
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = draw(random, LM1117, 0.012, 0.01);
            double off = drawn[i] - PUBLISHED.nominal();
            sum += off;
            squares += off * off;
            assertTrue(drawn[i] >= PUBLISHED.lowest() && drawn[i] <= PUBLISHED.highest());
        }
        double mean = sum / drawn.length;
        // 400,000 draws give the spread to 0.1 %.
        assertEquals(0.02712, Math.sqrt(squares / drawn.length - mean * mean), 6e-5);
        Arrays.sort(drawn);
        // 0.135 % and 99.865 % of four million: 3.4730 V and 3.6117 V
        assertEquals(3.4730, drawn[(int) (0.00135 * drawn.length)], 1e-3);
        assertEquals(3.6117, drawn[(int) (0.99865 * drawn.length)], 1e-3);
    }

    private static double draw(Random random, Circuit circuit, double reference, double tolerance) {
        double drawnReference = circuit.reference() + reference * (2 * random.nextDouble() - 1);
        double leg = circuit.leg() * (1 + tolerance * (2 * random.nextDouble() - 1));
        double other = circuit.other() * (1 + tolerance * (2 * random.nextDouble() - 1));
        return drawnReference + leg * (drawnReference / other + circuit.bias());
    }

    /** TI SNVSCU9A: reference 0.594/0.600/0.604 V is −1.00/+0.67 %; two 0.1 % resistors ±0.14 % as squares (k near 1). */
    @Test
    void aPublishedToleranceStackComesOut() {
        Circuit high = Circuit.fromResistors(Place.FB_GND, 0.6, 1_000_000, 1000, 0);
        Tolerance resistors = Tolerance.of(high, 0.594, 0.604, 0.001);
        assertEquals(0.0014, resistors.rootSumSquare(), 5e-5);
        Tolerance reference = Tolerance.of(high, 0.594, 0.604, 0);
        assertEquals(-0.0100, reference.lowest() / reference.nominal() - 1, 5e-5);
        assertEquals(0.0067, reference.highest() / reference.nominal() - 1, 5e-5);
    }

    /** Property: the worst case encloses every board that can be drawn. */
    @Test
    void theWorstCaseEnclosesEveryDrawnBoard() {
        long seed = 20260206;
        System.out.println("worst case seed " + seed);
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double tolerance = 0.1 * random.nextDouble();
            double reference = circuit.reference() * 0.05 * random.nextDouble();
            Tolerance worst =
                    Tolerance.of(circuit, circuit.reference() - reference, circuit.reference() + reference, tolerance);
            for (int j = 0; j < 50; j++) {
                double volts = draw(random, circuit, reference, tolerance);
                assertTrue(volts >= worst.lowest() - 1e-9 && volts <= worst.highest() + 1e-9, circuit::toString);
            }
        }
    }

    @Test
    void tolerancesThatCannotBeAreRefused() {
        assertThrows(BadInput.class, () -> Tolerance.of(LM1117, 1.26, 1.27, 0.01));
        assertThrows(BadInput.class, () -> Tolerance.of(LM1117, 1.2, 1.24, 0.01));
        assertThrows(BadInput.class, () -> Tolerance.of(LM1117, 1.2, 1.3, 1));
        assertThrows(BadInput.class, () -> Tolerance.of(LM1117, 1.2, 1.3, -0.1));
        assertThrows(BadInput.class, () -> Tolerance.of(LM1117, 0, 1.3, 0.1));
    }
}
