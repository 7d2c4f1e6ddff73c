package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A kill at every call that writes, forces, moves, cuts or removes, and every such call failing in every way. */
@Tag("long")
class SystemCallsProof {
    private static final int MOST = 100;

    @TempDir
    Path folder;

    @BeforeAll
    static void whereCallsCanBeSeen() {
        SystemCalls.missing().ifPresent(why -> System.out.println("SystemCallsProof skipped: " + why));
        assumeTrue(SystemCalls.missing().isEmpty());
    }

    @Test
    void killedAtEveryCallNothingToldIsLost() throws Exception {
        int all = 0;
        for (String call : SystemCalls.WRITING) {
            int kills = SystemCalls.killAtEach(folder, call, MOST);
            System.out.println("killed at each " + call + ": " + kills + ", 0 lost");
            all += kills;
        }
        assertTrue(all >= 18, "only " + all);
    }

    @Test
    void whereAnyCallFailsItIsToldInWordsAndNothingSavedIsLost() throws Exception {
        int all = 0;
        for (String error : SystemCalls.errors()) {
            for (String call : new String[] {"write", "fsync", "rename", "unlink", "openat"}) {
                int failures = SystemCalls.failAtEach(folder, call, error, MOST);
                System.out.println(error + " at each " + call + ": " + failures + ", 0 lost");
                all += failures;
            }
        }
        assertTrue(all >= 4 * 18, "only " + all);
    }
}
