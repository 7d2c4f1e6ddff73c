package railtrim.window.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import railtrim.procedure.Figures;
import railtrim.quantity.RailSign;

/**
 * The voltages that matter, all as magnitudes in volts; only those that are known.
 *
 * @param ratedLow lowest voltage the chip's maker allows, empty where not known; {@code ratedHigh} likewise
 * @param sign how the meter shows them
 */
record LadderData(List<Rung> rungs, OptionalDouble ratedLow, OptionalDouble ratedHigh, RailSign sign) {
    /** Below this a rail counts as dead, volts. */
    private static final double DEAD = 0.1;

    enum Kind {
        STOCK,
        START,
        NOW,
        LAST_GOOD,
        NEXT,
        FAULT,
        TARGET,
        FITTED,
        FLOOR,
        REFERENCE
    }

    record Rung(Kind kind, double volts) {}

    LadderData {
        rungs = List.copyOf(rungs);
    }

    static LadderData of(Figures figures) {
        List<Rung> rungs = new ArrayList<>();
        add(rungs, Kind.STOCK, figures.stock());
        add(rungs, Kind.START, figures.start());
        if (readSinceOn(figures.now())) {
            add(rungs, Kind.NOW, figures.now());
        }
        add(rungs, Kind.LAST_GOOD, figures.goodToShow());
        add(rungs, Kind.NEXT, figures.nextTarget());
        add(rungs, Kind.FAULT, figures.fault());
        add(rungs, Kind.TARGET, figures.target());
        add(rungs, Kind.FITTED, figures.fitted());
        add(rungs, Kind.FLOOR, figures.floor());
        add(rungs, Kind.REFERENCE, figures.reference());
        return new LadderData(rungs, figures.ratedLow(), figures.ratedHigh(), figures.sign());
    }

    /** A dead rail's reading, just before the power came on, says nothing of the output now. */
    static boolean readSinceOn(OptionalDouble now) {
        return now.isPresent() && now.getAsDouble() >= DEAD;
    }

    private static void add(List<Rung> rungs, Kind kind, OptionalDouble volts) {
        volts.ifPresent(value -> rungs.add(new Rung(kind, value)));
    }

    OptionalDouble volts(Kind kind) {
        return rungs.stream()
                .filter(rung -> rung.kind() == kind)
                .mapToDouble(Rung::volts)
                .findFirst();
    }
}
