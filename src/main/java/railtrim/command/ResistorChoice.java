package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.parts.PartsBox;
import railtrim.parts.Resistors;
import railtrim.parts.Series;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** {@code resistor}: fixed resistors for a target voltage, with the worst case counted. */
@Command(name = "resistor", description = "${bundle:command.resistor.about}")
final class ResistorChoice implements Asked {
    private static final double COMMON_TOLERANCE = 0.01;

    private final Words words;

    @Mixin
    private CircuitOptions given;

    @Option(names = "--target", required = true, paramLabel = "3.0V", description = "${bundle:command.option.target}")
    private String target;

    @Option(names = "--at-least", paramLabel = "2.9V", description = "${bundle:command.option.at-least}")
    private String atLeast;

    @Option(names = "--series", paramLabel = "E24", description = "${bundle:command.option.series}")
    private String series;

    @Option(names = "--tolerance", paramLabel = "1%", description = "${bundle:command.option.resistor-tolerance}")
    private String tolerance;

    @Option(names = "--parts", paramLabel = "FILE.csv", description = "${bundle:command.option.parts}")
    private String parts;

    @Option(names = "--most", paramLabel = "2", description = "${bundle:command.option.most}")
    private String most;

    ResistorChoice(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Circuit circuit = given.circuit();
        given.supply(circuit);
        Resistors.Wish wish = wish(circuit);
        List<Resistors.Candidate> candidates = choose(circuit, wish);
        double exact = Resistors.exact(circuit, wish.target());
        List<Object> list = candidates.stream()
                .<Object>map(candidate -> json(circuit, candidate))
                .toList();
        Json json = Json.object().put("exact", exact).put("candidates", list);
        return Answer.of(!candidates.isEmpty(), json.map(), sheet(circuit, exact, candidates));
    }

    private Resistors.Wish wish(Circuit circuit) {
        boolean minus = CircuitOptions.minusAllowed(circuit.place());
        double targetVolts = Typed.railVolts("--target", target, minus);
        if (targetVolts <= circuit.reference() || targetVolts >= circuit.stock()) {
            throw new BadOption(
                    "--target",
                    Message.of(
                            "command.wrong.not-between",
                            Display.volts(targetVolts),
                            Display.volts(circuit.reference()),
                            Display.volts(circuit.stock())));
        }
        double floor = atLeast == null ? circuit.reference() : Typed.railVolts("--at-least", atLeast, minus);
        if (floor > targetVolts) {
            throw new BadOption(
                    "--at-least",
                    Message.of("command.wrong.floor-above-target", Display.volts(floor), Display.volts(targetVolts)));
        }
        double fraction = tolerance == null ? COMMON_TOLERANCE : Typed.fraction("--tolerance", tolerance, 0.01, 20);
        int count = most == null ? 2 : (int) Typed.whole("--most", most, 1, 2);
        return new Resistors.Wish(targetVolts, floor, fraction, count);
    }

    private List<Resistors.Candidate> choose(Circuit circuit, Resistors.Wish wish) {
        if (parts == null) {
            return Resistors.choose(circuit, 0, wish, series == null ? Series.E24 : Named.series("--series", series));
        }
        if (series != null || tolerance != null) {
            throw BadInput.of("command.wrong.parts-and-series");
        }
        return Resistors.choose(circuit, 0, wish, partsBox());
    }

    private PartsBox partsBox() {
        String csv = TextFile.read("--parts", parts);
        try {
            return PartsBox.of(csv);
        } catch (BadInput e) {
            throw new BadOption("--parts", e);
        }
    }

    private static Map<String, Object> json(Circuit circuit, Resistors.Candidate candidate) {
        return Json.object()
                .put("values", candidate.values())
                .put("arrangement", candidate.arrangement().id())
                .put("added", candidate.added())
                .put("voltage", circuit.signed(candidate.voltage()))
                .put("lowest", circuit.signed(candidate.lowest()))
                .put("highest", circuit.signed(candidate.highest()))
                .put("power", candidate.power())
                .map();
    }

    private Sheet sheet(Circuit circuit, double exact, List<Resistors.Candidate> candidates) {
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.across"),
                        words.of("command.leg." + circuit.place().id()))
                .pair(words.of("command.label.exact"), Display.ohms(exact))
                .blank();
        if (candidates.isEmpty()) {
            return sheet.say(words.of("command.resistor.none"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Resistors.Candidate candidate : candidates) {
            rows.add(List.of(
                    words.of(
                            "command.resistor." + candidate.arrangement().id(),
                            candidate.values().stream().map(Display::ohms).toArray()),
                    Display.volts(circuit.signed(candidate.voltage())),
                    Display.volts(circuit.signed(candidate.lowest())),
                    Display.volts(circuit.signed(candidate.highest())),
                    Display.of(candidate.power(), Unit.WATT)));
        }
        return sheet.table(
                1,
                List.of(
                        words.of("command.resistor.head.parts"),
                        words.of("command.resistor.head.voltage"),
                        words.of("command.resistor.head.lowest"),
                        words.of("command.resistor.head.highest"),
                        words.of("command.resistor.head.power")),
                rows);
    }
}
