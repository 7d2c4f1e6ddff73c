package railtrim.job;

import java.io.IOException;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A sample, the same in every build, of what {@link SpoiledProof} does to every bit. */
class SpoiledTest {
    private static final long SEED = 20260303;
    private static final int SAMPLE = 4000;

    @Test
    void noTurnedBitOfTheFinishedJobIsEverTakenForAGoodValue() throws IOException {
        Spoiled spoiled = new Spoiled();
        spoiled.turnOver(new Random(SEED).longs(SAMPLE, 0, spoiled.bits()));
    }

    @Test
    void cutAnywhereTheFinishedJobShowsWhatStandsBefore() throws IOException {
        Spoiled spoiled = new Spoiled();
        spoiled.cut(new Random(SEED).ints(SAMPLE / 4, 0, spoiled.length()));
    }
}
