package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import railtrim.circuit.Circuit;
import railtrim.circuit.Doubt;
import railtrim.circuit.LineCheck;
import railtrim.circuit.LineSolve;
import railtrim.circuit.Place;
import railtrim.parts.Series;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Propagation;
import railtrim.quantity.QuantityReader;
import railtrim.quantity.Unit;

/** The leg and the current through it by the straight line through the readings, and how sure they are. */
final class SolveLine {
    /** A leg less sure than this is not worth calculating with; our own limit. */
    private static final double COARSE = 0.25;

    private final Words words;
    private final Meter read;
    private final boolean guessed;
    private final double leads;
    private final Place where;
    private final double reference;

    /**
     * @param guessed whether nobody said which meter it was
     * @param leads what the meter shows with its leads touching, ohms
     */
    SolveLine(Words words, Meter read, boolean guessed, double leads, Place where, double reference) {
        this.words = words;
        this.read = read;
        this.guessed = guessed;
        this.leads = leads;
        this.where = where;
        this.reference = reference;
    }

    /** @param target the output wished for, as typed, or null */
    Answer answer(double bias, List<String> points, String target) {
        List<LineSolve.Point> readings = points.stream().map(this::point).toList();
        LineSolve.Solution solution = LineSolve.solve(where, reference, readings);
        Circuit circuit = CircuitOptions.plausible(solution.circuit(bias));
        Propagation.Result leg = Doubt.leg(where, reference, ofReference(), readings);
        Propagation.Result current = Doubt.legCurrent(where, reference, ofReference(), readings);
        LineCheck check = LineCheck.of(where, reference, readings);
        boolean fits = fits(readings, solution) && check.suspect().isEmpty();
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
        Sheet sheet = sheet(circuit, leg, current);
        if (target != null) {
            added(circuit, readings, target, json, sheet);
        }
        table(readings, solution, circuit, sheet);
        if (guessed) {
            points.stream().flatMap(point -> finer(point).stream()).findFirst().ifPresent(sheet.blank()::say);
        }
        doubts(leg, check, fits, sheet);
        if (!(leg.expanded() <= COARSE * leg.value())) {
            further(solution.circuit(0), readings, leg.expanded(), json, sheet);
        }
        return Answer.of(fits, json.map(), sheet);
    }

    private double ofReference() {
        return read.voltsAt(reference).standardUncertainty(reference);
    }

    /** The resistor for a target, with what the readings leave open of it. */
    private void added(Circuit circuit, List<LineSolve.Point> readings, String target, Json json, Sheet sheet) {
        double volts = Typed.railVolts("--target", target, CircuitOptions.minusAllowed(where));
        if (!(volts > reference && volts < circuit.stock())) {
            throw new BadOption(
                    "--target",
                    Message.of(
                            "command.wrong.not-between",
                            Display.volts(volts),
                            Display.volts(reference),
                            Display.volts(circuit.stock())));
        }
        Propagation.Result added = Doubt.addedFor(where, reference, ofReference(), readings, volts);
        json.put("added", added.value())
                .put("addedStandardUncertainty", added.standard())
                .put("addedMostFrom", added.largest().input().id());
        sheet.pair(words.of("command.label.exact"), Display.withUncertainty(added.value(), added.expanded(), Unit.OHM));
        if (!(added.expanded() <= COARSE * added.value())) {
            coarse("command.solve.coarse-added", added, sheet);
        }
    }

