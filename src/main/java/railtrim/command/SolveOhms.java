package railtrim.command;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import railtrim.circuit.InCircuit;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Meter;
import railtrim.quantity.Unit;

/** The two resistors and the load behind them, from the three resistances that can be read on the board with the power off. */
final class SolveOhms {
    private static final List<String> PAIRS = List.of("out-adj", "adj-gnd", "out-gnd");

    private final Words words;
    private final Meter meter;
    private final double leads;

    SolveOhms(Words words, Meter meter, double leads) {
        this.words = words;
        this.meter = meter;
        this.leads = leads;
    }

    /** @param typed each a pair of pins, a colon and what the meter reads there */
    Answer answer(List<String> typed) {
        Map<String, Double> read = new HashMap<>();
        for (String each : typed) {
            int colon = each.indexOf(':');
            String pair = colon < 0 ? "" : each.substring(0, colon).strip();
            if (!PAIRS.contains(pair) || read.containsKey(pair)) {
                throw new BadOption("--ohms", Message.of("command.wrong.ohms", Typed.shown(each)));
            }
            read.put(pair, Typed.ohmsLessLeads("--ohms", each.substring(colon + 1), leads));
        }
        if (read.size() != PAIRS.size()) {
            throw BadInput.of("command.wrong.ohms-three");
        }
        double[] readings = PAIRS.stream().mapToDouble(read::get).toArray();
        double[] standards = new double[PAIRS.size()];
        for (int i = 0; i < standards.length; i++) {
            standards[i] = meter.ohmsAt(readings[i]).standardUncertainty(readings[i]);
        }
        InCircuit.DeltaKnown known = InCircuit.solve(readings, standards);
        Json json = Json.object()
                .put("upper", known.delta().outAdjust())
                .put("lower", known.delta().adjustGround())
                .put("load", known.delta().outGround())
                .put("upperStandardUncertainty", known.outAdjustUncertainty())
                .put("lowerStandardUncertainty", known.adjustGroundUncertainty())
                .put("loadStandardUncertainty", known.outGroundUncertainty());
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.solved-upper"),
                        told(known.delta().outAdjust(), known.outAdjustUncertainty()))
                .pair(
                        words.of("command.label.solved-lower"),
                        told(known.delta().adjustGround(), known.adjustGroundUncertainty()))
                .pair(
                        words.of("command.label.solved-load"),
                        told(known.delta().outGround(), known.outGroundUncertainty()));
        return Answer.done(json.map(), sheet);
    }

    private static String told(double ohms, double standard) {
        return Display.withUncertainty(ohms, 2 * standard, Unit.OHM);
    }
}
