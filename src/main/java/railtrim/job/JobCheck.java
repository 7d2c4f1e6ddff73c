package railtrim.job;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import railtrim.quantity.Message;

/**
 * A job file looked at without touching it: no lock, nothing cut off, nothing added.
 *
 * @param version of the file's format
 * @param problems empty where every line is sound
 */
public record JobCheck(Job job, long version, List<Message> problems) {
    public JobCheck {
        problems = List.copyOf(problems);
    }

    /** @throws JournalProblem where there is no such file, it cannot be read, or it is no job */
    public static JobCheck of(Path file, Mark mark) {
        JobFile found = JobFile.read(file, mark);
        return new JobCheck(found.job(), found.version(), found.problems());
    }

    public String name() {
        return job.name();
    }

    /** Whether it was made or changed elsewhere, or by a version that did not mark its jobs. */
    public boolean elsewhere() {
        return job.origin() == Origin.ELSEWHERE;
    }

    public int facts() {
        return job.entries().size();
    }

    public Optional<Instant> first() {
        return job.entries().stream().findFirst().map(Entry::time);
    }

    public Optional<Instant> last() {
        return job.entries().stream().reduce((earlier, later) -> later).map(Entry::time);
    }
}
