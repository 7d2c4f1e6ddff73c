package railtrim.parts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Function;
import railtrim.parts.Resistors.Candidate;

/**
 * The best combinations of sorted pieces without trying them all: for each piece the partner that would hit the target is looked up, and
 * the search walks away from it up and down only as long as a candidate could still be among the best. The outcome is that of trying every pair.
 */
final class Choice {
    private final Bench bench;
    private final List<Piece> pieces;
    private final NavigableSet<Candidate> best;

    private Choice(Bench bench, List<Piece> pieces) {
        this.bench = bench;
        this.pieces = pieces;
        this.best = new TreeSet<>(bench.order());
    }

    static List<Candidate> of(Bench bench, List<Piece> pieces) {
        List<Piece> sorted = pieces.stream()
                .sorted(Comparator.comparingDouble(Piece::ohms).thenComparingDouble(Piece::tolerance))
                .toList();
        return new Choice(bench, sorted).best();
    }

    private List<Candidate> best() {
        pieces.stream().map(bench::single).forEach(this::offer);
        List<Candidate> keep = nearestSingles();
        if (bench.pairsToo()) {
            for (int larger = 0; larger < pieces.size(); larger++) {
                walkSeries(larger);
                walkParallel(larger);
            }
        }
        return withAll(keep);
    }

    private void walkSeries(int larger) {
        Piece piece = pieces.get(larger);
        walk(larger, bench.start() - piece.ohms(), partner -> bench.series(piece, partner));
    }

    private void walkParallel(int larger) {
        Piece piece = pieces.get(larger);
        double conductance = 1 / bench.start() - 1 / piece.ohms();
        double partnerOhms = conductance > 0 ? 1 / conductance : Double.POSITIVE_INFINITY;
        walk(larger, partnerOhms, partner -> bench.parallel(piece, partner));
    }

    /** Partners up to the piece itself, so that each pair is met once; twice the same piece only where there are two of it. */
    private void walk(int larger, double partnerOhms, Function<Piece, Candidate> combine) {
        int last = pieces.get(larger).count() >= 2 ? larger : larger - 1;
        int start = firstAtLeast(partnerOhms, last);
        for (int i = start; i <= last; i++) {
            Candidate candidate = combine.apply(pieces.get(i));
            if (bench.above(candidate) && hopeless(candidate)) {
                break;
            }
            offer(candidate);
        }
        for (int i = start - 1; i >= 0; i--) {
            Candidate candidate = combine.apply(pieces.get(i));
            if (bench.tooLow(candidate) || !bench.above(candidate) && hopeless(candidate)) {
                break;
            }
            offer(candidate);
        }
    }

    /** No partner further on in the same direction can do better. */
    private boolean hopeless(Candidate candidate) {
        if (best.size() < Resistors.MOST_CANDIDATES) {
            return false;
        }
        Candidate worst = best.last();
        return bench.above(candidate) == bench.above(worst)
                ? bench.distance(candidate) > bench.distance(worst)
                : bench.above(worst);
    }

    private void offer(Candidate candidate) {
        if (bench.safe(candidate)) {
            best.add(candidate);
            if (best.size() > Resistors.MOST_CANDIDATES) {
                best.pollLast();
            }
        }
    }

    private int firstAtLeast(double ohms, int last) {
        int low = 0;
        int high = last + 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pieces.get(middle).ohms() < ohms) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The nearest safe single resistor above the target and the nearest below, as far as there are. */
    private List<Candidate> nearestSingles() {
        List<Candidate> singles = pieces.stream()
                .map(bench::single)
                .filter(bench::safe)
                .sorted(bench.order())
                .toList();
        List<Candidate> nearest = new ArrayList<>();
        singles.stream().filter(bench::above).findFirst().ifPresent(nearest::add);
        singles.stream().filter(single -> !bench.above(single)).findFirst().ifPresent(nearest::add);
        return nearest;
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
