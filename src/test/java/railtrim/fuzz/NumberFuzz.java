package railtrim.fuzz;

import java.nio.charset.StandardCharsets;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Quantity;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** The number grammar: the first byte picks the unit, the rest is what was typed. It reads a finite number, or says in words why not. */
public final class NumberFuzz {
    private static final Unit[] UNITS = Unit.values();
    private static final Words WORDS = Words.english();

    private NumberFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        if (data.length == 0) {
            return;
        }
        Unit unit = UNITS[(data[0] & 0xFF) % UNITS.length];
        String typed = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
        try {
            Quantity read = QuantityReader.read(typed, unit);
            if (!Double.isFinite(read.value()) || read.unit() != unit) {
                throw new IllegalStateException(typed + " was read as " + read);
            }
            Display.inWords(read);
        } catch (BadInput bad) {
            WORDS.of(bad.told());
        }
    }
}
