package railtrim.procedure;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.job.Job;
import railtrim.quantity.PlainText;

/**
 * A job as it may be handed to others. Personal is: what the person called the job and the board, every text they typed of their own (notes, what a
 * fault looked like, reasons), and the time of day they worked at. What is printed on the parts and in the meter's manual, the name of the load, the readings, the answers that
 * were offered and how long things took stay: without them the job would tell nothing. There is no path in a job.
 */
public final class Sharing {
    /** Names of parts and of the load, beside the rows of the meter's manual; told to the person before anything is written. */
    private static final Set<String> STAYS = Set.of("chip.name", "reg.marking", "resume.marking", "load.name");

    private static final String BOARD = "board.name";

    private final String name;
    private final String instead;
    private final Set<String> stays = new LinkedHashSet<>();
    private int leftOut;

    private Sharing(String name, String instead) {
        this.name = name;
        this.instead = instead;
    }

    /**
     * @param leftOut how many texts were taken out
     * @param stays the texts that are still in it
     */
    public record Shared(Job job, int leftOut, List<String> stays) {
        public Shared {
            stays = List.copyOf(stays);
        }
    }

    /**
     * @param name what others read as the name of the job and of the board
     * @param instead stands where a text was left out
     */
    public static Shared of(Job job, String name, String instead) {
        Sharing sharing = new Sharing(PlainText.of(name), instead);
        Duration back = timeOfDay(job);
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : job.entries()) {
            Fact fact = sharing.shared(entry.fact());
            entries.add(new Entry(entry.sequence(), entry.time().minus(back), entry.session(), entry.tick(), fact));
        }
        return new Shared(new Job(sharing.name, entries), sharing.leftOut, List.copyOf(sharing.stays));
    }

    /** The work begins at midnight of its day; what came after keeps its distance. */
    private static Duration timeOfDay(Job job) {
        if (job.entries().isEmpty()) {
            return Duration.ZERO;
        }
        Instant first = job.entries().get(0).time();
        return Duration.between(first.truncatedTo(ChronoUnit.DAYS), first);
    }

    private Fact shared(Fact fact) {
        if (fact instanceof Fact.Note note) {
            return new Fact.Note(note.step(), note.field(), text(note.field(), note.text()));
        } else if (fact instanceof Fact.Proposed proposed) {
            boolean board = proposed.field().equals(BOARD);
            return board ? new Fact.Proposed(proposed.step(), BOARD, name) : proposed;
        } else if (fact instanceof Fact.Paused paused) {
            return new Fact.Paused(paused.step(), own(paused.note()));
        } else if (fact instanceof Fact.Skipped skipped) {
            return new Fact.Skipped(skipped.step(), own(skipped.reason()));
        } else if (fact instanceof Fact.Reopened reopened) {
            return new Fact.Reopened(reopened.step(), own(reopened.reason()));
        }
        return fact;
    }

    private String text(String field, String text) {
        if (field.equals(BOARD)) {
            return name;
        } else if (STAYS.contains(field) || MeterRows.VOLTS.contains(field) || MeterRows.OHMS.contains(field)) {
            stays.add(PlainText.of(text));
            return text;
        }
        return own(text);
    }

    private String own(String text) {
        if (text.isBlank()) {
            return text;
        }
        leftOut++;
        return instead;
    }
}
