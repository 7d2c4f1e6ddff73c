package railtrim.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import railtrim.circuit.Outline;
import railtrim.parts.Series;
import railtrim.quantity.Message;

/** Reads options that name one of a few things. */
final class Named {
    private Named() {}

    /** The word of a constant as it is typed, written in JSON and used in keys: {@code CONSTANT_CURRENT} is {@code constant-current}. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Kelvin per watt of a package of which that is known. */
    static double junctionToCase(String option, String text) {
        return outline(option, text)
                .junctionToCase()
                .orElseThrow(() -> unknown(option, text, outline -> !outline.plain()));
    }

    static Outline outline(String option, String text) {
        return Arrays.stream(Outline.values())
                .filter(outline -> outline.id().equalsIgnoreCase(text.strip()))
                .findFirst()
                .orElseThrow(() -> unknown(option, text, outline -> true));
    }

    private static BadOption unknown(String option, String text, Predicate<Outline> offered) {
        String known =
                Arrays.stream(Outline.values()).filter(offered).map(Outline::id).collect(Collectors.joining(", "));
        return new BadOption(option, Message.of("command.wrong.package", Typed.shown(text), known));
    }

    static Series series(String option, String text) {
        String wanted = text.strip().toUpperCase(Locale.ROOT);
        return Arrays.stream(Series.values())
                .filter(series -> series.name().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new BadOption(
                        option,
                        Message.of(
                                "command.wrong.series",
                                Typed.shown(text),
                                Arrays.stream(Series.values()).map(Series::name).collect(Collectors.joining(", ")))));
    }
}
