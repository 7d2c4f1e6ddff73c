package railtrim.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.parts.Boards.feedback;
import static railtrim.parts.Boards.floating;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import railtrim.circuit.Circuit;
import railtrim.parts.PartsBox.Part;
import railtrim.parts.Resistors.Arrangement;
import railtrim.parts.Resistors.Candidate;
import railtrim.parts.Resistors.Wish;
import railtrim.quantity.BadInput;

class ResistorsTest {
    /** Computed from Rt = 1/(x/(Vtarget − Vref) − 1/R). */
    @Test
    void theExactResistanceForATargetComesOut() {
        assertEquals(1769.553, Resistors.exact(floating(), 3.300), 5e-4);
        assertEquals(693.860, Resistors.exact(floating(), 3.000), 5e-4);
        assertEquals(10_151.50, Resistors.exact(feedback(), 3.000), 5e-2);
    }

    /** 693.86 Ω: 750 Ω is the next of E24 above (680 Ω gives less than 3.0 V but more than 2.9 V). */
    @Test
    void theNearestPreferredValueOnTheSafeSideComesFirst() {
        List<Candidate> list = Resistors.choose(floating(), 0, new Wish(3.0, 2.9, 0.01, 1), Series.E24);
        assertEquals(List.of(750.0), list.get(0).values());
        assertEquals(Arrangement.SINGLE, list.get(0).arrangement());
        assertTrue(list.stream().anyMatch(c -> c.values().equals(List.of(680.0))));
        assertTrue(list.indexOf(list.stream()
                        .filter(c -> c.values().equals(List.of(680.0)))
                        .findFirst()
                        .orElseThrow())
                > 0);
    }

    /** 1 kΩ across 220 Ω: 3.139235 V (ngspice 3.13923); 990 Ω and 1010 Ω by the same law; 1.889235² V²/1 kΩ = 3.569 mW. */
    @Test
    void theWorstCaseOfASingleResistorIsItsTwoEnds() {
        Candidate kilohm = Resistors.choose(floating(), 0, new Wish(3.139, 3.1, 0.01, 1), Series.E24)
                .get(0);
        assertEquals(List.of(1000.0), kilohm.values());
        assertEquals(3.139235, kilohm.voltage(), 5e-7);
        assertEquals(floating().magnitude(990), kilohm.lowest(), 1e-12);
        assertEquals(floating().magnitude(1010), kilohm.highest(), 1e-12);
        assertEquals(0.003569, kilohm.power(), 5e-7);
    }

    @Test
    void whatMayEndUpTooLowIsNotOffered() {
        Wish wish = new Wish(3.0, 3.0, 0.05, 1);
        for (Candidate candidate : Resistors.choose(floating(), 0, wish, Series.E24)) {
            assertTrue(candidate.lowest() >= 3.0, candidate.toString());
        }
        assertTrue(Resistors.choose(floating(), 0, new Wish(3.0, 3.6, 0.05, 2), Series.E24)
                .isEmpty());
    }

    @Test
    void anUncertainLegWidensTheWorstCaseBothWays() {
        Wish wish = new Wish(3.139, 3.0, 0.01, 1);
        Candidate sure = Resistors.choose(floating(), 0, wish, Series.E24).get(0);
        Candidate unsure = Resistors.choose(floating(), 4, wish, Series.E24).get(0);
        assertEquals(sure.voltage(), unsure.voltage(), 1e-12);
        assertTrue(unsure.lowest() < sure.lowest());
        assertTrue(unsure.highest() > sure.highest());
        // Stock held at 3.5548667 V: 1.25 + 2.3048667·990/(990 + 224).
        assertEquals(1.25 + 2.3048666667 * 990 / (990 + 224), unsure.lowest(), 1e-9);
        assertEquals(1.25 + 2.3048666667 * 1010 / (1010 + 216), unsure.highest(), 1e-9);
    }

    @Test
    void twoResistorsComeNearerThanOne() {
        Candidate one = Resistors.choose(floating(), 0, new Wish(3.0, 2.9, 0.01, 1), Series.E24)
                .get(0);
        Candidate two = Resistors.choose(floating(), 0, new Wish(3.0, 2.9, 0.01, 2), Series.E24)
                .get(0);
        assertEquals(2, two.values().size());
        assertTrue(two.voltage() >= 3.0);
        assertTrue(two.voltage() - 3.0 < (one.voltage() - 3.0) / 20);
    }

