package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.parts.Bands;
import railtrim.parts.Resistors;
import railtrim.procedure.Figures;
import railtrim.quantity.RailSign;

/**
 * The best few resistors that can be bought, with what the output comes to at worst; magnitudes in volts.
 *
 * @param atLeast what no corner of the tolerance may fall below
 * @param exact ohms that would give the target exactly
 * @param sign how the meter shows the voltages
 */
record ResistorsData(
        List<Row> rows, OptionalDouble target, OptionalDouble atLeast, OptionalDouble exact, RailSign sign) {
    /** As many as the picture has room for. */
    static final int MOST = 4;

    ResistorsData {
        rows = List.copyOf(rows);
    }

    /**
     * @param values ohms of one part or two
     * @param bands of each part; empty where a value cannot be written in bands
     */
    record Row(
            List<Double> values,
            Resistors.Arrangement arrangement,
            List<List<Bands.Colour>> bands,
            double voltage,
            double lowest,
            double highest,
            boolean picked) {}

    Optional<Row> picked() {
        return rows.stream().filter(Row::picked).findFirst();
    }

    static ResistorsData of(Figures figures) {
        double tolerance = figures.tolerance().orElse(0.01);
        Optional<Resistors.Candidate> chosen = figures.chosen();
        List<Row> rows = new ArrayList<>();
        chosen.ifPresent(each -> rows.add(row(each, tolerance, true)));
        for (Resistors.Candidate candidate : figures.resistors()) {
            if (rows.size() < MOST && !chosen.equals(Optional.of(candidate))) {
                rows.add(row(candidate, tolerance, false));
            }
        }
        OptionalDouble wished =
                figures.number("soak.volts").isPresent() ? figures.magnitude("soak.volts") : figures.target();
        return new ResistorsData(
                rows, wished, figures.resistorFloor(), figures.ohms("setting.trimmer"), figures.sign());
    }

    private static Row row(Resistors.Candidate candidate, double tolerance, boolean picked) {
        return new Row(
                candidate.values(),
                candidate.arrangement(),
                candidate.values().stream()
                        .map(ohms -> Bands.of(ohms, tolerance))
                        .toList(),
                candidate.voltage(),
                candidate.lowest(),
                candidate.highest(),
                picked);
    }
}
