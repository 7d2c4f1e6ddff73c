package railtrim.parts;

import java.util.List;
import railtrim.circuit.Circuit;
import railtrim.quantity.Message;

/** Chooses a trimmer: real values, worst-case start voltage, lowest reachable voltage, how fine it is, and the stop resistor in series. */
public final class Trimmers {
    private Trimmers() {}

    public enum Verdict {
        GOOD,
        USABLE,
        REFUSED
    }

    /**
     * @param startDrop the most the start may lie below stock, as a fraction of stock, e.g. 0.02
     * @param lowest magnitude the exploration shall not go below, volts
     * @param tolerance of the trimmer, fraction, e.g. 0.10
     */
    public record Wish(double startDrop, double lowest, double tolerance, List<Integer> turns) {}

    /**
     * @param start voltage with the nominal maximum
     * @param startWorst voltage with the maximum at the low end of its tolerance
     * @param lowestBare voltage with the wiper at the end of travel and no stop resistor
     * @param lowest voltage at the end of travel with the stop resistor
     * @param stopResistor preferred E24 value in series, ohms, 0 where none is needed
     * @param millivoltsPerTurnStart at the start of travel; {@code ...Lowest} at the lowest wished voltage
     * @param endCurrent through the wiper at the end of travel with the stop resistor, amperes; {@code endPower} in the trimmer track and stop together, watts
     */
    public record Candidate(
            double nominal,
            int turns,
            double tolerance,
            double start,
            double startWorst,
            double lowestBare,
            double lowest,
            double stopResistor,
            double millivoltsPerTurnStart,
            double millivoltsPerTurnLowest,
            double endCurrent,
            double endPower,
            Verdict verdict,
            List<Message> reasons) {}

    /** Best first: every maker's value (1-2-5 and 1-2-2.5-5 steps, 10 Ω to 1 MΩ) by number of turns; refused ones last. */
    public static List<Candidate> rank(Circuit circuit, Wish wish) {
        throw new UnsupportedOperationException();
    }

    /** The trimmer in hand: its own maximum and minimum (stop resistor included) as measured, with their standard uncertainties. */
    public record InHand(double start, double startWorst, double lowest, Verdict verdict, List<Message> reasons) {}

    public static InHand judge(
            Circuit circuit,
            Wish wish,
            double maximum,
            double maximumUncertainty,
            double minimum,
            double minimumUncertainty) {
        throw new UnsupportedOperationException();
    }

    /** Smallest E24 stop resistor that keeps the voltage at or above {@code lowest} with the trimmer at zero, ohms. */
    public static double stopResistor(Circuit circuit, double lowest) {
        throw new UnsupportedOperationException();
    }
}
