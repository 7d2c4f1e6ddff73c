package railtrim.circuit;

import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/**
 * A regulator with its divider, by the one law |Vout| = Vref + x·Re, with Re the adjusted leg in parallel with what was added and
 * x = Vref/Rother + Ibias the current forced into it. Ohms, volts (magnitudes) and amperes.
 *
 * <p>Source of the law: the output formulas of the LM317 (SLVS044), LM1117 (SNOS412Q 8.1), LT1086 (p. 9), LM337 (SNVSAX3), LM2596 (SNVS124C)
 * and TL431 (SLVS543R) data sheets, written with the adjusted leg set apart. In the TL431 sheet the sign of the Iref term is misprinted in
 * places: current into the reference pin adds to the output.
 *
 * @param leg the adjusted leg, the one that lowers the output, ohms, more than 0
 * @param legCurrent x, amperes, more than 0
 * @param bias adjust or feedback pin current in its data-sheet sense, amperes, 0 where not known
 */
public record Circuit(Place place, double reference, double leg, double legCurrent, double bias) {
    /** @throws BadInput where reference, leg or current is not a finite number above 0, or bias is not finite */
    public Circuit {
        positive(reference, Unit.VOLT);
        positive(leg, Unit.OHM);
        positive(legCurrent, Unit.AMPERE);
        if (!Double.isFinite(bias)) {
            throw BadInput.of("circuit.not-positive", Display.of(bias, Unit.AMPERE));
        }
    }

    /** From what was measured: x = (|Vstock| − Vref) / leg. @throws railtrim.quantity.BadInput where stock is not above the reference */
    public static Circuit fromStock(Place place, double reference, double stockMagnitude, double leg, double bias) {
        positive(reference, Unit.VOLT);
        positive(leg, Unit.OHM);
        if (!(stockMagnitude > reference)) {
            throw BadInput.of(
                    "circuit.stock-not-above-reference", place.sign().volts(stockMagnitude), Display.volts(reference));
        }
        return new Circuit(place, reference, leg, (stockMagnitude - reference) / leg, bias);
    }

    /** From both resistors and the bias current: x = Vref/Rother + Ibias. @throws railtrim.quantity.BadInput for a resistor that is not above 0 Ω */
    public static Circuit fromResistors(Place place, double reference, double upper, double lower, double bias) {
        positive(upper, Unit.OHM);
        positive(lower, Unit.OHM);
        boolean upperLowers = place.loweringLeg() == Leg.UPPER;
        double leg = upperLowers ? upper : lower;
        double other = upperLowers ? lower : upper;
        return new Circuit(place, reference, leg, reference / other + bias, bias);
    }

    /** The divider's other resistor, Vref / (x − Ibias), ohms; infinity where the bias current alone makes up all of x. */
    public double other() {
        return legCurrent > bias ? reference / (legCurrent - bias) : Double.POSITIVE_INFINITY;
    }

    /** Magnitude of the output as it left the maker, volts. */
    public double stock() {
        return magnitudeOfTotal(leg);
    }

    /** Magnitude of the output with {@code added} ohms across the leg; {@link Double#POSITIVE_INFINITY} for nothing added. */
    public double magnitude(double added) {
        return magnitudeOfTotal(total(added));
    }

    /** Magnitude with the leg's total resistance known: Vref + x·total, volts. */
    public double magnitudeOfTotal(double total) {
        notNegative(total);
        return reference + legCurrent * total;
    }

    /** A magnitude with the sign of this kind of regulator. */
    public double signed(double magnitude) {
        return place.sign().shown(magnitude);
    }

    /** The leg's total with {@code added} across it, ohms; the leg itself for infinity, 0 for a short. @throws BadInput for a negative resistance */
    public double total(double added) {
        notNegative(added);
        return Double.isInfinite(added) ? leg : leg * (added / (leg + added));
    }

    /** Ohms to add for a target magnitude: 1/(x/(target − Vref) − 1/R). @throws railtrim.quantity.BadInput unless Vref &lt; target &lt; stock */
    public double addedFor(double targetMagnitude) {
        if (!(targetMagnitude > reference)) {
            throw BadInput.of(
                    "circuit.target-not-above-reference",
                    place.sign().volts(targetMagnitude),
                    Display.volts(reference));
        }
        if (!(targetMagnitude < stock())) {
            throw BadInput.of(
                    "circuit.target-not-below-stock",
                    place.sign().volts(targetMagnitude),
                    place.sign().volts(stock()));
        }
        return 1 / (legCurrent / (targetMagnitude - reference) - 1 / leg);
    }

    /** Change of the output for one more ohm added, x·R²/(R+Radded)², volts per ohm; 0 with nothing added. */
    public double sensitivity(double added) {
        notNegative(added);
        double share = leg / (leg + added);
        return legCurrent * share * share;
    }

    private static void positive(double value, Unit unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw BadInput.of("circuit.not-positive", Display.of(value, unit));
        }
    }

    private static void notNegative(double ohms) {
        if (!(ohms >= 0)) {
            throw BadInput.of("circuit.ohms-negative", Display.ohms(ohms));
        }
    }
}
