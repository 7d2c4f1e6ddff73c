package railtrim.window.bench;

import java.util.Optional;
import railtrim.circuit.Leg;
import railtrim.practice.Bench;
import railtrim.practice.Node;

/** Why the chip got too much, as far as the bench shows: the last part of the key that says so, and which check finds it in time. */
final class Blame {
    private Blame() {}

    static String of(Bench bench, Optional<Node.Pair> soldered) {
        Optional<Node.Pair> bridged = bench.bridged();
        if (bridged.isPresent()) {
            boolean leg = bridged.get().id().equals(Node.Pair.of(Leg.UPPER).id())
                    || bridged.get().id().equals(Node.Pair.of(Leg.LOWER).id());
            return leg ? "bridge" : "bridge-beside";
        }
        Leg lowering = bench.board().divider().place().loweringLeg();
        if (soldered.isEmpty()) {
            return "bare";
        }
        String across = soldered.get().id();
        if (across.equals(Node.Pair.of(lowering).id())) {
            return "open";
        }
        return across.equals(Node.Pair.of(lowering.other()).id()) ? "wrong-leg" : "wrong-pins";
    }
}
