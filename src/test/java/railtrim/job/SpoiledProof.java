package railtrim.job;

import java.io.IOException;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every bit of the finished job turned over, one at a time, and every length it can be cut to. */
@Tag("long")
class SpoiledProof {
    @Test
    void everyBitTurnedOver() throws IOException {
        Spoiled spoiled = new Spoiled();
        spoiled.turnOver(LongStream.range(0, spoiled.bits()));
        System.out.println("bits turned over: " + spoiled.bits() + ": " + spoiled.tally());
    }

    @Test
    void everyCut() throws IOException {
        Spoiled spoiled = new Spoiled();
        spoiled.cut(IntStream.range(0, spoiled.length()));
        System.out.println("cut at every byte: " + spoiled.length() + ": " + spoiled.tally());
    }
}
