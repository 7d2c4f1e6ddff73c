package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Bridges;
import railtrim.parts.Trimmers;
import railtrim.procedure.Step.Finding;
import railtrim.procedure.Step.Finding.Kind;
import railtrim.quantity.Display;

/** What the choice of the trimmer, its wiring and the proof of it say together. */
final class TrimmerChecks {
    private static final int MOST_FIRST_POWERS = 2;

    private TrimmerChecks() {}

    static List<Finding> aim(Figures figures) {
        OptionalDouble floor = figures.floor();
        OptionalDouble rated = figures.ratedLow();
        return floor.isPresent() && rated.isPresent() && floor.getAsDouble() < rated.getAsDouble()
                ? List.of(Findings.warns("verdict.below-rated", figures.sign().volts(rated.getAsDouble())))
                : List.of();
    }

    static List<Finding> pick(Figures figures) {
        if (Choices.trimmers(figures).isEmpty()) {
            return List.of(Findings.blocks("verdict.no-trimmer", "aim"));
        }
        Optional<Trimmers.Candidate> picked = figures.trimmerPicked();
        List<Finding> findings = new ArrayList<>();
        picked.ifPresent(candidate ->
                candidate.reasons().forEach(reason -> findings.add(new Finding(Kind.SAYS, reason, ""))));
        if (figures.chose("trimmer.stop", "none")) {
            picked.ifPresent(candidate -> findings.add(
                    Findings.blocks("verdict.stop-resistor-needed", "", Display.ohms(candidate.stopResistor()))));
        }
        return findings;
    }

    static List<Finding> ends(Figures figures) {
        List<Finding> findings = new ArrayList<>(AsItCame.takeOffFirst(figures, "trimmer.max"));
        if (figures.choice("trimmer.at").filter(end -> !end.equals("maximum")).isPresent()) {
            findings.add(Findings.blocks("verdict.not-at-maximum", ""));
        }
        figures.trimmerInHand().ifPresent(hand -> {
            Kind kind = hand.verdict() == Trimmers.Verdict.REFUSED ? Kind.BLOCKS : Kind.SAYS;
            hand.reasons()
                    .forEach(reason -> findings.add(new Finding(kind, reason, kind == Kind.BLOCKS ? "pick" : "")));
            findings.add(Findings.says(
                    "verdict.start-predicted",
                    figures.sign().volts(hand.start()),
                    figures.sign().volts(hand.startWorst())));
            findings.addAll(slips(figures));
        });
        return findings;
    }

    /** What must not happen with the iron, told before it is picked up: bridged pins, and the way the rail goes then. */
    private static List<Finding> slips(Figures figures) {
        return figures.slips().stream()
                .filter(Slip::harmful)
                .flatMap(slip -> slip.pins().stream())
                .map(pins -> bridged(figures, pins))
                .toList();
    }

    private static Finding bridged(Figures figures, Bridges.Bridge pins) {
        String one = String.valueOf(pins.first());
        String two = String.valueOf(pins.second());
        if (pins.voltage().isEmpty()) {
            return Findings.says("verdict.bridge", one, two);
        }
        double volts = pins.voltage().getAsDouble();
        return volts == 0
                ? Findings.says("verdict.bridge-short", one, two)
                : Findings.says("verdict.bridge-volts", one, two, figures.sign().volts(volts));
    }

    static List<Finding> solder(Figures figures) {
        return Findings.asList(Findings.differs(
                figures, "solder.pair", IdentifyChecks.legPair(figures), "verdict.soldered-elsewhere", ""));
    }

    /** Proven twice by ohms and twice not what the sums allow: no third try, for then an earlier reading is wrong. */
    static List<Finding> proof(Figures figures) {
        long outside = LegProof.timesOutside(figures, "first.on", "leg.ohms");
        return outside < MOST_FIRST_POWERS ? List.of() : List.of(Findings.stops("stop.first-power", "legs"));
    }

    static List<Finding> smooth(Figures figures) {
        List<Finding> findings = new ArrayList<>(LegProof.lowEnd(figures));
        if (figures.choice("smooth.feel")
                .filter(feel -> !feel.equals("falls-smoothly"))
                .isPresent()) {
            findings.add(Findings.blocks("verdict.not-smooth", "solder"));
        }
        // Read anew last, the far end is where the trimmer stands now, and the board would be powered there.
        if (figures.number("smooth.total").isPresent()
                && figures.lastOf("smooth.low") > figures.lastOf("smooth.total")) {
            findings.add(Findings.blocks("verdict.maximum-first", ""));
        }
        return findings;
    }
}
