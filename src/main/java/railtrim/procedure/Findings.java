package railtrim.procedure;

import java.util.List;
import java.util.Optional;
import railtrim.procedure.Step.Finding;
import railtrim.procedure.Step.Finding.Kind;
import railtrim.quantity.Message;

/** How a check says what it found. */
final class Findings {
    private Findings() {}

    static Optional<Finding> differs(Figures figures, String field, String right, String key, String backTo) {
        return figures.choice(field).filter(option -> !option.equals(right)).map(option -> blocks(key, backTo));
    }

    static List<Finding> asList(Optional<Finding> finding) {
        return finding.map(List::of).orElse(List.of());
    }

    static Finding says(String key, String... values) {
        return new Finding(Kind.SAYS, Message.of(key, values), "");
    }

    static Finding warns(String key, String... values) {
        return new Finding(Kind.WARNS, Message.of(key, values), "");
    }

    static Finding blocks(String key, String backTo, String... values) {
        return new Finding(Kind.BLOCKS, Message.of(key, values), backTo);
    }

    static Finding stops(String key) {
        return stops(key, "");
    }

    static Finding stops(String key, String backTo) {
        return new Finding(Kind.STOPS, Message.of(key), backTo);
    }
}
