package railtrim.window.picture;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import railtrim.parts.Trimmers;
import railtrim.procedure.Figures;
import railtrim.procedure.State;
import railtrim.quantity.RailSign;

/**
 * The trimmer in hand, or the one picked while it is not measured yet.
 *
 * @param nominal ohms, of the coarse one where there are two; empty before one is picked; {@code turns} likewise
 * @param fine ohms of a fine trimmer in series; empty where there is none
 * @param most ohms at its maximum, stop resistor included; {@code least} at its minimum; as measured where that was done
 * @param highest volts at the output with the trimmer at its maximum; {@code lowest} at its minimum; magnitudes
 * @param probed the meter is at it now, on its two free ends
 * @param sign how the meter shows those
 */
record TrimmerData(
        OptionalDouble nominal,
        OptionalDouble fine,
        Optional<Integer> turns,
        OptionalDouble stop,
        OptionalDouble most,
        OptionalDouble least,
        OptionalDouble highest,
        OptionalDouble lowest,
        boolean measured,
        At at,
        boolean probed,
        RailSign sign) {
    enum At {
        UNKNOWN,
        MAXIMUM,
        BETWEEN,
        MINIMUM;

        /** Empty for what nobody was offered, as a job from elsewhere may say. */
        private static Optional<At> named(String option) {
            return Stream.of(values())
                    .filter(at -> at.name().toLowerCase(Locale.ROOT).equals(option))
                    .findFirst();
        }
    }

    private static final Set<String> PROBED = Set.of("trimmer.max", "trimmer.min", "trimmer.max.again");

    static TrimmerData of(State state) {
        Figures figures = state.figures();
        FirstReadings first = FirstReadings.of(state);
        Optional<Trimmers.Candidate> picked = figures.trimmerPicked();
        Optional<Trimmers.InHand> hand = figures.trimmerInHand();
        OptionalDouble stop = Added.stop(figures);
        OptionalDouble most = figures.ohms("trimmer.max");
        OptionalDouble least = figures.ohms("trimmer.min");
        double extra = stop.orElse(0);
        return new TrimmerData(
                value(picked, Trimmers.Candidate::nominal),
                value(picked.filter(Trimmers.Candidate::pair), Trimmers.Candidate::fine),
                picked.map(Trimmers.Candidate::turns),
                stop,
                first.unless("trimmer.max", most.isPresent() ? most : value(picked, each -> each.total() + extra)),
                least.isPresent() ? least : stop,
                first.unless(
                        "trimmer.max",
                        hand.isPresent()
                                ? value(hand, Trimmers.InHand::start)
                                : value(picked, Trimmers.Candidate::start)),
                hand.isPresent()
                        ? value(hand, Trimmers.InHand::lowest)
                        : value(picked, each -> stop.isPresent() ? each.lowest() : each.lowestBare()),
                most.isPresent(),
                figures.choice("trimmer.at").flatMap(At::named).orElse(At.UNKNOWN),
                state.current().missing().stream().anyMatch(PROBED::contains),
                figures.sign());
    }

    private static <T> OptionalDouble value(Optional<T> from, ToDoubleFunction<T> part) {
        return from.stream().mapToDouble(part).findFirst();
    }
}
