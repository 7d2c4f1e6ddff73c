package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import railtrim.procedure.Figures;
import railtrim.procedure.MeterRows;
import railtrim.quantity.Meter;
import railtrim.quantity.RangeRow;
import railtrim.quantity.Unit;

/**
 * The rows of the accuracy table that were copied, as they were understood; the largest that was not needed are left out.
 *
 * @param volts rows in volts; {@code ohms} in ohms; each its range, last digit and accuracy
 */
record RangesData(List<List<String>> volts, List<List<String>> ohms) {
    static RangesData of(Figures figures) {
        return new RangesData(rows(figures, MeterRows.VOLTS, Unit.VOLT), rows(figures, MeterRows.OHMS, Unit.OHM));
    }

    private static List<List<String>> rows(Figures figures, List<String> fields, Unit unit) {
        return fields.stream()
                .map(field -> MeterRows.row(figures, field))
                .flatMap(Optional::stream)
                .map(range -> cells(range, unit))
                .toList();
    }

    private static List<String> cells(Meter.Range range, Unit unit) {
        return Stream.of(RangeRow.written(range, unit).split(", ")).toList();
    }
}
