package railtrim.report.pdf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import railtrim.job.BuiltIn;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.practice.Board;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Procedure;
import railtrim.procedure.State;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** Jobs to write out: played on practice boards, cut short, or made long. */
public final class SampleJobs {
    public static final Procedure PROCEDURE = Procedure.builtIn();

    /** What people may type beside Latin letters: Greek, Japanese, Arabic, Korean, a letter with its accent typed apart, a sign no font here has, and the signs of the trade. */
    static final String LETTERS =
            "Η πλακέτα δούλεψε καλά ως τα 2,7 V. 画面が乱れ、音が途切れた。 توقفت الشاشة عن العمل (مرتين) عند 2.7 V. 화면이 멈췄다. Cafe\u0301. 🎹 Ω ≤ ✓ ± ∥ µ first office fluff";

    private SampleJobs() {}

    public static State played(String board) {
        Board read = Board.of(BuiltIn.text("demo-data/boards/" + board + ".json"));
        return PROCEDURE.state(
                new Rehearsal(PROCEDURE, Meter.middle()).play(read, 1).job());
    }

    /** The job as it stood after so many facts. */
    public static State first(State whole, int facts) {
        return PROCEDURE.state(new Job(whole.job().name(), whole.job().entries().subList(0, facts)));
    }

    /** A job that went down in 60 steps, with a long note after each; unfinished. */
    public static State longWayDown(State whole) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : whole.job().entries()) {
            if (entry.fact().step().equals("down.set")) {
                break;
            }
            entries.add(entry);
        }
        double start = whole.figures().start().orElseThrow();
        for (int i = 1; i <= 60; i++) {
            double volts = Math.round(1000 * (start - 0.004 * i)) / 1000.0;
            add(entries, new Fact.Reading("down.set", "down.volts", volts, Unit.VOLT, Display.volts(volts)));
            add(entries, new Fact.Choice("down.watch", "down.seen", "well"));
            add(entries, new Fact.Paused("down.watch", LETTERS.repeat(i % 3 + 1)));
            add(entries, new Fact.Resumed("down.watch", 30));
        }
        return PROCEDURE.state(new Job(whole.job().name(), entries));
    }

    private static void add(List<Entry> entries, Fact fact) {
        Entry last = entries.get(entries.size() - 1);
        entries.add(new Entry(last.sequence() + 1, last.time().plusSeconds(20), 1, last.tick() + 20_000, fact));
    }

    /** A job that has nothing but one long note. */
    static State note(String text) {
        Entry only =
                new Entry(1, Instant.parse("2026-03-01T09:00:00Z"), 1, 0, new Fact.Note("scope", "board.name", text));
        return PROCEDURE.state(new Job("notes", List.of(only)));
    }
}
