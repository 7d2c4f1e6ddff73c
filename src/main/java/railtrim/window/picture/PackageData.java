package railtrim.window.picture;

import java.util.List;
import java.util.Optional;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.procedure.Figures;
import railtrim.procedure.State;

/**
 * The package with what the person said of its pins.
 *
 * @param outline empty before it is chosen
 * @param roles pin 1 first, then the tab where there is one; shorter or empty where not given yet
 * @param clips whether the spots are held by clips
 * @param asked whether what the pins do is being asked for
 */
record PackageData(
        Optional<Outline> outline, List<Optional<PinRole>> roles, List<Spot> spots, boolean clips, boolean asked) {
    PackageData {
        roles = List.copyOf(roles);
        spots = List.copyOf(spots);
    }

    static PackageData of(State state) {
        Figures figures = state.figures();
        return new PackageData(
                figures.outline(),
                figures.outline().isPresent() ? figures.pins() : List.of(),
                Touch.of(state).spots(),
                Touch.of(state).clips(),
                state.current().missing().stream().anyMatch(field -> field.startsWith("pin.")));
    }

    /** @param pin 1 for the first */
    Optional<PinRole> role(int pin) {
        return pin <= roles.size() ? roles.get(pin - 1) : Optional.empty();
    }

    Optional<PinRole> tab() {
        return outline.filter(Outline::hasTab).flatMap(each -> role(each.pins() + 1));
    }

    /** The probe to show at a pin: at the first pin with the spot's role. */
    Optional<Spot> spotAt(int pin) {
        return spots.stream().filter(spot -> firstWith(spot.role()) == pin).findFirst();
    }

    /** The probe to show at the tab: only where no pin with that role can be reached. */
    Optional<Spot> spotAtTab() {
        return spots.stream()
                .filter(spot -> firstWith(spot.role()) == 0 && tab().equals(Optional.of(spot.role())))
                .findFirst();
    }

    /** Whether a probe belongs on ground but this package has no ground pin. */
    boolean groundElsewhere() {
        return spots.stream()
                .anyMatch(spot -> spot.role() == PinRole.GROUND
                        && firstWith(PinRole.GROUND) == 0
                        && !tab().equals(Optional.of(PinRole.GROUND)));
    }

    private int firstWith(PinRole role) {
        int pins = outline.map(Outline::pins).orElse(0);
        for (int pin = 1; pin <= pins; pin++) {
            if (role(pin).equals(Optional.of(role)) && !cutAndJoinedToTab(pin)) {
                return pin;
            }
        }
        return 0;
    }

    /** The middle leg of this outline is usually cut off; a probe finds hold on the tab instead. */
    private boolean cutAndJoinedToTab(int pin) {
        return outline.equals(Optional.of(Outline.TO_252)) && pin == 2 && role(2).equals(tab());
    }
}
