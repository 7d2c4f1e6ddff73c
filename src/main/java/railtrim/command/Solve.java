package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Place;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** {@code solve}: the true leg and the current through it, from readings with different resistors across the leg. */
@Command(name = "solve", description = "${bundle:command.solve.about}")
final class Solve implements Asked {
    private final Words words;

    @Option(names = "--place", required = true, paramLabel = "PLACE", description = "${bundle:command.option.place}")
    private String place;

    @Option(
            names = "--reference",
            required = true,
            paramLabel = "1.25V",
            description = "${bundle:command.option.reference}")
    private String reference;

    @Option(
            names = "--point",
            required = true,
            paramLabel = "1k:3.1392V",
            description = "${bundle:command.option.point}")
    private List<String> points;

    @Option(names = "--bias", paramLabel = "60uA", description = "${bundle:command.option.bias}")
    private String bias;

    Solve(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Place where = CircuitOptions.placeNamed(place);
        double referenceVolts = Typed.reference("--reference", reference);
        double biasAmperes = bias == null ? 0 : CircuitOptions.biasTyped(bias);
        List<LineSolve.Point> readings =
                points.stream().map(text -> point(where, text)).toList();
        LineSolve.Solution solution = LineSolve.solve(where, referenceVolts, readings);
        Circuit circuit = CircuitOptions.plausible(solution.circuit(biasAmperes));
        boolean fits = fits(readings, solution);
        Json json = Json.object()
                .put("leg", solution.leg())
                .put("legCurrent", solution.legCurrent())
                .put("other", circuit.other())
                .put("worstResidual", solution.worstResidual())
                .put("residuals", List.copyOf(solution.residuals()))
                .put("stock", circuit.signed(circuit.stock()))
                .put("fits", fits);
        return Answer.of(fits, json.map(), sheet(readings, solution, circuit, fits));
    }

    /** A cheap meter's half width is the most by which a reading that belongs to the circuit may miss the line. */
    private static boolean fits(List<LineSolve.Point> readings, LineSolve.Solution solution) {
        for (int i = 0; i < readings.size(); i++) {
            double volts = readings.get(i).volts();
            if (Math.abs(solution.residuals().get(i))
                    > Meter.basic().voltsAt(volts).halfWidth(volts)) {
                return false;
            }
        }
        return true;
    }

    private Sheet sheet(List<LineSolve.Point> readings, LineSolve.Solution solution, Circuit circuit, boolean fits) {
        Sheet sheet = new Sheet()
                .pair(words.of("command.label.true-leg"), Display.ohms(solution.leg()))
                .pair(words.of("command.label.leg-current"), Display.of(solution.legCurrent(), Unit.AMPERE))
                .pair(words.of("command.label.other"), Display.ohms(circuit.other()))
                .pair(words.of("command.label.worst-residual"), Display.volts(solution.worstResidual()))
                .blank();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            LineSolve.Point reading = readings.get(i);
            rows.add(List.of(
                    Double.isInfinite(reading.added()) ? words.of("command.solve.open") : Display.ohms(reading.added()),
                    Display.volts(circuit.signed(reading.volts())),
                    Display.volts(circuit.signed(circuit.magnitude(reading.added())))));
        }
        sheet.table(
                0,
                List.of(
                        words.of("command.solve.head.added"),
                        words.of("command.solve.head.read"),
                        words.of("command.solve.head.line")),
                rows);
        if (!fits) {
            sheet.blank().say(words.of("command.solve.does-not-fit"));
        }
        return sheet;
    }

    private static LineSolve.Point point(Place where, String text) {
        int colon = text.indexOf(':');
        if (colon < 1 || colon == text.length() - 1) {
            throw new BadOption("--point", Message.of("command.wrong.point", Typed.shown(text)));
        }
        String ohms = text.substring(0, colon).strip();
        double added =
                ohms.toLowerCase(Locale.ROOT).equals("open") ? Double.POSITIVE_INFINITY : Typed.ohms("--point", ohms);
        double volts = Typed.railVolts("--point", text.substring(colon + 1), CircuitOptions.minusAllowed(where));
        return new LineSolve.Point(added, volts, 0);
    }
}
