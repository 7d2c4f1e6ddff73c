package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.circuit.LineSolve.Point;
import railtrim.quantity.BadInput;
import railtrim.quantity.Propagation.Result;

class DoubtTest {
    private static final double OPEN = Double.POSITIVE_INFINITY;
    /** LM1117 120/220 Ω, 60 µA (SNOS412Q 8.1). */
    private static final Circuit CIRCUIT = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);

    private static final double U_REFERENCE = 0.003;

    private static List<Point> readings() {
        List<Point> points = new ArrayList<>();
        points.add(new Point(OPEN, CIRCUIT.stock(), 0.004));
        points.add(new Point(1000, CIRCUIT.magnitude(1000), 0.004, 3));
        points.add(new Point(400, CIRCUIT.magnitude(400), 0.004, 1.2));
        return points;
    }

    /** Each result's uncertainty is the spread it shows when every reading is drawn anew many times. */
    @Test
    void theStatedUncertaintiesAreTheSpreadsOfDrawnReadings() {
        long seed = 20260202;
        System.out.println("doubt seed " + seed);
        Random random = new Random(seed);
        List<Point> points = readings();
        Result leg = Doubt.leg(Place.OUT_ADJ, 1.25, U_REFERENCE, points);
        Result current = Doubt.legCurrent(Place.OUT_ADJ, 1.25, U_REFERENCE, points);
        Result volts = Doubt.voltage(Place.OUT_ADJ, 1.25, U_REFERENCE, points, 680, 4);
        Result added = Doubt.addedFor(Place.OUT_ADJ, 1.25, U_REFERENCE, points, 3.0);
        Spread ofLeg = new Spread();
        Spread ofCurrent = new Spread();
        Spread ofVolts = new Spread();
        Spread ofAdded = new Spread();
        for (int i = 0; i < 30_000; i++) {
            double reference = 1.25 + U_REFERENCE * random.nextGaussian();
            List<Point> drawn = new ArrayList<>();
            for (Point point : points) {
                double ohms = point.added()
                        + (point.addedUncertainty() == 0 ? 0 : point.addedUncertainty() * random.nextGaussian());
                double read = point.volts() + point.uncertainty() * random.nextGaussian();
                drawn.add(new Point(ohms, read, point.uncertainty(), point.addedUncertainty()));
            }
            LineSolve.Solution solution = LineSolve.solve(Place.OUT_ADJ, reference, drawn);
            ofLeg.take(solution.leg());
            ofCurrent.take(solution.legCurrent());
            ofVolts.take(solution.circuit(0).magnitude(680 + 4 * random.nextGaussian()));
            ofAdded.take(solution.circuit(0).addedFor(3.0));
        }
        // 30,000 draws give a spread to 0.4 %; the formula is of first order.
        assertEquals(ofLeg.standard(), leg.standard(), 0.02 * ofLeg.standard());
        assertEquals(ofCurrent.standard(), current.standard(), 0.02 * ofCurrent.standard());
        assertEquals(ofVolts.standard(), volts.standard(), 0.02 * ofVolts.standard());
        assertEquals(ofAdded.standard(), added.standard(), 0.02 * ofAdded.standard());
        assertEquals(220, leg.value(), 1e-9);
        assertEquals(0.010476667, current.value(), 1e-9);
        assertEquals(693.860, added.value(), 1e-3);
    }

    private static final class Spread {
        private double sum;
        private double squares;
        private int count;

        void take(double value) {
            sum += value;
            squares += value * value;
            count++;
        }

        double standard() {
            double mean = sum / count;
            return Math.sqrt(Math.max(0, squares / count - mean * mean));
        }
    }

    @Test
    void aVoltageNearTheReadingsIsSurerThanTheLegItself() {
        // The leg is only known to some per cent, but a part like one already tried gives the voltage already read.
        List<Point> close =
                List.of(new Point(OPEN, CIRCUIT.stock(), 0.01), new Point(10_000, CIRCUIT.magnitude(10_000), 0.01, 30));
        Result leg = Doubt.leg(Place.OUT_ADJ, 1.25, U_REFERENCE, close);
        Result volts = Doubt.voltage(Place.OUT_ADJ, 1.25, U_REFERENCE, close, 10_000, 30);
        assertTrue(leg.standard() > 0.2 * leg.value(), () -> "" + leg);
        assertEquals(0.01, volts.standard(), 0.0002);
    }

    @Test
    void conductancesSubtractButErrorsDoNot() {
        // 2 kΩ across 220 Ω make 198.198 Ω. A meter of ±(0.8 % + 0.2 Ω), u = a/√3: 1.031 Ω and 1.131 Ω.
        double total = 1 / (1 / 220.0 + 1 / 2000.0);
        Result result = Doubt.addedFromTotal(total, 1.031, 220, 1.131);
        assertEquals(2000, result.value(), 1e-6);
        // First order: added² · √((u/total²)² + (u/leg²)²) = 140 Ω; the sum bends, so a little more
        assertEquals(140.4, result.standard(), 2);
        assertEquals(Doubt.TOTAL, result.largest().input().id());
        // With ten times the resistor across, the meter can no longer tell it from nothing.
        double high = 1 / (1 / 220.0 + 1 / 20_000.0);
        Result lost = Doubt.addedFromTotal(high, 1.2, 220, 1.131);
        assertTrue(lost.standard() > 0.5 * lost.value(), () -> "" + lost);
        Result none = Doubt.addedFromTotal(219.9, 1.131, 220, 1.131);
        assertEquals(Double.POSITIVE_INFINITY, none.standard());
    }

    @Test
    void aTotalThatIsNotBelowTheLegSaysNothingOfThePart() {
        BadInput refusal = assertThrows(BadInput.class, () -> Doubt.addedFromTotal(221, 1, 220, 1));
        assertEquals("circuit.total-not-below-leg", refusal.told().key());
    }
}
