package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import railtrim.parts.Markings;
import railtrim.parts.Marks;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;

/** {@code mark}: what a marking on a resistor means, or how a value is marked. */
@Command(name = "mark", description = "${bundle:command.mark.about}")
final class Mark implements Asked {
    private static final double COMMON_TOLERANCE = 0.05;

    private final Words words;

    @Parameters(arity = "0..6", paramLabel = "MARKING", description = "${bundle:command.option.marking}")
    private List<String> marking;

    @Option(names = "--value", paramLabel = "4k7", description = "${bundle:command.option.mark-value}")
    private String value;

    @Option(names = "--tolerance", paramLabel = "1%", description = "${bundle:command.option.mark-tolerance}")
    private String tolerance;

    @Option(names = "--tempco", paramLabel = "50", description = "${bundle:command.option.mark-tempco}")
    private String tempco;

    Mark(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        boolean read = marking != null && !marking.isEmpty();
        if (read == (value != null)) {
            throw BadInput.of("command.wrong.mark-one");
        }
        return read ? read(String.join(" ", marking)) : write();
    }

    private Answer read(String text) {
        List<Markings.Reading> readings = Markings.read(text);
        List<Object> list = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Markings.Reading each : readings) {
            list.add(Json.object()
                    .put("ohms", each.ohms())
                    .put("tolerance", each.tolerance())
                    .put("tempco", each.tempco())
                    .put("scheme", each.scheme())
                    .put("notes", each.notes().stream().map(words::of).toList())
                    .map());
            rows.add(List.of(
                    words.of("command.mark.scheme." + each.scheme()),
                    Display.part(each.ohms()),
                    each.tolerance().isPresent() ? percent(each.tolerance().getAsDouble()) : "–",
                    each.tempco().isPresent() ? Math.round(each.tempco().getAsDouble()) + " ppm/K" : "–"));
        }
        Sheet sheet = new Sheet()
                .table(
                        1,
                        List.of(
                                words.of("command.mark.head.scheme"),
                                words.of("command.mark.head.value"),
                                words.of("command.mark.head.tolerance"),
                                words.of("command.mark.head.tempco")),
                        rows);
        readings.stream()
                .flatMap(each -> each.notes().stream())
                .distinct()
                .map(words::of)
                .forEach(sheet::say);
        Markings.Reading first = readings.get(0);
        List<Marks.Mark> others = Marks.of(first.ohms(), first.tolerance().orElse(COMMON_TOLERANCE), first.tempco());
        Json json = Json.object().put("readings", list).put("markings", json(others));
        return Answer.done(json.map(), onto(sheet, others));
    }

    private Answer write() {
        double ohms = Typed.ohms("--value", value);
        double fraction = tolerance == null ? COMMON_TOLERANCE : Typed.fraction("--tolerance", tolerance, 0.01, 20);
        OptionalDouble ppm =
                tempco == null ? OptionalDouble.empty() : OptionalDouble.of(Typed.whole("--tempco", tempco, 1, 250));
        List<Marks.Mark> marks = Marks.of(ohms, fraction, ppm);
        Json json = Json.object()
                .put("ohms", ohms)
                .put("tolerance", fraction)
                .put("readings", List.of())
                .put("markings", json(marks));
        Sheet sheet = new Sheet();
        return Answer.of(
                !marks.isEmpty(),
                json.map(),
                marks.isEmpty() ? sheet.say(words.of("command.mark.none")) : onto(sheet, marks));
    }

    private static List<Object> json(List<Marks.Mark> marks) {
        return marks.stream()
                .<Object>map(each -> Json.object()
                        .put("scheme", each.scheme())
                        .put("text", each.text())
                        .map())
                .toList();
    }

    private Sheet onto(Sheet sheet, List<Marks.Mark> marks) {
        if (marks.isEmpty()) {
            return sheet;
        }
        sheet.blank().say(words.of("command.mark.written"));
        for (Marks.Mark each : marks) {
            sheet.pair("  " + words.of("command.mark.scheme." + each.scheme()), each.text());
        }
        return sheet;
    }

    private static String percent(double fraction) {
        return "± " + String.format(Locale.ROOT, "%.2f", 100 * fraction).replaceFirst("\\.?0+$", "") + " %";
    }
}
