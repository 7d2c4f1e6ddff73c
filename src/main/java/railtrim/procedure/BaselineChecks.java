package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import railtrim.circuit.PlaceTelling;
import railtrim.circuit.RegulatorFamily;
import railtrim.procedure.Step.Finding;

/** What the readings of the board as it came say together. */
final class BaselineChecks {
    private BaselineChecks() {}

    /** Done again after soldering, the legs have to be read as they came: with nothing across them. */
    static List<Finding> legs(Figures figures) {
        List<Finding> findings = new ArrayList<>(AsItCame.takeOffFirst(figures, "leg.ohms"));
        findings.addAll(AsItCame.ohms(figures, "leg.ohms"));
        findings.addAll(AsItCame.ohms(figures, "other.ohms"));
        return findings;
    }

    static List<Finding> load(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        OptionalDouble stock = figures.stock();
        OptionalDouble high = figures.ratedHigh();
        if (stock.isPresent() && high.isPresent() && stock.getAsDouble() > high.getAsDouble()) {
            findings.add(Findings.warns(
                    "verdict.stock-above-rated",
                    figures.sign().volts(stock.getAsDouble()),
                    figures.sign().volts(high.getAsDouble())));
        }
        if (stock.isPresent()
                && figures.ratedLow().isPresent()
                && stock.getAsDouble() < figures.ratedLow().getAsDouble()) {
            findings.add(Findings.warns("verdict.stock-below-rated"));
        }
        double inputHighest =
                figures.family().map(RegulatorFamily::inputHighest).orElse(Double.NaN);
        if (figures.input().orElse(0) > inputHighest) {
            findings.add(
                    Findings.warns("verdict.input-above-sheet", figures.sign().volts(inputHighest)));
        }
        stock.ifPresent(volts -> findings.add(Findings.says("verdict.stock-doubt", Doubts.reading(figures, volts))));
        if (stock.isPresent() && figures.reference().isPresent() && bothPlacesFit(figures)) {
            findings.add(Findings.warns("verdict.twice-reference"));
        }
        return findings;
    }

    /** Where stock is about twice the reference, both legs read the reference and no voltage tells which is which. */
    private static boolean bothPlacesFit(Figures figures) {
        double reference = figures.reference().orElseThrow();
        double rest = figures.stock().orElseThrow() - reference;
        double uncertainty = figures.voltUncertainty(reference);
        return rest > 0
                && reference > uncertainty
                && PlaceTelling.of(
                                reference,
                                uncertainty,
                                rest,
                                Math.hypot(uncertainty, figures.voltUncertainty(rest)),
                                reference - uncertainty,
                                reference + uncertainty)
                        == PlaceTelling.BOTH;
    }

    static List<Finding> warm(Figures figures) {
        return HeatFindings.junction(figures);
    }
}
