package railtrim.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import railtrim.threshold.MarginBudget.Given;

class NextRunTest {
    private static final double STOCK = 3.3;

    private static Given given(List<Trial> trials, boolean cold) {
        return Given.usual(FailVoltage.of(trials), STOCK, 0.03, 0.005, cold, false);
    }

    private static List<Trial> runs(double... faults) {
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < faults.length; i++) {
            trials.add(new Trial(i + 1, faults[i] + 0.03, false, false, ""));
            trials.add(new Trial(i + 1, faults[i], true, false, ""));
        }
        return trials;
    }

    /** The unit normal loss: 0.398942 at 0, 0.083315 at 1, 1.083315 at −1 (any table of it, from memory). */
    @Test
    void theHighestOfAllRunsCanOnlyRise() {
        assertEquals(0.398942, NextRun.loss(0), 1e-6);
        assertEquals(0.083315, NextRun.loss(1), 1e-6);
        assertEquals(1.083315, NextRun.loss(-1), 1e-6);
    }

    /** The cold-start allowance, 1 % of stock (our own choice), is what a cold run takes away, less what the highest fault may rise. */
    @Test
    void aRunFromColdTakesItsAllowanceAway() {
        NextRun next = NextRun.after(given(runs(2.70, 2.71, 2.69), false)).orElseThrow();
        assertEquals(0.033, next.coldGain() - next.warmGain(), 1e-9);
        assertTrue(next.spreadKnown());
        NextRun tried = NextRun.after(given(runs(2.70, 2.71, 2.69), true)).orElseThrow();
        assertEquals(tried.warmGain(), tried.coldGain(), 1e-9);
    }

    @Test
    void afterOneRunASecondBuysNothingButFiveDo() {
        NextRun next = NextRun.after(given(runs(2.70), false)).orElseThrow();
        assertFalse(next.spreadKnown());
        assertFalse(next.worth(next.warmGain()), "two runs say hardly more about the scatter than one");
        assertEquals(1, next.runs());
    }

    @Test
    void fromThreeRunsThatAgreeAFourthIsExpectedToBring() {
        NextRun next = NextRun.after(given(runs(2.70, 2.70, 2.70), true)).orElseThrow();
        // s = 30 mV/√12 = 8.7 mV; the table factor falls from 10.55 to 7.04 and then to 5.74 for five.
        assertTrue(next.warmGain() > 0.01, "gain " + next.warmGain());
        assertTrue(next.fiveGain() > next.warmGain());
    }

    @Test
    void withFiveRunsThereIsNothingLeftToGainByFive() {
        NextRun next =
                NextRun.after(given(runs(2.70, 2.71, 2.69, 2.70, 2.70), true)).orElseThrow();
        assertEquals(0, next.fiveGain(), 1e-9);
    }

    @Test
    void withoutAFaultThereIsNothingToKnowBetter() {
        assertTrue(NextRun.after(given(List.of(new Trial(1, 2.7, false, false, "")), false))
                .isEmpty());
    }

    /** (3.0² − 2.97²)/3.3² by hand. */
    @Test
    void thePowerSavedGoesWithTheSquareOfTheVoltage() {
        NextRun next = new NextRun(3.3, 3.0, 2.97, 2.95, 2.9, 3, true, true);
        assertEquals((9 - 2.97 * 2.97) / (3.3 * 3.3), next.powerSaved(0.03), 1e-12);
        assertEquals(0.03, next.warmGain(), 1e-12);
        assertEquals(0.05, next.coldGain(), 1e-12);
        assertEquals(0.1, next.fiveGain(), 1e-12);
        // 0.3 % of stock, our own choice
        assertTrue(next.worth(0.0100));
        assertFalse(next.worth(0.0098));
    }

    /** Tried out: three runs from a known scatter, then a fourth; the gains that came about have the mean that was expected. */
    @Test
    @Tag("drawn")
    void whatIsExpectedIsWhatComesAboutOnAverage() {
        long seed = 77;
        Random random = new Random(seed);
        double expected = 0;
        double came = 0;
        int samples = 300;
        for (int i = 0; i < samples; i++) {
            double[] faults = random.doubles(5).map(u -> 2.7).toArray();
            for (int j = 0; j < faults.length; j++) {
                faults[j] += 0.03 * random.nextGaussian();
            }
            double[] first = java.util.Arrays.copyOf(faults, 4);
            NextRun next = NextRun.after(given(runs(first), true)).orElseThrow();
            MarginBudget after = MarginBudget.of(given(runs(faults), true));
            expected += next.warmGain();
            came += next.now() - after.fail() - after.sum();
        }
        assertEquals(came / samples, expected / samples, 0.012, "seed " + seed);
    }
}
