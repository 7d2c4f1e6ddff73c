package railtrim.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import railtrim.quantity.BadInput;

class FailVoltageTest {
    @Test
    void oneRunTellsABracketAndNoSpread() {
        FailVoltage fail = FailVoltage.of(run(1, 3.00, 2.98, 2.96, -2.94));
        assertTrue(fail.faultSeen());
        assertEquals(2.94, fail.fail());
        assertEquals(2.94, fail.bracketLow());
        assertEquals(2.96, fail.bracketHigh());
        assertEquals(2.95, fail.mean(), 1e-12);
        assertEquals(1, fail.runs());
        assertEquals(OptionalDouble.empty(), fail.spreadKnown());
    }

    @Test
    void theRunThatFailsHighestCounts() {
        FailVoltage fail = FailVoltage.of(both(run(1, 3.00, 2.96, -2.92), run(2, 3.00, 2.98, -2.96)));
        assertEquals(2.96, fail.fail());
        assertEquals(2.98, fail.bracketHigh());
        assertEquals(2, fail.runs());
    }

    /** Middles 2.94 and 2.97: variance 0.00045; widths 0.04 and 0.02: (0.0016 + 0.0004)/12/2 = 0.00008333 (rectangular, width²/12). */
    @Test
    void theSpreadCountsTheBracketsWidth() {
        FailVoltage fail = FailVoltage.of(both(run(1, 3.00, 2.96, -2.92), run(2, 3.00, 2.98, -2.96)));
        assertEquals(2.955, fail.mean(), 1e-12);
        assertEquals(Math.sqrt(0.00045 + 0.002 / 24), fail.spread(), 1e-9);
    }

    @Test
    void runsThatFailInTheSamePlaceStillScatterByTheirStep() {
        FailVoltage fail = FailVoltage.of(both(run(1, 3.0, -2.9), run(2, 3.0, -2.9)));
        // A width of 0.1 V is a rectangular distribution of 0.1/√12.
        assertEquals(0.1 / Math.sqrt(12), fail.spread(), 1e-12);
    }

    @Test
    void aCoarseRunThatFailedLowerMayStillHaveFailedAnywhereUpToItsLastGood() {
        FailVoltage fail = FailVoltage.of(both(run(1, 3.00, 2.96, -2.94), run(2, 3.05, -2.85)));
        assertEquals(2.94, fail.fail());
        assertEquals(3.05, fail.bracketHigh());
    }

    @Test
    void withoutAFaultTheLowestGoodVoltageIsAllThatIsKnown() {
        FailVoltage fail = FailVoltage.of(run(1, 3.00, 2.90, 2.80));
        assertFalse(fail.faultSeen());
        assertEquals(2.80, fail.fail());
        assertEquals(2.80, fail.bracketHigh());
        assertEquals(0, fail.runs());
    }

    @Test
    void aFaultAtTheFirstVoltageOfARunLooksToTheOtherRunsForALastGood() {
        FailVoltage fail = FailVoltage.of(both(run(1, 3.00, 2.96, -2.92), run(2, -2.94)));
        assertEquals(2.94, fail.fail());
        assertEquals(2.96, fail.bracketHigh());
    }

    @Test
    void aFaultWithNothingGoodAboveHasNoBracket() {
        FailVoltage fail = FailVoltage.of(run(1, -3.4));
        assertEquals(3.4, fail.fail());
        assertEquals(3.4, fail.bracketHigh());
    }

    /** The person raised it after the fault and it failed again higher up: warm chips do that. */
    @Test
    void theHighestFaultOfARunCounts() {
        FailVoltage fail = FailVoltage.of(run(1, 3.00, 2.94, -2.90, -2.92));
        assertEquals(2.92, fail.fail());
        assertEquals(2.94, fail.bracketHigh());
    }

    @Test
    void noTrialsTellNothing() {
        assertEquals(
                "threshold.no-trials",
                assertThrows(BadInput.class, () -> FailVoltage.of(List.of()))
                        .told()
                        .key());
        assertThrows(BadInput.class, () -> FailVoltage.of(run(1, 0.0)));
    }

    /** Stepping down on boards whose threshold is known: no board's threshold lies above the bracket, nor at or below the fault seen. */
    @Test
    void theTrueThresholdOfEveryRunLiesInside() {
        long seed = 1948;
        Random random = new Random(seed);
        for (int board = 0; board < 2_000; board++) {
            double highest = 0;
            List<Trial> trials = new ArrayList<>();
            int runs = 1 + random.nextInt(6);
            for (int run = 1; run <= runs; run++) {
                double threshold = 2.9 + 0.03 * random.nextGaussian();
                double step = 0.005 + 0.05 * random.nextDouble();
                highest = Math.max(highest, threshold);
                double volts = 3.3;
                while (volts >= threshold) {
                    trials.add(new Trial(run, volts, false, false, "load"));
                    volts -= step;
                }
                trials.add(new Trial(run, volts, true, false, "load"));
            }
            FailVoltage fail = FailVoltage.of(trials);
            String what = "seed " + seed + " board " + board + ": " + fail + " truth " + highest;
            assertTrue(fail.bracketHigh() >= highest, what);
            assertTrue(fail.fail() < highest, what);
            assertEquals(runs, fail.runs(), what);
        }
    }

    /** Voltages of one run from top to bottom, a fault written as a negative number. */
    static List<Trial> run(int run, double... volts) {
        List<Trial> trials = new ArrayList<>();
        for (double v : volts) {
            trials.add(new Trial(run, Math.abs(v), v < 0, false, "load"));
        }
        return trials;
    }

    private static List<Trial> both(List<Trial> first, List<Trial> second) {
        List<Trial> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }
}
