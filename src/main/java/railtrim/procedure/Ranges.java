package railtrim.procedure;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import railtrim.circuit.Circuit;
import railtrim.procedure.Field.Expected;
import railtrim.quantity.Message;

/**
 * What each reading should be before it is taken, and why. Voltages carry the sign of the rail, resistances are with the lead zero taken off.
 * The widths are this program's choices (no published source): twice the meter's standard uncertainty where a sum predicts the reading, plus a
 * few per cent where parts drift or the load bends the reading.
 */
final class Ranges {
    /** Below this the rail counts as dead, volts. */
    static final double DEAD = 0.1;

    private Ranges() {}

    static Function<Figures, Optional<Expected>> fixed(double low, double high, String because) {
        return figures -> Optional.of(new Expected(low, high, Message.of(because)));
    }

    static Optional<Expected> none(Figures figures) {
        return Optional.empty();
    }

    static Function<Figures, Optional<Expected>> dead() {
        return fixed(-DEAD, DEAD, "expected.dead");
    }

    // ---- identify ----

    static Optional<Expected> sheetReferenceLow(Figures figures) {
        return around(figures.number("sheet.reference"), 0.9, 1.0, "expected.sheet-low");
    }

    static Optional<Expected> sheetReferenceHigh(Figures figures) {
        return around(figures.number("sheet.reference"), 1.0, 1.1, "expected.sheet-high");
    }

    static Optional<Expected> reference(Figures figures) {
        return figures.family().map(family -> {
            double slack = 2 * figures.voltUncertainty(family.reference());
            return new Expected(
                    family.referenceLow() - slack, family.referenceHigh() + slack, Message.of("expected.reference"));
        });
    }

    // ---- baseline ----

    static Optional<Expected> reversedLeg(Figures figures) {
        return likeOhms(figures, figures.readLeg(), 0.03, "expected.reversed");
    }

    static Optional<Expected> otherLeg(Figures figures) {
        return figures.family()
                .filter(family -> !Double.isNaN(family.otherLegHigh()))
                .map(family -> new Expected(
                        0.3 * family.otherLegLow(), 1.2 * family.otherLegHigh(), Message.of("expected.other-leg")));
    }

    static Optional<Expected> stock(Figures figures) {
        OptionalDouble highest = figures.number("rail.highest");
        if (figures.reference().isEmpty() || highest.isEmpty()) {
            return Optional.empty();
        }
        double top = figures.input().isPresent()
                ? Math.min(highest.getAsDouble(), figures.input().getAsDouble())
                : highest.getAsDouble();
        return Optional.of(signed(figures, figures.reference().getAsDouble() * 1.02, top * 1.02, "expected.stock"));
    }

    static Optional<Expected> stockUnderLoad(Figures figures) {
        OptionalDouble rail = figures.magnitude("base.rail");
        return rail.isEmpty()
                ? stock(figures)
                : Optional.of(
                        signed(figures, rail.getAsDouble() * 0.95, rail.getAsDouble() * 1.02, "expected.stock-load"));
    }

