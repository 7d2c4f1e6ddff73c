package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Circuit;
import railtrim.parts.Resistors;
import railtrim.procedure.Step.Finding;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** What the choice and fitting of the resistor say together. */
final class ResistorChecks {
    private ResistorChecks() {}

    /** Conductances subtract: the trimmer on its own and the total across the leg must tell the same leg. */
    static List<Finding> setting(Figures figures) {
        OptionalDouble total = figures.ohms("setting.total");
        OptionalDouble trimmer = figures.ohms("setting.trimmer");
        if (total.isEmpty() || trimmer.isEmpty() || figures.readLeg().isEmpty()) {
            return List.of();
        }
        double expected = Ranges.parallel(figures.readLeg().getAsDouble(), trimmer.getAsDouble());
        double slack = 0.03 * expected + 3 * figures.ohmUncertainty(expected);
        if (Math.abs(total.getAsDouble() - expected) > slack) {
            return List.of(Findings.blocks(
                    "verdict.setting-differs", "", Display.ohms(expected), Display.ohms(total.getAsDouble())));
        }
        List<Finding> findings = new ArrayList<>(Doubts.difference(figures));
        findings.addAll(Doubts.offTheLine(figures));
        return findings;
    }

    static List<Finding> choose(Figures figures) {
        boolean asked = figures.choice("res.series").isPresent()
                && figures.choice("res.tolerance").isPresent()
                && figures.choice("res.most").isPresent();
        if (asked && figures.resistors().isEmpty()) {
            return List.of(Findings.blocks("verdict.no-resistor", ""));
        }
        List<Finding> findings = new ArrayList<>(whySimpler(figures));
        if (figures.resistorFloor().isPresent() && figures.chosen().isPresent()) {
            findings.add(Findings.says(
                    "verdict.resistor-holds",
                    figures.sign().volts(figures.chosen().get().lowest()),
                    figures.sign().volts(figures.chosen().get().highest()),
                    figures.sign().volts(figures.resistorFloor().getAsDouble())));
        }
        return findings;
    }

    /** Where a second part would come nearer, and why it is not the first in the list all the same. */
    private static List<Finding> whySimpler(Figures figures) {
        List<Resistors.Candidate> list = figures.resistors();
        if (list.isEmpty()) {
            return List.of();
        }
        return Resistors.nearerWithMore(list, figures.resistorTarget())
                .map(nearer -> Findings.says(
                        "verdict.resistor-simpler",
                        list.get(0).partsInWords(),
                        nearer.partsInWords(),
                        Display.millivolts(list.get(0).voltage() - nearer.voltage()),
                        Display.of(200 * Resistors.WORTH_OF_A_PART, Unit.PERCENT)))
                .stream()
                .toList();
    }

    static List<Finding> hand(Figures figures) {
        OptionalDouble ohms = figures.ohms("hand.ohms");
        Optional<Circuit> circuit = figures.circuit();
        OptionalDouble floor = figures.resistorFloor();
        if (ohms.isEmpty() || circuit.isEmpty() || floor.isEmpty()) {
            return List.of();
        }
        double volts = circuit.get().magnitude(ohms.getAsDouble());
        return volts < floor.getAsDouble() - figures.voltResolution(volts) / 2
                ? List.of(Findings.blocks(
                        "verdict.hand-too-low",
                        "choose",
                        figures.sign().volts(volts),
                        figures.sign().volts(floor.getAsDouble())))
                : List.of(Findings.says("verdict.hand-gives", Doubts.volts(figures, ohms.getAsDouble(), volts)));
    }

    static List<Finding> fit(Figures figures) {
        List<Finding> findings = new ArrayList<>(LegProof.oftenInVain(figures));
        Findings.differs(figures, "fit.pair", IdentifyChecks.legPair(figures), "verdict.soldered-elsewhere", "")
                .ifPresent(findings::add);
        if (figures.choice("fit.left")
                .filter(left -> !left.equals("resistor-only"))
                .isPresent()) {
            findings.add(Findings.blocks("verdict.trimmer-left", ""));
        }
        return findings;
    }

    static List<Finding> fitSoak(Figures figures) {
        List<Finding> findings = new ArrayList<>(PowerChecks.seenWell(figures, "fit.seen"));
        findings.addAll(Doubts.offTheLine(figures));
        OptionalDouble before = figures.number("temp.reg");
        OptionalDouble after = figures.number("fit.temp.reg");
        if (before.isPresent() && after.isPresent() && after.getAsDouble() > before.getAsDouble() + 2) {
            findings.add(Findings.warns("verdict.regulator-hotter", Display.of(after.getAsDouble(), Unit.CELSIUS)));
        }
        findings.addAll(HeatFindings.measured(figures));
        return findings;
    }

    static List<Finding> record(Figures figures) {
        return figures.choice("record.undo")
                        .filter(undo -> !undo.equals("added-resistor"))
                        .isPresent()
                ? List.of(Findings.blocks("verdict.undo-wrong", ""))
                : List.of();
    }
}
