package railtrim.fuzz;

import java.nio.charset.StandardCharsets;
import railtrim.practice.Board;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;

/** A practice board: one that could stand on a bench, or in words why it cannot be used. */
public final class BoardFuzz {
    private static final Words WORDS = Words.english();

    private BoardFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        try {
            Board board = Board.of(new String(data, StandardCharsets.UTF_8));
            if (!(board.stock() > 0) || !(board.stock() < 60)) {
                throw new IllegalStateException("no board: " + board);
            }
        } catch (BadInput bad) {
            WORDS.of(bad.told());
        }
    }
}
