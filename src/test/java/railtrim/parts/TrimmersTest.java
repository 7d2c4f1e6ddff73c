package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.parts.Boards.floating;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import railtrim.circuit.Circuit;
import railtrim.parts.Trimmers.Candidate;
import railtrim.parts.Trimmers.InHand;
import railtrim.parts.Trimmers.Verdict;
import railtrim.parts.Trimmers.Wish;
import railtrim.quantity.BadInput;
import railtrim.quantity.Message;

class TrimmersTest {
    /** A drop of 2 % of what lies above the reference, as a fraction of stock, for the board of {@link Boards#floating()}. */
    private static final double TWO_PER_CENT_ABOVE_REFERENCE = 0.02 * (3.5548667 - 1.25) / 3.5548667;

    private static final Wish WISH = new Wish(0.02, 2.9, 0.10, List.of(1, 12, 25));

    /** Computed: R(1 − p)/p = 220·0.98/0.02. */
    @Test
    void theSmallestMaximumForTwoPerCentAboveTheReferenceIsTenPointSevenEightKilohms() {
        assertEquals(10_780, Trimmers.leastMaximum(floating(), TWO_PER_CENT_ABOVE_REFERENCE), 0.01);
    }

    /** Computed: 9 kΩ across 220 Ω at 10.476667 mA and 1.25 V. */
    @Test
    void aTenKilohmTrimmerAtTheLowEndOfTenPerCentStartsAtThreePointFiveVolts() {
        Candidate tenK = candidate(Trimmers.rank(floating(), WISH), 10_000, 25);
        assertEquals(3.49987, tenK.startWorst(), 5e-6);
        // 3.50525 V: ngspice, 10 kΩ across the lower leg.
        assertEquals(3.50525, tenK.start(), 5e-6);
    }

    /** Computed sensitivities: 0.00485 mV/Ω at 10 kΩ and 0.3407 mV/Ω at 1 kΩ; 400 Ω a turn make 1.9 mV and 136 mV. */
    @Test
    void oneTurnMovesLittleAtTheStartAndMuchLowDown() {
        double voltsAtOneKilohm = floating().magnitude(1000);
        Wish wish = new Wish(0.02, voltsAtOneKilohm, 0.10, List.of(25));
        Candidate tenK = candidate(Trimmers.rank(floating(), wish), 10_000, 25);
        assertEquals(1.94, tenK.millivoltsPerTurnStart(), 0.005);
        assertEquals(136.3, tenK.millivoltsPerTurnLowest(), 0.05);
        assertEquals(Verdict.USABLE, tenK.verdict());
        assertTrue(has(tenK.reasons(), "parts.trimmer.coarse"));
    }

    /** 1/(x/1.65 V − 1/220 Ω) = 554.3 Ω; divided by 0.99 it is 559.9 Ω, and E24 has 560 Ω. */
    @Test
    void theStopResistorIsTheNextPreferredValueThatHoldsOnePerCentLow() {
        assertEquals(554.3, floating().addedFor(2.9), 0.05);
        assertEquals(560, Trimmers.stopResistor(floating(), 2.9));
        assertTrue(floating().magnitude(560 * 0.99) >= 2.9);
        assertTrue(floating().magnitude(510 * 0.99) < 2.9);
    }

    @Test
    void noStopIsNeededWhereTheBareEndIsAllowed() {
        assertEquals(0, Trimmers.stopResistor(floating(), 1.25));
        assertEquals(0, Trimmers.stopResistor(floating(), 1.0));
        assertThrows(BadInput.class, () -> Trimmers.stopResistor(floating(), 3.6));
    }

