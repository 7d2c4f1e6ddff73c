package railtrim.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** Which pins of a regulator stand side by side, so that solder can run from one to the other. */
final class Pins {
    private Pins() {}

    /** Two neighbours, one of them soldered to just now; the soldered two themselves where nothing else is near. */
    static Node.Pair beside(Board.Regulator regulator, Node.Pair soldered, RandomGenerator chance) {
        List<Node.Pair> near = neighbours(regulator).stream()
                .filter(pair -> soldered.touches(pair.first()) || soldered.touches(pair.second()))
                .toList();
        return near.isEmpty() ? soldered : near.get(chance.nextInt(near.size()));
    }

    /** Every two pins in a row that lead to different places. */
    static List<Node.Pair> neighbours(Board.Regulator regulator) {
        int pins = regulator.pins().size();
        int turn = regulator.outline().twoSides() ? (pins + 1) / 2 : pins;
        List<Node.Pair> pairs = new ArrayList<>();
        for (int pin = 1; pin < pins; pin++) {
            Optional<Node> one = Node.of(regulator.pins().get(pin - 1));
            Optional<Node> next = Node.of(regulator.pins().get(pin));
            if (pin != turn && one.isPresent() && next.isPresent() && one.get() != next.get()) {
                pairs.add(new Node.Pair(one.get(), next.get()));
            }
        }
        return pairs;
    }
}
