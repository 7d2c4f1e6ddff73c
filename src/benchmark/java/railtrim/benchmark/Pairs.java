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

    /** The two ways have to agree before they are compared. */
    @Setup
    public void sameAnswer() {
        List<Resistors.Candidate> sorted = sorted();
        List<double[]> every = everyPair();
        for (int i = 0; i < every.size(); i++) {
            double volts = circuit.magnitude(every.get(i)[0]);
            if (sorted.stream().noneMatch(each -> Math.abs(each.voltage() - volts) < 1e-12)) {
                // Of the twenty the search keeps the nearest singles; they may take the last places.
                if (i < every.size() - 2) {
                    throw new IllegalStateException("place " + i + ": " + volts + " V is missing");
                }
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

    /** Every pair in both arrangements, worst case checked, the twenty nearest above the target kept; no object made for a pair that is not kept. */
    @Benchmark
    public List<double[]> everyPair() {
        double[] ohms = fine.parts().stream().mapToDouble(PartsBox.Part::ohms).toArray();
        PriorityQueue<double[]> best = new PriorityQueue<>(Comparator.comparingDouble((double[] pair) -> -pair[0]));
        for (double single : ohms) {
            offer(best, single, single, 0);
        }
        for (int i = 0; i < ohms.length; i++) {
            for (int j = 0; j <= i; j++) {
                offer(best, ohms[i] + ohms[j], ohms[i], ohms[j]);
                offer(best, ohms[i] * ohms[j] / (ohms[i] + ohms[j]), ohms[i], ohms[j]);
            }
        }
        List<double[]> list = new ArrayList<>(best);
        list.sort(Comparator.comparingDouble(pair -> pair[0]));
        return list;
    }

    private void offer(PriorityQueue<double[]> best, double added, double larger, double smaller) {
        double volts = circuit.magnitude(added);
        double lowest = circuit.magnitude(added * (1 - TOLERANCE));
        double highest = circuit.magnitude(added * (1 + TOLERANCE));
        if (volts >= two.target() && lowest >= two.atLeast() && highest <= circuit.stock()) {
            if (best.size() < 20 || added < best.peek()[0]) {
                best.add(new double[] {added, larger, smaller});
                if (best.size() > 20) {
                    best.poll();
                }
            }
        }
    }
}
