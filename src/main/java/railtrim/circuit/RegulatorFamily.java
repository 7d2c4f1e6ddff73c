package railtrim.circuit;

import java.util.List;
import java.util.Map;

/**
 * Published figures of a family of adjustable regulators. Volts, amperes, ohms; {@code NaN} where the data sheet (or the person typing it) gives none.
 *
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
        List<String> sources) {}
