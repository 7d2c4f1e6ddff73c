package railtrim.command;

import java.util.Optional;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.circuit.Place;
import railtrim.circuit.Supply;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** The options that give a circuit: where the reference sits, and either what was measured or both resistors of the divider. */
final class CircuitOptions {
    /** A floating adjust pin draws up to 0.12 mA itself, so its divider carries far more than this. Our own limit. */
    private static final double LEAST_CURRENT_FLOATING = 0.2e-3;
    /** A feedback pin draws next to nothing. Our own limit. */
    private static final double LEAST_CURRENT_FEEDBACK = 1e-6;
    /** No divider wastes a tenth of an ampere. Our own limit. */
    private static final double MOST_CURRENT = 0.1;

    private static final double MOST_BIAS = 1e-3;

    @Option(names = "--place", required = true, paramLabel = "PLACE", description = "${bundle:command.option.place}")
    private String place;

    @Option(
            names = "--reference",
            required = true,
            paramLabel = "1.25V",
            description = "${bundle:command.option.reference}")
    private String reference;

    @Option(names = "--stock", paramLabel = "3.555V", description = "${bundle:command.option.stock}")
    private String stock;

    @Option(names = "--leg", paramLabel = "220R", description = "${bundle:command.option.leg}")
    private String leg;

    @Option(names = "--upper", paramLabel = "120R", description = "${bundle:command.option.upper}")
    private String upper;

    @Option(names = "--lower", paramLabel = "220R", description = "${bundle:command.option.lower}")
    private String lower;

    @Option(names = "--bias", paramLabel = "60uA", description = "${bundle:command.option.bias}")
    private String bias;

    @Option(names = "--input", paramLabel = "12V", description = "${bundle:command.option.input}")
    private String input;

    @Option(names = "--dropout", paramLabel = "1.2V", description = "${bundle:command.option.dropout}")
    private String dropout;

    /** @return false where there is no option of that name */
    boolean take(String option, String value) {
        switch (option) {
            case "--place" -> place = value;
            case "--reference" -> reference = value;
            case "--stock" -> stock = value;
            case "--leg" -> leg = value;
            case "--upper" -> upper = value;
            case "--lower" -> lower = value;
            case "--bias" -> bias = value;
            case "--input" -> input = value;
            case "--dropout" -> dropout = value;
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Whether the options are there that no circuit goes without. */
    boolean filled() {
        return place != null && reference != null;
    }

    /** @throws BadOption or {@link BadInput} where the options do not make one circuit that can be */
    Circuit circuit() {
        Place where = place();
        double referenceVolts = Typed.reference("--reference", reference);
        boolean measured = stock != null || leg != null;
        boolean resistors = upper != null || lower != null;
        if (measured == resistors
                || measured && (stock == null || leg == null)
                || resistors && (upper == null || lower == null)) {
            throw BadInput.of("command.wrong.circuit");
        }
        double biasAmperes = bias == null ? 0 : biasTyped(bias);
        Circuit circuit = measured
                ? fromStock(where, referenceVolts, biasAmperes)
                : Circuit.fromResistors(
                        where, referenceVolts, Typed.ohms("--upper", upper), Typed.ohms("--lower", lower), biasAmperes);
        return plausible(circuit);
    }

    Place place() {
        return placeNamed(place);
    }

    /** What feeds the regulator, where the input voltage was given. Without a dropout the output is taken to reach the input, the worst case. */
    Optional<Supply> supply(Circuit circuit) {
        if (input == null) {
            if (dropout != null) {
                throw BadInput.of("command.wrong.dropout-alone");
            }
            return Optional.empty();
        }
        double inputVolts = Typed.railVolts("--input", input, minusAllowed(circuit.place()));
        double dropoutVolts = dropout == null ? 0 : Typed.between("--dropout", dropout, Unit.VOLT, 0, 20);
        Supply supply = new Supply(inputVolts, dropoutVolts);
        if (circuit.stock() > supply.ceiling()) {
            throw BadInput.of(
                    "command.wrong.input-too-low",
                    Display.volts(circuit.signed(circuit.stock())),
                    Display.volts(circuit.signed(inputVolts)),
                    Display.volts(dropoutVolts));
        }
        return Optional.of(supply);
    }

    static Place placeNamed(String id) {
        try {
            return Place.of(id);
        } catch (BadInput e) {
            throw new BadOption("--place", Message.of(e.told().key(), Typed.shown(id)));
        }
    }

    static double biasTyped(String text) {
        return Typed.between("--bias", text, Unit.AMPERE, 0, MOST_BIAS);
    }

    static boolean minusAllowed(Place place) {
        return place.negative() || place == Place.SHUNT;
    }

    private Circuit fromStock(Place where, double referenceVolts, double biasAmperes) {
        double stockVolts = Typed.railVolts("--stock", stock, minusAllowed(where));
        double legOhms = Typed.ohms("--leg", leg);
        if (stockVolts <= referenceVolts) {
            throw new BadOption(
                    "--stock",
                    Message.of(
                            "command.wrong.stock-not-above-reference",
                            Display.volts(stockVolts),
                            Display.volts(referenceVolts)));
        }
        return Circuit.fromStock(where, referenceVolts, stockVolts, legOhms, biasAmperes);
    }

    /** A thousand times too much or too little current is the mark of a kΩ typed for Ω, or the other way round. */
    static Circuit plausible(Circuit circuit) {
        boolean floating = circuit.place() == Place.OUT_ADJ || circuit.place() == Place.NEGATIVE_OUT_ADJ;
        double least = floating ? LEAST_CURRENT_FLOATING : LEAST_CURRENT_FEEDBACK;
        double current = circuit.legCurrent();
        if (current < least || current > MOST_CURRENT) {
            throw BadInput.of(
                    "command.wrong.leg-current",
                    Display.of(current, Unit.AMPERE),
                    Typed.limit(least, Unit.AMPERE),
                    Typed.limit(MOST_CURRENT, Unit.AMPERE));
        }
        if (current <= circuit.bias()) {
            throw new BadOption(
                    "--bias",
                    Message.of(
                            "command.wrong.bias-too-high",
                            Display.of(circuit.bias(), Unit.AMPERE),
                            Display.of(current, Unit.AMPERE)));
        }
        if (circuit.stock() > Typed.MOST_VOLTS) {
            throw BadInput.of("command.wrong.stock-too-high", Display.volts(circuit.stock()));
        }
        return circuit;
    }
}
