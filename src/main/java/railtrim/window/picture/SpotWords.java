package railtrim.window.picture;

import java.util.List;
import java.util.Locale;
import railtrim.circuit.PinRole;
import railtrim.procedure.Words;

/** Where the probes go, in a sentence each. */
final class SpotWords {
    private SpotWords() {}

    /** Each sentence with a space before it; empty for no probes. */
    static String of(List<Spot> spots, Words words) {
        StringBuilder said = new StringBuilder();
        for (Spot spot : spots) {
            said.append(' ')
                    .append(words.of(
                            "picture.probe.says." + spot.probe().name().toLowerCase(Locale.ROOT),
                            role(spot.role(), words)));
        }
        return said.toString();
    }

    static String role(PinRole role, Words words) {
        return words.of("picture.role." + role.id());
    }
}
