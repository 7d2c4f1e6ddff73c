package railtrim.practice;

import railtrim.quantity.Unit;

/**
 * What a meter's display shows.
 *
 * @param text as a person would copy it, with the unit: "3.555 V", "218.4 Ω", "10.02 kΩ", or "OL" above the largest range
 * @param value SI units; NaN for overload
 */
public record Shown(String text, Unit unit, double value) {
    public static final String OVERLOAD = "OL";

    public boolean overload() {
        return Double.isNaN(value);
    }
}
