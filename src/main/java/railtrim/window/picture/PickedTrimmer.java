package railtrim.window.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.parts.Trimmers;
import railtrim.procedure.Figures;

/** The trimmer the person picked from the list, by its id {@code "<ohms>x<turns>"}. */
final class PickedTrimmer {
    private PickedTrimmer() {}

    static Optional<Trimmers.Candidate> of(Figures figures) {
        return figures.choice("trimmer.pick")
                .flatMap(id -> figures.trimmers().stream()
                        .filter(each -> id.equals(Math.round(each.nominal()) + "x" + each.turns()))
                        .findFirst());
    }

    /** The stop resistor in series, where the person said it is fitted. */
    static OptionalDouble stop(Figures figures) {
        boolean fitted = figures.choice("trimmer.stop").filter("fitted"::equals).isPresent();
        return of(figures).stream()
                .filter(each -> fitted && each.stopResistor() > 0)
                .mapToDouble(Trimmers.Candidate::stopResistor)
                .findFirst();
    }
}
