package railtrim.practice;

import java.util.List;
import java.util.Optional;
import railtrim.circuit.Leg;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;

/** The places on the practice board a probe or a lead can go to. */
public enum Node {
    INPUT,
    OUTPUT,
    ADJUST,
    GROUND,
    /** The second supply of regulators that feed their control circuit apart. */
    CONTROL;

    /** Where a pin of this role leads; empty for pins that lead nowhere useful. Remote sense is joined to the output on the board. */
    public static Optional<Node> of(PinRole role) {
        return switch (role) {
            case INPUT, ENABLE -> Optional.of(INPUT);
            case OUTPUT, SENSE -> Optional.of(OUTPUT);
            case ADJUST -> Optional.of(ADJUST);
            case GROUND -> Optional.of(GROUND);
            case CONTROL -> Optional.of(CONTROL);
            case SWITCH, HELPER, NOT_CONNECTED -> Optional.empty();
        };
    }

    /** Two nodes. */
    public record Pair(Node first, Node second) {
        public static final Pair RAIL = new Pair(OUTPUT, GROUND);
        private static final Pair UPPER = new Pair(OUTPUT, ADJUST);
        private static final Pair LOWER = new Pair(ADJUST, GROUND);
        private static final Pair[][] USUAL = everyPair();

        /** The two ends of a resistor of the divider. */
        public static Pair of(Leg leg) {
            return leg == Leg.UPPER ? UPPER : LOWER;
        }

        /** Where the reference voltage can be measured. */
        public static Pair reference(Place place) {
            return of(place.loweringLeg().other());
        }

        boolean touches(Node node) {
            return first == node || second == node;
        }

        public boolean joins(Node one, Node other) {
            return first == one && second == other || first == other && second == one;
        }

        /** The one object that stands for these two nodes, whichever way round they were named. */
        Pair usual() {
            return this == UPPER || this == LOWER || this == RAIL
                    ? this
                    : USUAL[Math.min(first.ordinal(), second.ordinal())][Math.max(first.ordinal(), second.ordinal())];
        }

        private static Pair[][] everyPair() {
            Node[] nodes = Node.values();
            Pair[][] pairs = new Pair[nodes.length][nodes.length];
            for (int low = 0; low < nodes.length; low++) {
                for (int high = low; high < nodes.length; high++) {
                    pairs[low][high] = new Pair(nodes[low], nodes[high]);
                }
            }
            for (Pair known : List.of(RAIL, UPPER, LOWER)) {
                pairs[known.first.ordinal()][known.second.ordinal()] = known;
            }
            return pairs;
        }

        /** Name used for pairs of pins in the procedure's choices. */
        public String id() {
            if (joins(OUTPUT, ADJUST)) {
                return "out-adjust";
            }
            if (joins(ADJUST, GROUND)) {
                return "adjust-ground";
            }
            if (joins(OUTPUT, GROUND)) {
                return "out-ground";
            }
            if (joins(INPUT, OUTPUT)) {
                return "in-out";
            }
            return "other";
        }
    }
}
