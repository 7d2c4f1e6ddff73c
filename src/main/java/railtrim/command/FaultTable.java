package railtrim.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Bridges;
import railtrim.circuit.Circuit;
import railtrim.circuit.Faults;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Supply;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
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

    @Option(names = "--package", paramLabel = "SOT-223", description = "${bundle:command.option.package}")
    private String outline;

    @Option(names = "--pins", paramLabel = "adjust,output,input", description = "${bundle:command.option.pins}")
    private String pins;

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
        List<Object> bridged = bridges(circuit, supply.orElse(null), rows);
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
        Json json = Json.object().put("faults", list);
        if (outline != null) {
            json.put("bridges", bridged);
        }
        return Answer.done(json.map(), sheet);
    }

    /** Neighbouring pins joined by a blob of solder. */
    private List<Object> bridges(Circuit circuit, Supply supply, List<List<String>> rows) {
        if ((outline == null) != (pins == null)) {
            throw BadInput.of("command.wrong.package-alone");
        }
        if (outline == null) {
            return List.of();
        }
        List<Object> list = new ArrayList<>();
        Outline shape = Named.outline("--package", outline);
        for (Bridges.Bridge bridge : Bridges.table(circuit, shape, roles(shape), supply, highestAllowed(circuit))) {
            list.add(Json.object()
                    .put("pins", List.of(bridge.first(), bridge.second()))
                    .put(
                            "roles",
                            List.of(bridge.firstRole().id(), bridge.secondRole().id()))
                    .put("voltage", signed(circuit, bridge.voltage()))
                    .put("harmful", bridge.harmful())
                    .put("towardsInput", bridge.towardsInput())
                    .map());
            rows.add(List.of(
                    words.of(
                            "slip.bridge",
                            Integer.toString(bridge.first()),
                            Integer.toString(bridge.second()),
                            words.of("slip.role." + bridge.firstRole().id()),
                            words.of("slip.role." + bridge.secondRole().id())),
                    words.of(bridge.harmful() ? "command.faults.harmful" : "command.faults.harmless"),
                    bridge.voltage().isPresent()
                            ? Display.volts(circuit.signed(bridge.voltage().getAsDouble()))
                            : words.of(bridge.towardsInput() ? "slip.towards-input" : "slip.unsure")));
        }
        return list;
    }

    private List<PinRole> roles(Outline shape) {
        List<PinRole> roles = new ArrayList<>();
        for (String role : pins.split(",", -1)) {
            try {
                roles.add(PinRole.of(role.strip()));
            } catch (BadInput e) {
                throw new BadOption(
                        "--pins",
                        Message.of(
                                "command.wrong.pin-role",
                                Typed.shown(role),
                                Arrays.stream(PinRole.values()).map(PinRole::id).collect(Collectors.joining(", "))));
            }
        }
        if (roles.size() != shape.pins()) {
            throw new BadOption(
                    "--pins",
                    Message.of(
                            "command.wrong.pin-count",
                            Integer.toString(roles.size()),
                            shape.id(),
                            Integer.toString(shape.pins())));
        }
        return roles;
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
