package railtrim.command;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.Supply;
import railtrim.circuit.Tolerance;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Meter;
import railtrim.quantity.Propagation;
import railtrim.quantity.Unit;

/** {@code predict}: the output with a resistor added across the leg that lowers it. */
@Command(name = "predict", description = "${bundle:command.predict.about}")
final class Predict implements PlainLine.Command {
    private final Words words;

    @Mixin
    private CircuitOptions given = new CircuitOptions();

    @Option(names = "--added", required = true, paramLabel = "1k", description = "${bundle:command.option.added}")
    private String added;

    @Option(names = "--tolerance", paramLabel = "1%", description = "${bundle:command.option.predict-tolerance}")
    private String tolerance;

    @Option(
            names = "--reference-tolerance",
            paramLabel = "1%",
            description = "${bundle:command.option.reference-tolerance}")
    private String referenceTolerance;

    @Option(names = "--meter", paramLabel = "basic", description = "${bundle:command.option.predict-meter}")
    private String meter;

    Predict(Words words) {
        this.words = words;
    }

    @Override
    public boolean take(String option, String value) {
        switch (option) {
            case "--added" -> added = value;
            case "--tolerance" -> tolerance = value;
            case "--reference-tolerance" -> referenceTolerance = value;
            case "--meter" -> meter = value;
            default -> {
                return given.take(option, value);
            }
        }
        return true;
    }

    @Override
    public boolean filled() {
        return added != null && given.filled();
    }

    @Override
    public Answer answer() {
        Circuit circuit = given.circuit();
        Optional<Supply> supply = given.supply(circuit);
        double addedOhms = Typed.ohms("--added", added);
        double voltage = circuit.magnitude(addedOhms);
        Json json = Json.object()
                .put("leg", circuit.leg())
                .put("legTotal", circuit.total(addedOhms))
                .put("legCurrent", circuit.legCurrent())
                .put("other", circuit.other())
                .put("stock", circuit.signed(circuit.stock()))
                .put("voltage", circuit.signed(voltage))
                .put("across", Named.word(circuit.place().loweringLeg()));
        if (supply.isPresent()) {
            json.put("headroom", supply.get().ceiling() - circuit.stock());
        }
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.across"),
                        words.of("command.leg." + circuit.place().id()))
                .pair(words.of("command.label.leg"), Display.ohms(circuit.leg()))
                .pair(words.of("command.label.leg-total"), Display.ohms(circuit.total(addedOhms)))
                .pair(words.of("command.label.leg-current"), Display.of(circuit.legCurrent(), Unit.AMPERE))
                .pair(words.of("command.label.stock"), Display.volts(circuit.signed(circuit.stock())))
                .pair(words.of("command.label.voltage"), Display.volts(circuit.signed(voltage)));
        if (tolerance != null || referenceTolerance != null) {
            worstCase(circuit, addedOhms, json, sheet);
        }
        if (meter != null) {
            doubt(circuit, addedOhms, NamedMeter.of("--meter", meter), json, sheet);
        }
        return Answer.done(json.map(), sheet);
    }

    private void worstCase(Circuit circuit, double addedOhms, Json json, Sheet sheet) {
        double resistors = tolerance == null ? 0 : Typed.fraction("--tolerance", tolerance, 0, 50);
        double spread =
                referenceTolerance == null ? 0 : Typed.fraction("--reference-tolerance", referenceTolerance, 0, 50);
        double reference = circuit.reference();
        Tolerance worst =
                Tolerance.of(circuit, addedOhms, reference * (1 - spread), reference * (1 + spread), resistors);
        double one = circuit.signed(worst.lowest());
        double two = circuit.signed(worst.highest());
        json.put("lowest", one).put("highest", two).put("standardSpread", worst.standard());
        sheet.pair(
                words.of("command.label.worst-case"),
                words.of("command.predict.from-to", Display.volts(one), Display.volts(two)));
    }

    /** As the output and the leg were read with such a meter. */
    private void doubt(Circuit circuit, double addedOhms, Meter read, Json json, Sheet sheet) {
        double stock = circuit.stock();
        Propagation.Result result = Propagation.of(
                values -> Circuit.fromStock(circuit.place(), circuit.reference(), values[0], values[1], circuit.bias())
                        .magnitude(values[2]),
                List.of(
                        new Propagation.Input(
                                "stock", stock, read.voltsAt(stock).standardUncertainty(stock)),
                        new Propagation.Input(
                                "leg", circuit.leg(), read.ohmsAt(circuit.leg()).standardUncertainty(circuit.leg())),
                        new Propagation.Input(
                                "added", addedOhms, read.ohmsAt(addedOhms).standardUncertainty(addedOhms))));
        json.put("standardUncertainty", result.standard())
                .put("expanded", result.expanded())
                .put("mostFrom", result.largest().input().id());
        sheet.pair(
                words.of("command.label.with-doubt"),
                Display.withUncertainty(circuit.signed(result.value()), result.expanded(), Unit.VOLT));
    }
}