    @Test
    void theNearestSingleResistorOnEitherSideStaysInTheList() {
        List<Candidate> list = Resistors.choose(floating(), 0, new Wish(3.0, 2.9, 0.01, 2), Series.E24);
        assertEquals(20, list.size());
        assertTrue(list.stream().anyMatch(c -> c.values().equals(List.of(750.0))));
        assertEquals(List.of(680.0), list.get(19).values());
    }

    /** In series the larger takes more, in parallel the smaller (P = I²·R and U²/R). */
    @Test
    void powerIsThatOfThePartThatTakesMost() {
        Circuit circuit = floating();
        PartsBox box = new PartsBox(List.of(new Part(470, 0.01, 1), new Part(220, 0.01, 1), new Part(2200, 0.01, 1)));
        for (Candidate candidate : Resistors.choose(circuit, 0, new Wish(2.95, 2.0, 0.01, 2), box)) {
            double across = candidate.voltage() - 1.25;
            double hottest = switch (candidate.arrangement()) {
                case SINGLE -> across * across / candidate.values().get(0);
                case SERIES ->
                    Math.pow(across / candidate.added(), 2) * candidate.values().get(0);
                default -> across * across / candidate.values().get(1);
            };
            assertEquals(hottest, candidate.power(), 1e-12, candidate.toString());
            assertTrue(candidate.power() <= across * across / candidate.added() + 1e-12);
        }
    }

    @Test
    void aPartsBoxIsUsedWithEachPartsOwnToleranceAndCount() {
        PartsBox box = PartsBox.of("value,tolerance,count\n680R,5%,1\n750R,1%,4\n1k5,1%,1\n");
        List<Candidate> list = Resistors.choose(floating(), 0, new Wish(3.0, 2.5, 0.2, 2), box);
        Candidate wide = only(list, List.of(680.0));
        assertEquals(floating().magnitude(680 * 0.95), wide.lowest(), 1e-12);
        Candidate narrow = only(list, List.of(750.0));
        assertEquals(floating().magnitude(750 * 0.99), narrow.lowest(), 1e-12);
        assertTrue(list.stream().anyMatch(c -> c.values().equals(List.of(750.0, 750.0))));
        assertFalse(list.stream().anyMatch(c -> c.values().equals(List.of(1500.0, 1500.0))), "there is only one");
    }

    @Test
    void aWishThatCannotBeIsRefusedInWords() {
        assertKey("parts.resistor.most", 0, new Wish(3.0, 2.9, 0.01, 4));
        assertKey("parts.resistor.most", 0, new Wish(3.0, 2.9, 0.01, 0));
        assertKey("parts.resistor.tolerance", 0, new Wish(3.0, 2.9, 0.01, 1, 1));
        assertKey("parts.resistor.tolerance", 0, new Wish(3.0, 2.9, 1.0, 1));
        assertKey("parts.resistor.tolerance", 0, new Wish(3.0, 2.9, Double.NaN, 1));
        assertKey("parts.resistor.leg", 220, new Wish(3.0, 2.9, 0.01, 1));
        assertThrows(BadInput.class, () -> Resistors.choose(floating(), 0, new Wish(3.6, 2, 0.01, 1), Series.E24));
        assertThrows(BadInput.class, () -> Resistors.choose(floating(), 0, new Wish(1.2, 1, 0.01, 1), Series.E24));
    }

    @Test
    void theSortedSearchFindsWhatTryingEveryPairFinds() {
        long seed = 60062;
        Random random = new Random(seed);
        for (int i = 0; i < 150; i++) {
            Circuit circuit = Boards.any(random);
            Wish wish = wish(random, circuit);
            double legUncertainty = random.nextBoolean() ? 0 : 0.02 * circuit.leg() * random.nextDouble();
            Series series = new Series[] {Series.E6, Series.E12, Series.E24}[random.nextInt(3)];
            double exact = Resistors.exact(circuit, wish.target());
            List<Piece> pieces = DoubleStream.of(series.between(exact / 100, exact * 100))
                    .mapToObj(ohms -> new Piece(ohms, wish.tolerance(), 2))
                    .toList();
            assertEquals(
                    everyPair(circuit, legUncertainty, wish, pieces),
                    Resistors.choose(circuit, legUncertainty, wish, series),
                    "seed " + seed + " case " + i + ": " + circuit + " " + wish + " " + series);
        }
    }

