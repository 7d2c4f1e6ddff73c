package railtrim.job;

import java.io.Closeable;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Objects;

/** The few things this package asks of a disk, in the order that survives a crash. */
final class Disk {
    private Disk() {}

    /** Writes at the end of one file. A test can put one in between that fails. */
    interface Tail extends Closeable {
        void write(byte[] bytes) throws IOException;

        /** Everything written so far is on the disk when this returns. After a failure the file is in doubt and must not be forced again. */
        void force() throws IOException;
    }

    /** A stream and no channel: a channel would be closed by an interrupted thread. */
    static Tail tail(Path file) throws IOException {
        FileOutputStream out = new FileOutputStream(file.toFile(), true);
        return new Tail() {
            @Override
            public void write(byte[] bytes) throws IOException {
                out.write(bytes);
            }

            @Override
            public void force() throws IOException {
                out.getFD().sync();
            }

            @Override
            public void close() throws IOException {
                out.close();
            }
        };
    }

    /** A file as it was when last looked at: which one it is, and how long. */
    record Seen(Object key, long size, FileTime changed) {
        static final Seen NOTHING = new Seen("", 0, FileTime.fromMillis(0));

        static Seen of(Path file) throws IOException {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return new Seen(now.fileKey(), now.size(), now.lastModifiedTime());
        }

        /** Nothing where the file is not there or not to be looked at; reading it then says so in words. */
        static Seen orNothing(Path file) {
            try {
                return of(file);
            } catch (IOException e) {
                return NOTHING;
            }
        }

        /** The same file and as long. The time is left out: a network drive may set its own. */
        boolean same(Seen other) {
            return size == other.size && Objects.equals(key, other.key);
        }
    }

    /** A whole new file: under another name first, forced, then moved into place, then the folder forced. Nobody ever sees half of it. */
    static void put(Path file, byte[] bytes, boolean replace) throws IOException {
        place(half(file, bytes), file, replace);
    }

    /** The bytes under another name beside {@code file}, forced. Is not there where it fails. */
    static Path half(Path file, byte[] bytes) throws IOException {
        Path half = halfOf(file);
        // Left by a crash in between; a link put there by somebody is taken away and not followed.
        Files.deleteIfExists(half);
        Files.createFile(half);
        fill(half, bytes);
        return half;
    }

    static void fill(Path half, byte[] bytes) throws IOException {
        try (FileOutputStream out = new FileOutputStream(half.toFile())) {
            out.write(bytes);
            out.getFD().sync();
        } catch (IOException e) {
            Files.deleteIfExists(half);
            throw e;
        }
    }

    /** Moves a finished half into its place, then forces the folder. */
    static void place(Path half, Path file, boolean replace) throws IOException {
        try {
            if (!replace && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new FileAlreadyExistsException(file.toString());
            }
            Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.deleteIfExists(half);
            throw e;
        }
        try {
            forceFolder(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            if (!replace) {
                // Nobody was told of it yet.
                Files.deleteIfExists(file);
            }
            throw e;
        }
    }

    /** Takes away what a crash left of a file that was never finished. Only for who holds the lock of {@code file}. */
    static void sweep(Path file) {
        try {
            Files.deleteIfExists(halfOf(file));
        } catch (IOException e) {
            // It does no harm lying there.
        }
    }

    private static Path halfOf(Path file) {
        return file.resolveSibling(file.getFileName() + ".tmp");
    }

    /** Cuts a file at {@code length}, adds {@code end}, and forces it. */
    static void mend(Path file, long length, byte[] end) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.truncate(length);
            channel.write(ByteBuffer.wrap(end), length);
            channel.force(true);
        }
    }

    /**
     * So that the new name is on the disk too. Some systems cannot do this (Windows opens no folder, some network drives refuse the call); there the
     * name is safe by other means.
     */
    private static void forceFolder(Path folder) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (channel) {
            channel.force(true);
        } catch (IOException e) {
            if (!String.valueOf(e.getMessage()).matches("(?i).*(invalid argument|not supported).*")) {
                throw e;
            }
        }
    }
}
