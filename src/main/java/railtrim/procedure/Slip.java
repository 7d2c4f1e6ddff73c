package railtrim.procedure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Bridges;
import railtrim.circuit.Circuit;
import railtrim.circuit.Faults;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Supply;

/**
 * One thing that can go wrong at the divider or at the regulator's pins, and what the output does then.
 *
 * @param id of the fault, "bridge" for two pins joined
 * @param pins the two pins as numbers and roles, empty for a fault
 * @param volts magnitude; empty where it cannot be told
 */
public record Slip(
        String id, Optional<Bridges.Bridge> pins, OptionalDouble volts, boolean towardsInput, boolean harmful) {

    /** Harmful ones first, then the highest voltage first; what cannot be told in volts leads its half. */
    private static final Comparator<Slip> WORST_FIRST = Comparator.comparing((Slip slip) -> !slip.harmful())
            .thenComparing(slip -> -slip.volts().orElse(Double.MAX_VALUE));

    /** In the words of the bundle: "Pins 1 and 2 bridged (adjust, output)". */
    public String told(Words words) {
        return pins.map(bridge -> words.of(
                        "slip.bridge",
                        Integer.toString(bridge.first()),
                        Integer.toString(bridge.second()),
                        role(words, bridge.firstRole()),
                        role(words, bridge.secondRole())))
                .orElseGet(() -> words.of("slip." + id));
    }

    /** The output in words where it is no voltage: towards the input, a dead short, or not to be told; empty where it is a voltage. */
    public Optional<String> output(Words words) {
        if (volts.isEmpty()) {
            return Optional.of(words.of(towardsInput ? "slip.towards-input" : "slip.unsure"));
        }
        return volts.getAsDouble() == 0 ? Optional.of(words.of("slip.dead-short")) : Optional.empty();
    }

    private static String role(Words words, PinRole role) {
        return words.of("slip.role." + role.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * Every fault of the divider, and every pair of neighbouring pins where the package and all its roles are known.
     *
     * @param added ohms across the leg, infinity for none
     * @param least ohms it can be turned down to, which is what the wrong leg is reckoned with
     * @param supply null where not known
     */
    static List<Slip> all(
            Circuit circuit,
            double added,
            double least,
            Supply supply,
            OptionalDouble highest,
            Optional<Outline> outline,
            List<Optional<PinRole>> pins) {
        double limit = highest.orElse(Double.NaN);
        List<Slip> slips = new ArrayList<>();
        List<Faults.Effect> asAdded = Faults.table(circuit, added, supply, limit);
        List<Faults.Effect> turnedDown = Faults.table(circuit, least, supply, limit);
        for (int i = 0; i < asAdded.size(); i++) {
            boolean wrongLeg = asAdded.get(i).fault() == Faults.Fault.ADDED_WRONG_LEG;
            Faults.Effect effect = (wrongLeg ? turnedDown : asAdded).get(i);
            slips.add(new Slip(
                    effect.fault().id(), Optional.empty(), effect.voltage(), effect.towardsInput(), effect.harmful()));
        }
        if (outline.isPresent()
                && pins.size() >= outline.get().pins()
                && pins.stream().allMatch(Optional::isPresent)) {
            List<PinRole> roles = pins.stream().map(Optional::orElseThrow).toList();
            for (Bridges.Bridge bridge : Bridges.table(circuit, outline.get(), roles, supply, limit)) {
                slips.add(new Slip(
                        "bridge", Optional.of(bridge), bridge.voltage(), bridge.towardsInput(), bridge.harmful()));
            }
        }
        slips.sort(WORST_FIRST);
        return List.copyOf(slips);
    }
}
