package railtrim.parts;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
    public record Wish(double startDrop, double lowest, double tolerance, List<Integer> turns) {
        public Wish {
            turns = List.copyOf(turns);
        }
    }

    /**
     * @param start voltage with the nominal maximum
     * @param startWorst voltage with the maximum at the low end of its tolerance
     * @param lowestBare voltage with the wiper at the end of travel and no stop resistor
     * @param lowest voltage at the end of travel with the stop resistor
     * @param stopResistor preferred E24 value in series, ohms, 0 where none is needed
     * @param millivoltsPerTurnStart at the start of travel; {@code ...Lowest} at the lowest wished voltage
     * @param endCurrent through the wiper at the end of travel with the stop resistor, amperes; {@code endPower} in what is left of the trimmer and the
     *     stop together, watts
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
            List<Message> reasons) {
        public Candidate {
            reasons = List.copyOf(reasons);
        }
    }

    /** Power a cermet trimmer takes at 70 °C, watts (Bourns 3296 and 3362, Vishay T93: 0.5 W). */
    static final double RATED_POWER = 0.5;

    /**
     * More than this for one turn of the screw is coarse, millivolts. Our own choice: a twentieth of a turn is then about
     * one millivolt, the last digit of a common meter.
     */
    static final double COARSE_MILLIVOLTS_PER_TURN = 25;

    /** The part of a turn a steady hand can set on a screw, our own choice. */
    static final double FINEST_MOVE = 1.0 / 20;

    /** A finest move of more than this part of stock may jump past the point where the board fails, our own choice. */
    static final double JUMP = 0.01;

    /** What is left at the end of travel: 1 % of the value or 2 Ω, whichever is more (Bourns 3296 and 3362). */
    static double endResistance(double nominal) {
        return Math.max(0.01 * nominal, 2);
    }

    /** The stop resistor is a 1 % part. */
    static final double STOP_TOLERANCE = 0.01;

    /** An end of travel that cuts off more than this part of the way down is worth a word, our own choice. */
    static final double SHORTENED = 0.1;

    /** No current through the wiper above √(P/R), amperes: makers give no figure of their own, so the track's rating is taken. */
    static double wiperLimit(double nominal) {
        return Math.sqrt(RATED_POWER / nominal);
    }

    /**
     * Smallest maximum that still starts no lower than wished, ohms: R·(1 − p)/p with p the drop as a fraction of what lies above the reference,
     * to be met at the low end of the trimmer's tolerance.
     *
     * @throws railtrim.quantity.BadInput unless the start lies between reference and stock
     */
    static double leastMaximum(Circuit circuit, double startDrop) {
        return circuit.addedFor(circuit.stock() * (1 - startDrop));
    }

    /**
     * Best first: every maker's value (1-2-5 and 1-2-2.5-5 steps, 10 Ω to 1 MΩ) by number of turns; good before usable, and among them the one
     * that is finest at the lowest wished voltage; refused ones last.
     *
     * <p>Start voltages are for the trimmer alone; a stop resistor in series brings the start nearer to stock. The lowest voltages count the stop
     * resistor at the low end of its tolerance and nothing for the trimmer's end resistance.
     *
     * @throws railtrim.quantity.BadInput for a wish outside: reference &lt; lowest &lt; stock, start between reference and stock, tolerance from 0 to below
     *     1, turns 1 or more
     */
    public static List<Candidate> rank(Circuit circuit, Wish wish) {
        TrimmerCheck check = new TrimmerCheck(circuit, wish);
        return makersValues().stream()
                .flatMap(nominal -> wish.turns().stream().distinct().map(turns -> check.candidate(nominal, turns)))
                .sorted(Comparator.comparing(Candidate::verdict)
                        .thenComparingDouble(Candidate::millivoltsPerTurnLowest)
                        .thenComparingDouble(Candidate::nominal))
                .toList();
    }

    /** 10 Ω to 1 MΩ in 1-2-2.5-5 steps, which hold the 1-2-5 steps. */
    static List<Double> makersValues() {
        return Stream.concat(
                        IntStream.rangeClosed(1, 5)
                                .mapToObj(decade -> Math.pow(10, decade))
                                .flatMap(decade -> Stream.of(decade, 2 * decade, 2.5 * decade, 5 * decade)),
                        Stream.of(1e6))
                .toList();
    }

    /** The trimmer in hand: its own maximum and minimum (stop resistor included) as measured, with their standard uncertainties. */
    public record InHand(double start, double startWorst, double lowest, Verdict verdict, List<Message> reasons) {
        public InHand {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Refused where its start, with the reading's expanded uncertainty counted, lies further below stock than wished, or where its ends are the
     * wrong way round or no distance apart. Usable with a word of care where its other end goes below the lowest wished voltage or does not reach it.
     *
     * @param maximum ohms, more than 0; {@code minimum} 0 or more
     * @throws railtrim.quantity.BadInput as {@link #rank}, and for ends or uncertainties that are no resistance
     */
    public static InHand judge(
            Circuit circuit,
            Wish wish,
            double maximum,
            double maximumUncertainty,
            double minimum,
            double minimumUncertainty) {
        return new TrimmerCheck(circuit, wish).inHand(maximum, 2 * maximumUncertainty, minimum, 2 * minimumUncertainty);
    }

    /**
     * Smallest E24 stop resistor that keeps the voltage at or above {@code lowest} with the trimmer at zero and the resistor 1 % low, ohms; 0 where
     * the bare end of travel, which gives the reference, is not below.
     *
     * @throws railtrim.quantity.BadInput unless {@code lowest} is below stock
     */
    public static double stopResistor(Circuit circuit, double lowest) {
        if (lowest <= circuit.reference()) {
            return 0;
        }
        return Series.E24.near(circuit.addedFor(lowest) / (1 - STOP_TOLERANCE)).above();
    }
}
