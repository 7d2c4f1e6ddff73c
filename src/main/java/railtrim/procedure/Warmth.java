package railtrim.procedure;

import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Outline;
import railtrim.heat.Heat;

/**
 * Temperatures of chip and regulator, what was to be expected after the change, and the thermal resistance they imply. °C, kelvin per watt.
 *
 * @param junctionBefore inside the regulator, an estimate from its case, its power and its outline; empty where one of them is not known
 */
public record Warmth(Part chip, Part regulator, OptionalDouble junctionBefore, OptionalDouble junctionAfter) {
    /** Leakage of the chip up to this share of its current is reckoned with; old chips leak less. */
    static final double MOST_LEAKAGE = 0.3;

    /**
     * @param expectedLow after the change, without leakage; {@code expectedHigh} with as much as is reckoned with
     * @param resistanceBefore from the point measured to the room, where the power is known in watts
     */
    public record Part(
            OptionalDouble before,
            OptionalDouble after,
            OptionalDouble expectedLow,
            OptionalDouble expectedHigh,
            OptionalDouble resistanceBefore,
            OptionalDouble resistanceAfter) {}

    /** Before a voltage was chosen nothing is expected, and only what was measured is there. */
    public static Warmth of(Figures figures) {
        Optional<Heat.Powers> none = figures.powers(0);
        Optional<Heat.Powers> leaking = figures.powers(MOST_LEAKAGE);
        double lossBefore = lossBefore(figures);
        Part chip = part(
                figures,
                "chip",
                none.map(Heat.Powers::loadBefore).orElse(figures.stock().orElse(Double.NaN) * amperes(figures)),
                none.map(Heat.Powers::loadAfter).orElse(Double.NaN),
                leaking.map(Heat.Powers::loadAfter).orElse(Double.NaN),
                watts(figures));
        Part regulator = part(
                figures,
                "reg",
                none.map(Heat.Powers::regulatorBefore).orElse(lossBefore),
                none.map(Heat.Powers::regulatorAfter).orElse(Double.NaN),
                leaking.map(Heat.Powers::regulatorAfter).orElse(Double.NaN),
                watts(figures));
        double lossAfter =
                watts(figures) ? leaking.map(Heat.Powers::regulatorAfter).orElse(Double.NaN) : Double.NaN;
        OptionalDouble caseAfter = regulator.after().isPresent() ? regulator.after() : regulator.expectedHigh();
        return new Warmth(
                chip,
                regulator,
                junction(figures, regulator.before(), lossBefore),
                junction(figures, caseAfter, lossAfter));
    }

    private static boolean watts(Figures figures) {
        return figures.number("load.current").isPresent();
    }

    private static double amperes(Figures figures) {
        return figures.number("load.current").orElse(Double.NaN);
    }

    /** Watts at stock, NaN where input, current or kind of regulator leave it open. */
    private static double lossBefore(Figures figures) {
        return figures.linear()
                ? (figures.input().orElse(Double.NaN) - figures.stock().orElse(Double.NaN)) * amperes(figures)
                : Double.NaN;
    }

    private static Part part(
            Figures figures, String what, double powerBefore, double powerAfter, double powerLeaking, boolean watts) {
        OptionalDouble before = figures.number("temp." + what);
        OptionalDouble after = figures.number("fit.temp." + what);
        double room = figures.number("temp.room").orElse(Double.NaN);
        double roomAfter = figures.number("fit.temp.room").orElse(room);
        return new Part(
                before,
                after,
                expected(room, roomAfter, before, powerBefore, powerAfter),
                expected(room, roomAfter, before, powerBefore, powerLeaking),
                watts ? resistance(room, before, powerBefore) : OptionalDouble.empty(),
                watts ? resistance(roomAfter, after, powerAfter) : OptionalDouble.empty());
    }

    private static OptionalDouble expected(
            double room, double roomAfter, OptionalDouble before, double powerBefore, double powerAfter) {
        if (before.isEmpty() || !(powerBefore > 0) || !(powerAfter >= 0) || !(before.getAsDouble() >= room)) {
            return OptionalDouble.empty();
        }
        double rise = Heat.temperatureAfter(room, before.getAsDouble(), powerBefore, powerAfter) - room;
        return OptionalDouble.of(roomAfter + rise);
    }

    private static OptionalDouble resistance(double room, OptionalDouble temperature, double power) {
        return temperature.isPresent() && power > 0 && temperature.getAsDouble() >= room
                ? OptionalDouble.of(Heat.thermalResistance(room, temperature.getAsDouble(), power))
                : OptionalDouble.empty();
    }

    private static OptionalDouble junction(Figures figures, OptionalDouble atCase, double watts) {
        OptionalDouble perWatt = figures.outline().map(Outline::junctionToCase).orElse(OptionalDouble.empty());
        return atCase.isPresent() && perWatt.isPresent() && watts >= 0
                ? OptionalDouble.of(Heat.junction(atCase.getAsDouble(), watts, perWatt.getAsDouble()))
                : OptionalDouble.empty();
    }
}
