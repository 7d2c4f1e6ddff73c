package railtrim.job;

import java.util.List;

/**
 * What happened to one board, in order.
 *
 * @param origin whether it was written here; a job that was never on disk was
 */
public record Job(String name, List<Entry> entries, Origin origin) {
    public Job {
        entries = EntryList.of(entries);
    }

    public Job(String name, List<Entry> entries) {
        this(name, entries, Origin.OWN);
    }

    public static Job empty(String name) {
        return new Job(name, List.of());
    }

    public Job with(Entry entry) {
        return new Job(name, EntryList.of(entries).with(entry), origin);
    }

    /** Sequence of the last entry, 0 for none. */
    public long last() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).sequence();
    }
}
