package railtrim.procedure;

import static railtrim.procedure.Findings.blocks;
import static railtrim.procedure.Findings.says;
import static railtrim.procedure.Findings.stops;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.InCircuit;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.quantity.Propagation;
import railtrim.quantity.Unit;

/** Whether legs, reference and stock voltage belong together, and what two separate ways say of the true leg. */
final class AgreeFindings {
    private AgreeFindings() {}

    static List<Finding> of(Figures figures) {
        Optional<InCircuit.Agreement> agreement = figures.agreement();
        if (figures.number("leg.again").isEmpty()) {
            return List.of();
        }
        if (agreement.isEmpty()) {
            return List.of(blocks("verdict.stock-not-above-reference", "load"));
        }
        if (agreement.get().agrees()) {
            return theLeg(figures, agreement.get());
        }
        if (figures.history("leg.ohms").size() > 1) {
            return List.of(stops("stop.disagree"));
        }
        String key = agreement.get().swappedFits() ? "verdict.legs-swapped" : "verdict.disagrees";
        return List.of(blocks(key, "legs"));
    }

    private static List<Finding> theLeg(Figures figures, InCircuit.Agreement agreement) {
        List<Finding> findings = new ArrayList<>();
        findings.add(says(
                "verdict.agrees",
                Display.ohms(agreement.legLow()),
                Display.ohms(agreement.legHigh()),
                Display.ohms(figures.readLeg().orElseThrow())));
        figures.legByOhms().map(leg -> byOhms(leg, agreement)).ifPresent(findings::add);
        return findings;
    }

    /**
     * The three resistances alone give the leg a second time, without the voltages. They take what hangs on the rail for a plain resistor, which a
     * chip is not, so they confirm and never contradict.
     */
    private static Finding byOhms(Propagation.Result leg, InCircuit.Agreement agreement) {
        boolean same = leg.value() + leg.expanded() >= agreement.legLow()
                && leg.value() - leg.expanded() <= agreement.legHigh();
        return says(
                same ? "verdict.agrees-by-ohms" : "verdict.differs-by-ohms",
                Display.withUncertainty(leg.value(), leg.expanded(), Unit.OHM));
    }
}
