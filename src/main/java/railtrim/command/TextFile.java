package railtrim.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import railtrim.quantity.Message;

/** Small text files named on the command line. */
final class TextFile {
    /** Nothing that is read here is anywhere near this size; a larger file is the wrong one. */
    private static final int MOST_BYTES = 2 << 20;

    private TextFile() {}

    static String read(String option, String name) {
        Path file = path(option, name);
        if (!Files.isRegularFile(file)) {
            throw new BadOption(option, Message.of("command.wrong.no-file", Typed.shown(name)));
        }
        // A file may grow while it is read, and the system's own have no size.
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new BadOption(option, Message.of("command.wrong.file-too-large", Typed.shown(name)));
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadOption(option, Message.of("command.wrong.file-not-text", Typed.shown(name)));
        } catch (IOException e) {
            throw new BadOption(option, Message.of("command.wrong.file-unreadable", Typed.shown(name)));
        }
    }

    /** A folder to write into, made where it is not there yet. */
    static Path folder(String option, String name) {
        Path folder = path(option, name);
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new BadOption(option, Message.of("command.wrong.folder", Typed.shown(name)));
        }
    }

    static Path path(String option, String name) {
        try {
            if (!name.isBlank()) {
                return Path.of(name);
            }
        } catch (InvalidPathException e) {
            // told below, like an empty name
        }
        throw new BadOption(option, Message.of("command.wrong.file-name", Typed.shown(name)));
    }
}
