package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

class JournalTest {
    @TempDir
    Path folder;

    private final HandTime time = new HandTime();
    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("organ" + Journal.ENDING);
    }

    @Test
    void everyKindOfFactIsReadBackAsItWasWritten() {
        Job written = write(Facts.ofEveryKind());
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertEquals(written, journal.job());
            assertEquals(List.of(), journal.problems());
            assertFalse(journal.readOnly());
        }
    }

    @Test
    void noKindOfFactIsForgottenInTheListAbove() {
        Set<Class<?>> kinds = new HashSet<>();
        Facts.ofEveryKind().forEach(fact -> kinds.add(fact.getClass()));
        assertEquals(Set.of(Fact.class.getPermittedSubclasses()), kinds);
    }

    @Test
    void everyNumberAMeterCanShowIsReadBackExactly() throws IOException {
        long seed = 20260301;
        Random random = new Random(seed);
        List<Fact> facts = new ArrayList<>();
        for (double value : new double[] {0.0, -0.0, 0.1, 1e12, -1e12, 1e-30, Math.PI, 1.0 / 3}) {
            facts.add(new Fact.Reading("s", "f", value, Unit.VOLT, "x"));
        }
        for (int i = 0; i < 500; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(30) - 20);
            facts.add(new Fact.Reading("s", "f", value, Unit.OHM, Double.toString(value)));
        }
        Lines.Written line = Lines.header("n", MARK);
        Files.write(file, line.bytes());
        long sequence = 1;
        for (Fact fact : facts) {
            line = Lines.entry(new Entry(sequence++, time.now(), 1, 0, fact), line.tag(), MARK);
            Files.write(file, line.bytes(), java.nio.file.StandardOpenOption.APPEND);
        }
        List<Fact> read = JobCheck.of(file, MARK).job().entries().stream()
                .map(Entry::fact)
                .toList();
        // A record's equality of doubles tells 0.0 from -0.0 and is exact to the last bit.
        assertEquals(facts, read, "seed " + seed);
    }

    @Test
    void whatCannotBeReadBackIsNotWritten() throws IOException {
        try (Journal journal = Journal.create(file, "Organ", time, MARK)) {
            byte[] before = Files.readAllBytes(file);
            for (Fact fact : List.of(
                    new Fact.Reading("s", "f", Double.NaN, Unit.VOLT, "NaN"),
                    new Fact.Reading("s", "f", Double.POSITIVE_INFINITY, Unit.OHM, "OL"),
                    new Fact.Reading("s", "f", 2e12, Unit.OHM, "2e12"),
                    new Fact.Reading("s", "f", 1e-200, Unit.OHM, "1e-200"),
                    new Fact.Note("s", "f", "half a pair \ud83c"),
                    new Fact.Note("s", "f", "x".repeat(4001)),
                    new Fact.Note("s", "f", "\u0001".repeat(3900)))) {
                JournalProblem problem = assertThrows(JournalProblem.class, () -> journal.append(fact));
                assertEquals("job.cannot-be-kept", problem.told().key());
            }
            assertArrayEquals(before, Files.readAllBytes(file));
            assertEquals(1, journal.append(new Fact.Power("s", true)).sequence());
        }
        JournalProblem name = assertThrows(
                JournalProblem.class,
                () -> Journal.create(folder.resolve("other.railtrim"), "n".repeat(201), time, MARK));
        assertEquals("job.cannot-create", name.told().key());
    }

    @Test
    void eachOpeningForWritingIsASessionWithItsOwnTicks() {
        try (Journal first = Journal.create(file, "Organ", time, MARK)) {
            assertEquals(1, first.session());
            time.pass(Duration.ofSeconds(3));
            assertEquals(3000, first.append(new Fact.Power("a", true)).tick());
        }
        time.pass(Duration.ofMinutes(10));
        try (Journal second = Journal.open(file, time, MARK)) {
            assertEquals(2, second.session());
            assertEquals(0, second.ticks());
            time.pass(Duration.ofSeconds(1));
            Entry entry = second.append(new Fact.Power("a", false));
            assertEquals(List.of(2L, 2, 1000L), List.of(entry.sequence(), entry.session(), entry.tick()));
        }
        assertEquals(2, JobCheck.of(file, MARK).facts(), "ten minutes are no gap yet");
    }

    @Test
    void aGapOfMoreThanTenMinutesIsWrittenDown() {
        write(List.of(new Fact.Power("a", true)));
        time.pass(Duration.ofSeconds(601));
        assertEquals(new Fact.Resumed("resume", 601), reopenedLast());
    }

    @Test
    void aClockSetBackCountsAsAGap() {
        write(List.of(new Fact.Power("a", true)));
        time.setBy(Duration.ofHours(-1));
        assertEquals(new Fact.Resumed("resume", -3600), reopenedLast());
        assertEquals(List.of(), JobCheck.of(file, MARK).problems(), "order is by sequence, not by the wall clock");
    }

    @Test
    void aJobWithoutFactsHasNoGap() {
        write(List.of());
        time.pass(Duration.ofDays(3));
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertEquals(0, journal.job().last());
        }
    }

    @Test
    void ticksNeverGoBackWithinASession() {
        try (Journal journal = Journal.create(file, "Organ", time, MARK)) {
            time.pass(Duration.ofSeconds(5));
            journal.append(new Fact.Power("a", true));
            time.pass(Duration.ofSeconds(-4));
            assertEquals(5000, journal.append(new Fact.Power("a", false)).tick());
        }
        assertEquals(List.of(), JobCheck.of(file, MARK).problems());
    }

    @Test
    void aSecondWindowMayOnlyRead() {
        try (Journal first = Journal.create(file, "Organ", time, MARK)) {
            first.append(new Fact.Power("a", true));
            try (Journal second = Journal.open(file, time, MARK)) {
                assertTrue(second.readOnly());
                assertEquals(List.of(Message.of("job.locked")), second.problems());
                assertEquals(first.job(), second.job());
                assertThrows(JournalProblem.class, () -> second.append(new Fact.Power("a", false)));
            }
            // Closing the reader must not let the first one's lock go.
            try (Journal third = Journal.open(file, time, MARK)) {
                assertTrue(third.readOnly());
            }
            first.append(new Fact.Power("a", false));
        }
        try (Journal after = Journal.open(file, time, MARK)) {
            assertFalse(after.readOnly());
        }
    }

    @Test
    void theSameFileThroughALinkIsTheSameJob() throws IOException {
        Path link = folder.resolve("link.railtrim");
        try (Journal first = Journal.create(file, "Organ", time, MARK)) {
            Files.createSymbolicLink(link, file);
            try (Journal second = Journal.open(link, time, MARK)) {
                assertTrue(second.readOnly());
                assertFalse(first.readOnly());
            }
        }
    }

    @Test
    void aJobIsNeverWrittenOverAnother() throws IOException {
        write(List.of(new Fact.Power("a", true)));
        byte[] before = Files.readAllBytes(file);
        JournalProblem problem = assertThrows(JournalProblem.class, () -> Journal.create(file, "Other", time, MARK));
        assertEquals("job.exists", problem.told().key());
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldBeforeAnythingIsMeasured() throws IOException {
        Path missing = folder.resolve("no such folder").resolve("a.railtrim");
        assertEquals("job.no-folder", told(() -> Journal.create(missing, "a", time, MARK)));
        Path plain = Files.createFile(folder.resolve("plain"));
        assertEquals("job.no-folder", told(() -> Journal.create(plain.resolve("a.railtrim"), "a", time, MARK)));
        // A folder nobody can write into, not even root: the kernel's own.
        Path kernel = Path.of("/proc/self/a.railtrim");
        if (Files.isDirectory(kernel.getParent())) {
            assertEquals("job.cannot-create", told(() -> Journal.create(kernel, "a", time, MARK)));
        }
    }

    @Test
    void anInterruptedCreationLeavesNothingBehindThatMatters() throws IOException {
        Files.writeString(folder.resolve("organ.railtrim.tmp"), "half a file from the last crash");
        write(List.of(new Fact.Power("a", true)));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("organ.railtrim", "organ.railtrim.lock"),
                    files.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void aFileThatIsNoJobIsRefusedInWords() throws IOException {
        assertEquals("job.missing", told(() -> Journal.open(file, time, MARK)));
        assertEquals("job.not-a-file", told(() -> Journal.open(folder, time, MARK)));
        Files.createFile(file);
        assertEquals("job.empty", told(() -> Journal.open(file, time, MARK)));
        for (String foreign : List.of(
                "hello\n",
                "{}\n",
                "[1,2]\n",
                "\n\n",
                "\0\0\0\0",
                "null",
                "{\"format\":\"other\",\"version\":1,\"name\":\"x\"}\n",
                "{\"format\":\"railtrim job\",\"version\":0,\"name\":\"x\"}\n",
                "{\"format\":\"railtrim job\",\"version\":1e3,\"name\":\"x\"}\n",
                "{\"format\":\"railtrim job\",\"version\":1}\n",
                "[".repeat(100_000),
                "x".repeat(100_000))) {
            Files.writeString(file, foreign);
            assertEquals("job.foreign", told(() -> Journal.open(file, time, MARK)), foreign);
            assertEquals("job.foreign", told(() -> JobCheck.of(file, MARK)), foreign);
            assertEquals(foreign, Files.readString(file));
        }
    }

    @Test
    void aJobFromANewerVersionIsReadOnlyAndLeftAlone() throws IOException {
        write(List.of(new Fact.Power("a", true)));
        String rest = Files.readString(file).lines().skip(1).findFirst().orElseThrow();
        String newer = "{\"format\":\"railtrim job\",\"version\":4,\"name\":\"Organ\",\"colour\":\"red\"}\n" + rest
                + "\n{\"sequence\":2,\"fact\":\"photograph\"}\n";
        Files.writeString(file, newer);
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertTrue(journal.readOnly());
            assertEquals(
                    List.of(Message.of("job.newer", "4", "3"), Message.of("job.newer.rest", "3")), journal.problems());
            assertEquals("Organ", journal.job().name());
            assertEquals(1, journal.job().last());
            assertThrows(JournalProblem.class, () -> journal.append(new Fact.Power("a", false)));
        }
        assertEquals(newer, Files.readString(file));
    }

    @Test
    void aJobCanBeGoneOnWithInACopy() {
        Job written = write(Facts.ofEveryKind());
        Path elsewhere = folder.resolve("copy.railtrim");
        try (Journal old = Journal.open(file, time, MARK);
                Journal copy = Journal.copy(old, elsewhere, time, MARK)) {
            assertEquals(written, copy.job());
            assertEquals(
                    written.last() + 1, copy.append(new Fact.Power("a", true)).sequence());
            assertEquals(written, old.job());
        }
    }

    private Fact reopenedLast() {
        try (Journal journal = Journal.open(file, time, MARK)) {
            List<Entry> entries = journal.job().entries();
            return entries.get(entries.size() - 1).fact();
        }
    }

    private Job write(List<Fact> facts) {
        try (Journal journal = Journal.create(file, "Organ", time, MARK)) {
            for (Fact fact : facts) {
                time.pass(Duration.ofSeconds(7));
                journal.append(fact);
            }
            return journal.job();
        }
    }

    private static String told(org.junit.jupiter.api.function.Executable action) {
        return assertThrows(JournalProblem.class, action).told().key();
    }
}
