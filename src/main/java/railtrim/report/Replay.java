package railtrim.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import railtrim.job.Entry;
import railtrim.job.Job;
import railtrim.procedure.Figures;
import railtrim.procedure.Procedure;

/** What was known just before each entry: the range shown for a reading, and the answers offered, were worked out from that and not from the end. */
final class Replay {
    /** Each look back works through the whole job so far. A job by hand has a few hundred entries; one made to be endless is not followed. */
    private static final int LONGEST = 600;

    private final Procedure procedure;
    private final Job job;
    private final Map<Long, Figures> known = new HashMap<>();

    Replay(Procedure procedure, Job job) {
        this.procedure = procedure;
        this.job = job;
    }

    /** Empty where the job is too long to look back through. */
    Optional<Figures> before(Entry entry) {
        return entry.sequence() > LONGEST
                ? Optional.empty()
                : Optional.of(known.computeIfAbsent(entry.sequence(), this::figuresBefore));
    }

    private Figures figuresBefore(long sequence) {
        List<Entry> earlier = job.entries().stream()
                .takeWhile(entry -> entry.sequence() < sequence)
                .toList();
        return procedure.state(new Job(job.name(), earlier)).figures();
    }
}
