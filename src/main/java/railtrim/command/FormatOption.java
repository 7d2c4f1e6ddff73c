package railtrim.command;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import railtrim.quantity.Message;
import railtrim.report.Format;

/** Formats as they are typed: names with commas between. */
final class FormatOption {
    private FormatOption() {}

    static Set<Format> of(String typed, Set<Format> known) {
        Set<Format> formats = EnumSet.noneOf(Format.class);
        for (String name : typed.split(",", -1)) {
            formats.add(known.stream()
                    .filter(format -> format.id().equals(name.strip().toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> new BadOption(
                            "--format",
                            Message.of(
                                    "command.wrong.format",
                                    Typed.shown(name),
                                    Arrays.stream(Format.values())
                                            .filter(known::contains)
                                            .map(Format::id)
                                            .collect(Collectors.joining(", "))))));
        }
        return formats;
    }
}
