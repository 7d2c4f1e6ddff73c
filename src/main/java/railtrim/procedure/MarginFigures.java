package railtrim.procedure;

import static railtrim.procedure.Figures.attempt;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.quantity.Accuracy;
import railtrim.threshold.FailVoltage;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.Trial;
import railtrim.threshold.Tried;

/** The way down, where it fails, and how far to stay away. */
final class MarginFigures {
    private static final double CONFIDENCE = 0.95;
    private static final double COVERAGE = 0.99;

    private final Figures figures;
    private final Recall recall;

    MarginFigures(Figures figures, Recall recall) {
        this.figures = figures;
        this.recall = recall;
    }

    OptionalDouble now() {
        if (figures.power() != State.Power.ON) {
            return OptionalDouble.empty();
        }
        List<Entry> entries = figures.job().entries();
        for (int i = entries.size() - 1; i >= 0 && !(entries.get(i).fact() instanceof Fact.Power); i--) {
            if (entries.get(i).fact() instanceof Fact.Reading reading
                    && RailFields.isRail(reading.field())
                    && !RailFields.isDead(reading.field())) {
                return OptionalDouble.of(Math.abs(reading.value()));
            }
        }
        return OptionalDouble.empty();
    }

    OptionalDouble rail() {
        List<Entry> entries = figures.job().entries();
        for (int i = entries.size() - 1; i >= 0 && !switchedOn(entries.get(i)); i--) {
            if (entries.get(i).fact() instanceof Fact.Reading reading && RailFields.isRail(reading.field())) {
                return OptionalDouble.of(reading.value());
            }
        }
        return OptionalDouble.empty();
    }

    private static boolean switchedOn(Entry entry) {
        return entry.fact() instanceof Fact.Power change && change.on();
    }

    double stepVolts() {
        double stock = figures.stock().orElse(0);
        double least = Math.max(0.01 * stock, 2 * figures.voltResolution(stock));
        return Math.max(0.005, Math.round(least / 0.005) * 0.005);
    }

    /** In whole counts, for what is less than a count apart no meter tells apart. */
    double fineStepVolts() {
        double stock = figures.stock().orElse(0);
        double count = figures.voltResolution(stock);
        return Math.min(stepVolts(), Math.max(2, Math.round(0.003 * stock / count)) * count);
    }

    Optional<FailVoltage> failVoltage() {
        return figures.memo(
                "fail",
                () -> figures.trials().isEmpty()
                        ? Optional.empty()
                        : recall.once(
                                List.of("fail", figures.trials()),
                                () -> attempt(() -> FailVoltage.of(figures.trials()))));
    }

    Optional<MarginBudget> budget() {
        return figures.memo(
                "budget",
                () -> budgetGiven()
                        .flatMap(given ->
                                recall.once(List.of("budget", given), () -> attempt(() -> MarginBudget.of(given)))));
    }

    private Optional<MarginBudget.Given> budgetGiven() {
        // Where the ranges were copied from the meter's manual, any reading can tell of another one.
        return figures.stock().isEmpty() || MeterRows.chosen(figures)
                ? workedOut()
                : recall.once(
                        List.of(
                                "given",
                                figures.trials(),
                                figures.stock().getAsDouble(),
                                stepVolts(),
                                figures.meter(),
                                figures.sign()),
                        this::workedOut);
    }

    private Optional<MarginBudget.Given> workedOut() {
        return failVoltage()
                .flatMap(fail -> attempt(() -> new MarginBudget.Given(
                                fail,
                                figures.stock().orElseThrow(),
                                stepVolts(),
                                figures.voltUncertainty(fail.fail()),
                                true,
                                Tried.of(figures.trials(), fail),
                                CONFIDENCE,
                                COVERAGE,
                                figures.sign())
                        .readOn(this::range)));
    }

    /** A person who kept a larger range on the way down keeps it for the setting, too: what is in both readings cancels. */
    private Accuracy range(double volts) {
        return figures.trials().stream()
                .map(Trial::volts)
                .filter(read ->
                        !figures.voltAccuracy(read).equals(figures.meter().voltsAt(read)))
                .map(figures::voltAccuracy)
                .max(Comparator.comparingDouble(Accuracy::resolution))
                .filter(kept -> kept.resolution() > figures.voltResolution(volts))
                .orElseGet(() -> figures.voltAccuracy(volts));
    }

    Optional<NextRun> nextRun() {
        return figures.memo(
                "nextRun",
                () -> budgetGiven()
                        .flatMap(given -> recall.once(
                                List.of("nextRun", given),
                                () -> attempt(() -> NextRun.after(given)).flatMap(next -> next))));
    }
}
