package railtrim.benchmark;

import java.util.ArrayList;
import java.util.List;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.quantity.Meter;

/** A finished job, made long by holding one voltage of the way down again and again. */
public final class LongJob {
    private LongJob() {}

    static Job ofFacts(Procedure procedure, int facts) {
        List<Entry> played = played(procedure);
        return withHeld(played, Math.max(0, (facts - played.size() + 1) / 2));
    }

    /** @param readings how often a voltage is read on the way down, at least */
    public static Job ofReadings(Procedure procedure, int readings) {
        List<Entry> played = played(procedure);
        long there = played.stream().filter(LongJob::isStepDown).count();
        return withHeld(played, (int) Math.max(0, readings - there));
    }

    private static List<Entry> played(Procedure procedure) {
        Board board = Board.of(BuiltIn.text("demo-data/boards/sound-board.json"));
        return new Rehearsal(procedure, Meter.fine()).play(board, 3).job().entries();
    }

    private static boolean isStepDown(Entry entry) {
        return entry.fact() instanceof Fact.Reading reading && reading.field().equals("down.volts");
    }

    private static Job withHeld(List<Entry> played, int more) {
        int set = 0;
        while (!isStepDown(played.get(set))) {
            set++;
        }
        List<Entry> all = new ArrayList<>(played.subList(0, set));
        for (int i = 0; i < more; i++) {
            all.add(played.get(set));
            all.add(played.get(set + 1));
        }
        all.addAll(played.subList(set, played.size()));
        List<Entry> numbered = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Entry entry = all.get(i);
            numbered.add(new Entry(i + 1, entry.time(), entry.session(), entry.tick(), entry.fact()));
        }
        return new Job("bench", numbered);
    }
}
