package railtrim.job;

import java.util.ArrayList;
import java.util.List;

/** What happened to one board, in order. */
public record Job(String name, List<Entry> entries) {
    public Job {
        entries = List.copyOf(entries);
    }

    public static Job empty(String name) {
        return new Job(name, List.of());
    }

    public Job with(Entry entry) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(entry);
        return new Job(name, more);
    }

    /** Sequence of the last entry, 0 for none. */
    public long last() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).sequence();
    }
}
