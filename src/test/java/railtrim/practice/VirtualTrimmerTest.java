package railtrim.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Data sheet figures of the common kinds (Bourns 3296 and 3362): ±10 %, end resistance at most 1 % or 2 Ω. */
class VirtualTrimmerTest {
    private static final int SPECIMENS = 300;

    @Test
    void theTotalIsOffItsMarkingByAtMostTheTolerance() {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = 0;
        for (int seed = 0; seed < SPECIMENS; seed++) {
            VirtualTrimmer trimmer = new VirtualTrimmer(10_000, 25, 0.1, Rehearsal.chance(seed));
            trimmer.turnTo(1);
            lowest = Math.min(lowest, trimmer.ohms());
            highest = Math.max(highest, trimmer.ohms());
        }
        assertTrue(lowest >= 9000 && lowest < 9100, "least " + lowest);
        assertTrue(highest <= 11_000 && highest > 10_900, "most " + highest);
    }

    /** 1 % of 10 kΩ is 100 Ω; of 100 Ω it would be 1 Ω, and there the 2 Ω count. */
    @Test
    void itDoesNotReachZero() {
        double large = 0;
        double small = 0;
        for (int seed = 0; seed < SPECIMENS; seed++) {
            large = Math.max(large, atZero(10_000, seed));
            small = Math.max(small, atZero(100, seed));
        }
        assertTrue(large > 90 && large <= 100, "10 kΩ ends at " + large);
        assertTrue(small > 1.8 && small <= 2, "100 Ω ends at " + small);
    }

    private static double atZero(double marked, int seed) {
        VirtualTrimmer trimmer = new VirtualTrimmer(marked, 25, 0.1, Rehearsal.chance(seed));
        trimmer.turnTo(0);
        assertTrue(trimmer.ohms() > 0);
        return trimmer.ohms();
    }

    /** A turn of 25 is 4 % of the travel; a trimmer of one turn is set three times as coarsely (±0.15 against ±0.05 %). */
    @Test
    void manyTurnsSetFinerThanOne() {
        VirtualTrimmer many = new VirtualTrimmer(10_000, 25, 0, Rehearsal.chance(3));
        VirtualTrimmer one = new VirtualTrimmer(10_000, 1, 0, Rehearsal.chance(3));
        assertEquals(3, one.finest() / many.finest(), 1e-9);
        many.turnTo(0.5);
        double before = many.ohms();
        many.turnTo(0.5 + 1.0 / 25);
        // Contact noise adds at most 0.4 notches of 5 Ω at either place, and the end takes up to 1 %.
        assertEquals(400, many.ohms() - before, 8);
        many.turnTo(7);
        assertEquals(1, many.travel(), 0);
        many.turnTo(-7);
        assertEquals(0, many.travel(), 0);
    }
}
