package railtrim.window.picture;

import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.procedure.Figures;
import railtrim.procedure.Phase;
import railtrim.procedure.State;
import railtrim.procedure.Step;

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
        Step step = state.current().step();
        if (step.phase().compareTo(Phase.FIT) >= 0) {
            OptionalDouble ohms = figures.chosen().isPresent()
                    ? OptionalDouble.of(figures.chosen().get().added())
                    : OptionalDouble.empty();
            return Optional.of(new Added(Kind.RESISTOR, ohms, OptionalDouble.empty(), false));
        }
        if (step.phase().compareTo(Phase.WIRE) >= 0) {
            OptionalDouble stop = PickedTrimmer.stop(figures);
            OptionalDouble ohms = finite(figures.addedNow());
            OptionalDouble alone = ohms.isPresent() && stop.isPresent()
                    ? OptionalDouble.of(Math.max(0, ohms.getAsDouble() - stop.getAsDouble()))
                    : ohms;
            return Optional.of(new Added(Kind.TRIMMER, alone, stop, Spot.lift(step.spots())));
        }
        return figures.choice("place.leg")
                .map(leg -> new Added(Kind.PLANNED, OptionalDouble.empty(), OptionalDouble.empty(), false));
    }

    private static OptionalDouble finite(OptionalDouble ohms) {
        return ohms.isPresent() && Double.isFinite(ohms.getAsDouble()) ? ohms : OptionalDouble.empty();
    }
}
