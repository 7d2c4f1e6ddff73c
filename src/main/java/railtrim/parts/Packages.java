package railtrim.parts;

import java.util.Arrays;
import java.util.Optional;

/**
 * Sizes of resistors and the power each takes. Chips: thick film, the standard ratings of the common makers; highest voltages as for thin film of
 * the same size (Vishay TNPW e3: 50 to 300 V). Leaded: metal film 0204 and 0207 (Vishay MRS16 and MRS25).
 *
 * <p>Ratings hold up to 70 °C around the part and fall in a straight line to nothing at 155 °C: P(T) = P70·(155 − T)/85.
 */
public enum Packages {
    CHIP_0402("0402", 0.0625, 50, true),
    CHIP_0603("0603", 0.0625, 75, true),
    CHIP_0805("0805", 0.1, 150, true),
    CHIP_1206("1206", 0.125, 200, true),
    CHIP_1210("1210", 0.25, 200, true),
    CHIP_2010("2010", 0.5, 300, true),
    CHIP_2512("2512", 1, 300, true),
    LEADED_0204("0204", 0.4, 200, false),
    LEADED_0207("0207", 0.6, 350, false);

    private static final double FULL_UP_TO = 70;
    private static final double NOTHING_AT = 155;

    /** Half of the rating keeps a part cool and its value where it was; common practice, no source. */
    private static final double USED = 0.5;

    private final String id;
    private final double ratedPower;
    private final double highestVolts;
    private final boolean chip;

    Packages(String id, double ratedPower, double highestVolts, boolean chip) {
        this.id = id;
        this.ratedPower = ratedPower;
        this.highestVolts = highestVolts;
        this.chip = chip;
    }

    public String id() {
        return id;
    }

    public double ratedPower() {
        return ratedPower;
    }

    /** Watts it takes with this temperature around it, °C; 0 from 155 °C on. */
    public double powerAt(double ambient) {
        return derated(ratedPower, ambient);
    }

    static double derated(double ratedPower, double ambient) {
        if (ambient <= FULL_UP_TO) {
            return ratedPower;
        }
        return Math.max(0, ratedPower * (NOTHING_AT - ambient) / (NOTHING_AT - FULL_UP_TO));
    }

    private boolean holds(double watts, double volts, double ambient) {
        return watts <= USED * powerAt(ambient) && volts <= highestVolts;
    }

    /** The smallest chip that is used to no more than half; empty where even the largest is not enough. */
    public static Optional<Packages> smallestChip(double watts, double volts, double ambient) {
        return smallest(true, watts, volts, ambient);
    }

    public static Optional<Packages> smallestLeaded(double watts, double volts, double ambient) {
        return smallest(false, watts, volts, ambient);
    }

    private static Optional<Packages> smallest(boolean chip, double watts, double volts, double ambient) {
        return Arrays.stream(values())
                .filter(each -> each.chip == chip && each.holds(watts, volts, ambient))
                .findFirst();
    }
}
