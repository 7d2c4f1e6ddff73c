package railtrim.practice;

import java.util.function.DoubleUnaryOperator;

/**
 * What a part or a blob of solder does that leads to the input or to the control supply, where nothing of the user's belongs: it pulls at the adjust
 * pin, feeds the output past the regulator, shorts a supply, or joins both. The supplies count as stiff; only the input gives way, as its board
 * says.
 */
final class Strays {
    /** A short of less than this takes a supply down. Ohms. */
    private static final double CRUSHED = 0.5;

    private static final int HALVINGS = 50;

    private final Board.Divider board;
    private final Wiring wiring;

    Strays(Board.Divider divider, Wiring wiring) {
        this.board = divider;
        this.wiring = wiring;
    }

    /** Whether there are any: asked thousands of times while a trimmer turns. */
    boolean any() {
        return wiring.reaches(Node.INPUT) || wiring.reaches(Node.CONTROL);
    }

    /**
     * The board's divider behind the input as it is now: joined to the stiff control supply, an input that gives way goes where the two of them
     * bring it (Thévenin), and gives way less.
     */
    Board.Divider divider() {
        double ohms = any() ? across(Node.INPUT, Node.CONTROL) : Double.POSITIVE_INFINITY;
        if (Double.isInfinite(ohms) || board.controlSupply().isEmpty()) {
            return board;
        }
        double gives = board.inputOhms();
        double share = gives / (gives + ohms);
        double apart = board.controlSupply().getAsDouble() - board.input();
        return board.behind(board.input() + share * apart, gives * (1 - share));
    }

    Pull pull() {
        return any()
                ? Pull.NONE
                        .and(volts(Node.INPUT), across(Node.INPUT, Node.ADJUST))
                        .and(volts(Node.CONTROL), across(Node.CONTROL, Node.ADJUST))
                : Pull.NONE;
    }

    /** A supply that something holds at ground: the regulator gives nothing. */
    boolean starved() {
        return shorted(Node.INPUT) || board.controlSupply().isPresent() && shorted(Node.CONTROL);
    }

    private boolean shorted(Node supply) {
        return across(supply, Node.GROUND) < CRUSHED;
    }

    private double across(Node one, Node other) {
        return wiring.across(new Node.Pair(one, other));
    }

    /** Volts of a supply with all that hangs on it. */
    double supply(Node supply) {
        return shorted(supply) ? 0 : volts(supply);
    }

    /** Volts of a supply while it is on. */
    private double volts(Node supply) {
        double input = divider().input();
        return supply == Node.CONTROL ? board.controlSupply().orElse(input) : input;
    }

    /**
     * The output where current also comes past the regulator: a regulator can give, not take, so it ends where the chip draws what comes.
     *
     * @param held volts the regulator holds, the least there is; @param amperes the chip draws at a voltage
     */
    double fed(double held, DoubleUnaryOperator amperes) {
        double low = held;
        double high = Math.max(held, Math.max(volts(Node.INPUT), volts(Node.CONTROL)));
        if (comes(low) <= amperes.applyAsDouble(low)) {
            return held;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (comes(middle) > amperes.applyAsDouble(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Amperes into an output of so many volts. */
    private double comes(double output) {
        return (volts(Node.INPUT) - output) / across(Node.INPUT, Node.OUTPUT)
                + (volts(Node.CONTROL) - output) / across(Node.CONTROL, Node.OUTPUT);
    }
}
