package railtrim.job;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code -Drailtrim.kills=3000} and {@code -Drailtrim.seed=1} say how many kills, and where the chance begins. */
@Tag("long")
class KilledWriterProof {
    @TempDir
    Path folder;

    @Test
    void killedAtRandomNothingToldToBeSavedIsGone() throws Exception {
        KilledWriter.Tally tally = KilledWriter.killAtRandom(
                folder, Integer.getInteger("railtrim.kills", 3000), Long.getLong("railtrim.seed", 1));
        System.out.println("killed writer: " + tally + ", 0 lost");
    }
}
