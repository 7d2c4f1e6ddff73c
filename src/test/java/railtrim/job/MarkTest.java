package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;
import railtrim.quantity.PlainText;

/** Whose a job is: only what was written with this installation’s own mark is one’s own. */
class MarkTest {
    @TempDir
    Path folder;

    private final HandTime time = new HandTime();
    private Mark own;
    private Mark stranger;
    private Path file;

    @BeforeEach
    void twoComputers() {
        own = Mark.keptIn(folder.resolve("here"));
        stranger = Mark.keptIn(folder.resolve("there"));
        file = folder.resolve("organ.railtrim");
    }

    @Test
    void theMarkIsKeptAndOnlyItsOwnerMayReadIt() throws IOException {
        write(own);
        try (Journal journal = Journal.open(file, time, Mark.keptIn(folder.resolve("here")))) {
            assertFalse(journal.readOnly());
            assertEquals(List.of(), journal.problems());
        }
        Path secret = folder.resolve("here").resolve("mark");
        assertTrue(Files.readString(secret).matches("[0-9a-f]{64}\n"));
        if (Files.getFileStore(secret).supportsFileAttributeView("posix")) {
            assertEquals(
                    Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE),
                    Files.getPosixFilePermissions(secret));
        }
        assertFalse(Files.readString(file).contains(Files.readString(secret).strip()), "it never goes into a job");
    }

    @Test
    void aJobFromElsewhereIsOnlyReadAndSaidToBe() throws IOException {
        Job written = write(stranger);
        byte[] before = Files.readAllBytes(file);
        try (Journal journal = Journal.open(file, time, own)) {
            assertTrue(journal.readOnly());
            assertEquals(List.of(Message.of("job.elsewhere")), journal.problems());
            assertEquals(Origin.ELSEWHERE, journal.job().origin());
            assertEquals(written.entries().size(), journal.job().entries().size());
            assertEquals("job.takes-no-more", told(() -> journal.append(new Fact.Power("a", true))));
            assertEquals(
                    "job.elsewhere.copy",
                    told(() -> Journal.copy(journal, folder.resolve("copy.railtrim"), time, own)));
        }
        assertEquals(-1, java.util.Arrays.mismatch(before, Files.readAllBytes(file)));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("here", "organ.railtrim", "organ.railtrim.lock", "there"),
                    files.map(path -> path.getFileName().toString()).sorted().toList(),
                    "nothing is put beside a stranger’s file but the lock its writer made");
        }
    }

    @Test
    void noTextOfAStrangersJobHidesOrTurnsAnythingRound() {
        write(stranger);
        Job read = JobCheck.of(file, own).job();
        for (Entry entry : read.entries()) {
            String all = entry.fact().toString();
            assertEquals(PlainText.of(all), all);
        }
    }

    /** The check sums are right: somebody took care. */
    @Test
    void aLineChangedAddedOrMovedElsewhereMakesTheWholeJobOneFromElsewhere() throws IOException {
        List<Lines.Written> lines = lines(own, List.of(power("a", true), power("a", false), power("b", true)));
        List<Lines.Written> changed = lines(stranger, List.of(power("a", true), power("a", false), power("b", false)));
        List<Lines.Written> other = lines(own, List.of(power("x", true), power("a", false), power("b", true)));
        assertOrigin(Origin.OWN, lines, 4);
        assertOrigin(Origin.ELSEWHERE, replaced(lines, 3, changed.get(3)), 4);
        assertOrigin(Origin.ELSEWHERE, replaced(lines, 1, changed.get(1)), 4);
        assertOrigin(Origin.ELSEWHERE, replaced(lines, 0, changed.get(0)), 4);
        assertOrigin(Origin.ELSEWHERE, replaced(lines, 1, other.get(1)), 4);
        assertOrigin(Origin.ELSEWHERE, replaced(lines, 2, other.get(2)), 4);
    }

    @Test
    void anOwnJobWhoseFirstLineIsDamagedIsStillOnesOwn() throws IOException {
        write(own);
        String text = Files.readString(file);
        Files.writeString(file, text.replaceFirst("Organ", "Orgam"));
        try (Journal journal = Journal.open(file, time, own)) {
            assertTrue(journal.readOnly());
            assertEquals(Origin.OWN, journal.job().origin());
            assertEquals("organ", journal.job().name());
        }
        try (Journal journal = Journal.open(file, time, stranger)) {
            assertEquals(Origin.ELSEWHERE, journal.job().origin());
        }
    }

    @Test
    void aDamagedMarkIsPutAsideAndANewOneDrawn() throws IOException {
        write(own);
        Path secret = folder.resolve("here").resolve("mark");
        for (String damaged : List.of("", "hello", "0".repeat(63), "0".repeat(200), "zz".repeat(32))) {
            Files.writeString(secret, damaged);
            Mark next = Mark.keptIn(folder.resolve("here"));
            assertTrue(next.kept());
            assertEquals(damaged, Files.readString(folder.resolve("here").resolve("mark.old")));
            assertEquals(Origin.ELSEWHERE, JobCheck.of(file, next).job().origin());
        }
    }

    @Test
    void aMarkThatCannotBeKeptIsToldBeforeAnythingIsMeasured() throws IOException {
        Path plain = Files.createFile(folder.resolve("plain"));
        Mark passing = Mark.keptIn(plain);
        assertFalse(passing.kept());
        try (Journal journal = Journal.create(file, "Organ", time, passing)) {
            assertFalse(journal.readOnly());
            assertEquals("job.mark-not-kept", journal.problems().get(0).key());
        }
    }

    @Test
    void onlyLookingDrawsNoMark() {
        assertEquals(
                Origin.ELSEWHERE,
                JobCheck.of(writtenFile(), Mark.lookUp(folder.resolve("nowhere")))
                        .job()
                        .origin());
        assertFalse(Files.exists(folder.resolve("nowhere")));
    }

    @Test
    void aFileFromElsewhereMayNotBeAsLargeAsOnesOwn() throws IOException {
        List<Fact> many = new ArrayList<>();
        for (int i = 0; i <= JobFile.MOST_ELSEWHERE; i++) {
            many.add(power("a", i % 2 == 0));
        }
        put(lines(own, many));
        assertEquals(many.size(), JobCheck.of(file, own).facts());
        assertEquals("job.too-large", told(() -> JobCheck.of(file, stranger)));
        List<Fact> long1000 = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            long1000.add(new Fact.Note("a", "b", "x".repeat(3000)));
        }
        put(lines(own, long1000));
        assertEquals(1000, JobCheck.of(file, own).facts());
        assertEquals("job.too-large", told(() -> JobCheck.of(file, stranger)));
    }

    private static Fact power(String step, boolean on) {
        return new Fact.Power(step, on);
    }

    private void assertOrigin(Origin origin, List<Lines.Written> lines, int count) throws IOException {
        put(lines);
        JobCheck check = JobCheck.of(file, own);
        assertEquals(List.of(), check.problems());
        assertEquals(origin, check.job().origin());
        assertEquals(count - 1, check.facts());
        try (Journal journal = Journal.open(file, time, own)) {
            assertEquals(origin == Origin.ELSEWHERE, journal.readOnly());
        }
    }

    private List<Lines.Written> lines(Mark mark, List<Fact> facts) {
        List<Lines.Written> lines = new ArrayList<>(List.of(Lines.header("Organ", mark)));
        for (Fact fact : facts) {
            Lines.Written before = lines.get(lines.size() - 1);
            lines.add(Lines.entry(new Entry(lines.size(), time.now(), 1, 0, fact), before.tag(), mark));
        }
        return lines;
    }

    private static List<Lines.Written> replaced(List<Lines.Written> lines, int index, Lines.Written by) {
        List<Lines.Written> other = new ArrayList<>(lines);
        other.set(index, by);
        return other;
    }

    private void put(List<Lines.Written> lines) throws IOException {
        java.io.ByteArrayOutputStream all = new java.io.ByteArrayOutputStream();
        lines.forEach(line -> all.writeBytes(line.bytes()));
        Files.write(file, all.toByteArray());
        for (int age = 1; age <= Generations.KEPT; age++) {
            Files.deleteIfExists(Generations.of(file, age));
        }
    }

    private Path writtenFile() {
        write(own);
        return file;
    }

    private Job write(Mark mark) {
        try (Journal journal = Journal.create(file, "Organ", time, mark)) {
            Facts.ofEveryKind().forEach(journal::append);
            return journal.job();
        }
    }

    private static String told(org.junit.jupiter.api.function.Executable action) {
        return assertThrows(JournalProblem.class, action).told().key();
    }
}
