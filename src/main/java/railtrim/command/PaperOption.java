package railtrim.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import railtrim.quantity.Message;
import railtrim.report.Paper;

/** What paper was asked for. */
final class PaperOption {
    private PaperOption() {}

    /** @param typed null where nothing was: then A4, as in most of the world */
    static Paper of(String typed) {
        if (typed == null) {
            return Paper.A4;
        }
        return Arrays.stream(Paper.values())
                .filter(paper -> paper.id().equals(typed.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadOption(
                        "--paper",
                        Message.of(
                                "command.wrong.paper",
                                Typed.shown(typed),
                                Arrays.stream(Paper.values()).map(Paper::id).collect(Collectors.joining(", ")))));
    }
}
