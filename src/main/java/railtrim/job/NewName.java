package railtrim.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A name for a job that has to go on in another file. */
final class NewName {
    private static final int MOST = 99;

    private NewName() {}

    /** {@code organ-2.railtrim} for {@code organ.railtrim}, or the next that is free. */
    static Path beside(Path file) throws IOException {
        String stem = JobFile.stem(file);
        for (int number = 2; number <= MOST; number++) {
            Path next = file.resolveSibling(stem + "-" + number + Journal.ENDING);
            if (!Files.exists(next, LinkOption.NOFOLLOW_LINKS)) {
                return next;
            }
        }
        throw new IOException("no free name");
    }
}
