package railtrim.procedure;

import static railtrim.procedure.Figures.anyEmpty;
import static railtrim.procedure.Figures.attempt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.circuit.Place;
import railtrim.heat.Heat;
import railtrim.parts.Resistors;
import railtrim.parts.Series;

/** The fixed resistor that takes the trimmer’s place, and where the heat goes then. */
final class ResistorFigures {
    /** A common film resistor of 100 ppm/K, 40 K warmer than when it was measured. */
    private static final double DRIFT = 100e-6 * 40;

    private final Figures figures;
    private final Recall recall;

    ResistorFigures(Figures figures, Recall recall) {
        this.figures = figures;
        this.recall = recall;
    }

    OptionalDouble resistorFloor() {
        if (figures.target().isEmpty() || figures.budget().isEmpty()) {
            return figures.target();
        }
        return OptionalDouble.of(
                Math.min(figures.target().getAsDouble(), figures.budget().get().recommended()));
    }

    /**
     * What the meter leaves open about the leg, ohms, expanded: the trimmer's setting and the resistor are read by the same meter, so its
     * relative error at the setting is all that stays.
     */
    private double legUncertainty(Circuit circuit) {
        double setting = figures.ohms("setting.trimmer").orElse(Double.NaN);
        return Double.isNaN(setting) ? 0 : 2 * circuit.leg() * figures.ohmUncertainty(setting) / setting;
    }

    /** Once the floor is known. */
    double resistorTarget() {
        return Math.max(
                figures.magnitude("soak.volts").orElse(figures.target().getAsDouble()),
                resistorFloor().getAsDouble());
    }

    List<Resistors.Candidate> resistors() {
        return figures.memo("resistors", () -> {
            Optional<Series> series = figures.choice("res.series").flatMap(id -> attempt(() -> Series.valueOf(id)));
            Optional<Double> tolerance = figures.tolerance();
            Optional<Integer> most = figures.choice("res.most").flatMap(count -> attempt(() -> Integer.valueOf(count)));
            if (series.isEmpty()
                    || tolerance.isEmpty()
                    || most.isEmpty()
                    || figures.circuit().isEmpty()
                    || resistorFloor().isEmpty()) {
                return List.of();
            }
            Resistors.Wish wish = new Resistors.Wish(
                    resistorTarget(), resistorFloor().getAsDouble(), tolerance.get(), most.get(), DRIFT);
            Circuit circuit = figures.circuit().get();
            double doubt = legUncertainty(circuit);
            return recall.once(
                    List.of("resistors", circuit, doubt, wish, series.get()),
                    () -> attempt(() -> Resistors.choose(circuit, doubt, wish, series.get()))
                            .orElse(List.of()));
        });
    }

    Optional<Resistors.Candidate> chosen() {
        return figures.choice("res.pick")
                .flatMap(id -> resistors().stream()
                        .filter(candidate -> Choices.resistorId(candidate).equals(id))
                        .findFirst());
    }

    OptionalDouble fitted() {
        return figures.magnitude("fit.loaded").isPresent()
                ? figures.magnitude("fit.loaded")
                : figures.magnitude("fit.volts");
    }

    Optional<Heat.Powers> powers(double leakage) {
        OptionalDouble after = fitted().isPresent() ? fitted() : figures.target();
        if (anyEmpty(figures.input(), figures.stock(), after)) {
            return Optional.empty();
        }
        return attempt(() -> {
            Heat.Powers powers = Heat.powers(
                    figures.input().getAsDouble(),
                    figures.stock().getAsDouble(),
                    after.getAsDouble(),
                    figures.number("load.current").orElse(Double.NaN),
                    leakage);
            return linear()
                    ? powers
                    : new Heat.Powers(
                            powers.loadBefore(), powers.loadAfter(), Double.NaN, Double.NaN, powers.relative(), false);
        });
    }

    boolean linear() {
        return figures.family()
                .filter(family -> family.place() == Place.OUT_ADJ
                        || family.place() == Place.NEGATIVE_OUT_ADJ
                        || !Double.isNaN(family.dropout()))
                .isPresent();
    }
}
