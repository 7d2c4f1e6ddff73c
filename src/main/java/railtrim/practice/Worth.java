package railtrim.practice;

import java.util.List;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.parts.Resistors;
import railtrim.parts.Series;
import railtrim.quantity.BadInput;
import railtrim.threshold.MarginBudget;

/**
 * What a job was worth: the power it saves at the chip, as a share of what a perfectly informed expert saves on the same board. The expert knows
 * the board's true circuit and its worst fail voltage, keeps the same allowance for ageing, and takes the best part of the same series.
 */
final class Worth {
    private Worth() {}

    /**
     * @param expert output under load with the part the expert fits, volts; empty where no part would save anything
     * @param share of the expert's saving, 0 to about 1; empty where there is none
     * @param margin what the job lost of it by aiming higher than the expert's part; {@code resistor} by the resistor it found for its aim, less
     *     than 0 where that came out lower. With {@code share} they make 1
     */
    record Figure(OptionalDouble expert, OptionalDouble share, OptionalDouble margin, OptionalDouble resistor) {
        static final Figure NONE = of(OptionalDouble.empty());

        static Figure of(OptionalDouble expert) {
            return new Figure(expert, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    /**
     * @param target what the job aimed at under load, volts
     * @param fitted true output under load with the job's own resistor, volts
     */
    static Figure of(Board board, double target, double fitted, Series series, double tolerance, int most) {
        OptionalDouble expert = expert(board, series, tolerance, most);
        double before = board.loadedWithAdded(Double.POSITIVE_INFINITY);
        if (expert.isEmpty() || expert.getAsDouble() >= before) {
            return Figure.of(expert);
        }
        double least = watts(board, expert.getAsDouble());
        double all = watts(board, before) - least;
        return new Figure(
                expert,
                OptionalDouble.of((watts(board, before) - watts(board, fitted)) / all),
                OptionalDouble.of((watts(board, target) - least) / all),
                OptionalDouble.of((watts(board, fitted) - watts(board, target)) / all));
    }

    static OptionalDouble expert(Board board, Series series, double tolerance, int most) {
        double floor = openFor(board, board.worstFail() + MarginBudget.AGEING_ALLOWANCE * board.stock());
        Board.Divider divider = board.divider();
        double reference = divider.reference().value();
        if (floor <= reference * 1.001 || floor >= board.stock() * 0.999) {
            return OptionalDouble.empty();
        }
        try {
            Circuit circuit = Circuit.fromStock(
                    divider.place(),
                    reference,
                    board.stock(),
                    divider.ohms(divider.place().loweringLeg()),
                    divider.bias());
            List<Resistors.Candidate> parts =
                    Resistors.choose(circuit, 0, new Resistors.Wish(floor, floor, tolerance, most), series);
            return parts.stream()
                    .mapToDouble(part -> board.loadedWithAdded(part.added()))
                    .min();
        } catch (BadInput impossible) {
            return OptionalDouble.empty();
        }
    }

    /** The output without load that sags to {@code loaded} under it, volts. */
    private static double openFor(Board board, double loaded) {
        double open = loaded;
        for (int i = 0; i < 20; i++) {
            open = loaded + board.divider().outputOhms() * board.amperes(open);
        }
        return open;
    }

    private static double watts(Board board, double volts) {
        return volts * board.amperes(volts);
    }
}
