package railtrim.job;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/**
 * A list that is never changed, and of which a longer one is made in constant time: both look at the same array, each up to its own end. Only the
 * longest may be lengthened in place; any other is copied first.
 */
final class EntryList extends AbstractList<Entry> implements RandomAccess {
    private static final class Store {
        private Entry[] cells;
        private int used;

        Store(Entry[] cells, int used) {
            this.cells = cells;
            this.used = used;
        }
    }

    private final Store store;
    private final Entry[] cells;
    private final int size;

    private EntryList(Store store, int size) {
        this.store = store;
        this.cells = store.cells;
        this.size = size;
    }

    /** @throws NullPointerException for an entry that is null, as {@link List#copyOf} */
    static EntryList of(List<Entry> entries) {
        if (entries instanceof EntryList list) {
            return list;
        }
        Entry[] cells = List.copyOf(entries).toArray(new Entry[0]);
        return new EntryList(new Store(cells, cells.length), cells.length);
    }

    EntryList with(Entry entry) {
        synchronized (store) {
            Store grown = store;
            if (store.used != size) {
                grown = new Store(Arrays.copyOf(cells, room(size)), size);
            } else if (store.cells.length == size) {
                store.cells = Arrays.copyOf(store.cells, room(size));
            }
            grown.cells[size] = java.util.Objects.requireNonNull(entry);
            grown.used = size + 1;
            return new EntryList(grown, size + 1);
        }
    }

    private static int room(int size) {
        return Math.max(16, size + size / 2);
    }

    @Override
    public Entry get(int index) {
        return cells[java.util.Objects.checkIndex(index, size)];
    }

    @Override
    public int size() {
        return size;
    }
}
