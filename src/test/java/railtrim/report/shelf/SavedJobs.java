package railtrim.report.shelf;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import railtrim.job.Entry;
import railtrim.job.Journal;
import railtrim.job.Mark;
import railtrim.job.Time;

/** Jobs that were played, put into files. */
public final class SavedJobs {
    private SavedJobs() {}

    /** With the times at which they were first written: what was waited for counts. */
    public static void save(Path folder, String name, List<Entry> entries, Mark mark) {
        int[] next = {0};
        Time time = new Time() {
            @Override
            public Instant now() {
                return entries.get(Math.min(next[0], entries.size() - 1)).time();
            }

            @Override
            public long ticks() {
                return next[0] < entries.size() ? entries.get(next[0]).tick() : 0;
            }
        };
        try (Journal journal = Journal.create(folder.resolve(name + Journal.ENDING), name, time, mark)) {
            for (Entry entry : entries) {
                journal.append(entry.fact());
                next[0]++;
            }
        }
    }
}
