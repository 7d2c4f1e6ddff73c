package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecentJobsTest {
    @TempDir
    Path folder;

    @Test
    void theJobOpenedLastComesFirstAndEachOnlyOnce() throws IOException {
        RecentJobs recent = new RecentJobs(folder.resolve("settings").resolve("here"));
        Path a = Files.createFile(folder.resolve("a.railtrim"));
        Path b = Files.createFile(folder.resolve("b \u202e „Ω“.railtrim"));
        assertEquals(List.of(), recent.files());
        assertTrue(recent.remember(a));
        recent.remember(b);
        recent.remember(folder.resolve("x").resolve("..").resolve("a.railtrim"));
        assertEquals(List.of(a, b), recent.files());
    }

    @Test
    void aJobThatIsGoneIsNotShownAndALongListIsCutShort() throws IOException {
        RecentJobs recent = new RecentJobs(folder);
        for (int i = 0; i < 40; i++) {
            recent.remember(Files.createFile(folder.resolve(i + ".railtrim")));
        }
        assertEquals(RecentJobs.MOST, recent.files().size());
        Files.delete(folder.resolve("39.railtrim"));
        assertEquals(folder.resolve("38.railtrim"), recent.files().get(0));
    }

    @Test
    void aDamagedListCountsAsEmptyAndIsWrittenAnew() throws IOException {
        RecentJobs recent = new RecentJobs(folder);
        Path job = Files.createFile(folder.resolve("a.railtrim"));
        for (String damaged : List.of(
                "",
                "hello",
                "{}",
                "[1]",
                "[null]",
                "[\"/a\"",
                "[\"\\u0000\"]",
                "[".repeat(5000),
                "[[[]]]",
                "[\"a\"] x",
                "x".repeat(70_000))) {
            Files.writeString(folder.resolve("recent-jobs.json"), damaged);
            assertEquals(List.of(), recent.files(), damaged);
            assertTrue(recent.remember(job));
            assertEquals(List.of(job), recent.files());
        }
    }

    @Test
    void aPlaceThatCannotBeWrittenIsNoReasonToStop() throws IOException {
        RecentJobs recent =
                new RecentJobs(Files.createFile(folder.resolve("plain")).resolve("settings"));
        assertFalse(recent.remember(folder.resolve("a.railtrim")));
        assertEquals(List.of(), recent.files());
    }
}
