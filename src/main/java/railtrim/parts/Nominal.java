package railtrim.parts;

import java.math.BigDecimal;
import java.math.MathContext;

/** A part's value as it stands on the bag: 560 Ω, 4.7 kΩ, 10 kΩ. Nothing was measured, so there are no zeros to show how well. */
public final class Nominal {
    private Nominal() {}

    /** @param ohms from 1 mΩ to below 1 TΩ; written with up to four digits */
    public static String written(double ohms) {
        BigDecimal value = new BigDecimal(ohms, new MathContext(4));
        int exponent = value.precision() - value.scale() - 1;
        int thousands = Math.max(0, Math.min(3, Math.floorDiv(exponent, 3)));
        String prefix = new String[] {"", "k", "M", "G"}[thousands];
        BigDecimal shown = value.scaleByPowerOfTen(-3 * thousands).stripTrailingZeros();
        return shown.toPlainString() + " " + prefix + "Ω";
    }
}
