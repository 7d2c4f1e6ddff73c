package railtrim.job;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import railtrim.quantity.Message;

/** What about a folder is to be told before anything is measured. */
final class Room {
    /** A whole job with its kept states is a tenth of this. */
    private static final long SCARCE_BYTES = 4L * 1024 * 1024;

    /** Names that the systems give to drives on another computer. */
    private static final Set<String> NETWORK =
            Set.of("nfs", "nfs4", "cifs", "smb", "smb2", "smb3", "smbfs", "webdav", "afpfs", "9p", "fuse.sshfs");

    private Room() {}

    static List<Message> warnings(Path file) {
        try {
            FileStore store = Files.getFileStore(file);
            return warnings(file, store.type(), store.getUsableSpace(), store.getTotalSpace());
        } catch (IOException | SecurityException e) {
            return List.of();
        }
    }

    /** @param total 0 where the system does not know its sizes */
    static List<Message> warnings(Path file, String type, long usable, long total) {
        List<Message> warnings = new ArrayList<>();
        if (total > 0 && usable < SCARCE_BYTES) {
            warnings.add(Message.of("job.disk-nearly-full", file.toString(), Long.toString(usable / 1024)));
        }
        if (NETWORK.contains(type.toLowerCase(Locale.ROOT))) {
            warnings.add(Message.of("job.network-folder", file.toString()));
        }
        return warnings;
    }
}
