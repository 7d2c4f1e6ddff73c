package railtrim.practice;

import java.util.random.RandomGenerator;
import railtrim.quantity.BadInput;

/**
 * A trimmer as it comes out of the drawer: its total is off its marking, it does not reach zero, and it cannot be set finer than its
 * slider allows. Figures of the common 25-turn and one-turn kinds (Bourns 3296, 3362: ±10 %, end resistance 1 % or 2 Ω, settability
 * ±0.05 % and ±0.15 %).
 */
public final class VirtualTrimmer {
    private final double marked;
    private final int turns;
    private final double total;
    private final double end;
    private final double finest;
    private double travel = 1;

    /** @param tolerance fraction of the marked value; @throws BadInput for a marking or number of turns no trimmer has */
    public VirtualTrimmer(double marked, int turns, double tolerance, RandomGenerator chance) {
        if (!(marked >= 1 && marked <= 10_000_000) || turns < 1 || turns > 40) {
            throw BadInput.of("practice.no-such-trimmer", Double.toString(marked), Integer.toString(turns));
        }
        this.marked = marked;
        this.turns = turns;
        this.total = marked * (1 + tolerance * (2 * chance.nextDouble() - 1));
        this.end = Math.min(marked / 2, Math.max(0.01 * marked, 2) * chance.nextDouble());
        this.finest = turns > 1 ? 0.0005 : 0.0015;
    }

    public double marked() {
        return marked;
    }

    public int turns() {
        return turns;
    }

    /** Travel from 0 (least resistance) to 1 (most). */
    public double travel() {
        return travel;
    }

    /** Smallest movement that makes a difference, fraction of travel. */
    public double finest() {
        return finest;
    }

    public double ohms() {
        return end + travel * (total - end);
    }

    void turnTo(double wanted) {
        double clipped = Math.max(0, Math.min(1, wanted));
        travel = Math.rint(clipped / finest) * finest;
        travel = Math.max(0, Math.min(1, travel));
    }
}