    @Test
    void anyStopResistorHoldsTheLowestVoltageAndTheNextSmallerDoesNot() {
        long seed = 106;
        Random random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            Circuit circuit = Boards.any(random);
            double lowest =
                    circuit.reference() + (0.05 + 0.9 * random.nextDouble()) * (circuit.stock() - circuit.reference());
            double stop = Trimmers.stopResistor(circuit, lowest);
            double smaller = Series.E24.near(stop * 0.999).below();
            String what = "seed " + seed + " case " + i + ": " + circuit + " lowest " + lowest + " stop " + stop;
            assertTrue(circuit.magnitude(stop * 0.99) >= lowest - 1e-9, what);
            assertTrue(circuit.magnitude(smaller * 0.99) < lowest, what);
        }
    }

    /** Computed from the rating of 0.5 W: √(P/R) is 7.07 mA for 10 kΩ, 22.4 mA for 1 kΩ, 70.7 mA for 100 Ω. */
    @ParameterizedTest
    @CsvSource({"10000, 7.07", "1000, 22.4", "100, 70.7"})
    void theWiperCarriesNoMoreThanTheTracksRating(double nominal, double milliamperes) {
        assertEquals(milliamperes, 1000 * Trimmers.wiperLimit(nominal), 0.05);
    }

    /** Computed: on this board the current through what is across the leg passes 7.07 mA below about 106 Ω. */
    @Test
    void belowAHundredAndSixOhmsATenKilohmWiperIsOverItsRating() {
        double atHundredAndSix = (floating().magnitude(106) - 1.25) / 106;
        assertEquals(Trimmers.wiperLimit(10_000), atHundredAndSix, 1e-5);
    }

    /** √(0.5 W/20 kΩ) = 5 mA flow here with 241 Ω across the leg: a stop of 220 Ω lets more through, one of 270 Ω less. */
    @Test
    void aStopThatLetsTooMuchThroughTheWiperIsSaid() {
        Candidate small = trimmer(20_000, floating().magnitude(210));
        assertEquals(220, small.stopResistor());
        assertTrue(has(small.reasons(), "parts.trimmer.wiper"));
        Candidate large = trimmer(20_000, floating().magnitude(260));
        assertEquals(270, large.stopResistor());
        assertFalse(has(large.reasons(), "parts.trimmer.wiper"));
    }

    @Test
    void theCurrentAtTheEndIsWhatTheStopLetsThrough() {
        Candidate tenK = trimmer(10_000, 2.9);
        double across = floating().magnitude(560) - 1.25;
        assertEquals(across / 560, tenK.endCurrent(), 1e-12);
        assertEquals(across * across / 560, tenK.endPower(), 1e-12);
        assertEquals(1.25, tenK.lowestBare(), 1e-12);
        assertEquals(floating().magnitude(560 * 0.99), tenK.lowest(), 1e-12);
    }

    /** 1.25 V + 2.304867 V·Rt/(220 + Rt) ≥ 0.98·3.554867 V needs 6.913 kΩ, with 10 % lost 7.68 kΩ: 5 kΩ is too small, 10 kΩ is not. */
    @Test
    void theSmallestTrimmerThatStillStartsSafeComesFirst() {
        List<Candidate> ranked = Trimmers.rank(floating(), WISH);
        assertEquals(10_000, ranked.get(0).nominal());
        assertEquals(25, ranked.get(0).turns());
        assertEquals(Verdict.REFUSED, candidate(ranked, 5_000, 25).verdict());
        assertTrue(has(candidate(ranked, 5_000, 25).reasons(), "parts.trimmer.starts-low"));
    }

    @Test
    void aSingleTurnIsUsableWithAWordOfCare() {
        Candidate single = candidate(Trimmers.rank(floating(), WISH), 10_000, 1);
        assertEquals(Verdict.USABLE, single.verdict());
        assertTrue(has(single.reasons(), "parts.trimmer.one-turn"));
    }

    /** 338 mV a turn at 2.9 V, a twentieth 17 mV; with a single turn 8.5 V and 423 mV, where 1 % of stock is 36 mV. */
    @Test
    void aTrimmerThatCanJumpPastTheFaultIsToldApartFromOneThatIsOnlyCoarse() {
        List<Candidate> ranked = Trimmers.rank(floating(), WISH);
        assertTrue(has(candidate(ranked, 10_000, 25).reasons(), "parts.trimmer.coarse"));
        assertTrue(has(candidate(ranked, 10_000, 1).reasons(), "parts.trimmer.jumps"));
    }

    /** A short way down, 3.50 V to 3.40 V: one turn of 10 kΩ moves 20 mV at 3.40 V. */
    @Test
    void aFineTrimmerForAShortWayDownIsGood() {
        Candidate best = Trimmers.rank(floating(), new Wish(0.02, 3.40, 0.10, List.of(25)))
                .get(0);
        assertEquals(Verdict.GOOD, best.verdict());
        assertEquals(10_000, best.nominal());
        assertTrue(best.millivoltsPerTurnLowest() < 25);
    }

    /** The end of travel keeps 1 % of the value (Bourns 3296): 10 kΩ of a 1 MΩ trimmer hold this board at 3.505 V. */
    @Test
    void aTrimmerWhoseEndResistanceIsTooLargeCannotReachTheLowestVoltage() {
        Candidate megohm = candidate(Trimmers.rank(floating(), WISH), 1e6, 25);
        assertEquals(Verdict.REFUSED, megohm.verdict());
        assertTrue(has(megohm.reasons(), "parts.trimmer.reach"));
    }

    /** Makers' values in 1-2-5 and 1-2-2.5-5 steps. */
    @Test
    void everyMakersValueIsRankedWithEveryNumberOfTurns() {
        List<Candidate> ranked = Trimmers.rank(floating(), WISH);
        assertEquals(21 * 3, ranked.stream().filter(each -> !each.pair()).count());
        assertEquals(
                List.of(10.0, 20.0, 25.0, 50.0, 100.0, 200.0, 250.0, 500.0, 1000.0),
                Trimmers.makersValues().subList(0, 9));
        assertEquals(1e6, Trimmers.makersValues().get(20));
    }

    /**
     * A quarter turn of 10 kΩ +10 % with 25 turns is 110 Ω: 200 Ω −10 % spans it, 100 Ω does not. One turn of it is 8 Ω, at 2.9 V with
     * x·R²/(R+Rt)² = 0.8449 mV/Ω (computed) 6.76 mV, where one turn of the coarse one moves 338 mV.
     */
    @Test
    void aFineTrimmerInSeriesSetsMillivoltsWhereTheCoarseOneAloneSetsTenths() {
        Candidate pair = pair(Trimmers.rank(floating(), WISH), 10_000, 25);
        assertEquals(200, pair.fine());
        assertEquals(6.76, pair.millivoltsPerTurnLowest(), 0.01);
        assertEquals(338, pair.coarseMillivoltsPerTurnLowest(), 0.5);
        assertEquals(Verdict.GOOD, pair.verdict());
        assertTrue(has(pair.reasons(), "parts.trimmer.pair"));
        assertTrue(has(pair.reasons(), "parts.trimmer.pair-use"));
        // Both count at the start: (10,000 + 200)·0.9 = 9,180 Ω by the law.
        assertEquals(floating().magnitude(9_180), pair.startWorst(), 1e-9);
        assertEquals(floating().magnitude(10_200), pair.start(), 1e-9);
    }

    @Test
    void aPairComesFirstWhereNoSingleTrimmerIsFineEnoughAndNotWhereOneIs() {
        assertTrue(Trimmers.rank(floating(), WISH).get(0).pair());
        assertFalse(Trimmers.rank(floating(), new Wish(0.02, 3.40, 0.10, List.of(25)))
                .get(0)
                .pair());
    }

    @Test
    void aTrimmerOfOneTurnHasNoFinePartner() {
        assertTrue(Trimmers.rank(floating(), new Wish(0.02, 2.9, 0.10, List.of(1))).stream()
                .noneMatch(Candidate::pair));
        assertTrue(Trimmers.fineFor(10_000, 4, 0.10).isEmpty());
        assertEquals(1_000, Trimmers.fineFor(10_000, 5, 0.10).orElseThrow());
        // The smallest value made is 10 Ω: no finer than a coarse one of 10 Ω.
        assertTrue(Trimmers.fineFor(10, 25, 0.10).isEmpty());
        assertEquals(10, Trimmers.fineFor(20, 25, 0.10).orElseThrow());
    }

    /** The fine one at the low end of its tolerance spans five finest moves of the coarse one at the high end of its own: no gap is left. */
    @Test
    void theFineTrimmerAlwaysReachesFromOnePlaceOfTheCoarseOneToTheNext() {
        for (double coarse : Trimmers.makersValues()) {
            for (int turns : new int[] {5, 10, 12, 20, 25}) {
                Trimmers.fineFor(coarse, turns, 0.20).ifPresent(fine -> {
                    assertTrue(fine * 0.8 >= 5 * coarse * 1.2 / turns / 20, coarse + " with " + turns + " turns");
                    assertTrue(fine < coarse);
                });
            }
        }
    }

    /** 50 kΩ: a twentieth of a coarse turn at 2.9 V is 100 Ω·0.8449 mV/Ω = 84 mV, where 1 % of stock is 36 mV. */
    @Test
    void aCoarseTrimmerThatCouldJumpPastTheFaultIsToldSoAlsoInAPair() {
        Candidate pair = pair(Trimmers.rank(floating(), new Wish(0.01, 2.9, 0.10, List.of(25))), 50_000, 25);
        assertTrue(has(pair.reasons(), "parts.trimmer.coarse-one-jumps"));
        assertEquals(Verdict.USABLE, pair.verdict());
    }

    @Test
    void trimmersOfSeveralTolerancesStandInOneListBestFirst() {
        List<Candidate> ranked = Trimmers.rank(floating(), WISH, List.of(0.10, 0.20));
        assertEquals(2 * Trimmers.rank(floating(), WISH).size(), ranked.size());
        assertEquals(0.10, candidate(ranked, 10_000, 25).tolerance());
        Verdict before = Verdict.GOOD;
        for (Candidate each : ranked) {
            assertTrue(each.verdict().compareTo(before) >= 0);
            before = each.verdict();
        }
    }

    @Test
    void noTrimmerThatIsNotRefusedStartsTooLowOrGoesTooLow() {
        long seed = 3296;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            Circuit circuit = Boards.any(random);
            double drop = 0.01 + 0.04 * random.nextDouble();
            double start = circuit.stock() * (1 - drop);
            if (start <= circuit.reference()) {
                continue;
            }
            double lowest = circuit.reference() + random.nextDouble() * (start - circuit.reference()) * 0.99 + 1e-6;
            double tolerance = random.nextBoolean() ? 0.1 : 0.2;
            List<Candidate> ranked = Trimmers.rank(circuit, new Wish(drop, lowest, tolerance, List.of(1, 12, 25)));
            Verdict before = Verdict.GOOD;
            for (Candidate candidate : ranked) {
                String what = "seed " + seed + " case " + i + ": " + circuit + " " + candidate;
                assertTrue(candidate.verdict().compareTo(before) >= 0, what);
                assertFalse(candidate.reasons().isEmpty(), what);
                before = candidate.verdict();
                if (candidate.verdict() == Verdict.REFUSED) {
                    continue;
                }
                for (int sample = 0; sample < 5; sample++) {
                    double maximum = candidate.total() * (1 + tolerance * (2 * random.nextDouble() - 1));
                    double stop = candidate.stopResistor() * (1 + 0.01 * (2 * random.nextDouble() - 1));
                    assertTrue(circuit.magnitude(maximum + stop) >= start, what);
                    assertTrue(circuit.magnitude(maximum + stop) <= circuit.stock(), what);
                    assertTrue(circuit.magnitude(stop) >= lowest - 1e-9, what);
                    assertTrue(circuit.magnitude(stop) >= candidate.lowest() - 1e-9, what);
                }
            }
        }
    }

    @Test
    void theTrimmerInHandIsGoodWhenBothItsEndsAre() {
        InHand hand = Trimmers.judge(floating(), WISH, 10_420, 50, 566, 3);
        assertEquals(Verdict.GOOD, hand.verdict());
        assertEquals(floating().magnitude(10_420), hand.start(), 1e-12);
        assertEquals(floating().magnitude(10_320), hand.startWorst(), 1e-12);
        assertEquals(floating().magnitude(560), hand.lowest(), 1e-12);
    }

    /** 6.913 kΩ are needed; 7.0 kΩ known to ±0.2 kΩ may be less. */
    @Test
    void aTrimmerInHandThatMayStartTooLowIsRefused() {
        InHand hand = Trimmers.judge(floating(), WISH, 7_000, 100, 566, 3);
        assertEquals(Verdict.REFUSED, hand.verdict());
        assertTrue(has(hand.reasons(), "parts.trimmer.starts-low"));
        assertEquals(
                Verdict.GOOD,
                Trimmers.judge(floating(), WISH, 7_200, 100, 566, 3).verdict());
    }

    @Test
    void withoutAStopTheTrimmerInHandIsUsableWithAWordOfCare() {
        InHand hand = Trimmers.judge(floating(), WISH, 10_000, 50, 12, 1);
        assertEquals(Verdict.USABLE, hand.verdict());
        assertTrue(has(hand.reasons(), "parts.trimmer.goes-below"));
    }

    @Test
    void aStopThatCutsTheWayShortIsSaid() {
        InHand hand = Trimmers.judge(floating(), WISH, 10_000, 50, 1_000, 5);
        assertEquals(Verdict.USABLE, hand.verdict());
        assertTrue(has(hand.reasons(), "parts.trimmer.stays-above"));
    }

    @Test
    void endsThatReadAlikeOrTheWrongWayRoundAreRefused() {
        assertTrue(has(Trimmers.judge(floating(), WISH, 10_000, 50, 9_950, 50).reasons(), "parts.trimmer.ends-alike"));
        assertTrue(has(Trimmers.judge(floating(), WISH, 100, 1, 10_000, 50).reasons(), "parts.trimmer.ends-alike"));
    }

    @Test
    void anEndThatIsNearlyTheStartIsRefused() {
        InHand hand = Trimmers.judge(floating(), WISH, 20_000, 100, 8_000, 40);
        assertEquals(Verdict.REFUSED, hand.verdict());
        assertTrue(has(hand.reasons(), "parts.trimmer.reach"));
    }

    /**
     * At 2.9 V one ohm moves 0.8449 mV, so 10 kΩ on 25 turns moves 338 mV a turn, on 12 turns 705 mV and on one 8.46 V; the fine 200 Ω of a pair 6.8 mV. About
     * how much is all that is said.
     */
    @Test
    void whatATurnMovesIsSaidToTwoDigitsOrThree() {
        assertEquals("338 mV", moved(10_000, 0, 25));
        assertEquals("705 mV", moved(10_000, 0, 12));
        assertEquals("8.5 V", moved(10_000, 0, 1));
        assertEquals("6.8 mV", moved(10_000, 200, 25));
    }

    private static String moved(double nominal, double fine, int turns) {
        return Trimmers.rank(floating(), new Wish(0.02, 2.9, 0.10, List.of(25, 12, 1))).stream()
                .filter(each -> each.nominal() == nominal && each.fine() == fine && each.turns() == turns)
                .flatMap(each -> each.reasons().stream())
                .filter(reason -> List.of("parts.trimmer.jumps", "parts.trimmer.coarse", "parts.trimmer.pair")
                        .contains(reason.key()))
                .findFirst()
                .orElseThrow()
                .values()
                .get(0);
    }

    @Test
    void aWishThatCannotBeIsRefusedInWords() {
        assertKey("parts.trimmer.lowest", new Wish(0.02, 1.25, 0.1, List.of(25)));
        assertKey("parts.trimmer.lowest", new Wish(0.02, 3.6, 0.1, List.of(25)));
        assertKey("parts.trimmer.drop", new Wish(0, 2.9, 0.1, List.of(25)));
        assertKey("parts.trimmer.drop", new Wish(0.3, 2.9, 0.1, List.of(25)));
        assertKey("parts.trimmer.tolerance", new Wish(0.02, 2.9, 1, List.of(25)));
        assertKey("parts.trimmer.turns", new Wish(0.02, 2.9, 0.1, List.of()));
        assertKey("parts.trimmer.turns", new Wish(0.02, 2.9, 0.1, List.of(0)));
        assertThrows(BadInput.class, () -> Trimmers.judge(floating(), WISH, Double.NaN, 1, 0, 1));
        assertThrows(BadInput.class, () -> Trimmers.judge(floating(), WISH, 1e4, 1, -1, 1));
        assertThrows(BadInput.class, () -> Trimmers.judge(floating(), WISH, 1e4, Double.NaN, 1, 1));
    }

    private static void assertKey(String key, Wish wish) {
        assertEquals(
                key,
                assertThrows(BadInput.class, () -> Trimmers.rank(floating(), wish))
                        .told()
                        .key());
    }

    private static Candidate trimmer(double nominal, double lowest) {
        return candidate(Trimmers.rank(floating(), new Wish(0.02, lowest, 0.10, List.of(25))), nominal, 25);
    }

    private static Candidate candidate(List<Candidate> ranked, double nominal, int turns) {
        return ranked.stream()
                .filter(candidate -> !candidate.pair() && candidate.nominal() == nominal && candidate.turns() == turns)
                .findFirst()
                .orElseThrow();
    }

    private static Candidate pair(List<Candidate> ranked, double coarse, int turns) {
        return ranked.stream()
                .filter(candidate -> candidate.pair() && candidate.nominal() == coarse && candidate.turns() == turns)
                .findFirst()
                .orElseThrow();
    }

    private static boolean has(List<Message> reasons, String key) {
        return reasons.stream().anyMatch(reason -> reason.key().equals(key));
    }
}
