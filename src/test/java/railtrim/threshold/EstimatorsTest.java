package railtrim.threshold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.quantity.BadInput;
import railtrim.threshold.DoseResponse.Group;
import railtrim.threshold.DoseResponse.Link;
import railtrim.threshold.UpAndDown.Shot;

class EstimatorsTest {
    // ---- up and down ----

    private static List<Shot> shots(int[] stress, int[] fault) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < stress.length; i++) {
            shots.add(new Shot(stress[i], fault[i] == 1));
        }
        return shots;
    }

    /** Ekaputra et al., Open Engineering 10 (2020) 394–400: mean 282, deviation 10.6, the fallback of 0.53 steps of 20. */
    @Test
    void dixonAndMoodOnThePublishedStairCase() {
        int[] stress = {280, 280, 300, 300, 300, 260, 260, 260, 280, 280, 280, 280};
        int[] fault = {1, 1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0};
        UpAndDown found = UpAndDown.of(shots(stress, fault), 20).orElseThrow();
        assertEquals(282, found.middle(), 1e-9);
        assertEquals(10.6, found.spread(), 1e-9);
        assertEquals(5, found.counted());
        assertFalse(found.spreadFromTable());
    }

    /** Loads of Gorla (2017) as in the vignette of the CRAN package upndown; computed from Dixon and Mood’s formulas: 36.785714 and 1.766164. */
    @Test
    void dixonAndMoodWhereTheGoodTrialsAreTheRarerOnes() {
        int[] load = {36, 35, 36, 37, 38, 39, 38, 37, 38, 37, 36, 35, 36, 37, 36};
        int[] fail = {1, 0, 0, 0, 0, 1, 1, 0, 1, 1, 1, 0, 0, 1, 1};
        UpAndDown found = UpAndDown.of(shots(load, fail), 1).orElseThrow();
        assertEquals(36.785714, found.middle(), 1e-6);
        assertEquals(1.766164, found.spread(), 1e-6);
        assertEquals(7, found.counted());
        assertTrue(found.spreadFromTable());
    }

    /** Nine trials, 20 mV a step: the same sum by hand with the voltage falling. Faults (4): 2.80, 2.80, 2.80, 2.82 V. */
    @Test
    void anUpAndDownOfVoltagesTurnsItsSignRound() {
        double[] volts = {2.84, 2.82, 2.80, 2.82, 2.84, 2.82, 2.80, 2.82, 2.80};
        boolean[] fault = {false, false, true, true, false, false, true, false, true};
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < volts.length; i++) {
            trials.add(new Trial(1, volts[i], fault[i], false, ""));
        }
        UpAndDown found = UpAndDown.of(trials).orElseThrow();
        // Lowest stress with a fault −2.82 V; levels 0, 1, 1, 1: A = 3, N = 4, −(−2.82 + 0.02·(0.75 − 0.5)) = 2.815 V.
        assertEquals(2.815, found.middle(), 1e-9);
        // B = 3, (4·3 − 9)/16 = 0.1875 is below 0.3: 0.53·20 mV.
        assertEquals(0.0106, found.spread(), 1e-9);
        assertEquals(0.02, found.step(), 1e-9);
        // A plain way down is no up-and-down: after a good trial it goes down, but after the fault it starts anew.
        trials.add(new Trial(2, 2.90, false, false, ""));
        assertTrue(UpAndDown.of(trials).isEmpty());
        assertTrue(UpAndDown.of(trials.subList(0, 1)).isEmpty());
    }

    @Test
    void withOneOutcomeOnlyOrUnevenLevelsThereIsNoMiddle() {
        assertTrue(UpAndDown.of(shots(new int[] {1, 2}, new int[] {0, 0}), 1).isEmpty());
        assertTrue(UpAndDown.of(shots(new int[] {1, 2}, new int[] {1, 1}), 1).isEmpty());
        assertTrue(UpAndDown.of(shots(new int[] {1, 2}, new int[] {0, 1}), 0).isEmpty());
        assertTrue(UpAndDown.of(List.of(new Shot(0, false), new Shot(1.4, true), new Shot(1, true)), 1)
                .isEmpty());
    }

    /** Long stair cases over a known normal threshold: the estimate comes back. Their spread is known to come out a little low or high by the step. */
    @Test
    @Tag("drawn")
    void longStairCasesFindTheThresholdTheyWereDrawnFrom() {
        long seed = 1948;
        Random random = new Random(seed);
        List<Shot> shots = new ArrayList<>();
        double stress = 10;
        for (int i = 0; i < 20_000; i++) {
            boolean fault = stress > 10.3 + random.nextGaussian();
            shots.add(new Shot(stress, fault));
            stress += fault ? -1 : 1;
        }
        UpAndDown found = UpAndDown.of(shots, 1).orElseThrow();
        assertEquals(10.3, found.middle(), 0.03, "seed " + seed);
        assertEquals(1.0, found.spread(), 0.05, "seed " + seed);
    }

    // ---- curves ----

    /** Bliss (1935): beetles after five hours of carbon disulphide, by log dose; 61 of 62 at 1.8610, where one manual misprints 60. */
    private static List<Group> beetles() {
        double[] dose = {1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839};
        int[] tried = {59, 60, 62, 56, 63, 59, 62, 60};
        int[] killed = {6, 13, 18, 28, 52, 53, 61, 60};
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < dose.length; i++) {
            groups.add(new Group(dose[i], tried[i], killed[i]));
        }
        return groups;
    }

    /** Dobson’s and the glmlab manual’s values: −60.717455 (5.180701), 34.270326 (2.912134), deviance 11.232231; the errors agree to 1e-5. */
    @Test
    void logitOfBlissBeetles() {
        DoseResponse fit = DoseResponse.fit(Link.LOGIT, beetles()).orElseThrow();
        assertEquals(-60.717455, fit.intercept(), 1e-5);
        assertEquals(34.270326, fit.slope(), 1e-5);
        assertEquals(5.180701, fit.interceptError(), 1.5e-5);
        assertEquals(2.912134, fit.slopeError(), 1e-5);
        assertEquals(11.232231, fit.deviance(), 1e-6);
        assertEquals(1.771721, fit.stressAt(0.5), 1e-6);
    }

    /** Computed by an independent fit: −34.93526, 19.72793, deviance 10.119758, middle 1.770852. */
    @Test
    void probitOfBlissBeetles() {
        DoseResponse fit = DoseResponse.fit(Link.PROBIT, beetles()).orElseThrow();
        assertEquals(-34.93526, fit.intercept(), 1e-5);
        assertEquals(19.72793, fit.slope(), 1e-5);
        assertEquals(10.119758, fit.deviance(), 1e-6);
        assertEquals(1.770852, fit.stressAt(0.5), 1e-6);
    }

    /** The misprinted table (60 of 62) has an intercept of −59.5177: the check above would notice it. */
    @Test
    void theMisprintedBeetleTableGivesAnotherCurve() {
        List<Group> misprint = new ArrayList<>(beetles());
        misprint.set(6, new Group(1.8610, 62, 60));
        assertEquals(
                -59.5177, DoseResponse.fit(Link.LOGIT, misprint).orElseThrow().intercept(), 1e-4);
    }

    @Test
    void theCurveFailsAsManyAsItWasAskedFor() {
        for (Link link : Link.values()) {
            DoseResponse fit = DoseResponse.fit(link, beetles()).orElseThrow();
            assertTrue(fit.stressAt(0.01) < fit.stressAt(0.5) && fit.stressAt(0.5) < fit.stressAt(0.99));
            // Both curves are symmetric about their middle.
            assertEquals(fit.stressAt(0.5) - fit.stressAt(0.1), fit.stressAt(0.9) - fit.stressAt(0.5), 1e-9);
        }
    }

    @Test
    void whereOneVoltagePartsGoodFromFaultThereIsNoCurve() {
        assertTrue(DoseResponse.fit(Link.LOGIT, List.of(new Group(1, 5, 0), new Group(2, 5, 5)))
                .isEmpty());
        assertTrue(DoseResponse.fit(Link.PROBIT, List.of(new Group(1, 5, 0), new Group(2, 5, 3), new Group(3, 5, 5)))
                .isEmpty());
        assertTrue(DoseResponse.fit(Link.LOGIT, List.of(new Group(1, 5, 0), new Group(2, 5, 0)))
                .isEmpty());
        // More stress, fewer faults: the readings are the wrong way round.
        assertTrue(DoseResponse.fit(Link.LOGIT, List.of(new Group(1, 5, 4), new Group(2, 5, 3), new Group(3, 5, 1)))
                .isEmpty());
        // One level alone has no slope.
        assertTrue(DoseResponse.fit(Link.LOGIT, List.of(new Group(1, 5, 3))).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new Group(1, 5, 6));
        assertThrows(IllegalArgumentException.class, () -> new Group(1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Group(1, 2, -1));
        assertThrows(IllegalArgumentException.class, () -> new Group(Double.NaN, 2, 1));
    }

    @Test
    void trialsAtTheSameVoltageStandTogetherAndTheLowerVoltageIsMoreStress() {
        List<Group> groups = DoseResponse.groups(List.of(
                new Trial(1, 2.8, true, false, ""),
                new Trial(1, 2.9, false, false, ""),
                new Trial(2, 2.8, false, false, "")));
        assertEquals(List.of(new Group(-2.9, 1, 0), new Group(-2.8, 2, 1)), groups);
    }

    /** By hand: shares 0, 0.3, 0.7, 1 at 1 to 4: 0.3·1.5 + 0.4·2.5 + 0.3·3.5 = 2.5. */
    @Test
    void spearmanAndKaerberNeedNoCurve() {
        List<Group> groups =
                List.of(new Group(1, 10, 0), new Group(2, 10, 3), new Group(3, 10, 7), new Group(4, 10, 10));
        assertEquals(2.5, DoseResponse.spearmanKaerber(groups).orElseThrow(), 1e-12);
        // 0.6 and 0.4 the wrong way round count as 0.5 each: 0.5·1.5 + 0·2.5 + 0.5·3.5, by hand.
        List<Group> crossed =
                List.of(new Group(1, 10, 0), new Group(2, 10, 6), new Group(3, 10, 4), new Group(4, 10, 10));
        assertEquals(2.5, DoseResponse.spearmanKaerber(crossed).orElseThrow(), 1e-12);
        // Unequal numbers weigh: (6 + 1)/(10 + 5) for both, by hand 7/15·1.5 + 8/15·3.5.
        List<Group> uneven =
                List.of(new Group(4, 10, 10), new Group(3, 5, 1), new Group(2, 10, 6), new Group(1, 10, 0));
        assertEquals(
                7.0 / 15 * 1.5 + 8.0 / 15 * 3.5,
                DoseResponse.spearmanKaerber(uneven).orElseThrow(),
                1e-12);
        assertTrue(DoseResponse.spearmanKaerber(groups.subList(1, 4)).isEmpty());
        assertTrue(DoseResponse.spearmanKaerber(groups.subList(0, 3)).isEmpty());
        assertTrue(DoseResponse.spearmanKaerber(List.of()).isEmpty());
    }

    // ---- success run ----

    /** Success-run theorem: 59 passes for 95 %/95 %, 22 for 90 %/90 % (printed tables), and ten passes show 0.741. */
    @ParameterizedTest
    @CsvSource({"0.95, 0.95, 59", "0.90, 0.90, 22", "0.5, 0.5, 1", "0.25, 0.75, 1"})
    void soManyGoodTrialsShowAReliability(double reliability, double confidence, int needed) {
        assertEquals(needed, SuccessRun.needed(reliability, confidence));
    }

    @Test
    void tenCleanStartsShowSeventyFourPerCent() {
        assertEquals(0.741, SuccessRun.reliability(10, 0.95), 5e-4);
        assertEquals(0.05, SuccessRun.reliability(1, 0.95), 1e-12);
        for (int n = 1; n < 200; n++) {
            assertEquals(n, SuccessRun.needed(SuccessRun.reliability(n, 0.95), 0.95), "n and back");
        }
        assertThrows(BadInput.class, () -> SuccessRun.reliability(0, 0.95));
        assertThrows(BadInput.class, () -> SuccessRun.reliability(10, 1));
        assertThrows(BadInput.class, () -> SuccessRun.needed(1, 0.95));
        assertThrows(BadInput.class, () -> SuccessRun.needed(0, 0.95));
        assertThrows(BadInput.class, () -> SuccessRun.needed(0.5, 0));
    }
}
