package railtrim.window.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import railtrim.circuit.Leg;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;

/** Where a probe goes in this step. */
record Spot(Probe probe, PinRole role) {
    enum Probe {
        RED,
        BLACK
    }

    static List<Spot> pair(PinRole red, PinRole black) {
        return List.of(new Spot(Probe.RED, red), new Spot(Probe.BLACK, black));
    }

    static List<Spot> output() {
        return pair(PinRole.OUTPUT, PinRole.GROUND);
    }

    static List<Spot> across(Leg leg) {
        return leg == Leg.UPPER ? pair(PinRole.OUTPUT, PinRole.ADJUST) : pair(PinRole.ADJUST, PinRole.GROUND);
    }

    static List<Spot> swapped(List<Spot> spots) {
        return spots.stream()
                .map(spot -> new Spot(spot.probe() == Probe.RED ? Probe.BLACK : Probe.RED, spot.role()))
                .sorted(Comparator.comparing(Spot::probe))
                .toList();
    }

    /** The reference sits across the leg that does not lower. */
    static List<Spot> reference(Optional<Place> place) {
        return place.map(each -> across(each.loweringLeg().other())).orElse(List.of());
    }

    static List<Spot> loweringLeg(Optional<Place> place) {
        return place.map(each -> across(each.loweringLeg())).orElse(List.of());
    }
}
