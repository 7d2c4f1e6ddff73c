package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Leg;
import railtrim.circuit.Place;
import railtrim.procedure.Figures;
import railtrim.procedure.State;

/**
 * What the drawing of the divider shows; only what is known.
 *
 * @param rail volts at the output, signed
 * @param railIs what that voltage is
 * @param reference volts, magnitude
 * @param clips whether the spots are held by clips
 * @param solder whether the ends of the added part are to be soldered now
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
        boolean solder) {
    enum RailIs {
        NOW,
        STOCK,
        OFF
    }

    static DividerData of(State state) {
        Figures figures = state.figures();
        boolean on = state.power() == State.Power.ON && figures.now().isPresent();
        boolean dead = !on && figures.stock().isEmpty();
        RailIs is = on ? RailIs.NOW : dead ? RailIs.OFF : RailIs.STOCK;
        OptionalDouble magnitude = on ? figures.now() : dead ? OptionalDouble.empty() : figures.stock();
        boolean negative = figures.place().filter(Place::negative).isPresent();
        OptionalDouble signed = magnitude.isPresent()
                ? OptionalDouble.of(negative ? -magnitude.getAsDouble() : magnitude.getAsDouble())
                : figures.rail();
        Leg lowering = figures.place().map(Place::loweringLeg).orElse(Leg.LOWER);
        OptionalDouble leg = figures.readLeg();
        OptionalDouble other = figures.readOther();
        Touch touch = Touch.of(state);
        return new DividerData(
                figures.place(),
                signed,
                is,
                figures.reference(),
                lowering == Leg.UPPER ? leg : other,
                lowering == Leg.UPPER ? other : leg,
                Added.of(state),
                touch.spots(),
                touch.clips(),
                touch.solder());
    }

    OptionalDouble of(Leg leg) {
        return leg == Leg.UPPER ? upper : lower;
    }

    boolean negative() {
        return place.filter(Place::negative).isPresent();
    }
}
