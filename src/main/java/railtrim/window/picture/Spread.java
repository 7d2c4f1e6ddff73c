package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;

/** Moves labels on a line apart just so far that they do not touch. */
final class Spread {
    private Spread() {}

    /** Labels that touch and so move as one. */
    private static final class Block {
        private final int first;
        private int count;
        private double sumOfWishes;

        Block(int first, double wish) {
            this.first = first;
            this.count = 1;
            this.sumOfWishes = wish;
        }

        double start() {
            return sumOfWishes / count;
        }

        void take(Block next) {
            count += next.count;
            sumOfWishes += next.sumOfWishes;
        }
    }

    /**
     * Least squares under a least distance, by pooling neighbours.
     *
     * @param wanted ascending
     * @param gap least distance between neighbours; smaller where there is not room enough for all
     * @return where they go, in the same order, from {@code low} to {@code high}
     */
    static double[] apart(double[] wanted, double gap, double low, double high) {
        int count = wanted.length;
        double[] placed = new double[count];
        double step = count < 2 ? gap : Math.min(gap, (high - low) / (count - 1));
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            // Taking i steps off turns "at least one step further" into "not before".
            double within = Math.max(low + i * step, Math.min(high - (count - 1 - i) * step, wanted[i]));
            blocks.add(new Block(i, within - i * step));
            while (blocks.size() > 1
                    && last(blocks, 2).start() > last(blocks, 1).start()) {
                Block next = blocks.remove(blocks.size() - 1);
                last(blocks, 1).take(next);
            }
        }
        for (Block block : blocks) {
            for (int i = block.first; i < block.first + block.count; i++) {
                placed[i] = block.start() + i * step;
            }
        }
        return placed;
    }

    private static Block last(List<Block> blocks, int back) {
        return blocks.get(blocks.size() - back);
    }
}
