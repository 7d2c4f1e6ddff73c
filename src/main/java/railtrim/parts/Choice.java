package railtrim.parts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import railtrim.parts.Resistors.Arrangement;
import railtrim.parts.Resistors.Candidate;

/**
 * The best combinations of sorted pieces without trying them all: for what is there already the last partner that would hit the target is
 * looked up, and the search walks away from it up and down only as long as a candidate could still be among the best. The outcome is that of
 * trying every combination.
 */
final class Choice {
    /** A hair of resistance, so that the last binary digit decides nothing. */
    private static final double HAIR = 1e-6;

    private static final DoubleBinaryOperator SERIES = Double::sum;
    private static final DoubleBinaryOperator PARALLEL = Net::parallel;

    private final Bench bench;
    private final List<Piece> pieces;
    private final double[] ohms;
    private final NavigableSet<Candidate> best;

    /** Ohms of the nearest that can be safe at all, and where the walks begin: there, or at the target. */
    private final double leastSafe;

    private final double start;
    /** No combination of so many parts beyond these can be among the best any more. */
    private final double[] upperLimit = new double[4];

    private final double[] lowerLimit = new double[4];

    private int tried;

    private Choice(Bench bench, List<Piece> pieces) {
        this.bench = bench;
        this.pieces = pieces;
        this.ohms = pieces.stream().mapToDouble(Piece::ohms).toArray();
        this.best = new TreeSet<>(bench.order());
        // A network of parts of at least this tolerance has at least this tolerance itself.
        double closest = pieces.stream().mapToDouble(Piece::tolerance).min().orElse(0);
        this.leastSafe = bench.leastOhms() / (1 - closest);
        this.start = Math.max(bench.exact(), leastSafe);
        Arrays.fill(upperLimit, Double.POSITIVE_INFINITY);
    }

    static List<Candidate> of(Bench bench, List<Piece> pieces) {
        return over(bench, pieces).best();
    }

    static Choice over(Bench bench, List<Piece> pieces) {
        List<Piece> sorted = pieces.stream()
                .sorted(Comparator.comparingDouble(Piece::ohms).thenComparingDouble(Piece::tolerance))
                .toList();
        return new Choice(bench, sorted);
    }

    /** Combinations worked out so far, out of all there are. */
    int tried() {
        return tried;
    }

    List<Candidate> best() {
        walk(1, 0, SERIES, ohms.length - 1, any -> true, this::net);
        List<Candidate> keep = nearestSingles();
        if (bench.most() >= 2) {
            pairs();
        }
        if (bench.most() >= 3) {
            triples();
        }
        return withAll(keep);
    }

    private Net net(int place) {
        return Net.of(pieces.get(place));
    }

    /** Partners up to the piece itself, so that each pair is met once; twice the same piece only where there are two of it. */
    private void pairs() {
        for (int larger = 0; larger < ohms.length; larger++) {
            int last = pieces.get(larger).count() >= 2 ? larger : larger - 1;
            int i = larger;
            walk(2, ohms[i], SERIES, last, any -> true, k -> net(i).inSeries(net(k), Arrangement.SERIES));
            walk(2, ohms[i], PARALLEL, last, any -> true, k -> net(i).inParallel(net(k), Arrangement.PARALLEL));
        }
    }

    /** Three in series or in parallel fall from left to right; of the mixed ones the two that belong together are a pair, and the third is any. */
    private void triples() {
        int all = ohms.length - 1;
        for (int first = 0; first < ohms.length; first++) {
            for (int second = 0; second <= first; second++) {
                int i = first;
                int j = second;
                if (i == j && pieces.get(i).count() < 2) {
                    continue;
                }
                IntPredicate left = k -> pieces.get(k).count() > (k == i ? 1 : 0) + (k == j ? 1 : 0);
                double sum = ohms[i] + ohms[j];
                double side = Net.parallel(ohms[i], ohms[j]);
                walk(
                        3,
                        sum,
                        SERIES,
                        j,
                        left,
                        k -> net(i).inSeries(net(j), Arrangement.SERIES).inSeries(net(k), Arrangement.SERIES));
                walk(
                        3,
                        side,
                        PARALLEL,
                        j,
                        left,
                        k -> net(i).inParallel(net(j), Arrangement.PARALLEL).inParallel(net(k), Arrangement.PARALLEL));
                walk(
                        3,
                        side,
                        SERIES,
                        all,
                        left,
                        k -> net(k).inSeries(
                                        net(i).inParallel(net(j), Arrangement.PARALLEL), Arrangement.SERIES_PARALLEL));
                walk(
                        3,
                        sum,
                        PARALLEL,
                        all,
                        left,
                        k -> net(k).inParallel(
                                        net(i).inSeries(net(j), Arrangement.SERIES), Arrangement.PARALLEL_SERIES));
            }
        }
    }

