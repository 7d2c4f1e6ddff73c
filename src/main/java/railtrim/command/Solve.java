package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.Doubt;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Place;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Propagation;
import railtrim.quantity.Unit;

/** {@code solve}: the true leg and the current through it, from readings with different resistors across the leg. */
@Command(name = "solve", description = "${bundle:command.solve.about}")
final class Solve implements Asked {
    /** A leg less sure than this is not worth calculating with; our own limit. */
    private static final double COARSE = 0.25;

    private final Words words;

    @Option(names = "--place", paramLabel = "PLACE", description = "${bundle:command.option.solve-place}")
    private String place;

    @Option(names = "--reference", paramLabel = "1.25V", description = "${bundle:command.option.reference}")
    private String reference;

    @Option(names = "--point", paramLabel = "1k:3.1392V", description = "${bundle:command.option.point}")
    private List<String> points = List.of();

    @Option(names = "--out-adj", paramLabel = "1.25V", description = "${bundle:command.option.out-adj}")
    private String outAdjust;

    @Option(names = "--adj-gnd", paramLabel = "2.3V", description = "${bundle:command.option.adj-gnd}")
    private String adjustGround;

    @Option(names = "--ohms", paramLabel = "out-adj:78.9R", description = "${bundle:command.option.ohms}")
    private List<String> ohms = List.of();

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.solve-meter}")
    private String meter;

    @Option(names = "--bias", paramLabel = "60uA", description = "${bundle:command.option.bias}")
    private String bias;

    Solve(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Meter read = Named.meter("--meter", meter == null ? "basic" : meter);
        if (!ohms.isEmpty()) {
            if (!points.isEmpty() || place != null || reference != null || outAdjust != null || adjustGround != null) {
                throw BadInput.of("command.wrong.ohms-alone");
            }
            return new SolveOhms(words, read).answer(ohms);
        }
        if (reference == null) {
            throw BadInput.of("command.wrong.solve-reference");
        }
        double referenceVolts = Typed.reference("--reference", reference);
        if (outAdjust != null || adjustGround != null) {
            return new SolvePlace(words, read).answer(referenceVolts, outAdjust, adjustGround, place, points);
        }
        if (place == null || points.isEmpty()) {
            throw BadInput.of("command.wrong.solve-which");
        }
        return line(CircuitOptions.placeNamed(place), referenceVolts, read);
    }

    private Answer line(Place where, double referenceVolts, Meter read) {
        double biasAmperes = bias == null ? 0 : CircuitOptions.biasTyped(bias);
        List<LineSolve.Point> readings =
                points.stream().map(text -> point(where, text, read)).toList();
        LineSolve.Solution solution = LineSolve.solve(where, referenceVolts, readings);
        Circuit circuit = CircuitOptions.plausible(solution.circuit(biasAmperes));
        double ofReference = read.voltsAt(referenceVolts).standardUncertainty(referenceVolts);
        Propagation.Result leg = Doubt.leg(where, referenceVolts, ofReference, readings);
        Propagation.Result current = Doubt.legCurrent(where, referenceVolts, ofReference, readings);
        LineCheck check = LineCheck.of(where, referenceVolts, readings);
        boolean fits = fits(readings, solution, read) && check.suspect().isEmpty();
        Json json = Json.object()
                .put("leg", solution.leg())
                .put("legCurrent", solution.legCurrent())
                .put("other", circuit.other())
                .put("worstResidual", solution.worstResidual())
                .put("residuals", List.copyOf(solution.residuals()))
                .put("stock", circuit.signed(circuit.stock()))
                .put("fits", fits)
                .put("legStandardUncertainty", leg.standard())
                .put("legExpanded", leg.expanded())
                .put("legCurrentStandardUncertainty", current.standard())
                .put("mostFrom", leg.largest().input().id())
                .put("uncertaintiesOff", List.copyOf(check.off()));
        check.suspect()
                .ifPresent(suspect -> json.put("suspect", suspect.index() + 1)
                        .put("suspectOff", suspect.off())
                        .put("suspectSure", suspect.sure()));
        Sheet sheet = sheet(readings, solution, circuit, leg, current);
        doubts(leg, check, fits, sheet);
        return Answer.of(fits, json.map(), sheet);
    }

    /** The half width is the most by which a reading that belongs to the circuit may miss the line. */
    private static boolean fits(List<LineSolve.Point> readings, LineSolve.Solution solution, Meter read) {
        for (int i = 0; i < readings.size(); i++) {
            double volts = readings.get(i).volts();
            if (Math.abs(solution.residuals().get(i)) > read.voltsAt(volts).halfWidth(volts)) {
                return false;
            }
        }
        return true;
    }

    private void doubts(Propagation.Result leg, LineCheck check, boolean fits, Sheet sheet) {
        if (!(leg.expanded() <= COARSE * leg.value())) {
            sheet.say(
                    words.of("command.solve.coarse", named(leg.largest().input().id())));
        }
        check.suspect()
                .ifPresent(suspect -> sheet.blank()
                        .say(words.of(
                                suspect.sure() ? "command.solve.suspect" : "command.solve.suspect-unsure",
                                Integer.toString(suspect.index() + 1),
                                String.format(Locale.ROOT, "%.1f", suspect.off()))));
        if (!fits) {
            sheet.blank().say(words.of("command.solve.does-not-fit"));
        }
    }

    /** "volts.2" as "the voltage of point 2". */
    private String named(String input) {
        int dot = input.indexOf('.');
        return dot < 0
                ? words.of("command.solve.input." + input)
                : words.of("command.solve.input." + input.substring(0, dot), input.substring(dot + 1));
    }

    private Sheet sheet(
            List<LineSolve.Point> readings,
            LineSolve.Solution solution,
            Circuit circuit,
            Propagation.Result leg,
            Propagation.Result current) {
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.true-leg"),
                        Display.withUncertainty(leg.value(), leg.expanded(), Unit.OHM))
                .pair(
                        words.of("command.label.leg-current"),
                        Display.withUncertainty(current.value(), current.expanded(), Unit.AMPERE))
                .pair(words.of("command.label.other"), Display.ohms(circuit.other()))
                .pair(words.of("command.label.worst-residual"), Display.volts(solution.worstResidual()))
                .blank();
        List<List<String>> rows = new ArrayList<>();
        for (LineSolve.Point reading : readings) {
            rows.add(List.of(
                    Double.isInfinite(reading.added()) ? words.of("command.solve.open") : Display.ohms(reading.added()),
                    Display.volts(circuit.signed(reading.volts())),
                    Display.volts(circuit.signed(circuit.magnitude(reading.added())))));
        }
        return sheet.table(
                0,
                List.of(
                        words.of("command.solve.head.added"),
                        words.of("command.solve.head.read"),
                        words.of("command.solve.head.line")),
                rows);
    }

    private static LineSolve.Point point(Place where, String text, Meter read) {
        int colon = text.indexOf(':');
        if (colon < 1 || colon == text.length() - 1) {
            throw new BadOption("--point", Message.of("command.wrong.point", Typed.shown(text)));
        }
        String ohms = text.substring(0, colon).strip();
        double added =
                ohms.toLowerCase(Locale.ROOT).equals("open") ? Double.POSITIVE_INFINITY : Typed.ohms("--point", ohms);
        double volts = Typed.railVolts("--point", text.substring(colon + 1), CircuitOptions.minusAllowed(where));
        double ofAdded = Double.isInfinite(added) ? 0 : read.ohmsAt(added).standardUncertainty(added);
        return new LineSolve.Point(added, volts, read.voltsAt(volts).standardUncertainty(volts), ofAdded);
    }
}
