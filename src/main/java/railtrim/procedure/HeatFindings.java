package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.heat.Heat;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** What is said about heat along the way: before, as an outlook; after, against what was measured. */
final class HeatFindings {
    /** The expected and the measured temperature may differ by this much, °C: thermometers, draughts and loads do not repeat better. */
    private static final double ALIKE = 4;

    private HeatFindings() {}

    /** How hot the regulator is inside, once its case was measured and its power is known. */
    static List<Finding> junction(Figures figures) {
        OptionalDouble junction = Warmth.of(figures).junctionBefore();
        if (junction.isEmpty()) {
            return List.of();
        }
        String inside = Display.of(junction.getAsDouble(), Unit.CELSIUS);
        return List.of(
                junction.getAsDouble() > Heat.HOTTEST_JUNCTION
                        ? Findings.warns("verdict.junction-hot", inside)
                        : Findings.says("verdict.junction", inside));
    }

    /** What the chosen voltage will do to chip and regulator. */
    static List<Finding> outlook(Figures figures) {
        Optional<Heat.Powers> powers = figures.powers();
        if (figures.target().isEmpty() || powers.isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Warmth warmth = Warmth.of(figures);
        chip(warmth, powers.get()).ifPresent(findings::add);
        if (powers.get().regulatorGetsHotter()) {
            findings.add(regulator(warmth, powers.get()));
        }
        if (warmth.junctionAfter().orElse(0) > Heat.HOTTEST_JUNCTION) {
            findings.add(Findings.warns(
                    "verdict.junction-hot", Display.of(warmth.junctionAfter().getAsDouble(), Unit.CELSIUS)));
        }
        return findings;
    }

    private static Optional<Finding> chip(Warmth warmth, Heat.Powers powers) {
        if (warmth.chip().expectedLow().isPresent()) {
            return Optional.of(Findings.says(
                    "verdict.chip-outlook",
                    Display.of(warmth.chip().before().orElseThrow(), Unit.CELSIUS),
                    Display.of(warmth.chip().expectedLow().getAsDouble(), Unit.CELSIUS),
                    Display.of(warmth.chip().expectedHigh().getAsDouble(), Unit.CELSIUS)));
        }
        double part = 1 - powers.loadAfter() / powers.loadBefore();
        return part > 0.005
                ? Optional.of(
                        Findings.says("verdict.chip-outlook-power", Display.of(Math.round(100 * part), Unit.PERCENT)))
                : Optional.empty();
    }

    private static Finding regulator(Warmth warmth, Heat.Powers powers) {
        Warmth.Part part = warmth.regulator();
        if (part.expectedHigh().isPresent()) {
            return Findings.warns(
                    "verdict.regulator-outlook",
                    Display.of(part.before().orElseThrow(), Unit.CELSIUS),
                    Display.of(part.expectedHigh().getAsDouble(), Unit.CELSIUS));
        }
        double more = powers.regulatorAfter() / powers.regulatorBefore() - 1;
        return Findings.warns(
                "verdict.regulator-outlook-power", Display.of(Math.round(1000 * more) / 10.0, Unit.PERCENT));
    }

    /** After the last soak: as expected or not, and what that says of the way the heat goes. */
    static List<Finding> measured(Figures figures) {
        Warmth.Part chip = Warmth.of(figures).chip();
        List<Finding> findings = new ArrayList<>();
        if (chip.after().isPresent() && chip.expectedLow().isPresent()) {
            double after = chip.after().getAsDouble();
            boolean asExpected = after >= chip.expectedLow().getAsDouble() - ALIKE
                    && after <= chip.expectedHigh().getAsDouble() + ALIKE;
            findings.add(
                    asExpected
                            ? Findings.says("verdict.chip-as-expected", Display.of(after, Unit.CELSIUS))
                            : Findings.warns(
                                    "verdict.chip-not-as-expected",
                                    Display.of(after, Unit.CELSIUS),
                                    Display.of(chip.expectedLow().getAsDouble(), Unit.CELSIUS),
                                    Display.of(chip.expectedHigh().getAsDouble(), Unit.CELSIUS)));
        }
        OptionalDouble junction = Warmth.of(figures).junctionAfter();
        if (junction.isPresent() && figures.number("fit.temp.reg").isPresent()) {
            String inside = Display.of(junction.getAsDouble(), Unit.CELSIUS);
            findings.add(
                    junction.getAsDouble() > Heat.HOTTEST_JUNCTION
                            ? Findings.warns("verdict.junction-hot", inside)
                            : Findings.says("verdict.junction", inside));
        }
        return findings;
    }
}
