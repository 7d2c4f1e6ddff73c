package railtrim.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.Supply;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;

/** {@code predict}: the output with a resistor added across the leg that lowers it. */
@Command(name = "predict", description = "${bundle:command.predict.about}")
final class Predict implements Asked {
    private final Words words;

    @Mixin
    private CircuitOptions given;

    @Option(names = "--added", required = true, paramLabel = "1k", description = "${bundle:command.option.added}")
    private String added;

    Predict(Words words) {
        this.words = words;
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
        supply.ifPresent(feed -> json.put("headroom", feed.ceiling() - circuit.stock()));
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.across"),
                        words.of("command.leg." + circuit.place().id()))
                .pair(words.of("command.label.leg"), Display.ohms(circuit.leg()))
                .pair(words.of("command.label.leg-total"), Display.ohms(circuit.total(addedOhms)))
                .pair(words.of("command.label.leg-current"), Display.of(circuit.legCurrent(), Unit.AMPERE))
                .pair(words.of("command.label.stock"), Display.volts(circuit.signed(circuit.stock())))
                .pair(words.of("command.label.voltage"), Display.volts(circuit.signed(voltage)));
        return Answer.done(json.map(), sheet);
    }
}
