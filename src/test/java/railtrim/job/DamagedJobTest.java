package railtrim.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static railtrim.job.Facts.MARK;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.quantity.Message;

/** What becomes of a job file that was cut off, altered, or made by hand. */
class DamagedJobTest {
    @TempDir
    Path folder;

    private final HandTime time = new HandTime();
    private Path file;
    private Job whole;
    private byte[] bytes;

    @BeforeEach
    void aSmallJob() throws IOException {
        file = folder.resolve("organ.railtrim");
        try (Journal journal = Journal.create(file, "Organ", time, MARK)) {
            Facts.ofEveryKind().forEach(journal::append);
            whole = journal.job();
        }
        bytes = Files.readAllBytes(file);
    }

    @Test
    void aLastLineTornAtAnyByteIsCutOffAndSaid() throws IOException {
        int lastLine = startOfLastLine();
        List<Entry> allButLast = whole.entries().subList(0, whole.entries().size() - 1);
        for (int length = lastLine + 1; length < bytes.length - 1; length++) {
            Files.write(file, Arrays.copyOf(bytes, length));
            try (Journal journal = Journal.open(file, time, MARK)) {
                assertEquals(allButLast, journal.job().entries(), "cut at byte " + length);
                assertEquals(List.of(Message.of("job.torn")), journal.problems());
                assertEquals(
                        whole.last(),
                        journal.append(new Fact.Power("again", true)).sequence());
            }
            assertEquals(List.of(), JobCheck.of(file, MARK).problems());
            assertEquals(whole.last(), JobCheck.of(file, MARK).facts());
        }
    }

