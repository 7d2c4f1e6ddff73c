package railtrim.window;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import railtrim.job.Journal;

/**
 * How a second start reaches the window that is already open: a socket of the file system in a folder only its owner can enter, never a port of a network.
 * Each screen has one of its own. The lock beside it tells who answers; what a program that died left behind is swept by the next one to hold the lock.
 * Where anything fails, the second start opens a window of its own.
 */
final class Doorbell {
    private static final String GREETING = "railtrim 1\n";
    private static final String TAKEN = "taken";
    private static final int LONGEST_BYTES = 8192;
    private static final long PATIENCE_MILLIS = 2000;

    private final Path folder;
    private final Path socket;
    private final Path lock;

    /** @param environment tells one screen of the same person from another */
    Doorbell(Path ownFolder, Map<String, String> environment) {
        String screen = Stream.of("DISPLAY", "WAYLAND_DISPLAY", "SESSIONNAME")
                .map(name -> environment.getOrDefault(name, ""))
                .collect(Collectors.joining(" "));
        String name = Integer.toHexString(screen.hashCode());
        this.folder = ownFolder.toAbsolutePath().resolve("door");
        this.socket = folder.resolve(name);
        this.lock = folder.resolve(name + ".lock");
    }

    /** Asks the window that is open to come to the front, with a job or without. @return false where there is none, or it does not answer */
    boolean ring(Optional<Path> job) {
        if (!Files.exists(socket, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        FutureTask<Boolean> ringing = new FutureTask<>(() -> ringNow(job));
        daemon(ringing, "ringing");
        try {
            return ringing.get(2 * PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException | TimeoutException nobody) {
            return false;
        }
    }

    private boolean ringNow(Optional<Path> job) throws IOException {
        if (!onlyOurs()) {
            return false;
        }
        String message =
                GREETING + job.map(Path::toAbsolutePath).map(Path::toString).orElse("");
        try (SocketChannel to = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
            Channels.newOutputStream(to).write(message.getBytes(StandardCharsets.UTF_8));
            to.shutdownOutput();
            return read(to, 2 * PATIENCE_MILLIS).filter(TAKEN::equals).isPresent();
        }
    }

    /**
     * Answers from now on, on a thread of its own, until it is closed.
     *
     * @param rung called with the job, or with none; says whether the window took it
     * @return empty where somebody else answers already, or nobody can
     */
    Optional<Door> answer(Predicate<Optional<Path>> rung) {
        try {
            make();
            FileChannel held = FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock mine = held.tryLock();
            if (mine == null || !onlyOurs()) {
                held.close();
                return Optional.empty();
            }
            Files.deleteIfExists(socket);
            ServerSocketChannel door = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
            door.bind(UnixDomainSocketAddress.of(socket));
            daemon(() -> listen(door, rung), "doorbell");
            // When the person logs out, the window is not closed; the door must not stay behind for the next start to
            // ring at.
            Runtime.getRuntime().addShutdownHook(new Thread(() -> shut(door, held), "door"));
            return Optional.of(() -> shut(door, held));
        } catch (IOException | UnsupportedOperationException | java.nio.channels.OverlappingFileLockException cannot) {
            return Optional.empty();
        }
    }

    /** Until it is closed, another start comes here. */
    interface Door extends AutoCloseable {
        @Override
        void close();
    }

    private void shut(ServerSocketChannel door, FileChannel held) {
        if (door.isOpen()) {
            try {
                door.close();
                Files.deleteIfExists(socket);
                held.close();
            } catch (IOException leftBehind) {
                // The next window sweeps it.
                System.getLogger("railtrim").log(System.Logger.Level.DEBUG, "door", leftBehind);
            }
        }
    }

    /** Until the door is closed, or can take nobody any more: then the next start opens a window of its own. */
    private static void listen(ServerSocketChannel door, Predicate<Optional<Path>> rung) {
        try {
            while (true) {
                hear(door.accept(), rung);
            }
        } catch (IOException closed) {
            // Nothing more to hear.
            return;
        }
    }

    private static void hear(SocketChannel caller, Predicate<Optional<Path>> rung) {
        try (SocketChannel from = caller) {
            Optional<Optional<Path>> asked = read(from, PATIENCE_MILLIS).flatMap(Doorbell::asked);
            if (asked.filter(rung).isPresent()) {
                from.write(ByteBuffer.wrap(TAKEN.getBytes(StandardCharsets.UTF_8)));
            }
        } catch (IOException gone) {
            // Who rang went away; the next one is heard all the same.
            return;
        }
    }

    /** A job file by its whole path, or none; empty for anything else. */
    private static Optional<Optional<Path>> asked(String message) {
        if (!message.startsWith(GREETING)) {
            return Optional.empty();
        }
        String job = message.substring(GREETING.length());
        if (job.isEmpty()) {
            return Optional.of(Optional.empty());
        }
        try {
            Path file = Path.of(job);
            return file.isAbsolute() && job.endsWith(Journal.ENDING)
                    ? Optional.of(Optional.of(file))
                    : Optional.empty();
        } catch (java.nio.file.InvalidPathException noPath) {
            return Optional.empty();
        }
    }

    /** All that comes until the other side has said its piece; empty where that takes too long or is too much. */
    private static Optional<String> read(SocketChannel from, long millis) throws IOException {
        ByteBuffer message = ByteBuffer.allocate(LONGEST_BYTES);
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        from.configureBlocking(false);
        try (Selector selector = Selector.open()) {
            from.register(selector, SelectionKey.OP_READ);
            while (from.read(message) >= 0) {
                long left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
                if (left <= 0 || !message.hasRemaining()) {
                    return Optional.empty();
                }
                selector.select(left);
                selector.selectedKeys().clear();
            }
        }
        return Optional.of(new String(message.array(), 0, message.position(), StandardCharsets.UTF_8));
    }

    private void make() throws IOException {
        Files.createDirectories(folder.getParent());
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectory(folder);
        }
        if (hasOwnersRights()) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    /** Whether nobody else can enter the folder, nor anybody have put another in its place. */
    private boolean onlyOurs() throws IOException {
        if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        boolean shut = !hasOwnersRights()
                || PosixFilePermissions.toString(Files.getPosixFilePermissions(folder, LinkOption.NOFOLLOW_LINKS))
                        .endsWith("------");
        String owner = Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS).getName();
        return shut && (!hasOwnersRights() || owner.equals(System.getProperty("user.name")));
    }

    /** Elsewhere the person's own folder is theirs alone by the system's lists of rights. */
    private boolean hasOwnersRights() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static void daemon(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }
}
