package railtrim.benchmark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import railtrim.circuit.Circuit;
import railtrim.circuit.Place;
import railtrim.parts.PartsBox;
import railtrim.parts.Resistors;
import railtrim.parts.Series;

/** Two and three resistors out of whole series, against trying every pair. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Pairs {
    private static final double TOLERANCE = 0.01;
    private static final int MOST = 20;

    private final Circuit circuit = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    private final Resistors.Wish two = new Resistors.Wish(3.0, 2.98, TOLERANCE, 2);
    private final Resistors.Wish three = new Resistors.Wish(3.0, 2.98, TOLERANCE, 3);
    private final PartsBox fine = box(Series.E192, 7);
    private final PartsBox common = box(Series.E24, 6);

    private static PartsBox box(Series series, int decades) {
        List<PartsBox.Part> parts = new ArrayList<>();
        for (double ohms : series.between(1, Math.pow(10, decades) * 0.999)) {
            parts.add(new PartsBox.Part(ohms, TOLERANCE, 3));
        }
        return new PartsBox(parts);
    }

    /** The two ways have to agree before they are compared: the last place of the search is kept for the nearest single part below the target. */
    @Setup
    public void sameAnswer() {
        List<Resistors.Candidate> sorted = sorted();
        List<double[]> every = everyPair();
        for (int place = 0; place < MOST - 1; place++) {
            double volts = circuit.magnitude(every.get(place)[1]);
            if (Math.abs(sorted.get(place).voltage() - volts) > 1e-12) {
                throw new IllegalStateException("place " + place + ": " + volts + " V is missing");
            }
        }
    }

    @Benchmark
    public List<Resistors.Candidate> sorted() {
        return Resistors.choose(circuit, 0, two, fine);
    }

    @Benchmark
    public List<Resistors.Candidate> triples() {
        return Resistors.choose(circuit, 0, three, common);
    }

    /** Every pair in both arrangements, worst case checked, the best twenty above the target kept; no object made for a pair that is not kept. */
    @Benchmark
    public List<double[]> everyPair() {
        double[] ohms = fine.parts().stream().mapToDouble(PartsBox.Part::ohms).toArray();
        PriorityQueue<double[]> best = new PriorityQueue<>(Comparator.comparingDouble((double[] pair) -> -pair[0]));
        double handicap = Resistors.WORTH_OF_A_PART * circuit.stock();
        for (double single : ohms) {
            offer(best, single, 0);
        }
        for (int i = 0; i < ohms.length; i++) {
            for (int j = 0; j <= i; j++) {
                offer(best, ohms[i] + ohms[j], handicap);
                offer(best, ohms[i] * ohms[j] / (ohms[i] + ohms[j]), handicap);
            }
        }
        List<double[]> list = new ArrayList<>(best);
        list.sort(Comparator.comparingDouble(pair -> pair[0]));
        return list;
    }

    private void offer(PriorityQueue<double[]> best, double added, double handicap) {
        double volts = circuit.magnitude(added);
        double lowest = circuit.magnitude(added * (1 - TOLERANCE));
        double highest = circuit.magnitude(added * (1 + TOLERANCE));
        if (volts >= two.target() && lowest >= two.atLeast() && highest <= circuit.stock()) {
            double rank = volts - two.target() + handicap;
            if (best.size() < MOST || rank < best.peek()[0]) {
                best.add(new double[] {rank, added});
                if (best.size() > MOST) {
                    best.poll();
                }
            }
        }
    }
}