    @Test
    void aLastLineThatOnlyLacksItsLineFeedIsKept() throws IOException {
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 1));
        assertEquals(whole, JobCheck.of(file, MARK).job());
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertEquals(whole, journal.job());
        }
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void aTailOfZerosLeftByAPowerCutIsCutOff() throws IOException {
        Files.write(file, Arrays.copyOf(bytes, bytes.length + 300));
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertEquals(whole, journal.job());
            assertFalse(journal.readOnly());
        }
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    @Test
    void cutAnywhereItOpensWithWhatStandsBeforeOrIsRefusedInWords() throws IOException {
        for (int length = 0; length < bytes.length; length++) {
            Files.write(file, Arrays.copyOf(bytes, length));
            assertNothingAltered("cut at byte " + length);
        }
    }

    @Test
    void noFlippedBitIsEverTakenForAGoodValue() throws IOException {
        for (int bit = 0; bit < bytes.length * 8; bit++) {
            byte[] flipped = bytes.clone();
            flipped[bit / 8] ^= (byte) (1 << (bit % 8));
            Files.write(file, flipped);
            assertNothingAltered("bit " + bit);
        }
    }

    @Test
    void aDamagedLineInTheMiddleOpensForReadingUpToItAndLeavesTheFileAlone() throws IOException {
        byte[] damaged = bytes.clone();
        int third = indexOfLine(3);
        damaged[third + 40] ^= 1;
        Files.write(file, damaged);
        try (Journal journal = Journal.open(file, time, MARK)) {
            assertTrue(journal.readOnly());
            assertEquals(whole.entries().subList(0, 2), journal.job().entries());
            assertEquals(
                    List.of(Message.of("job.damaged.checksum", "4"), Message.of("job.damaged.so", "2")),
                    journal.problems());
        }
        assertArrayEquals(damaged, Files.readAllBytes(file));
    }

    @Test
    void aMissingDoubledOrSwappedLineIsNoticed() throws IOException {
        List<String> lines = Files.readAllLines(file);
        String missing = join(lines.get(0), lines.get(1), lines.get(3));
        String doubled = join(lines.get(0), lines.get(1), lines.get(1));
        String swapped = join(lines.get(0), lines.get(2), lines.get(1));
        for (Map.Entry<String, Integer> entry :
                Map.of(missing, 1, doubled, 1, swapped, 0).entrySet()) {
            Files.writeString(file, entry.getKey());
            JobCheck check = JobCheck.of(file, MARK);
            assertEquals(entry.getValue(), check.facts());
            assertEquals("job.damaged.order", check.problems().get(0).key());
        }
    }

    /** Each line carries a right check sum: it was made by hand, not damaged by accident. */
    @Test
    void aLineMadeByHandHasToBeRightInEveryPart() throws IOException {
        String start = "{\"sequence\":1,\"time\":\"2026-03-01T09:00:00Z\",\"session\":1,\"tick\":0,";
        String power = start + "\"fact\":\"power\",\"step\":\"a\",\"on\":true";
        String reading = start
                + "\"fact\":\"reading\",\"step\":\"a\",\"field\":\"b\",\"unit\":\"VOLT\",\"typed\":\"x\",\"value\":";
        assertEquals(1, factsIn(power));
        assertEquals(1, factsIn(reading + "0.0"));
        assertEquals(1, factsIn(reading + "-1.5E-4"));

        assertBad("double-key", power + ",\"on\":false");
        assertBad("keys", power + ",\"colour\":\"red\"");
        assertBad("keys", power.replace(",\"on\":true", ""));
        assertBad("keys", reading.replace(",\"value\":", ""));
        assertBad("keys", power.replace("\"tick\":0,", ""));
        assertBad("value", power.replace("true", "null"));
        assertBad("value", power.replace("true", "\"true\""));
        assertBad("value", power.replace("true", "[true]"));
        assertBad("value", power.replace("true", "{\"on\":true}"));
        assertBad("value", reading + "\"1.5\"");
        assertBad("value", reading + "1e999");
        assertBad("value", reading + "1e12");
        assertBad("value", reading + "9999999999999");
        assertBad("value", reading + "1E-99");
        assertBad("value", reading + "0." + "1".repeat(200));
        assertBad("value", power.replace("\"sequence\":1", "\"sequence\":0"));
        assertBad("value", power.replace("\"sequence\":1", "\"sequence\":1.0"));
        assertBad("value", power.replace("\"tick\":0", "\"tick\":-1"));
        assertBad("value", power.replace("\"session\":1", "\"session\":3000000000"));
        assertBad("value", power.replace("2026-03-01", "2026-13-01"));
        assertBad("value", power.replace("2026-03-01T09:00:00Z", "yesterday"));
        assertBad("value", power.replace("\"a\"", "\"\\ud83c\""));
        assertBad("unknown", power.replace("\"power\"", "\"Power\""));
        assertBad("unknown", power.replace("\"power\"", "\"photograph\""));
        assertBad("unknown", reading.replace("VOLT", "FURLONG") + "1.0");
        assertBad("order", power.replace("\"sequence\":1", "\"sequence\":2"));
        assertBad("not-json", reading + "NaN");
        assertBad("not-json", reading + "0x10");
        assertBad("not-json", power.replace("\"on\"", "on"));
        assertBad("not-json", power.replace("true", "TRUE"));
        assertBad("not-json", power.replace("true", "true/* comment */"));
        assertBad("not-json", power + "}{\"x\":1");
        assertBad("not-json", power.replace("true", "true,,"));
        assertBad("value", power.replace("true", "[".repeat(10_000)));
        assertBad("limit", power.replace("\"a\"", "\"" + "a".repeat(4001) + "\""));
        assertBad("limit", power.replace("\"a\"", "\"" + "a".repeat(20_000) + "\""));
        StringBuilder manyKeys = new StringBuilder(power);
        for (int i = 0; i < 40; i++) {
            manyKeys.append(",\"k").append(i).append("\":1");
        }
        assertBad("limit", manyKeys.toString());
    }

    @Test
    void bytesThatAreNotUtf8AreNoticed() throws IOException {
        byte[] open =
                "{\"sequence\":1,\"time\":\"2026-03-01T09:00:00Z\",\"session\":1,\"tick\":0,\"fact\":\"alarm\",\"step\":\"a\",\"reason\":\"\u00ff\""
                        .getBytes(StandardCharsets.ISO_8859_1);
        writeAfterHeader(open);
        assertEquals(
                "job.damaged.not-json",
                JobCheck.of(file, MARK).problems().get(0).key());
    }

    @Test
    void aTornLineIsNotCutOffWhileAnotherWindowMayStillBeWritingIt() throws IOException {
        try (Journal first = Journal.open(file, time, MARK)) {
            byte[] torn = Arrays.copyOf(bytes, bytes.length - 20);
            Files.write(file, torn);
            try (Journal second = Journal.open(file, time, MARK)) {
                assertTrue(second.readOnly());
                assertEquals(List.of(Message.of("job.locked"), Message.of("job.torn.left")), second.problems());
            }
            assertArrayEquals(torn, Files.readAllBytes(file));
            assertFalse(first.readOnly());
        }
    }

    @Test
    void everyReasonHasItsWords() {
        ResourceBundle words = ResourceBundle.getBundle("railtrim.words", Locale.ROOT);
        for (BadLine.Why why : BadLine.Why.values()) {
            String told = words.getString(new BadLine(why).key());
            assertTrue(told.contains("Line {0}"), told);
        }
    }

    /** Whatever was done to the file: refused in words, or some of the first facts exactly as they were, and never writable with a changed name. */
    private void assertNothingAltered(String what) {
        byte[] before = read();
        try (Journal journal = Journal.open(file, time, MARK)) {
            List<Entry> entries = journal.job().entries();
            List<Entry> written = whole.entries().subList(0, entries.size());
            boolean own = journal.job().origin() == Origin.OWN;
            assertEquals(own ? written : plain(written), entries, what);
            if (entries.size() < whole.entries().size()) {
                boolean cleanCut =
                        before.length < bytes.length && journal.problems().isEmpty();
                assertTrue(cleanCut || !journal.problems().isEmpty(), what);
            }
            if (!journal.readOnly()) {
                assertEquals("Organ", journal.job().name(), what);
            } else {
                assertArrayEquals(before, read(), what);
            }
            assertTrue(List.of("Organ", "organ").contains(journal.job().name()), what);
        } catch (JournalProblem e) {
            assertTrue(List.of("job.foreign", "job.empty").contains(e.told().key()), what + ": " + e.told());
        }
    }

    private static List<Entry> plain(List<Entry> entries) {
        return entries.stream()
                .map(entry -> new Entry(
                        entry.sequence(), entry.time(), entry.session(), entry.tick(), FactCodec.plain(entry.fact())))
                .toList();
    }

    private byte[] read() {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void assertBad(String why, String open) throws IOException {
        writeAfterHeader(open.getBytes(StandardCharsets.UTF_8));
        JobCheck check = JobCheck.of(file, MARK);
        assertEquals(0, check.facts(), open);
        assertEquals("job.damaged." + why, check.problems().get(0).key(), open);
    }

    private int factsIn(String open) throws IOException {
        writeAfterHeader(open.getBytes(StandardCharsets.UTF_8));
        JobCheck check = JobCheck.of(file, MARK);
        assertEquals(List.of(), check.problems());
        assertEquals(Instant.parse("2026-03-01T09:00:00Z"), check.first().orElseThrow());
        return check.facts();
    }

    /** With a right tag and a right check sum, so that only what the line says is left to refuse. */
    private void writeAfterHeader(byte[] open) throws IOException {
        Lines.Written header = Lines.header("Organ", MARK);
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        line.writeBytes(open);
        line.writeBytes(
                (",\"own\":\"" + MARK.tag(header.tag(), open, open.length) + "\"").getBytes(StandardCharsets.UTF_8));
        CRC32C crc = new CRC32C();
        crc.update(line.toByteArray());
        line.writeBytes(String.format(",\"crc\":\"%08x\"}\n", crc.getValue()).getBytes(StandardCharsets.UTF_8));
        Files.write(file, header.bytes());
        Files.write(file, line.toByteArray(), StandardOpenOption.APPEND);
    }

    private static String join(String... lines) {
        return String.join("\n", lines) + "\n";
    }

    private int startOfLastLine() {
        int start = bytes.length - 1;
        while (bytes[start - 1] != '\n') {
            start--;
        }
        return start;
    }

    private int indexOfLine(int number) {
        int index = 0;
        for (int line = 0; line < number; line++) {
            while (bytes[index++] != '\n') {}
        }
        return index;
    }
}
