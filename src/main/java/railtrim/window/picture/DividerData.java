package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.circuit.Leg;
import railtrim.circuit.Place;
import railtrim.procedure.Figures;
import railtrim.procedure.Phase;
import railtrim.procedure.State;

/**
 * What the drawing of the divider shows; only what is known.
 *
 * @param rail volts at the output, signed
 * @param railIs what that voltage is
 * @param reference volts, magnitude
 * @param clips whether the spots are held by clips
 * @param solder whether the ends of the added part are to be soldered now
 * @param flows whether the board is on, so that a current flows down the divider
 * @param current amperes through the leg that lowers and what is across it; empty where not known
 * @param upper ohms of the resistor nearer the output, as read; {@code lower} likewise nearer ground
 */
record DividerData(
        Optional<Place> place,
        OptionalDouble rail,
        RailIs railIs,
        OptionalDouble reference,
        OptionalDouble upper,
        OptionalDouble lower,
        Optional<Added> added,
        List<Spot> spots,
        boolean clips,
        boolean solder,
        boolean flows,
        OptionalDouble current) {
    enum RailIs {
        NOW,
        STOCK,
        OFF
    }

    static DividerData of(State state) {
        Figures figures = state.figures();
        RailIs is = railIs(state);
        OptionalDouble rail = switch (is) {
            case NOW -> figures.sign().shown(figures.now());
            case STOCK -> figures.sign().shown(figures.stock());
            case OFF -> state.figures().rail();
        };
        Leg lowering = figures.place().map(Place::loweringLeg).orElse(Leg.LOWER);
        OptionalDouble leg = FirstReadings.of(state).unless("leg.ohms", figures.readLeg());
        OptionalDouble other = figures.readOther();
        Touch touch = Touch.of(state);
        return new DividerData(
                figures.place(),
                rail,
                is,
                figures.reference(),
                lowering == Leg.UPPER ? leg : other,
                lowering == Leg.UPPER ? other : leg,
                Added.of(state),
                touch.spots(),
                touch.clips(),
                touch.solder(),
                state.power() == State.Power.ON,
                figures.circuit().stream().mapToDouble(Circuit::legCurrent).findFirst());
    }

    /** With the part fitted, the stock voltage is no longer what the output would show. */
    private static RailIs railIs(State state) {
        if (state.power() == State.Power.ON
                && LadderData.readSinceOn(state.figures().now())) {
            return RailIs.NOW;
        }
        boolean asItWas = state.current().step().phase().compareTo(Phase.WIRE) < 0;
        return asItWas && state.figures().stock().isPresent() ? RailIs.STOCK : RailIs.OFF;
    }

    OptionalDouble of(Leg leg) {
        return leg == Leg.UPPER ? upper : lower;
    }

    boolean negative() {
        return place.filter(Place::negative).isPresent();
    }
}
