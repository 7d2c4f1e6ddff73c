package railtrim.window.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.parts.Resistors;
import railtrim.parts.Trimmers;
import railtrim.procedure.Figures;
import railtrim.procedure.Phase;
import railtrim.procedure.State;

/**
 * The part across the lowering leg.
 *
 * @param ohms of the part alone, without the stop resistor; empty where not known
 * @param stop ohms of the stop resistor in series with a trimmer, empty for none
 * @param lifted one lead is to be lifted in this step
 */
record Added(Kind kind, OptionalDouble ohms, OptionalDouble stop, boolean lifted) {
    enum Kind {
        /** Not there yet: only where it will go. */
        PLANNED,
        TRIMMER,
        RESISTOR
    }

    /** Planned once the leg is named, a trimmer from the soldering on, a fixed resistor from the fitting on. */
    static Optional<Added> of(State state) {
        Figures figures = state.figures();
        Phase phase = state.current().step().phase();
        if (phase.compareTo(Phase.FIT) >= 0) {
            return Optional.of(new Added(Kind.RESISTOR, resistor(figures), OptionalDouble.empty(), false));
        }
        if (phase.compareTo(Phase.WIRE) >= 0) {
            OptionalDouble stop = stop(figures);
            OptionalDouble both = FirstReadings.of(state).unless("setting.trimmer", setting(figures, phase));
            OptionalDouble alone = both.isPresent() && stop.isPresent()
                    ? OptionalDouble.of(Math.max(0, both.getAsDouble() - stop.getAsDouble()))
                    : both;
            return Optional.of(
                    new Added(Kind.TRIMMER, alone, stop, Touch.of(state).lift()));
        }
        return figures.choice("place.leg")
                .map(leg -> new Added(Kind.PLANNED, OptionalDouble.empty(), OptionalDouble.empty(), false));
    }

    /** Turned down by eye of the voltage, its ohms are not known until they are measured. */
    private static OptionalDouble setting(Figures figures, Phase phase) {
        return phase.compareTo(Phase.BACK_OFF) >= 0 ? figures.ohms("setting.trimmer") : finite(figures.addedNow());
    }

    private static OptionalDouble resistor(Figures figures) {
        return figures.ohms("hand.ohms").isPresent()
                ? figures.ohms("hand.ohms")
                : figures.chosen().stream()
                        .mapToDouble(Resistors.Candidate::added)
                        .findFirst();
    }

    /** The stop resistor in series with the trimmer, where the person said it is fitted. */
    static OptionalDouble stop(Figures figures) {
        boolean fitted = figures.choice("trimmer.stop").filter("fitted"::equals).isPresent();
        return figures.trimmerPicked().stream()
                .filter(each -> fitted && each.stopResistor() > 0)
                .mapToDouble(Trimmers.Candidate::stopResistor)
                .findFirst();
    }

    private static OptionalDouble finite(OptionalDouble ohms) {
        return ohms.isPresent() && Double.isFinite(ohms.getAsDouble()) ? ohms : OptionalDouble.empty();
    }
}
