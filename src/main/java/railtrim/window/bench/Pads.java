package railtrim.window.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import railtrim.practice.Board;
import railtrim.practice.Node;
import railtrim.procedure.Words;

/** The pads of a board, and what is printed beside them. */
final class Pads {
    private Pads() {}

    /** The control pad only where the regulator has a control supply. */
    static List<Node> of(Board board) {
        return Stream.of(Node.values())
                .filter(node ->
                        node != Node.CONTROL || board.divider().controlSupply().isPresent())
                .toList();
    }

    static String id(Node node) {
        return node.name().toLowerCase(Locale.ROOT);
    }

    static String print(Words words, Node node) {
        return words.of("window.bench.pad." + id(node));
    }

    static String print(Words words, Node.Pair pair) {
        return words.of("window.bench.pads", print(words, pair.first()), print(words, pair.second()));
    }
}
