package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamily;
import railtrim.procedure.Step.Finding;

/** What the answers of preparing and identifying say together. */
final class IdentifyChecks {
    /** Board rails above this are no work for a hobbyist: the touchable limit for DC, dry (IEC 62368-1 class ES1, from memory). */
    static final double HIGHEST_RAIL = 60;

    private IdentifyChecks() {}

    static List<Finding> scope(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        if (figures.chose("supply.kind", "mains")) {
            findings.add(Findings.stops("stop.mains"));
        }
        if (figures.number("rail.highest").orElse(0) > HIGHEST_RAIL) {
            findings.add(Findings.stops("stop.rail-too-high"));
        }
        return findings;
    }

    static List<Finding> chip(Figures figures) {
        boolean upsideDown = figures.ratedLow().orElse(0) > figures.ratedHigh().orElse(Double.POSITIVE_INFINITY);
        return upsideDown ? List.of(Findings.blocks("verdict.rated-upside-down", "")) : List.of();
    }

    static List<Finding> workplace(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        if (figures.choice("work.off").filter(way -> !way.equals("unplugged")).isPresent()) {
            findings.add(Findings.blocks("verdict.not-unplugged", ""));
        }
        if (figures.chose("work.ground", "nothing")) {
            findings.add(Findings.blocks("verdict.no-static-care", ""));
        }
        return findings;
    }

    static List<Finding> marking(Figures figures) {
        return switch (figures.choice("reg.control").orElse("adjustable")) {
            case "fixed" -> List.of(Findings.stops("stop.fixed"));
            case "coded" -> List.of(Findings.stops("stop.coded"));
            case "unknown" -> List.of(Findings.blocks("verdict.control-unknown", ""));
            default -> outlineFits(figures);
        };
    }

    private static List<Finding> outlineFits(Figures figures) {
        Optional<RegulatorFamily> family = figures.family();
        Optional<Outline> outline = figures.outline();
        if (family.isPresent()
                && outline.isPresent()
                && !family.get().pinouts().isEmpty()
                && !family.get().pinouts().containsKey(outline.get())) {
            return List.of(Findings.warns(
                    "verdict.outline-unusual",
                    family.get().name(),
                    outline.get().id()));
        }
        return List.of();
    }

    static List<Finding> datasheet(Figures figures) {
        double nominal = figures.number("sheet.reference").orElse(Double.NaN);
        boolean outside = figures.number("sheet.reference.low").orElse(nominal) > nominal
                || figures.number("sheet.reference.high").orElse(nominal) < nominal;
        return outside ? List.of(Findings.blocks("verdict.sheet-order", "")) : List.of();
    }

    static List<Finding> pins(Figures figures) {
        List<Optional<PinRole>> given = figures.pins();
        if (given.isEmpty() || given.stream().anyMatch(Optional::isEmpty)) {
            return List.of();
        }
        List<PinRole> roles = given.stream().map(Optional::orElseThrow).toList();
        List<Finding> findings = new ArrayList<>(rolesPresent(figures, roles));
        findings.addAll(likeDataSheet(figures, roles));
        return findings;
    }

    private static List<Finding> rolesPresent(Figures figures, List<PinRole> roles) {
        List<Finding> findings = new ArrayList<>();
        if (!roles.contains(PinRole.ADJUST)) {
            findings.add(Findings.stops("stop.no-adjust-pin"));
            return findings;
        }
        if (!roles.contains(PinRole.OUTPUT) && !roles.contains(PinRole.SWITCH)) {
            findings.add(Findings.blocks("verdict.no-output-pin", ""));
        }
        Place place = figures.place().orElse(Place.OUT_ADJ);
        boolean grounded = place == Place.FB_GND || place == Place.SHUNT;
        if (grounded != roles.contains(PinRole.GROUND)) {
            findings.add(
                    Findings.blocks(grounded ? "verdict.ground-pin-missing" : "verdict.ground-pin-odd", "marking"));
        }
        return findings;
    }

    private static List<Finding> likeDataSheet(Figures figures, List<PinRole> roles) {
        RegulatorFamily family = figures.family().orElse(null);
        Outline outline = figures.outline().orElse(null);
        if (family == null || outline == null || !family.pinouts().containsKey(outline)) {
            return List.of(Findings.warns("verdict.pins-unchecked"));
        }
        List<PinRole> sheet = family.pinouts().get(outline);
        List<Finding> findings = new ArrayList<>();
        for (int pin = 0; pin < outline.pins() && pin < sheet.size(); pin++) {
            if (sheet.get(pin) != roles.get(pin)) {
                findings.add(Findings.blocks("verdict.pin-differs", "marking", String.valueOf(pin + 1), family.name()));
            }
        }
        return findings;
    }

    /** Killer item: between which pins the reference sits decides which leg lowers; the person must find both pairs in the data sheet. */
    static List<Finding> place(Figures figures) {
        if (figures.chose("place.pair", "unsure")) {
            return List.of(Findings.stops("stop.place-unclear"));
        }
        List<Finding> findings = new ArrayList<>();
        Findings.differs(figures, "place.pair", referencePair(figures), "verdict.place-differs", "marking")
                .ifPresent(findings::add);
        Findings.differs(figures, "place.leg", legPair(figures), "verdict.leg-differs", "")
                .ifPresent(findings::add);
        return findings;
    }

    /** The two pins the reference voltage sits between. */
    static String referencePair(Figures figures) {
        return figures.place()
                        .filter(place -> place == Place.FB_GND || place == Place.SHUNT)
                        .isPresent()
                ? "adjust-ground"
                : "out-adjust";
    }

    /** The two pins the added resistor goes across. */
    static String legPair(Figures figures) {
        return referencePair(figures).equals("out-adjust") ? "adjust-ground" : "out-adjust";
    }

    static List<Finding> clip(Figures figures) {
        return Findings.asList(
                Findings.differs(figures, "clip.pair", referencePair(figures), "verdict.clips-elsewhere", ""));
    }
}