    /** The half width is the most by which a reading that belongs to the circuit may miss the line. */
    private boolean fits(List<LineSolve.Point> readings, LineSolve.Solution solution) {
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
            coarse("command.solve.coarse", leg, sheet);
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

    /** What one more reading with the same meter would reach, a tenth below stock or half way to the reference. */
    private void further(Circuit circuit, List<LineSolve.Point> readings, double now, Json json, Sheet sheet) {
        double volts = Math.max(0.9 * circuit.stock(), (circuit.stock() + reference) / 2);
        double resistor = Series.E12.near(circuit.addedFor(volts)).above();
        List<LineSolve.Point> more = new ArrayList<>();
        // As the circuit would read, so that the readings there are do not pull the sum out of true.
        readings.forEach(reading -> more.add(new LineSolve.Point(
                reading.added(),
                circuit.magnitude(reading.added()),
                reading.uncertainty(),
                reading.addedUncertainty())));
        more.add(point(resistor, circuit.magnitude(resistor)));
        Propagation.Result leg = Doubt.leg(where, reference, ofReference(), more);
        if (leg.expanded() >= now) {
            return;
        }
        json.put("furtherAdded", resistor).put("furtherLegExpanded", leg.expanded());
        sheet.say(words.of(
                "command.solve.further",
                Display.part(resistor),
                Display.withUncertainty(leg.value(), leg.expanded(), Unit.OHM)));
    }

    /** A reading with more digits than a plain meter shows was taken with a better one. */
    private Optional<String> finer(String point) {
        String volts = point.substring(point.indexOf(':') + 1);
        double lastDigit = QuantityReader.lastDigit(volts, Unit.VOLT);
        double shown =
                read.voltsAt(QuantityReader.read(volts, Unit.VOLT).value()).resolution();
        return lastDigit < 0.99 * shown
                ? Optional.of(words.of("command.solve.finer", volts.strip(), Display.brief(shown, Unit.VOLT)))
                : Optional.empty();
    }

    /** Which reading would help most, and how sure the result would be with that one from a fine meter. */
    private void coarse(String key, Propagation.Result result, Sheet sheet) {
        Propagation.Input input = result.largest().input();
        double better = finest(input);
        String name = named(input.id());
        sheet.say(words.of(key, name));
        if (better < input.standard()) {
            String whole =
                    Display.withUncertainty(result.value(), 2 * result.standardWith(input.id(), better), Unit.OHM);
            sheet.say(words.of("command.solve.with-fine", name, whole));
        }
    }

    private static double finest(Propagation.Input input) {
        return input.id().startsWith("added.")
                ? Meter.fine().ohmsAt(input.value()).standardUncertainty(input.value())
                : Meter.fine().voltsAt(input.value()).standardUncertainty(input.value());
    }

    /** "volts.2" as "the voltage of point 2". */
    private String named(String input) {
        int dot = input.indexOf('.');
        return dot < 0
                ? words.of("command.solve.input." + input)
                : words.of("command.solve.input." + input.substring(0, dot), input.substring(dot + 1));
    }

    private Sheet sheet(Circuit circuit, Propagation.Result leg, Propagation.Result current) {
        return new Sheet()
                .pair(
                        words.of("command.label.true-leg"),
                        Display.withUncertainty(leg.value(), leg.expanded(), Unit.OHM))
                .pair(
                        words.of("command.label.leg-current"),
                        Display.withUncertainty(current.value(), current.expanded(), Unit.AMPERE))
                .pair(words.of("command.label.other"), Display.ohms(circuit.other()));
    }

    private void table(List<LineSolve.Point> readings, LineSolve.Solution solution, Circuit circuit, Sheet sheet) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            LineSolve.Point reading = readings.get(i);
            rows.add(List.of(
                    Double.isInfinite(reading.added()) ? words.of("command.solve.open") : Display.ohms(reading.added()),
                    Display.withUncertainty(circuit.signed(reading.volts()), 2 * reading.uncertainty(), Unit.VOLT),
                    Display.volts(circuit.signed(circuit.magnitude(reading.added()))),
                    Display.volts(solution.residuals().get(i))));
        }
        sheet.blank()
                .table(
                        0,
                        List.of(
                                words.of("command.solve.head.added"),
                                words.of("command.solve.head.read"),
                                words.of("command.solve.head.line"),
                                words.of("command.solve.head.off")),
                        rows);
    }

    private LineSolve.Point point(String text) {
        int colon = text.indexOf(':');
        if (colon < 1 || colon == text.length() - 1) {
            throw new BadOption("--point", Message.of("command.wrong.point", Typed.shown(text)));
        }
        String ohms = text.substring(0, colon).strip();
        double added = ohms.toLowerCase(Locale.ROOT).equals("open")
                ? Double.POSITIVE_INFINITY
                : Typed.ohmsLessLeads("--point", ohms, leads);
        double volts = Typed.railVolts("--point", text.substring(colon + 1), CircuitOptions.minusAllowed(where));
        return point(added, volts);
    }

    private LineSolve.Point point(double added, double volts) {
        double ofAdded = Double.isInfinite(added) ? 0 : read.ohmsAt(added).standardUncertainty(added);
        return new LineSolve.Point(added, volts, read.voltsAt(volts).standardUncertainty(volts), ofAdded);
    }
}
