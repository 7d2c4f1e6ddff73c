package railtrim.job;

import com.google.gson.Strictness;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The job files opened last, newest first, kept as a small JSON list in a folder of the user's. Only a convenience: a list that is missing or
 * damaged counts as empty, and where it cannot be written the job goes on without it.
 */
public final class RecentJobs {
    static final int MOST = 12;
    private static final long LARGEST_BYTES = 64 * 1024L;
    private static final String LIST = "recent-jobs.json";

    private final Path list;

    /** @param folder made when first needed */
    public RecentJobs(Path folder) {
        this.list = folder.resolve(LIST);
    }

    /** Files that are still there, newest first. */
    public List<Path> files() {
        return kept().stream().filter(Files::isRegularFile).toList();
    }

    /** Puts a file at the head of the list. @return false where the list could not be written */
    public boolean remember(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return write(Stream.concat(Stream.of(whole), kept().stream().filter(path -> !path.equals(whole)))
                .limit(MOST)
                .toList());
    }

    private List<Path> kept() {
        try {
            if (!Files.isRegularFile(list) || Files.size(list) > LARGEST_BYTES) {
                return List.of();
            }
            return read(Files.readString(list));
        } catch (IOException | IllegalStateException | InvalidPathException e) {
            return List.of();
        }
    }

    private static List<Path> read(String text) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (JsonReader reader = new JsonReader(new StringReader(text))) {
            reader.setStrictness(Strictness.STRICT);
            reader.beginArray();
            while (reader.hasNext() && paths.size() < MOST) {
                Path path = Path.of(reader.nextString());
                if (path.isAbsolute()) {
                    paths.add(path.normalize());
                }
            }
        }
        return paths;
    }

    private boolean write(List<Path> paths) {
        StringWriter text = new StringWriter();
        try (JsonWriter writer = new JsonWriter(text)) {
            writer.setIndent("  ");
            writer.beginArray();
            for (Path path : paths) {
                writer.value(path.toString());
            }
            writer.endArray();
            writer.flush();
            Files.createDirectories(list.getParent());
            Disk.put(list, text.toString().getBytes(StandardCharsets.UTF_8), true);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
