package railtrim.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import railtrim.job.Journal;
import railtrim.job.Mark;

/** A second start goes to the window that is open, and to nobody else’s. */
class DoorbellTest {
    private static final Map<String, String> SCREEN = Map.of("DISPLAY", ":0");

    @TempDir
    Path folder;

    private final List<Optional<Path>> heard = new CopyOnWriteArrayList<>();
    private Doorbell bell;

    @BeforeEach
    void bell() {
        bell = new Doorbell(folder, SCREEN);
    }

    @Test
    void whereNoWindowIsOpenNobodyAnswersAndNothingIsMade() throws Exception {
        assertFalse(bell.ring(Optional.empty()));
        try (Stream<Path> made = Files.list(folder)) {
            assertEquals(0, made.count());
        }
    }

    @Test
    void theWindowThatIsOpenHearsOfTheJobByItsWholePath() throws Exception {
        Path job = folder.resolve("mixer.railtrim");
        try (AutoCloseable open = bell.answer(heard::add).orElseThrow()) {
            assertTrue(new Doorbell(folder, SCREEN).ring(Optional.of(job)));
            assertTrue(bell.ring(Optional.empty()));
            assertTrue(bell.ring(Optional.of(Path.of("here.railtrim"))));
        }
        assertEquals(
                List.of(
                        Optional.of(job),
                        Optional.empty(),
                        Optional.of(Path.of("here.railtrim").toAbsolutePath())),
                heard);
        assertFalse(bell.ring(Optional.of(job)), "closed with the window");
    }

    @Test
    void aWindowThatDoesNotTakeItLeavesItToTheSecondStart() throws Exception {
        try (AutoCloseable open = bell.answer(job -> false).orElseThrow()) {
            assertFalse(bell.ring(Optional.empty()));
        }
    }

    @Test
    void whatAProgramThatDiedLeftBehindIsSwept() throws Exception {
        bell.answer(heard::add).orElseThrow().close();
        try (ServerSocketChannel dead = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            dead.bind(UnixDomainSocketAddress.of(socket()));
        }
        assertTrue(Files.exists(socket()));
        assertFalse(bell.ring(Optional.empty()));
        try (AutoCloseable open = bell.answer(heard::add).orElseThrow()) {
            assertTrue(bell.ring(Optional.empty()));
        }
    }

    @Test
    void oneWindowAnswersAndEachScreenHasItsOwn() throws Exception {
        try (AutoCloseable open = bell.answer(heard::add).orElseThrow()) {
            assertTrue(new Doorbell(folder, SCREEN).answer(heard::add).isEmpty());
            assertFalse(new Doorbell(folder, Map.of("DISPLAY", ":1")).ring(Optional.empty()));
            assertTrue(bell.ring(Optional.empty()));
        }
    }

    /** A folder that others can enter, or a link to somewhere else, is not trusted. */
    @Test
    void onlyAFolderThatIsTheOwnersAloneCounts() throws Exception {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        try (AutoCloseable open = bell.answer(heard::add).orElseThrow()) {
            Path door = folder.resolve("door");
            assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(door)));
            Files.setPosixFilePermissions(door, PosixFilePermissions.fromString("rwxr-x---"));
            assertFalse(bell.ring(Optional.empty()));
            Files.setPosixFilePermissions(door, PosixFilePermissions.fromString("rwx------"));
            Files.move(door, folder.resolve("elsewhere"));
            Files.createSymbolicLink(door, folder.resolve("elsewhere"));
            assertFalse(bell.ring(Optional.empty()));
            assertEquals(List.of(), heard);
        }
    }

    @Test
    void nonsenseIsNotPassedOnAndDoesNotDeafen() throws Exception {
        try (AutoCloseable open = bell.answer(heard::add).orElseThrow()) {
            for (String said : List.of(
                    "",
                    "hello",
                    "railtrim 2\n/a.railtrim",
                    "railtrim 1\nrelative.railtrim",
                    "railtrim 1\n/etc/passwd",
                    "railtrim 1\n/a\0b.railtrim",
                    "x".repeat(100_000))) {
                say(said);
            }
            try (SocketChannel silent = SocketChannel.open(UnixDomainSocketAddress.of(socket()))) {
                assertTrue(silent.isConnected());
                assertTrue(bell.ring(Optional.empty()), "after one that says nothing");
            }
        }
        assertEquals(List.of(Optional.empty()), heard);
    }

    /** Of a socket’s name a system takes about a hundred letters; then everybody has a window of their own. */
    @Test
    void aFolderDeepDownHasNoDoorbell() {
        Doorbell deep = new Doorbell(folder.resolve("deep".repeat(40)), SCREEN);
        assertTrue(deep.answer(heard::add).isEmpty());
        assertFalse(deep.ring(Optional.empty()));
    }

    @Test
    void theJobOpensInTheWindowOnceNoQuestionStandsOnIt() throws Exception {
        Path job = Files.createDirectories(folder.resolve("jobs")).resolve("mixer.railtrim");
        Journal.create(job, "mixer", railtrim.job.Time.system(), Mark.keptIn(folder.resolve("own")))
                .close();
        try (Opened window = Opened.in(folder);
                AutoCloseable open = bell.answer(new Summons(window.shell)).orElseThrow()) {
            window.press("new-job");
            window.until("the name’s field", () -> window.focused().equals("job-name"));
            assertTrue(bell.ring(Optional.of(job)));
            window.settle();
            assertTrue(window.has("job-name"), "the question stands");
            window.press(javafx.scene.input.KeyCode.ESCAPE);
            window.until("the job", () -> window.has("make-safe"));
            Desk desk = window.shell.desk().orElseThrow();
            assertTrue(bell.ring(Optional.of(job)));
            window.settle();
            assertEquals(desk, window.shell.desk().orElseThrow(), "the job on the page stays as it is");
        }
    }

    private Path socket() throws Exception {
        try (Stream<Path> there = Files.list(folder.resolve("door"))) {
            return there.filter(file -> file.toString().endsWith(".lock"))
                    .map(file -> Path.of(file.toString().replace(".lock", "")))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private void say(String text) throws Exception {
        try (SocketChannel to = SocketChannel.open(UnixDomainSocketAddress.of(socket()))) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                to.write(bytes);
            }
            to.shutdownOutput();
            assertEquals(-1, to.read(ByteBuffer.allocate(10)), text);
        } catch (java.io.IOException hungUpOn) {
            assertTrue(text.length() > 10_000, text);
        }
    }
}
