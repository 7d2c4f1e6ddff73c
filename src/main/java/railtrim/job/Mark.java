package railtrim.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * By this a job is known as one's own: a secret of this installation, 32 random bytes, that never goes into a job. Each line of a job carries a tag
 * made with it (HMAC-SHA-256, RFC 2104, cut to 64 bits) over the tag of the line before and the line itself. So a line that was changed, added,
 * moved or taken over from another job anywhere else does not fit, however right its check sum is.
 */
public final class Mark {
    private static final String FILE = "mark";
    private static final int SECRET_BYTES = 32;
    private static final int TAG_BYTES = 8;
    private static final HexFormat HEX = HexFormat.of();

    private final Mac mac;
    private final boolean kept;

    private Mark(byte[] secret, boolean kept) {
        try {
            this.mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(secret, "HmacSHA256"));
        } catch (GeneralSecurityException e) {
            // Every Java has this one (Java Security Standard Algorithm Names).
            throw new IllegalStateException(e);
        }
        this.kept = kept;
    }

    /** The mark in {@code folder}, drawn and kept there where there is none yet. Where it cannot be kept, one for this run only. */
    public static Mark keptIn(Path folder) {
        return read(folder).orElseGet(() -> draw(folder));
    }

    /** The mark in {@code folder}; where there is none, one that fits no job. Writes nothing. */
    public static Mark lookUp(Path folder) {
        return read(folder).orElseGet(() -> new Mark(random(), false));
    }

    /** A mark everybody knows, for jobs that are made to be shown. On no machine does such a job count as one's own. */
    public static Mark forShow() {
        return new Mark("made to be shown".getBytes(StandardCharsets.UTF_8), true);
    }

    /** Whether jobs written with it will be known as one's own the next time too. */
    public boolean kept() {
        return kept;
    }

    /** @param before tag of the line before, empty for the first line */
    synchronized String tag(String before, byte[] line, int length) {
        mac.update(before.getBytes(StandardCharsets.US_ASCII));
        mac.update(line, 0, length);
        return HEX.formatHex(Arrays.copyOf(mac.doFinal(), TAG_BYTES));
    }

    private static Optional<Mark> read(Path folder) {
        try {
            Path file = folder.resolve(FILE);
            if (Files.isRegularFile(file) && Files.size(file) <= 4L * SECRET_BYTES) {
                byte[] secret = HEX.parseHex(
                        Files.readString(file, StandardCharsets.ISO_8859_1).strip());
                return secret.length == SECRET_BYTES ? Optional.of(new Mark(secret, true)) : Optional.empty();
            }
        } catch (IOException | IllegalArgumentException e) {
            // Counts as not there.
        }
        return Optional.empty();
    }

    private static Mark draw(Path folder) {
        byte[] secret = random();
        Path file = folder.resolve(FILE);
        try {
            Files.createDirectories(folder);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                // Damaged. Whoever can mend it finds it there.
                Files.move(file, folder.resolve(FILE + ".old"), StandardCopyOption.REPLACE_EXISTING);
            }
            // The system makes temporary files readable by their owner alone.
            Path half = Files.createTempFile(folder, FILE, ".tmp");
            Disk.fill(half, (HEX.formatHex(secret) + "\n").getBytes(StandardCharsets.US_ASCII));
            Disk.place(half, file, false);
            return new Mark(secret, true);
        } catch (FileAlreadyExistsException e) {
            // Another window was faster.
            return read(folder).orElseGet(() -> new Mark(secret, false));
        } catch (IOException | UnsupportedOperationException e) {
            return new Mark(secret, false);
        }
    }

    private static byte[] random() {
        byte[] secret = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(secret);
        return secret;
    }
}
