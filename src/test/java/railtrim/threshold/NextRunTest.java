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
        return Given.usual(FailVoltage.of(trials), STOCK, 0.03, 0.005, new Tried(cold, false));
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

    /** The same with the allowance for a load that was not tried, 1 % of stock as well. */
    @Test
    void aRunWithAnotherLoadTakesItsAllowanceAway() {
        NextRun next = NextRun.after(given(runs(2.70, 2.71, 2.69), true)).orElseThrow();
        assertEquals(0.033, next.loadGain() - next.warmGain(), 1e-9);
        assertTrue(next.loadWorth());
        assertFalse(next.coldWorth(), "it was tried");
        Given both = Given.usual(FailVoltage.of(runs(2.70, 2.71, 2.69)), STOCK, 0.03, 0.005, new Tried(true, true));
        NextRun tried = NextRun.after(both).orElseThrow();
        assertEquals(tried.warmGain(), tried.loadGain(), 1e-9);
        assertFalse(tried.loadWorth());
    }

    /** Five runs that agree, begun cold once and with two loads: what a sixth would bring is under 0.3 % of stock. */
    @Test
    void anotherRunIsNotWorthItWhenAllIsKnownThatRunsCanTell() {
        FailVoltage fail = FailVoltage.of(runs(2.70, 2.70, 2.70, 2.70, 2.70));
        assertFalse(NextRun.after(Given.usual(fail, STOCK, 0.03, 0.005, new Tried(true, true)))
                .orElseThrow()
                .anyWorth());
        assertTrue(NextRun.after(Given.usual(fail, STOCK, 0.03, 0.005, new Tried(false, true)))
                .orElseThrow()
                .anyWorth());
    }

    /**
     * By hand: s = 30 mV/√12 = 8.660 mV. A second run raises the highest by 0.398942·s = 3.455 mV and leaves the allowance for the scatter (99 mV) as it
     * is. Five in all raise it by 0.91266·s = 7.904 mV; their bound 2.715 V + 5.741·s − 2.737904 V = 26.81 mV takes the allowance's place.
     */
    @Test
    void afterOneRunASecondBuysNothingButFiveThatAgreeDo() {
        NextRun next = NextRun.after(given(runs(2.70), false)).orElseThrow();
        assertFalse(next.spreadKnown());
        assertEquals(1, next.runs());
        assertEquals(-0.003455, next.warmGain(), 1e-6);
        assertEquals(0.099 - 0.02681 - 0.007904, next.fiveGain(), 2e-5);
        assertFalse(next.worth(next.warmGain()));
        assertTrue(next.worth(next.fiveGain()));
    }

    /**
     * By hand: 2.70 V + step 30 mV + spread + meter 10 mV + drift 16.5 mV + load 33 mV + ageing 33 mV; spread of three 2.715 V + 10.553·s − 2.73 V,
     * of four 2.715 V + 7.042·s − 2.733455 V, the highest fault raised by 3.455 mV.
     */
    @Test
    void theFiguresOfAFourthRunByHand() {
        NextRun next = NextRun.after(given(runs(2.70, 2.70, 2.70), true)).orElseThrow();
        double s = 0.03 / Math.sqrt(12);
        double others = 0.03 + 0.010 + 0.0165 + 0.033 + 0.033;
        assertEquals(2.70 + others + 2.715 + 10.553 * s - 2.73, next.now(), 1e-5);
        assertEquals(2.703455 + others + 2.715 + 7.042 * s - 2.733455, next.warm(), 1e-5);
    }

    /** Runs at 2.66, 2.70 and 2.74 V: the highest lies about one deviation above the mean, so it is raised by a twelfth of one, not by 0.399. */
    @Test
    void aHighestRunFarAboveTheOthersIsHardlyRaised() {
        Given three = given(runs(2.66, 2.70, 2.74), true);
        NextRun next = NextRun.after(three).orElseThrow();
        double s = three.fail().spread();
        // few runs: the spread line is four deviations at most, or the allowance; counted from the highest, which alone
        // moves
        double raised = s * NextRun.loss((2.755 - 2.715) / s);
        double before = Math.max(0.099, 2.715 + 4 * s - 2.77);
        double after = Math.max(0.099, 2.715 + 4 * s - 2.77 - raised);
        assertEquals(before - after - raised, next.warmGain(), 1e-9);
        assertTrue(raised < 0.12 * s);
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
        NextRun next = new NextRun(3.3, 3.0, 2.97, 2.95, 2.96, 2.9, 3, new Tried(true, false), true);
        assertEquals((9 - 2.97 * 2.97) / (3.3 * 3.3), next.powerSaved(0.03), 1e-12);
        assertEquals(0.03, next.warmGain(), 1e-12);
        assertEquals(0.05, next.coldGain(), 1e-12);
        assertEquals(0.04, next.loadGain(), 1e-12);
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