    @Test
    @Tag("drawn")
    void theSortedSearchOfAPartsBoxFindsWhatTryingEveryPairFinds() {
        long seed = 5_000;
        Random random = new Random(seed);
        double[] tolerances = {0.001, 0.01, 0.05, 0.2};
        for (int i = 0; i < 300; i++) {
            Circuit circuit = Boards.any(random);
            Wish wish = wish(random, circuit);
            List<Part> parts = new ArrayList<>();
            int size = 1 + random.nextInt(60);
            for (int part = 0; part < size; part++) {
                double[] values = Series.E12.between(1, 1e6);
                parts.add(new Part(
                        values[random.nextInt(values.length)], tolerances[random.nextInt(4)], 1 + random.nextInt(2)));
            }
            List<Piece> pieces = parts.stream()
                    .map(part -> new Piece(part.ohms(), part.tolerance(), part.count()))
                    .toList();
            assertEquals(
                    everyPair(circuit, 0, wish, pieces),
                    Resistors.choose(circuit, 0, wish, new PartsBox(parts)),
                    "seed " + seed + " case " + i + ": " + circuit + " " + wish + " " + parts);
        }
    }

    @Test
    void noSampleOfTheTolerancesFallsOutsideTheWorstCase() {
        long seed = 155;
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            Circuit circuit = Boards.any(random);
            Wish wish = wish(random, circuit);
            double legUncertainty = 0.02 * circuit.leg() * random.nextDouble();
            for (Candidate candidate : Resistors.choose(circuit, legUncertainty, wish, Series.E12)) {
                String what = "seed " + seed + " case " + i + ": " + circuit + " " + candidate;
                assertTrue(candidate.lowest() >= wish.atLeast(), what);
                assertTrue(candidate.highest() <= circuit.stock() + 1e-9, what);
                for (int sample = 0; sample < 10; sample++) {
                    double leg = circuit.leg() + legUncertainty * within(random);
                    Circuit real = Circuit.fromStock(
                            circuit.place(), circuit.reference(), circuit.stock(), leg, circuit.bias());
                    double[] real2 = candidate.values().stream()
                            .mapToDouble(ohms -> ohms * (1 + wish.tolerance() * within(random)))
                            .toArray();
                    double added = switch (candidate.arrangement()) {
                        case SINGLE -> real2[0];
                        case SERIES -> real2[0] + real2[1];
                        default -> 1 / (1 / real2[0] + 1 / real2[1]);
                    };
                    assertTrue(real.magnitude(added) >= candidate.lowest() - 1e-9, what);
                    assertTrue(real.magnitude(added) <= candidate.highest() + 1e-9, what);
                }
            }
        }
    }

    /** From minus one to one, the ends often. */
    private static double within(Random random) {
        return Math.max(-1, Math.min(1, 3 * random.nextDouble() - 1.5));
    }

    private static Wish wish(Random random, Circuit circuit) {
        double above = circuit.stock() - circuit.reference();
        double target = circuit.reference() + (0.3 + 0.65 * random.nextDouble()) * above;
        double atLeast = target + (0.04 - 0.15 * random.nextDouble()) * above;
        double tolerance = new double[] {0.001, 0.01, 0.05}[random.nextInt(3)];
        return new Wish(target, atLeast, tolerance, 1 + random.nextInt(2));
    }

    /** The plain way: every single, every pair, sorted, the first twenty, the nearest singles kept. */
    private static List<Candidate> everyPair(Circuit circuit, double legUncertainty, Wish wish, List<Piece> unsorted) {
        Bench bench = new Bench(circuit, legUncertainty, wish);
        List<Piece> pieces = new ArrayList<>(unsorted);
        pieces.sort((a, b) -> a.ohms() != b.ohms()
                ? Double.compare(a.ohms(), b.ohms())
                : Double.compare(a.tolerance(), b.tolerance()));
        List<Candidate> singles = pieces.stream()
                .map(piece -> bench.candidate(Net.of(piece)))
                .filter(bench::safe)
                .sorted(bench.order())
                .toList();
        List<Candidate> all = new ArrayList<>(singles);
        int size = pieces.size();
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i && wish.most() >= 2; j++) {
                if (enough(pieces, i, j)) {
                    Net a = Net.of(pieces.get(i));
                    Net b = Net.of(pieces.get(j));
                    all.add(bench.candidate(a.inSeries(b, Arrangement.SERIES)));
                    all.add(bench.candidate(a.inParallel(b, Arrangement.PARALLEL)));
                }
                for (int k = 0; k < size && wish.most() == 3; k++) {
                    if (enough(pieces, i, j, k)) {
                        triples(pieces, i, j, k).stream().map(bench::candidate).forEach(all::add);
                    }
                }
            }
        }
        List<Candidate> keep = new ArrayList<>();
        singles.stream().filter(bench::above).limit(1).forEach(keep::add);
        singles.stream().filter(single -> !bench.above(single)).limit(1).forEach(keep::add);
        List<Candidate> best = new ArrayList<>(all.stream()
                .filter(bench::safe)
                .filter(candidate -> !keep.contains(candidate))
                .sorted(bench.order())
                .distinct()
                .limit(20 - keep.size())
                .toList());
        best.addAll(keep);
        best.sort(bench.order());
        return best;
    }

    private static boolean enough(List<Piece> pieces, int... used) {
        for (int one : used) {
            long wanted =
                    java.util.Arrays.stream(used).filter(other -> other == one).count();
            if (pieces.get(one).count() < wanted) {
                return false;
            }
        }
        return true;
    }

    private static List<Net> triples(List<Piece> pieces, int i, int j, int k) {
        Net a = Net.of(pieces.get(i));
        Net b = Net.of(pieces.get(j));
        Net c = Net.of(pieces.get(k));
        List<Net> nets = new ArrayList<>();
        nets.add(c.inSeries(a.inParallel(b, Arrangement.PARALLEL), Arrangement.SERIES_PARALLEL));
        nets.add(c.inParallel(a.inSeries(b, Arrangement.SERIES), Arrangement.PARALLEL_SERIES));
        if (k <= j) {
            nets.add(a.inSeries(b, Arrangement.SERIES).inSeries(c, Arrangement.SERIES));
            nets.add(a.inParallel(b, Arrangement.PARALLEL).inParallel(c, Arrangement.PARALLEL));
        }
        return nets;
    }

    @Test
    void theSortedSearchFindsWhatTryingEveryTripleFinds() {
        long seed = 333;
        Random random = new Random(seed);
        double[] tolerances = {0.001, 0.01, 0.05};
        for (int i = 0; i < 60; i++) {
            Circuit circuit = Boards.any(random);
            Wish two = wish(random, circuit);
            Wish wish = new Wish(two.target(), two.atLeast(), two.tolerance(), 3);
            double legUncertainty = random.nextBoolean() ? 0 : 0.02 * circuit.leg() * random.nextDouble();
            double exact = Resistors.exact(circuit, wish.target());
            double[] values = Series.E12.between(exact / 30, exact * 30);
            List<Part> parts = new ArrayList<>();
            int size = 3 + random.nextInt(14);
            for (int part = 0; part < size; part++) {
                parts.add(new Part(
                        values[random.nextInt(values.length)], tolerances[random.nextInt(3)], 1 + random.nextInt(3)));
            }
            List<Piece> pieces = parts.stream()
                    .map(part -> new Piece(part.ohms(), part.tolerance(), part.count()))
                    .toList();
            assertEquals(
                    everyPair(circuit, legUncertainty, wish, pieces),
                    Resistors.choose(circuit, legUncertainty, wish, new PartsBox(parts)),
                    "seed " + seed + " case " + i + ": " + circuit + " " + wish + " " + parts);
        }
    }

    /** By hand: 1 kΩ + (1 kΩ ∥ 1 kΩ) is 1.5 kΩ; one volt across it puts 2/3 V on the single one: 0.444 mW. 1 kΩ ∥ (1 kΩ + 1 kΩ) is 667 Ω. */
    @Test
    void threeResistorsCanBeJoinedInFourWays() {
        Net k = Net.of(new Piece(1000, 0.01, 3));
        Net mixed = k.inSeries(k.inParallel(k, Arrangement.PARALLEL), Arrangement.SERIES_PARALLEL);
        assertEquals(1500, mixed.ohms(), 1e-9);
        assertEquals(1485, mixed.least(), 1e-9);
        assertEquals(1515, mixed.greatest(), 1e-9);
        assertEquals(4.0 / 9 / 1000, mixed.load(), 1e-12);
        Net other = k.inParallel(k.inSeries(k, Arrangement.SERIES), Arrangement.PARALLEL_SERIES);
        assertEquals(2000.0 / 3, other.ohms(), 1e-9);
        assertEquals(1e-3, other.load(), 1e-12);
    }

    /** Of 1, 2.2 and 4.7 Ω times powers of ten no two end less than 7.1 mV (0.2 % of 3.55 V) further up than the best three. */
    @Test
    void threeResistorsOfACoarseSeriesCanBeWorthTheirJoints() {
        List<Candidate> three = Resistors.choose(floating(), 0, new Wish(3.42, 3.3, 0.01, 3), Series.E3);
        List<Candidate> two = Resistors.choose(floating(), 0, new Wish(3.42, 3.3, 0.01, 2), Series.E3);
        assertEquals(20, three.size());
        assertEquals(3, three.get(0).values().size());
        assertTrue(
                three.get(0).voltage() + 0.002 * floating().stock() < two.get(0).voltage());
    }

    /**
     * Pairs of E24 over four decades: 96·97 in series or in parallel, and 96 single ones, 9408 in all. Of each larger part the search may look at the few
     * partners round the target and no more.
     */
    @Test
    void theSearchLooksAtFewCombinationsAndThePlainWayAtAll() {
        long seed = 24;
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            Circuit circuit = Boards.any(random);
            Wish any = wish(random, circuit);
            Wish wish = new Wish(any.target(), any.atLeast(), any.tolerance(), 2);
            double exact = Resistors.exact(circuit, wish.target());
            List<Piece> pieces = DoubleStream.of(Series.E24.between(exact / 100, exact * 100))
                    .mapToObj(ohms -> new Piece(ohms, wish.tolerance(), 2))
                    .toList();
            Choice choice = Choice.over(new Bench(circuit, 0, wish), pieces);
            List<Candidate> found = choice.best();
            int every = pieces.size() * (pieces.size() + 1) + pieces.size();
            // where nothing or next to nothing is safe, all that lies nearer has to be looked at
            if (found.size() == 20) {
                assertTrue(choice.tried() < every / 25, "seed " + seed + " case " + i + ": " + choice.tried());
                assertTrue(choice.tried() >= 20, "seed " + seed + " case " + i);
            }
        }
    }

    /** Below the target too: 8.2 kΩ cannot be had there, so the nearest below come in the order of what their parts are worth. */
    @Test
    void whatIsNotWorthItsJointsIsNamedBelowTheTargetAsWell() {
        Candidate single = made(3.0 - 0.003, 1);
        Candidate nearer = made(3.0 - 0.001, 2);
        Candidate further = made(3.0 - 0.004, 2);
        Candidate other = made(3.0 + 0.001, 2);
        assertEquals(
                List.of(nearer),
                Resistors.nearerWithMore(List.of(single, further, nearer), 3.0).stream()
                        .toList());
        assertTrue(Resistors.nearerWithMore(List.of(single, further), 3.0).isEmpty(), "further off is not nearer");
        assertTrue(Resistors.nearerWithMore(List.of(single, other), 3.0).isEmpty(), "the other side of the target");
        assertTrue(Resistors.nearerWithMore(List.of(nearer, single), 3.0).isEmpty(), "fewer parts");
        assertEquals(
                single,
                Resistors.bestWithFewer(List.of(nearer, further, single)).orElseThrow());
    }

    private static Candidate made(double volts, int parts) {
        return new Candidate(
                java.util.Collections.nCopies(parts, 100.0), Arrangement.SERIES, 100.0 * parts, volts, 0, 0, 0);
    }

    /** Written as on a drawing: + in series, ∥ side by side, brackets round what belongs together. */
    @Test
    void theArrangementIsWrittenWithItsJoints() {
        assertEquals("680 Ω", worded(Arrangement.SINGLE, 680));
        assertEquals("470 Ω + 220 Ω", worded(Arrangement.SERIES, 470, 220));
        assertEquals("1 kΩ ∥ 2.2 kΩ", worded(Arrangement.PARALLEL, 1000, 2200));
        assertEquals("1 kΩ + (2.2 kΩ ∥ 3.3 kΩ)", worded(Arrangement.SERIES_PARALLEL, 1000, 2200, 3300));
        assertEquals("1 kΩ ∥ (2.2 kΩ + 3.3 kΩ)", worded(Arrangement.PARALLEL_SERIES, 1000, 2200, 3300));
        assertEquals(
                List.of("single", "series", "parallel", "series-parallel", "parallel-series"),
                java.util.Arrays.stream(Arrangement.values())
                        .map(Arrangement::id)
                        .toList());
    }

    private static String worded(Arrangement arrangement, double... ohms) {
        return new Candidate(DoubleStream.of(ohms).boxed().toList(), arrangement, 0, 0, 0, 0, 0).partsInWords();
    }

    /**
     * By the law: 750 Ω gives 3.0324 V and 750 Ω + 7.5 Ω gives 3.0359 V. For 3.0320 V the single one is 0.4 mV off; for 3.0290 V, 750 Ω is 3.4 mV
     * above, and no pair can save 7.1 mV there.
     */
    @Test
    void aSecondPartHasToBeWorthItsJoint() {
        for (double target : new double[] {3.032, 3.029, 3.0255}) {
            List<Candidate> list = Resistors.choose(floating(), 0, new Wish(target, 2.9, 0.01, 2), Series.E24);
            assertEquals(List.of(750.0), list.get(0).values(), "for " + target);
        }
        List<Candidate> list = Resistors.choose(floating(), 0, new Wish(3.024, 2.9, 0.01, 2), Series.E24);
        assertEquals(2, list.get(0).values().size(), "8.4 mV are worth it");
        assertEquals(List.of(750.0), Resistors.bestWithFewer(list).orElseThrow().values());
    }

    @Test
    void whatWasNotWorthItsJointsCanBeNamed() {
        List<Candidate> list = Resistors.choose(floating(), 0, new Wish(3.029, 2.9, 0.01, 2), Series.E24);
        Candidate nearer = Resistors.nearerWithMore(list, 3.029).orElseThrow();
        assertEquals(2, nearer.values().size());
        assertTrue(nearer.voltage() >= 3.029 && nearer.voltage() < list.get(0).voltage());
        assertTrue(Resistors.bestWithFewer(list).isEmpty());
        List<Candidate> single = Resistors.choose(floating(), 0, new Wish(3.029, 2.9, 0.01, 1), Series.E24);
        assertTrue(Resistors.nearerWithMore(single, 3.029).isEmpty());
    }

    /** 100 ppm/K and 40 K are 0.4 %: 1.01·1.004 − 1 = 1.404 %. */
    @Test
    void warmthWidensTheWorstCase() {
        Wish warm = new Wish(3.139, 3.0, 0.01, 1, 0.004);
        Candidate kilohm = Resistors.choose(floating(), 0, warm, Series.E24).get(0);
        assertEquals(floating().magnitude(1000 * (1 - 0.01404)), kilohm.lowest(), 1e-12);
        assertEquals(floating().magnitude(1000 * (1 + 0.01404)), kilohm.highest(), 1e-12);
    }

    private static Candidate only(List<Candidate> list, List<Double> values) {
        return list.stream()
                .filter(candidate -> candidate.values().equals(values))
                .findFirst()
                .orElseThrow();
    }

    private static void assertKey(String key, double legUncertainty, Wish wish) {
        assertEquals(
                key,
                assertThrows(BadInput.class, () -> Resistors.choose(floating(), legUncertainty, wish, Series.E24))
                        .told()
                        .key());
    }
}
