package railtrim.procedure;

import static railtrim.procedure.Figures.anyEmpty;
import static railtrim.procedure.Figures.attempt;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import railtrim.job.Entry;
import railtrim.parts.Trimmers;

/** Which trimmer suits, how the one in hand does, and what is across the leg now. */
final class TrimmerFigures {
    private static final double START_TOLERANCE = 0.10;
    private static final Set<String> SETTINGS = Set.of("down.volts", "set.volts");
    static final Set<String> AT_MAXIMUM = Set.of("smooth.total", "down.max", "set.max");

    private final Figures figures;
    private final Recall recall;

    TrimmerFigures(Figures figures, Recall recall) {
        this.figures = figures;
        this.recall = recall;
    }

    private Optional<Trimmers.Wish> trimmerWish() {
        if (anyEmpty(figures.floor(), figures.number("aim.drop"))) {
            return Optional.empty();
        }
        return Optional.of(new Trimmers.Wish(
                figures.number("aim.drop").getAsDouble() / 100,
                figures.floor().getAsDouble(),
                START_TOLERANCE,
                List.of(25, 12, 1)));
    }

    List<Trimmers.Candidate> trimmers() {
        return figures.memo(
                "trimmers",
                () -> figures.worstCircuit()
                        .flatMap(circuit -> trimmerWish()
                                .flatMap(wish -> attempt(() -> recall.once(
                                        List.of("trimmers", circuit, wish), () -> Trimmers.rank(circuit, wish)))))
                        .orElse(List.of()));
    }

    Optional<Trimmers.Candidate> trimmerPicked() {
        return figures.choice("trimmer.pick")
                .flatMap(id -> trimmers().stream()
                        .filter(candidate -> Choices.trimmerId(candidate).equals(id))
                        .findFirst());
    }

    Optional<Trimmers.InHand> trimmerInHand() {
        return figures.memo("trimmerInHand", () -> {
            OptionalDouble maximum = figures.ohms("trimmer.max");
            OptionalDouble minimum = figures.ohms("trimmer.min");
            if (anyEmpty(maximum, minimum)
                    || figures.worstCircuit().isEmpty()
                    || trimmerWish().isEmpty()) {
                return Optional.empty();
            }
            double most = maximum.getAsDouble();
            double least = minimum.getAsDouble();
            return attempt(() -> Trimmers.judge(
                    figures.worstCircuit().get(),
                    trimmerWish().get(),
                    most,
                    figures.ohmUncertainty(most),
                    least,
                    figures.ohmUncertainty(least)));
        });
    }

    OptionalDouble start() {
        OptionalDouble read = figures.magnitude("first.loaded");
        if (read.isPresent()) {
            return read;
        }
        OptionalDouble maximum = figures.ohms("trimmer.max");
        return maximum.isPresent() && figures.circuit().isPresent()
                ? OptionalDouble.of(figures.circuit().get().magnitude(maximum.getAsDouble()))
                : OptionalDouble.empty();
    }

    OptionalDouble addedNow() {
        if (figures.chose("fit.left", "resistor-only")) {
            return figures.ohms("hand.ohms");
        }
        if (figures.ohms("setting.trimmer").isPresent()) {
            return figures.ohms("setting.trimmer");
        }
        if (figures.choice("solder.pair").isPresent()) {
            return trimmerTurned() ? OptionalDouble.empty() : figures.ohms("trimmer.max");
        }
        return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }

    /** Whether the trimmer was set to a voltage after it was last proven at its maximum. */
    private boolean trimmerTurned() {
        List<Entry> entries = figures.job().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            String field = Figures.fieldOf(entries.get(i).fact()).orElse("");
            if (SETTINGS.contains(field)) {
                return true;
            }
            if (AT_MAXIMUM.contains(field)) {
                return false;
            }
        }
        return false;
    }
}
