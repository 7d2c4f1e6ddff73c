package railtrim.procedure;

import java.util.Map;

/**
 * Where to go back to when a reading stays outside its range: the step whose answer the range was worked out from, or whose work it proves.
 * Without one a reading taken wrongly earlier on would leave the person at a step that measuring again cannot mend.
 */
final class Mend {
    private static final Map<String, String> STEP = Map.ofEntries(
            Map.entry("ref.volts", "marking"),
            Map.entry("base.rail", "scope"),
            Map.entry("stock.volts", "base.on"),
            Map.entry("input.volts", "scope"),
            Map.entry("leg.again", "legs"),
            Map.entry("aim.lowest", "load"),
            Map.entry("trimmer.max", "pick"),
            Map.entry("trimmer.min", "pick"),
            Map.entry("solder.leg", "legs"),
            Map.entry("proof.total", "solder"),
            Map.entry("proof.other", "legs"),
            Map.entry("proof.rail", "legs"),
            Map.entry("smooth.low", "solder"),
            Map.entry("smooth.total", "proof"),
            Map.entry("down.max", "proof"),
            Map.entry("set.max", "proof"),
            Map.entry("set.volts", "budget"),
            Map.entry("soak.volts", "set.down"),
            Map.entry("cold.volts", "soak"),
            Map.entry("setting.total", "legs"),
            Map.entry("setting.trimmer", "legs"),
            Map.entry("hand.ohms", "choose"),
            Map.entry("fit.total", "fit"),
            Map.entry("fit.other", "fit"),
            Map.entry("fit.rail", "fit"),
            Map.entry("fit.loaded", "hand"));

    private Mend() {}

    /** Id of the step, "" where measuring again in the same step is all there is to do. A rail that reads dead was not switched on. */
    static String stepFor(String field, double value) {
        return notUp(field, value) ? "base.on" : STEP.getOrDefault(field, "");
    }

    /** Whether a rail that should have its stock voltage reads dead, volts. */
    static boolean notUp(String field, double value) {
        return RailFields.isStock(field) && Math.abs(value) < Ranges.DEAD;
    }
}
