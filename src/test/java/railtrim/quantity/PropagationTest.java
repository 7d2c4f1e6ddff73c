package railtrim.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.quantity.Propagation.Input;
import railtrim.quantity.Propagation.Result;

class PropagationTest {
    @Test
    void aSumOfTwoReadingsHasTheSquaresOfTheirUncertaintiesAdded() {
        // 3 and 4 make 5 (GUM 5.1.2, sensitivity 1 each)
        Result result =
                Propagation.of(values -> values[0] + values[1], List.of(new Input("a", 10, 3), new Input("b", 20, 4)));
        assertEquals(30, result.value(), 1e-12);
        assertEquals(5, result.standard(), 1e-12);
        assertEquals(10, result.expanded(), 1e-12);
        assertEquals("b", result.largest().input().id());
        assertEquals(4, result.largest().effect(), 1e-12);
    }

    @Test
    void aProductAddsRelativeUncertainties() {
        Result result = Propagation.of(
                values -> values[0] * values[1],
                List.of(new Input("volts", 3.3, 0.033), new Input("amperes", 2, 0.02)));
        assertEquals(6.6, result.value(), 1e-12);
        assertEquals(6.6 * Math.hypot(0.01, 0.01), result.standard(), 1e-12);
    }

    @Test
    void whatABetterReadingWouldReachIsTold() {
        Result result =
                Propagation.of(values -> values[0] - values[1], List.of(new Input("a", 10, 4), new Input("b", 9, 3)));
        assertEquals(Math.hypot(1, 3), result.standardWith("a", 1), 1e-12);
        assertEquals(Math.hypot(4, 0.3), result.standardWith("b", 0.3), 1e-12);
        // A worse meter is not put to use.
        assertEquals(5, result.standardWith("a", 10), 1e-12);
        assertEquals(5, result.standardWith("c", 0), 1e-12);
    }

    @Test
    void whereAReadingCouldAsWellBeImpossibleTheResultIsOpenWithoutEnd() {
        Result result = Propagation.of(
                values -> {
                    if (values[0] >= 1) {
                        throw BadInput.of("circuit.delta-impossible", "1", "1", "1");
                    }
                    return 1 / (1 - values[0]);
                },
                List.of(new Input("share", 0.9, 0.2)));
        assertEquals(10, result.value(), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, result.standard());
    }

    @Test
    void anOpenCircuitIsAReadingWithoutUncertainty() {
        Result result = Propagation.of(
                values -> 1 / values[0] + values[1],
                List.of(new Input("open", Double.POSITIVE_INFINITY, 0), new Input("b", 1, 0.5)));
        assertEquals(0.5, result.standard(), 1e-12);
    }

    @Test
    void aReadingWithoutAValueIsRefused() {
        assertThrows(BadInput.class, () -> new Input("volts", Double.NaN, 0.1));
        assertThrows(BadInput.class, () -> new Input("volts", 1, -0.1));
        assertThrows(BadInput.class, () -> new Input("volts", 1, Double.NaN));
    }

    /** Property: the formula gives the spread that drawn readings really have, for a sum that bends. */
    @Test
    void theFormulaGivesTheSpreadOfDrawnReadings() {
        long seed = 20260201;
        System.out.println("propagation seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < 20; round++) {
            double a = 50 + 500 * random.nextDouble();
            double b = a * (1.5 + random.nextDouble());
            double ua = a * 0.004;
            double ub = b * 0.004;
            Result result = Propagation.of(
                    values -> 1 / (1 / values[0] - 1 / values[1]),
                    List.of(new Input("a", a, ua), new Input("b", b, ub)));
            int draws = 40_000;
            double sum = 0;
            double squares = 0;
            for (int i = 0; i < draws; i++) {
                double drawn = 1 / (1 / (a + ua * random.nextGaussian()) - 1 / (b + ub * random.nextGaussian()))
                        - result.value();
                sum += drawn;
                squares += drawn * drawn;
            }
            double spread = Math.sqrt(squares / draws - Math.pow(sum / draws, 2));
            // 40,000 draws give a spread to 0.4 %; the rest is what first order leaves out.
            assertEquals(spread, result.standard(), 0.02 * spread);
            assertTrue(result.largest().effect() <= result.standard());
        }
    }
}
