package railtrim.practice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Many rehearsals on as many cores as there are. Boards are drawn and outcomes counted in order, so that neither threads nor cores decide
 * anything; only a batch of boards is held at a time.
 */
public final class Rehearsals {
    private static final int BATCH = 64;

    private final List<Rehearsal> kinds;

    /** @param kinds taken in turn, four boards each (so that every place of the reference meets every kind) */
    public Rehearsals(List<Rehearsal> kinds) {
        this.kinds = List.copyOf(kinds);
    }

    /**
     * @param seed of the first; the others follow on
     * @param progress told how many are done, now and then
     */
    public Tally play(Iterator<Board> boards, long seed, IntConsumer progress) {
        Tally tally = new Tally();
        while (boards.hasNext()) {
            List<Board> batch = new ArrayList<>();
            while (batch.size() < BATCH && boards.hasNext()) {
                batch.add(boards.next());
            }
            int first = tally.boards();
            IntStream.range(0, batch.size())
                    .parallel()
                    .mapToObj(i -> kind(first + i).play(batch.get(i), seed + first + i))
                    .toList()
                    .forEach(tally::add);
            progress.accept(tally.boards());
        }
        return tally;
    }

    private Rehearsal kind(int board) {
        return kinds.get(board / 4 % kinds.size());
    }
}