    private void walk(
            int parts,
            double base,
            DoubleBinaryOperator join,
            int last,
            IntPredicate available,
            IntFunction<Net> together) {
        int from = firstAtLeast(partnerFor(base, join), last);
        for (int k = from; k <= last; k++) {
            double total = join.applyAsDouble(base, ohms[k]);
            if (total > upperLimit[parts] * (1 + HAIR)) {
                break;
            }
            if (available.test(k)) {
                offer(together.apply(k));
            }
        }
        for (int k = from - 1; k >= 0; k--) {
            double total = join.applyAsDouble(base, ohms[k]);
            if (total < leastSafe * (1 - HAIR)
                    || total < start * (1 - HAIR) && total < lowerLimit[parts] * (1 - HAIR)) {
                break;
            }
            if (available.test(k)) {
                offer(together.apply(k));
            }
        }
    }

    /** The partner that hits the start: any in series where the base is too much already, none in parallel where it is too little. */
    private double partnerFor(double base, DoubleBinaryOperator join) {
        if (join == SERIES) {
            return start - base;
        }
        double conductance = 1 / start - 1 / base;
        return conductance > 0 ? 1 / conductance : Double.POSITIVE_INFINITY;
    }

    private void offer(Net net) {
        tried++;
        if (net.ohms() < leastSafe * (1 - HAIR)) {
            return;
        }
        Candidate candidate = bench.candidate(net);
        if (bench.safe(candidate) && best.add(candidate)) {
            if (best.size() > Resistors.MOST_CANDIDATES) {
                best.pollLast();
            }
            if (best.size() == Resistors.MOST_CANDIDATES) {
                narrow(best.last());
            }
        }
    }

    /** Above the target the worst of the best is the furthest worth looking at, and nothing below the target is; or the other way round. */
    private void narrow(Candidate worst) {
        boolean above = bench.above(worst);
        for (int parts = 1; parts <= bench.most(); parts++) {
            upperLimit[parts] = above ? bench.mostOhms(worst, parts) : Double.POSITIVE_INFINITY;
            lowerLimit[parts] = above ? Double.POSITIVE_INFINITY : bench.fewestOhms(worst, parts);
        }
    }

    private int firstAtLeast(double wanted, int last) {
        int low = 0;
        int high = last + 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ohms[middle] < wanted) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The nearest safe single resistor above the target and the nearest below, as far as there are. */
    private List<Candidate> nearestSingles() {
        int from = firstAtLeast(start * (1 - HAIR), ohms.length - 1);
        List<Candidate> nearest = new ArrayList<>();
        nearest(from, 1, bench::above).ifPresent(nearest::add);
        nearest(Math.min(from, ohms.length - 1), -1, single -> !bench.above(single))
                .ifPresent(nearest::add);
        return nearest;
    }

    /** Of several of the same value the best; beyond the first value that is safe on this side none is nearer. */
    private Optional<Candidate> nearest(int from, int step, Predicate<Candidate> side) {
        Optional<Candidate> found = Optional.empty();
        for (int k = from; k >= 0 && k < ohms.length; k += step) {
            if (ohms[k] < leastSafe * (1 - HAIR)) {
                break;
            }
            if (found.isPresent() && Math.abs(ohms[k] - found.get().added()) > HAIR * ohms[k]) {
                break;
            }
            Candidate candidate = bench.candidate(net(k));
            if (bench.safe(candidate)
                    && side.test(candidate)
                    && (found.isEmpty() || bench.order().compare(candidate, found.get()) < 0)) {
                found = Optional.of(candidate);
            }
        }
        return found;
    }

    private List<Candidate> withAll(List<Candidate> keep) {
        List<Candidate> others = new ArrayList<>(best);
        others.removeAll(keep);
        List<Candidate> list = new ArrayList<>(keep);
        list.addAll(others.subList(0, Math.min(others.size(), Resistors.MOST_CANDIDATES - keep.size())));
        list.sort(bench.order());
        return List.copyOf(list);
    }
}
