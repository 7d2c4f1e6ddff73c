package railtrim.circuit;

import java.util.List;
import java.util.Map;

/**
 * Published figures of a family of adjustable regulators. Volts, amperes, ohms; {@code NaN} where the data sheet (or the person typing it) gives none.
 *
 * @param reference typical, where it sits between the output (or the sense pin, where there is one) and the adjust pin, or between feedback and ground
 * @param bias adjust or feedback pin current, typical, in its data-sheet sense
 * @param minimumLoad the largest published, below which the output may rise
 * @param dropout of the power input, where a control supply exists beside it
 * @param inputHighest of the power input; for floating regulators the limit is between input and output
 * @param otherLegLow the maker's advice for the resistor that is not adjusted; boards differ, so it is a hint and no limit
 * @param pinouts package outline to roles, pin 1 first; an empty map where pins vary by maker and must be asked for
 * @param tab role of the tab, null where the family has no tab or it varies
 * @param sources data sheets the figures were read in, and which figures are from memory
 */
public record RegulatorFamily(
        String id,
        String name,
        Place place,
        double referenceLow,
        double reference,
        double referenceHigh,
        double bias,
        double biasHigh,
        double minimumLoad,
        double dropout,
        double inputHighest,
        double otherLegLow,
        double otherLegHigh,
        Map<Outline, List<PinRole>> pinouts,
        PinRole tab,
        List<String> sources) {
    /** The typical pin current for sums, 0 where none is published. */
    public double biasOrZero() {
        return Double.isNaN(bias) ? 0 : bias;
    }
}
