package railtrim.practice;

import java.util.random.RandomGenerator;
import railtrim.quantity.BadInput;

/**
 * A trimmer as it comes out of the drawer: its total is off its marking, it does not reach zero, it cannot be set finer than its slider
 * allows, and its track is not smooth: at each place the slider rests on other grains, and in the last turn before either end the track is rough. Figures of the common 25-turn and one-turn kinds (Bourns 3296, 3362: ±10 %, end resistance 1 % or 2 Ω, settability
 * ±0.05 % and ±0.15 %).
 */
public final class VirtualTrimmer {
    /** Contact noise in notches: on a good track, and in the rough turn at its ends; our own choice, well inside the 1 % of the data sheets. */
    private static final double SMOOTH = 0.4;

    private static final double ROUGH = 3;

    private final double marked;
    private final int turns;
    private final double total;
    private final double end;
    private final double finest;
    private final long grain;
    private double travel = 1;
    /** At this travel; NaN until it is asked for. */
    private double ohms = Double.NaN;

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
        this.grain = chance.nextLong();
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
        if (Double.isNaN(ohms)) {
            ohms = end + travel * (total - end) + noise() * total;
        }
        return ohms;
    }

    /** What the slider's contact adds where it stands, as a part of the total: under half a notch, or several in the rough turn at either end. */
    private double noise() {
        if (travel <= 0 || travel >= 1) {
            return 0;
        }
        double fromEnd = Math.min(travel, 1 - travel) * turns;
        double rough = turns > 1 && fromEnd < 1 ? ROUGH : SMOOTH;
        // The same place sounds the same each time: a fraction from 0 to 1 out of the place and this specimen's own
        // grain.
        long mixed = (grain ^ Math.round(travel / finest)) * 0x9E3779B97F4A7C15L;
        double part = (mixed ^ mixed >>> 32) >>> 11;
        return rough * finest * part / (1L << 53);
    }

    /** How many notches it can be turned down from here with its resistance falling at each of them; 0 in the rough turn at either end. */
    int evenNotchesDown() {
        double rough = turns > 1 ? 1.0 / turns : 0;
        boolean even = travel <= 1 - rough;
        return even ? (int) Math.max(0, Math.floor((travel - rough) / finest) - 1) : 0;
    }

    void turnTo(double wanted) {
        double clipped = Math.max(0, Math.min(1, wanted));
        travel = Math.rint(clipped / finest) * finest;
        travel = Math.max(0, Math.min(1, travel));
        ohms = Double.NaN;
    }
}
