package railtrim.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** A finished job judged from scratch: where are we, what is stale. Made long by holding one voltage of the way down again and again. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class WholeJob {
    @Param({"1000", "10000", "100000"})
    private int facts;

    private final Procedure procedure = Procedure.builtIn();
    private Job job;

    @Setup
    public void writeTheJob() {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        List<Entry> played =
                new Rehearsal(procedure, Meter.fine()).play(board, 3).job().entries();
        int set = 0;
        while (!(played.get(set).fact() instanceof Fact.Reading reading
                && reading.field().equals("down.volts"))) {
            set++;
        }
        List<Entry> all = new ArrayList<>(played.subList(0, set));
        for (int extra = facts - played.size(); extra > 0; extra -= 2) {
            all.add(played.get(set));
            all.add(played.get(set + 1));
        }
        all.addAll(played.subList(set, played.size()));
        List<Entry> numbered = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Entry entry = all.get(i);
            numbered.add(new Entry(i + 1, entry.time(), entry.session(), entry.tick(), entry.fact()));
        }
        job = new Job("bench", numbered);
        if (!procedure.state(job).complete()) {
            throw new IllegalStateException("the job is not finished, so not all of it is judged");
        }
    }

    @Benchmark
    public Object fromScratch() {
        return procedure.state(job);
    }
}
