package railtrim.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that travel inside the program: regulator families, cautions, demo boards. */
public final class BuiltIn {
    private BuiltIn() {}

    /** @param name below {@code railtrim/}, e.g. {@code regulators.json}, {@code demo-data/boards/synth.json} */
    public static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** The same as it stands in the file, UTF-8. */
    public static byte[] bytes(String name) {
        try (InputStream in = BuiltIn.class.getResourceAsStream("/railtrim/" + name)) {
            if (in == null) {
                throw new IllegalStateException("missing inside the program: " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
