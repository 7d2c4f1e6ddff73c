package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.Faults;
import railtrim.circuit.Supply;
import railtrim.procedure.Words;
import railtrim.quantity.Display;
import railtrim.quantity.Message;

/** {@code faults}: the output for each short, each open joint and the wrong leg. */
@Command(name = "faults", description = "${bundle:command.faults.about}")
final class FaultTable implements Asked {
    private final Words words;

    @Mixin
    private CircuitOptions given;

    @Option(names = "--added", paramLabel = "1k", description = "${bundle:command.option.added}")
    private String added;

    @Option(names = "--rated-high", paramLabel = "3.6V", description = "${bundle:command.option.rated-high}")
    private String ratedHigh;

    FaultTable(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Circuit circuit = given.circuit();
        Optional<Supply> supply = given.supply(circuit);
        double addedOhms = added == null ? Double.POSITIVE_INFINITY : Typed.ohms("--added", added);
        List<Faults.Effect> effects = Faults.table(circuit, addedOhms, supply.orElse(null), highestAllowed(circuit));
        List<Object> list = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Faults.Effect effect : effects) {
            list.add(Json.object()
                    .put("fault", effect.fault().id())
                    .put("voltage", signed(circuit, effect.voltage()))
                    .put("harmful", effect.harmful())
                    .put("towardsInput", effect.towardsInput())
                    .map());
            rows.add(List.of(
                    words.of("slip." + effect.fault().id()),
                    words.of(effect.harmful() ? "command.faults.harmful" : "command.faults.harmless"),
                    effect.voltage().isPresent()
                            ? Display.volts(circuit.signed(effect.voltage().getAsDouble()))
                            : words.of("slip.towards-input")));
        }
        Sheet sheet = new Sheet()
                .pair(words.of("command.label.stock"), Display.volts(circuit.signed(circuit.stock())))
                .pair(
                        words.of("command.label.across"),
                        words.of("command.leg." + circuit.place().id()))
                .blank()
                .table(
                        2,
                        List.of(
                                words.of("command.faults.head.fault"),
                                words.of("command.faults.head.harm"),
                                words.of("command.faults.head.voltage")),
                        rows);
        if (supply.isEmpty()) {
            sheet.blank().say(words.of("command.faults.no-input"));
        }
        return Answer.done(Json.object().put("faults", list).map(), sheet);
    }

    private double highestAllowed(Circuit circuit) {
        if (ratedHigh == null) {
            return Double.NaN;
        }
        double volts = Typed.railVolts("--rated-high", ratedHigh, CircuitOptions.minusAllowed(circuit.place()));
        if (volts < circuit.stock()) {
            throw new BadOption(
                    "--rated-high",
                    Message.of(
                            "command.wrong.rated-below-stock", Display.volts(volts), Display.volts(circuit.stock())));
        }
        return volts;
    }

    private static OptionalDouble signed(Circuit circuit, OptionalDouble magnitude) {
        return magnitude.isPresent() ? OptionalDouble.of(circuit.signed(magnitude.getAsDouble())) : magnitude;
    }
}
