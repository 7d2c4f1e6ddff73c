package railtrim.parts;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
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
     * A trimmer, or a coarse and a fine one in series: the coarse one comes down, the fine one sets the last millivolts.
     *
     * @param nominal of the trimmer, or of the coarse one, ohms
     * @param fine of the fine one in series with it, ohms; 0 where there is none
     * @param turns of the screw, the same for both
     * @param start voltage with the nominal maximum
     * @param startWorst voltage with the maximum at the low end of its tolerance
     * @param lowestBare voltage with the wiper at the end of travel and no stop resistor
     * @param lowest voltage at the end of travel with the stop resistor
     * @param stopResistor preferred E24 value in series, ohms, 0 where none is needed
     * @param millivoltsPerTurnStart at the start of travel; {@code ...Lowest} at the lowest wished voltage; of the fine one where there is one
     * @param endCurrent through the wiper at the end of travel with the stop resistor, amperes; {@code endPower} in what is left of the trimmer and the
     *     stop together, watts
     */
    public record Candidate(
            double nominal,
            double fine,
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

        public boolean pair() {
            return fine > 0;
        }

        /** Ohms of everything that can be turned. */
        public double total() {
            return nominal + fine;
        }

        /** Millivolts for one turn of the coarse screw at the lowest wished voltage; the same as {@link #millivoltsPerTurnLowest} for a single one. */
        public double coarseMillivoltsPerTurnLowest() {
            return pair() ? millivoltsPerTurnLowest * nominal / fine : millivoltsPerTurnLowest;
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

    /**
     * A fine trimmer spans at least so many finest moves of the coarse one, our own choice: a quarter of a turn is easy to stop within, and
     * leaves no gap between the places where the coarse one can be left.
     */
    static final int FINE_SPAN = 5;

    /** With fewer turns the fine one would have to be nearly as large as the coarse one. */
    static final int LEAST_TURNS_OF_A_PAIR = 5;

    /** What is left at the end of travel: 1 % of the value or 2 Ω, whichever is more (Bourns 3296 and 3362). */
    static double endResistance(double nominal) {
        return Math.max(0.01 * nominal, 2);
    }

    /** The stop resistor is a 1 % part. */
    static final double STOP_TOLERANCE = 0.01;

    /** An end of travel that cuts off more than this part of the way down is worth a word, our own choice. */
    static final double SHORTENED = 0.1;

    /** No current through the wiper above √(P/R), amperes: makers give no figure of their own, so the track's rating is taken. */
    public static double wiperLimit(double nominal) {
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
     * Best first: every maker's value (1-2-5 and 1-2-2.5-5 steps, 10 Ω to 1 MΩ) by number of turns, and for several turns each value also with
     * the smallest fine trimmer in series that leaves no gap; good before usable, a good single one before a good pair, and among them the one
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
                .flatMap(nominal -> wish.turns().stream()
                        .distinct()
                        .flatMap(turns -> Stream.concat(
                                Stream.of(check.candidate(nominal, 0, turns)),
                                fineFor(nominal, turns, wish.tolerance()).stream()
                                        .mapToObj(fine -> check.candidate(nominal, fine, turns)))))
                .sorted(BEST_FIRST)
                .toList();
    }

    /** The same for trimmers of several tolerances, in one list. @param tolerances fractions, used instead of that of the wish */
    public static List<Candidate> rank(Circuit circuit, Wish wish, List<Double> tolerances) {
        return tolerances.stream()
                .distinct()
                .map(tolerance -> new Wish(wish.startDrop(), wish.lowest(), tolerance, wish.turns()))
                .flatMap(each -> rank(circuit, each).stream())
                .sorted(BEST_FIRST)
                .toList();
    }

    private static final Comparator<Candidate> BEST_FIRST = Comparator.comparing(Candidate::verdict)
            .thenComparing(each -> each.verdict() == Verdict.GOOD && each.pair())
            .thenComparingDouble(Candidate::millivoltsPerTurnLowest)
            .thenComparingDouble(Candidate::nominal)
            .thenComparingDouble(Candidate::tolerance);

    /**
     * The smallest maker's value that, at the low end of its tolerance, spans {@link #FINE_SPAN} finest moves of the coarse one at the high end
     * of its own; empty for too few turns, or where the smallest value made would be no finer.
     */
    static OptionalDouble fineFor(double coarse, int turns, double tolerance) {
        if (turns < LEAST_TURNS_OF_A_PAIR || tolerance >= 1) {
            return OptionalDouble.empty();
        }
        double span = FINE_SPAN * FINEST_MOVE * coarse * (1 + tolerance) / turns;
        return makersValues().stream()
                .mapToDouble(Double::doubleValue)
                .filter(fine -> fine * (1 - tolerance) >= span && fine < coarse)
                .findFirst();
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
