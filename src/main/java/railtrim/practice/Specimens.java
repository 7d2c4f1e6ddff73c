package railtrim.practice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** More boards off the same line: the same parts list and story, but every specimen with its own truth. */
public final class Specimens {
    private Specimens() {}

    /** The board as it is, and then others that differ from it by chance, so many in all. The same seed gives the same specimens. */
    public static List<Board> of(Board board, int boards, long seed) {
        List<Board> specimens = new ArrayList<>();
        some(board, boards, seed).forEachRemaining(specimens::add);
        return specimens;
    }

    /** The same, each drawn when it is asked for. */
    public static Iterator<Board> some(Board board, int boards, long seed) {
        RandomGenerator chance = Rehearsal.chance(seed);
        return IntStream.range(0, boards)
                .mapToObj(i -> i == 0 ? board : another(board, chance))
                .iterator();
    }

    /** References within 1 %, resistors of 1 %, a load path and a bias that vary more, and a fail voltage of its own. */
    private static Board another(Board board, RandomGenerator chance) {
        Board.Divider was = board.divider();
        Board.Divider divider = new Board.Divider(
                was.place(),
                new Board.Real(was.reference().marked(), between(chance, -0.008, 0.008)),
                new Board.Real(was.upper().marked(), between(chance, -0.01, 0.01)),
                new Board.Real(was.lower().marked(), between(chance, -0.01, 0.01)),
                was.bias() * between(chance, 0.8, 1.3),
                was.input() * between(chance, 0.99, 1.01),
                was.dropout(),
                was.inputOhms(),
                was.minimumLoad(),
                was.unloadedRise(),
                was.controlSupply(),
                was.outputOhms() * between(chance, 0.5, 1.5),
                was.railOhms() * between(chance, 0.6, 1.6),
                was.decaySeconds() * between(chance, 0.7, 1.4));
        // The fail voltage keeps its share of stock, give or take 4 %.
        double share =
                divider.magnitude(divider.upper().value(), divider.lower().value())
                        / board.stock()
                        * between(chance, 0.96, 1.04);
        Board.Failing failing = board.failing();
        return new Board(
                board.label(),
                board.feed(),
                board.chip(),
                board.regulator(),
                divider,
                board.load(),
                board.warmth(),
                new Board.Failing(
                        failing.hot() * share,
                        failing.cold() * share * between(chance, 0.995, 1.005),
                        failing.spread() * between(chance, 0.5, 1.5),
                        failing.damage(),
                        failing.shows()));
    }

    private static double between(RandomGenerator chance, double low, double high) {
        return low + (high - low) * chance.nextDouble();
    }
}
