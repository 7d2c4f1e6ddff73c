package railtrim.quantity;

import java.math.BigDecimal;

/** Typed text taken apart: sign, digits before and after the decimal mark, unit. {@code before} is never empty, {@code after} may be. */
record Typed(boolean negative, String before, String after, UnitText unitText) {
    /** The value in the SI unit: exact in decimals, rounded once. */
    double value() {
        double value = new BigDecimal(digits())
                .scaleByPowerOfTen(unitText.prefix().power())
                .multiply(BigDecimal.valueOf(unitText.seconds()))
                .doubleValue();
        return value == 0 ? 0 : value;
    }

    /** Sign and digits with a decimal point. */
    String digits() {
        return (negative ? "-" : "") + before + (after.isEmpty() ? "" : "." + after);
    }

    boolean isOne() {
        return before.equals("1") && after.isEmpty();
    }
}
