package railtrim.practice;

import java.util.ArrayDeque;
import java.util.Iterator;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/**
 * Many rehearsals on as many cores as there are. Boards are drawn and outcomes counted in order, so that neither threads nor cores decide
 * anything; only a few boards are held at a time.
 */
public final class Rehearsals {
    /** So many boards for each core are begun before the first of them is counted: no core waits for a long job on another. */
    private static final int AHEAD = 16;

    /** Progress is told after so many. */
    private static final int NOW_AND_THEN = 50;

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
        int cores = Runtime.getRuntime().availableProcessors();
        ExecutorService hands = Executors.newFixedThreadPool(cores);
        try {
            return play(boards, seed, progress, hands, AHEAD * cores);
        } finally {
            hands.shutdownNow();
        }
    }

    private Tally play(Iterator<Board> boards, long seed, IntConsumer progress, ExecutorService hands, int ahead) {
        Tally tally = new Tally();
        Queue<Future<Outcome>> begun = new ArrayDeque<>();
        int drawn = 0;
        while (boards.hasNext() || !begun.isEmpty()) {
            while (begun.size() < ahead && boards.hasNext()) {
                Board board = boards.next();
                Rehearsal kind = kind(drawn);
                long luck = seed + drawn++;
                begun.add(hands.submit(() -> kind.play(board, luck)));
            }
            tally.add(ended(begun.remove()));
            if (tally.boards() % NOW_AND_THEN == 0 || begun.isEmpty()) {
                progress.accept(tally.boards());
            }
        }
        return tally;
    }

    private static Outcome ended(Future<Outcome> rehearsal) {
        try {
            return rehearsal.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a rehearsal broke off", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the rehearsals were broken off", e);
        }
    }

    private Rehearsal kind(int board) {
        return kinds.get(board / 4 % kinds.size());
    }
}