    static Optional<Expected> input(Figures figures) {
        OptionalDouble stock = figures.stock();
        OptionalDouble highest = figures.number("rail.highest");
        if (stock.isEmpty() || highest.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(signed(
                figures,
                stock.getAsDouble(),
                Math.max(highest.getAsDouble(), stock.getAsDouble()) * 1.05,
                "expected.input"));
    }

    static Optional<Expected> againOhms(Figures figures, String first, double part) {
        return likeOhms(figures, figures.ohms(first), part, "expected.again");
    }

    // ---- trimmer ----

    static Optional<Expected> lowest(Figures figures) {
        if (figures.stock().isEmpty() || figures.reference().isEmpty()) {
            return Optional.empty();
        }
        double stock = figures.stock().getAsDouble();
        double low = Math.max(figures.reference().getAsDouble() * 1.05, 0.6 * stock);
        return Optional.of(new Expected(low, stock - 2 * figures.stepVolts(), Message.of("expected.lowest")));
    }

    static Optional<Expected> trimmerMaximum(Figures figures) {
        return figures.trimmerPicked().map(candidate -> {
            double stop = figures.chose("trimmer.stop", "fitted") ? candidate.stopResistor() : 0;
            return new Expected(
                    0.88 * candidate.total() + 0.95 * stop,
                    1.12 * candidate.total() + 1.05 * stop,
                    Message.of("expected.trimmer-max"));
        });
    }

    static Optional<Expected> trimmerMinimum(Figures figures) {
        return figures.trimmerPicked().map(candidate -> {
            double stop = figures.chose("trimmer.stop", "fitted") ? candidate.stopResistor() : 0;
            double end = Math.max(0.02 * candidate.nominal(), 5)
                    + (candidate.pair() ? Math.max(0.02 * candidate.fine(), 5) : 0);
            return new Expected(0.94 * stop, 1.06 * stop + end, Message.of("expected.trimmer-min"));
        });
    }

    // ---- proofs by resistance ----

    static Optional<Expected> total(Figures figures, String added) {
        OptionalDouble leg = figures.readLeg();
        OptionalDouble across = figures.ohms(added);
        if (leg.isEmpty() || across.isEmpty()) {
            return Optional.empty();
        }
        return likeOhms(
                figures, OptionalDouble.of(parallel(leg.getAsDouble(), across.getAsDouble())), 0.02, "expected.total");
    }

    static Optional<Expected> totalAtLowEnd(Figures figures) {
        OptionalDouble leg = figures.readLeg();
        OptionalDouble least = figures.ohms("trimmer.min");
        if (leg.isEmpty() || least.isEmpty()) {
            return Optional.empty();
        }
        double total = parallel(leg.getAsDouble(), least.getAsDouble());
        return Optional.of(new Expected(0.9 * total - 1, 1.1 * total + 2, Message.of("expected.low-end")));
    }

    /**
     * Across the leg after a new day, whatever is on it: the bare leg, the trimmer anywhere between its ends or with one lead lifted, or the
     * fixed resistor.
     */
    static Optional<Expected> totalAfterBreak(Figures figures) {
        if (figures.chose("fit.left", "resistor-only")) {
            return total(figures, "hand.ohms");
        }
        Optional<Expected> bare = likeOhms(figures, figures.readLeg(), 0.03, "expected.leg-bare");
        boolean soldered = figures.number("solder.dead").isPresent();
        OptionalDouble least = figures.ohms("trimmer.min");
        if (!soldered || bare.isEmpty() || least.isEmpty()) {
            return bare;
        }
        double total = parallel(figures.readLeg().orElseThrow(), least.getAsDouble());
        return Optional.of(new Expected(0.95 * total, bare.get().high(), Message.of("expected.leg-fitted")));
    }

    static Optional<Expected> otherAsBefore(Figures figures) {
        return around(figures.readOther(), 0.75, 1.1, "expected.other-as-before");
    }

    /**
     * With the resistor on its leg the path around the other one, through that leg and what the board puts between, is lower too: by no more than
     * the leg itself has fallen.
     */
    static Optional<Expected> otherWhenFitted(Figures figures) {
        OptionalDouble leg = figures.readLeg();
        OptionalDouble hand = figures.ohms("hand.ohms");
        if (leg.isEmpty() || hand.isEmpty()) {
            return otherAsBefore(figures);
        }
        double fallen = parallel(leg.getAsDouble(), hand.getAsDouble()) / leg.getAsDouble();
        return around(figures.readOther(), Math.min(0.75, 0.9 * fallen), 1.1, "expected.other-fitted");
    }

    static Optional<Expected> railAsBefore(Figures figures) {
        OptionalDouble rail = figures.ohms("rail.ohms");
        if (rail.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Expected(
                0.7 * rail.getAsDouble() - 0.3, 1.4 * rail.getAsDouble() + 0.5, Message.of("expected.rail-as-before")));
    }

    // ---- powered readings ----

    /** From the largest to the smallest true leg the readings allow, and never above stock. */
    static Optional<Expected> first(Figures figures) {
        OptionalDouble maximum = figures.ohms("trimmer.max");
        Optional<Circuit> deepest = figures.worstCircuit();
        Optional<Circuit> shallowest = figures.bestCaseCircuit();
        if (maximum.isEmpty() || deepest.isEmpty() || shallowest.isEmpty()) {
            return Optional.empty();
        }
        double slack = repeat(figures, deepest.get().magnitude(maximum.getAsDouble()));
        double low = deepest.get().magnitude(maximum.getAsDouble()) - 2 * slack;
        double high = Math.min(ceiling(figures), shallowest.get().magnitude(maximum.getAsDouble()) + 2 * slack);
        return Optional.of(signed(figures, low, high, "expected.first"));
    }

    static Optional<Expected> asStart(Figures figures) {
        OptionalDouble start = figures.start();
        if (start.isEmpty()) {
            return Optional.empty();
        }
        double slack = Math.max(0.015 * start.getAsDouble(), 2 * repeat(figures));
        return Optional.of(signed(
                figures,
                start.getAsDouble() - slack,
                Math.min(ceiling(figures), start.getAsDouble() + slack),
                "expected.start"));
    }

    static Optional<Expected> down(Figures figures) {
        if (figures.descent().endOfTravel()) {
            return Optional.empty();
        }
        OptionalDouble target = figures.descent().target();
        OptionalDouble floor = figures.floor();
        if (target.isEmpty() || floor.isEmpty()) {
            return Optional.empty();
        }
        double slack = Math.max(0.75 * figures.descent().step(), figures.voltResolution(target.getAsDouble()));
        // A trimmer may have no place between: then the next one down is taken, and what was read counts.
        double further = Math.max(slack, 0.75 * figures.stepVolts());
        double low = Math.max(
                floor.getAsDouble() - figures.voltResolution(floor.getAsDouble()), target.getAsDouble() - further);
        return Optional.of(signed(figures, low, target.getAsDouble() + slack, "expected.down"));
    }

    static Optional<Expected> target(Figures figures) {
        if (figures.budget().isEmpty() || figures.stock().isEmpty()) {
            return Optional.empty();
        }
        double recommended = figures.budget().get().recommended();
        double top =
                Math.max(recommended, figures.start().orElse(figures.stock().getAsDouble()));
        return Optional.of(new Expected(recommended, top, Message.of("expected.target")));
    }

    static Optional<Expected> set(Figures figures) {
        OptionalDouble target = figures.target();
        if (target.isEmpty()) {
            return Optional.empty();
        }
        double resolution = figures.voltResolution(target.getAsDouble());
        return Optional.of(signed(
                figures,
                target.getAsDouble() - resolution / 2,
                target.getAsDouble() + Math.max(0.5 * figures.stepVolts(), 2 * resolution),
                "expected.set"));
    }

    static Optional<Expected> asSet(Figures figures) {
        return near(figures, figures.magnitude("set.volts"), 0.015, "expected.as-set");
    }

    static Optional<Expected> fitted(Figures figures) {
        OptionalDouble hand = figures.ohms("hand.ohms");
        if (hand.isEmpty() || figures.circuit().isEmpty()) {
            return Optional.empty();
        }
        return near(
                figures,
                OptionalDouble.of(figures.circuit().get().magnitude(hand.getAsDouble())),
                0.01,
                "expected.fitted");
    }

    // ---- the resistor ----

    static Optional<Expected> settingTotal(Figures figures) {
        OptionalDouble leg = figures.readLeg();
        OptionalDouble most = figures.ohms("trimmer.max");
        OptionalDouble least = figures.ohms("trimmer.min");
        if (leg.isEmpty() || most.isEmpty() || least.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Expected(
                0.97 * parallel(leg.getAsDouble(), least.getAsDouble()),
                1.03 * parallel(leg.getAsDouble(), most.getAsDouble()),
                Message.of("expected.setting-total")));
    }

    /** The trimmer alone is what the law asks for at the voltage it was set to. */
    static Optional<Expected> settingTrimmer(Figures figures) {
        OptionalDouble volts = figures.magnitude("soak.volts");
        if (volts.isEmpty()
                || figures.bestCaseCircuit().isEmpty()
                || figures.worstCircuit().isEmpty()) {
            return Optional.empty();
        }
        double stock = figures.stock().orElseThrow();
        double slack = 2 * repeat(figures, volts.getAsDouble());
        double low = Math.max(volts.getAsDouble() - slack, figures.reference().orElseThrow() * 1.001);
        double high = Math.min(volts.getAsDouble() + slack, stock * 0.9999);
        if (high <= low) {
            return Optional.empty();
        }
        return Optional.of(new Expected(
                0.95 * figures.bestCaseCircuit().get().addedFor(low),
                1.05 * figures.worstCircuit().get().addedFor(high),
                Message.of("expected.setting-trimmer")));
    }

    static Optional<Expected> hand(Figures figures) {
        return figures.chosen().map(candidate -> {
            double slack = figures.tolerance().orElse(0.05) * candidate.added()
                    + 2 * figures.ohmUncertainty(candidate.added());
            return new Expected(candidate.added() - slack, candidate.added() + slack, Message.of("expected.hand"));
        });
    }

    // ---- temperatures ----

    static Optional<Expected> warm(Figures figures) {
        OptionalDouble room = figures.number("temp.room");
        return Optional.of(new Expected(room.orElse(10), 125, Message.of("expected.temperature")));
    }

    static Optional<Expected> chipAfter(Figures figures) {
        OptionalDouble before = figures.number("temp.chip");
        return before.isEmpty()
                ? warm(figures)
                : Optional.of(new Expected(10, before.getAsDouble() + 3, Message.of("expected.chip-after")));
    }

    // ---- helpers ----

    /** What one meter on one range repeats to, volts: two counts or 0.2 %, whichever is more. */
    static double repeat(Figures figures) {
        return repeatAt(figures, figures.stock().orElse(3));
    }

    static double repeatAt(Figures figures, double volts) {
        return Math.max(2 * figures.voltResolution(volts), 0.002 * volts);
    }

    /** What a reading repeats to against stock, volts: where the meter changes its range between the two, both ranges' errors count. */
    static double repeat(Figures figures, double volts) {
        double stock = figures.stock().orElse(volts);
        boolean oneRange = figures.voltAccuracy(stock).equals(figures.voltAccuracy(volts));
        return oneRange
                ? repeat(figures)
                : Math.max(repeat(figures), figures.voltUncertainty(stock) + figures.voltUncertainty(volts));
    }

    /** The most a lowered output may read: stock and what the meter repeats to. */
    static double ceiling(Figures figures) {
        return figures.stock().orElse(Double.POSITIVE_INFINITY) + repeat(figures) / 2;
    }

    /** Two resistances side by side, ohms; an infinite one is not there, and a negative one takes away what was. */
    static double parallel(double one, double two) {
        return 1 / (1 / one + 1 / two);
    }

    private static Optional<Expected> near(Figures figures, OptionalDouble volts, double part, String because) {
        if (volts.isEmpty()) {
            return Optional.empty();
        }
        double slack = Math.max(part * volts.getAsDouble(), 2 * repeat(figures));
        double high = Math.min(ceiling(figures), volts.getAsDouble() + slack);
        return Optional.of(signed(figures, volts.getAsDouble() - slack, high, because));
    }

    static Optional<Expected> likeOhms(Figures figures, OptionalDouble ohms, double part, String because) {
        if (ohms.isEmpty()) {
            return Optional.empty();
        }
        double slack = part * ohms.getAsDouble() + 2 * figures.ohmUncertainty(ohms.getAsDouble());
        return Optional.of(
                new Expected(Math.max(0, ohms.getAsDouble() - slack), ohms.getAsDouble() + slack, Message.of(because)));
    }

    private static Optional<Expected> around(OptionalDouble value, double low, double high, String because) {
        return value.isEmpty()
                ? Optional.empty()
                : Optional.of(new Expected(low * value.getAsDouble(), high * value.getAsDouble(), Message.of(because)));
    }

    private static Expected signed(Figures figures, double low, double high, String because) {
        return figures.negative()
                ? new Expected(-high, -low, Message.of(because))
                : new Expected(low, high, Message.of(because));
    }
}
