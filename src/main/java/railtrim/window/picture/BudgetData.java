package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.procedure.Figures;
import railtrim.quantity.RailSign;
import railtrim.threshold.MarginBudget;

/**
 * How far to stay away from the fault, piled up from it.
 *
 * @param fail where counting starts, volts
 * @param faultSeen false where the lowest voltage tried was still good
 * @param sign how the meter shows the voltages
 * @param pieces bottom first; those of no size left out
 */
record BudgetData(
        double fail,
        boolean faultSeen,
        List<Piece> pieces,
        double recommended,
        OptionalDouble target,
        OptionalDouble stock,
        RailSign sign) {
    BudgetData {
        pieces = List.copyOf(pieces);
    }

    /** @param id of the line of the budget; {@code measured} or an allowance */
    record Piece(String id, double volts, boolean measured) {}

    /** Empty as long as there is no budget. */
    static Optional<BudgetData> of(Figures figures) {
        return figures.budget()
                .map(budget -> new BudgetData(
                        budget.fail(),
                        figures.failVoltage().filter(fail -> fail.faultSeen()).isPresent(),
                        pieces(budget),
                        budget.recommended(),
                        figures.target(),
                        figures.stock(),
                        figures.sign()));
    }

    private static List<Piece> pieces(MarginBudget budget) {
        return budget.lines().stream()
                .filter(line -> line.volts() > 0)
                .map(line -> new Piece(line.id(), line.volts(), line.measured()))
                .toList();
    }
}
