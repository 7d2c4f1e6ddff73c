package railtrim.window.picture;

import java.util.OptionalDouble;
import railtrim.procedure.Figures;

/**
 * Temperatures (°C) and powers before and after, of the chip and of its regulator.
 *
 * @param relative powers are multiples of the chip's power before, not watts
 */
record HeatData(Part chip, Part regulator, boolean relative) {
    /** Each empty where not known. */
    record Part(OptionalDouble before, OptionalDouble after, OptionalDouble powerBefore, OptionalDouble powerAfter) {}

    static HeatData of(Figures figures) {
        OptionalDouble chipBefore = OptionalDouble.empty();
        OptionalDouble chipAfter = OptionalDouble.empty();
        OptionalDouble lossBefore = OptionalDouble.empty();
        OptionalDouble lossAfter = OptionalDouble.empty();
        boolean relative = false;
        if (figures.powers().isPresent()) {
            var powers = figures.powers().get();
            chipBefore = known(powers.loadBefore());
            chipAfter = known(powers.loadAfter());
            lossBefore = known(powers.regulatorBefore());
            lossAfter = known(powers.regulatorAfter());
            relative = powers.relative();
        }
        return new HeatData(
                new Part(figures.number("temp.chip"), figures.number("fit.temp.chip"), chipBefore, chipAfter),
                new Part(figures.number("temp.reg"), figures.number("fit.temp.reg"), lossBefore, lossAfter),
                relative);
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** How much less the chip makes into heat than before, in the unit of the powers. */
    OptionalDouble saved() {
        return less(chip);
    }

    /** How much more the regulator makes into heat; below 0 where it too makes less. */
    OptionalDouble moved() {
        OptionalDouble less = less(regulator);
        return less.isPresent() ? OptionalDouble.of(-less.getAsDouble()) : less;
    }

    private static OptionalDouble less(Part part) {
        return part.powerBefore().isPresent() && part.powerAfter().isPresent()
                ? OptionalDouble.of(
                        part.powerBefore().getAsDouble() - part.powerAfter().getAsDouble())
                : OptionalDouble.empty();
    }

    boolean empty() {
        return chip.before().isEmpty()
                && regulator.before().isEmpty()
                && chip.powerBefore().isEmpty();
    }
}
