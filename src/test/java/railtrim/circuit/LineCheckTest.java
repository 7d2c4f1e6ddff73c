package railtrim.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import railtrim.circuit.LineSolve.Point;

class LineCheckTest {
    private static final double[] ADDED = {Double.POSITIVE_INFINITY, 3000, 1200, 600, 350};
    private static final double STANDARD = 0.004;
    /** LM1117 120/220 Ω, 60 µA (SNOS412Q 8.1). */
    private static final Circuit CIRCUIT = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);

    private static List<Point> readings(int count, int wrong, double by) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double volts = CIRCUIT.magnitude(ADDED[i]) + (i == wrong ? by : 0);
            points.add(new Point(ADDED[i], volts, STANDARD));
        }
        return points;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void theOneReadingThatIsWrongIsNamed(int wrong) {
        LineCheck check = LineCheck.of(Place.OUT_ADJ, 1.25, readings(5, wrong, 0.08));
        LineCheck.Suspect suspect = check.suspect().orElseThrow();
        assertEquals(wrong, suspect.index());
        assertTrue(suspect.sure());
        assertTrue(suspect.off() > 4, () -> "" + check);
    }

    @Test
    void aReadingsDistanceCountsInUncertaintiesOfItAndOfTheLine() {
        // The middle of three, evenly spread over 1/Radded: the line through the outer two is as unsure as about 0.7
        // of one reading, so that 20 mV are about 4.1 of √(1 + 0.5)·4 mV.
        List<Point> points = readings(3, 1, 0.02);
        LineCheck check = LineCheck.of(Place.OUT_ADJ, 1.25, points);
        double line = Doubt.voltage(Place.OUT_ADJ, 1.25, 0, List.of(points.get(0), points.get(2)), 3000, 0)
                .standard();
        assertEquals(0.02 / Math.hypot(STANDARD, line), check.off().get(1), 1e-6);
    }

    @Test
    void ofThreeReadingsNoneCanBeBlamedForSure() {
        LineCheck check = LineCheck.of(Place.OUT_ADJ, 1.25, readings(3, 2, 0.06));
        assertFalse(check.suspect().orElseThrow().sure());
        double first = Math.abs(check.off().get(0));
        // Whichever is left out, the two others make a line through themselves: the three distances are alike.
        assertEquals(first, Math.abs(check.off().get(1)), 0.05 * first);
        assertEquals(first, Math.abs(check.off().get(2)), 0.05 * first);
    }

    @Test
    void withTheLegKnownFromElsewhereOneOfThreeIsBlamed() {
        List<Point> points = readings(3, 2, 0.06);
        LineCheck.Suspect suspect =
                LineCheck.of(Place.OUT_ADJ, 1.25, points, 215, 225).suspect().orElseThrow();
        assertEquals(2, suspect.index());
        assertTrue(suspect.sure());
    }

    @Test
    void twoReadingsAlwaysLieOnALineAndReadingsWithoutUncertaintySayNothing() {
        assertEquals(
                Optional.empty(),
                LineCheck.of(Place.OUT_ADJ, 1.25, readings(2, 1, 0.2)).suspect());
        List<Point> bare = readings(5, 2, 0.2).stream()
                .map(point -> new Point(point.added(), point.volts(), 0))
                .toList();
        assertEquals(Optional.empty(), LineCheck.of(Place.OUT_ADJ, 1.25, bare).suspect());
    }

    @Test
    void twoWrongReadingsAreToldButNotBlamed() {
        List<Point> points = readings(5, 1, 0.09);
        Point second = points.get(3);
        points.set(3, new Point(second.added(), second.volts() - 0.09, STANDARD));
        LineCheck.Suspect suspect =
                LineCheck.of(Place.OUT_ADJ, 1.25, points).suspect().orElseThrow();
        assertFalse(suspect.sure());
    }

    /** Property: readings off by no more than a meter may be off are not accused; one far off is found, on every board. */
    @Test
    void aGoodMeterIsNotAccusedAndAMisreadDigitIsFound() {
        long seed = 20260203;
        System.out.println("outlier seed " + seed);
        Random random = new Random(seed);
        int accused = 0;
        int found = 0;
        int boards = 400;
        for (int i = 0; i < boards; i++) {
            Circuit circuit = RandomBoards.circuit(random);
            double width = 0.003 * circuit.stock();
            double standard = width / Math.sqrt(3);
            List<Point> points = new ArrayList<>();
            for (double part : new double[] {Double.POSITIVE_INFINITY, 8, 4, 2, 1}) {
                double added = circuit.leg() * part;
                points.add(
                        new Point(added, circuit.magnitude(added) + width * (2 * random.nextDouble() - 1), standard));
            }
            accused += LineCheck.of(circuit.place(), circuit.reference(), points)
                            .suspect()
                            .isPresent()
                    ? 1
                    : 0;
            int wrong = random.nextInt(5);
            Point right = points.get(wrong);
            points.set(wrong, new Point(right.added(), right.volts() + 12 * standard, standard));
            found += LineCheck.of(circuit.place(), circuit.reference(), points)
                            .suspect()
                            .filter(suspect -> suspect.index() == wrong)
                            .isPresent()
                    ? 1
                    : 0;
        }
        assertEquals(0, accused, 4, "good readings accused of " + boards);
        assertTrue(found >= 0.95 * boards, found + " of " + boards + " found");
    }
}
