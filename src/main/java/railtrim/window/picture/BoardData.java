package railtrim.window.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.State;

/**
 * The board as it lies on the bench.
 *
 * @param turn the power change this step asks for, or the card that makes the board safe: true for on, false for off, empty for none
 * @param rail volts at the regulator's output, as read last, empty where the board was switched on since
 */
record BoardData(
        State.Power power, Optional<Boolean> turn, Optional<String> board, Optional<String> chip, OptionalDouble rail) {
    static BoardData of(State state) {
        boolean madeSafe =
                state.card().filter(State.Card.MakeSafe.class::isInstance).isPresent();
        PowerNeed need = madeSafe ? PowerNeed.TO_OFF : state.current().step().power();
        Optional<Boolean> turn = switch (need) {
            case TO_ON -> state.power() == State.Power.ON ? Optional.empty() : Optional.of(true);
            case TO_OFF -> state.power() == State.Power.OFF ? Optional.empty() : Optional.of(false);
            default -> Optional.empty();
        };
        return new BoardData(
                state.power(),
                turn,
                state.figures().text("board.name"),
                state.figures().text("chip.name"),
                state.figures().rail());
    }
}
