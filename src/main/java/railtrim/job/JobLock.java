package railtrim.job;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Keeps a second window off a job. The lock sits on a file of its own, {@code NAME.railtrim.lock}, which is opened here and nowhere else: closing
 * any other channel on a locked file would let the lock go (see {@link FileLock}). The file is left lying: removing it would let two windows
 * lock two different files of the same name. A process that dies lets its lock go.
 */
final class JobLock implements Closeable {
    private final FileChannel channel;

    private JobLock(FileChannel channel) {
        this.channel = channel;
    }

    /** Empty where another window has it. @throws IOException where the folder cannot be written */
    static Optional<JobLock> take(Path jobFile) throws IOException {
        Path file = jobFile.resolveSibling(jobFile.getFileName() + ".lock");
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new JobLock(channel));
            }
        } catch (OverlappingFileLockException e) {
            // Another window of this same process.
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            // The lock ends with the process at the latest.
        }
    }
}
