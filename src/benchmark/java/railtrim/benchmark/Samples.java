package railtrim.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.random.RandomGenerator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import railtrim.circuit.Circuit;
import railtrim.circuit.Place;
import railtrim.parts.Resistors;
import railtrim.parts.Yield;
import railtrim.practice.Rehearsal;

/** A million boards with two resistors and a leg off their values, against drawing their three million random numbers alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Samples {
    private static final int SAMPLES = 1_000_000;

    private final Circuit circuit = Circuit.fromResistors(Place.OUT_ADJ, 1.25, 120, 220, 60e-6);
    private final Resistors.Candidate pair = new Resistors.Candidate(
            List.of(1000.0, 2200.0), Resistors.Arrangement.PARALLEL, 687.5, circuit.magnitude(687.5), 0, 0, 0);
    private final RandomGenerator chance = Rehearsal.chance(1);

    @Benchmark
    public Yield boards() {
        return Yield.of(circuit, 2, pair, 0.01, 2.95, 3.05, SAMPLES, chance);
    }

    @Benchmark
    public double numbersAlone() {
        double sum = 0;
        for (int i = 0; i < 3 * SAMPLES; i++) {
            sum += chance.nextDouble();
        }
        return sum;
    }
}
