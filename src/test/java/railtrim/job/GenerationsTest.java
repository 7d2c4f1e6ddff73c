package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;

/** Three earlier states of a job are kept beside it, and what a crash left lying is swept up. */
class GenerationsTest {
    @TempDir
    Path folder;

    private final HandTime time = new HandTime();
    private Path file;

    @BeforeEach
    void aJob() throws IOException {
        file = folder.toRealPath().resolve("organ.railtrim");
        Journal.create(file, "Organ", time, MARK).close();
    }

    private void session(String step) {
        try (Journal journal = Journal.open(file, time, MARK)) {
            journal.append(new Fact.Power(step, true));
        }
    }

    private int kept(int age) {
        Path state = Generations.of(file, age);
        return Files.exists(state) ? JobCheck.of(state, MARK).facts() : -1;
    }

    @Test
    void theLastThreeStatesFoundAreKept() {
        session("a");
        assertEquals(List.of(-1, -1, -1), List.of(kept(1), kept(2), kept(3)), "nothing was there to keep");
        session("b");
        assertEquals(List.of(1, -1, -1), List.of(kept(1), kept(2), kept(3)));
        session("c");
        session("d");
        session("e");
        assertEquals(List.of(4, 3, 2), List.of(kept(1), kept(2), kept(3)));
    }

    @Test
    void openingWithoutAddingAnythingPushesNoStateOut() {
        session("a");
        session("b");
        session("c");
        for (int i = 0; i < 5; i++) {
            Journal.open(file, time, MARK).close();
        }
        assertEquals(List.of(3, 2, 1), List.of(kept(1), kept(2), kept(3)));
    }

    @Test
    void whereTheJobIsDamagedTheStateThatHoldsMoreIsNamedAndCanBeGoneOnWith() throws IOException {
        session("a");
        session("b");
        session("c");
        List<String> lines = Files.readAllLines(file);
        Files.writeString(
                file, lines.get(0) + "\n" + lines.get(1).replace("true", "trve") + "\n" + lines.get(2) + "\n");
        try (Journal damaged = Journal.open(file, time, MARK)) {
            assertTrue(damaged.readOnly());
            assertTrue(damaged.problems()
                    .contains(Message.of(
                            "job.kept.better", Generations.of(file, 1).toString(), "2")));
        }
        try (Journal state = Journal.open(Generations.of(file, 1), time, MARK)) {
            assertTrue(state.readOnly(), "a kept state stays as it is");
            assertEquals("job.kept", state.problems().get(0).key());
            try (Journal copy = Journal.copy(state, folder.resolve("again.railtrim"), time, MARK)) {
                assertEquals(2, copy.job().entries().size());
                assertFalse(copy.readOnly());
            }
        }
    }

    /** What was done after the damage is not known any more: the board may be on. */
    @Test
    void aCopyOfADamagedJobBeginsWithABreakOfUnknownLength() throws IOException {
        session("a");
        session("b");
        Files.writeString(file, Files.readString(file).replace("\"step\":\"b\"", "\"step\":\"c\"") + "\n\n");
        try (Journal damaged = Journal.open(file, time, MARK);
                Journal copy = Journal.copy(damaged, folder.resolve("again.railtrim"), time, MARK)) {
            assertEquals(
                    List.of(new Fact.Power("a", true), new Fact.Resumed("resume", -1)),
                    copy.job().entries().stream().map(Entry::fact).toList());
        }
    }

    @Test
    void halvesLeftByACrashAreSweptUp() throws IOException {
        session("a");
        Path half = folder.resolve("organ.railtrim.tmp");
        Path halfState = folder.resolve("organ.railtrim.kept-1.tmp");
        Files.writeString(half, "half");
        Files.writeString(halfState, "half");
        session("b");
        assertFalse(Files.exists(half));
        assertFalse(Files.exists(halfState));
    }

    @Test
    void aStateThatCannotBeKeptIsToldAndTheJobGoesOn() throws IOException {
        session("a");
        // Folders stand where the states should go.
        for (int age = 1; age <= Generations.KEPT; age++) {
            Files.createDirectories(Generations.of(file, age).resolve("in the way"));
        }
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertEquals("job.kept.not", journal.problems().get(0).key());
            journal.append(new Fact.Power("b", true));
        }
        assertEquals(2, JobCheck.of(file, MARK).facts());
    }

    @Test
    void aLinkPutWhereAStateGoesIsReplacedAndNotFollowed() throws IOException {
        session("a");
        Path precious = Files.writeString(folder.resolve("precious"), "precious");
        Files.createSymbolicLink(Generations.of(file, 1), precious);
        Files.createSymbolicLink(folder.resolve("organ.railtrim.kept-1.tmp"), precious);
        session("b");
        assertEquals("precious", Files.readString(precious));
        assertEquals(1, kept(1));
    }

    @Test
    void aNearlyFullDiskAndANetworkDriveAreToldBeforeAnythingIsMeasured() {
        assertEquals(List.of(), Room.warnings(file, "ext4", 1L << 30, 1L << 40));
        assertEquals(
                List.of(Message.of("job.disk-nearly-full", file.toString(), "100")),
                Room.warnings(file, "ext4", 100 * 1024, 1L << 40));
        assertEquals(
                List.of(Message.of("job.network-folder", file.toString())),
                Room.warnings(file, "CIFS", 1L << 30, 1L << 40));
        assertEquals(List.of(), Room.warnings(file, "fuse", 0, 0), "sizes not known are no lack of room");
    }
}
