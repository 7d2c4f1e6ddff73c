package railtrim.fuzz;

import java.nio.charset.StandardCharsets;
import railtrim.parts.PartsBox;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;

/** The parts box: resistors that can be, or in words why it cannot be used. */
public final class PartsFuzz {
    private static final Words WORDS = Words.english();

    private PartsFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        try {
            for (PartsBox.Part part :
                    PartsBox.of(new String(data, StandardCharsets.UTF_8)).parts()) {
                boolean real = part.ohms() > 0 && part.ohms() <= 1e12 && part.tolerance() >= 0 && part.count() > 0;
                if (!real || part.tolerance() > 0.5) {
                    throw new IllegalStateException("no resistor: " + part);
                }
            }
        } catch (BadInput bad) {
            WORDS.of(bad.told());
        }
    }
}
