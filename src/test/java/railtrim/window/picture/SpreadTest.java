package railtrim.window.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Expected places follow from the rule: as near to the wish as the least distance allows. */
class SpreadTest {
    @Test
    void labelsWithRoomStayWhereTheyBelong() {
        assertArrayEquals(new double[] {10, 40, 90}, Spread.apart(new double[] {10, 40, 90}, 20, 0, 100), 1e-9);
    }

    @Test
    void twoLabelsAtOnePlaceShareTheWay() {
        assertArrayEquals(new double[] {40, 60}, Spread.apart(new double[] {50, 50}, 20, 0, 100), 1e-9);
    }

    @Test
    void labelsAtTheEdgeStayInside() {
        assertArrayEquals(new double[] {60, 80, 100}, Spread.apart(new double[] {99, 100, 100}, 20, 0, 100), 1e-9);
        assertArrayEquals(new double[] {0, 20}, Spread.apart(new double[] {-5, 3}, 20, 0, 100), 1e-9);
    }

    @Test
    void moreLabelsThanRoomAreSpacedEvenly() {
        assertArrayEquals(new double[] {0, 10, 20}, Spread.apart(new double[] {5, 5, 5}, 20, 0, 20), 1e-9);
    }

    @Test
    void anySetOfLabelsKeepsItsOrderItsDistanceAndItsBounds() {
        long seed = 20240611;
        Random random = new Random(seed);
        for (int round = 0; round < 500; round++) {
            double[] wanted =
                    random.doubles(1 + random.nextInt(12), -20, 420).sorted().toArray();
            double[] placed = Spread.apart(wanted, 21, 34, 400);
            for (int i = 0; i < placed.length; i++) {
                String where = "seed " + seed + " round " + round + " " + Arrays.toString(wanted);
                assertTrue(placed[i] >= 34 - 1e-9 && placed[i] <= 400 + 1e-9, where);
                assertTrue(i == 0 || placed[i] - placed[i - 1] >= 21 - 1e-9, where);
            }
        }
    }

    @Test
    void noLabelsNeedNoPlace() {
        assertEquals(0, Spread.apart(new double[0], 20, 0, 100).length);
    }
}
