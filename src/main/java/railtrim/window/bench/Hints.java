package railtrim.window.bench;

import java.util.Map;
import java.util.Set;
import railtrim.procedure.Field;
import railtrim.procedure.Figures;
import railtrim.quantity.Unit;

/** Which deed on the bench answers a question: the last part of the hint's key. */
final class Hints {
    private static final Set<String> ALONE =
            Set.of("trimmer.max", "trimmer.min", "trimmer.max.again", "setting.trimmer", "setting.again");
    private static final Set<String> LOWEST = Set.of("smooth.low", "trimmer.min");
    private static final Set<String> HIGHEST = Set.of(
            "trimmer.max", "trimmer.max.again", "trimmer.at", "proof.total", "smooth.total", "down.max", "set.max");
    private static final Set<String> COPIED = Set.of("rail.highest", "rated.low", "rated.high", "load.current");
    private static final Set<String> CHOSEN = Set.of("aim.drop", "aim.lowest", "target.volts", "iron.set");

    /** Questions whose answer is neither a reading nor on the papers. */
    private static final Map<String, String> ANSWERS = Map.ofEntries(
            Map.entry("work.off", "plug"),
            Map.entry("work.ground", "yours"),
            Map.entry("place.leg", "other-pair"),
            Map.entry("temp.how", "thermometer"),
            Map.entry("trimmer.pick", "first"),
            Map.entry("trimmer.stop", "stop"),
            Map.entry("smooth.feel", "turn-watch"),
            Map.entry("down.end", "end"),
            Map.entry("run.load", "yours"),
            Map.entry("fault.again", "yours"),
            Map.entry("fault.text", "watched"),
            Map.entry("target.reason", "yours"),
            Map.entry("cool.how", "cool"),
            Map.entry("res.series", "yours"),
            Map.entry("res.tolerance", "yours"),
            Map.entry("res.most", "yours"),
            Map.entry("res.pick", "first"),
            Map.entry("fit.left", "parts"),
            Map.entry("record.undo", "parts"),
            Map.entry("record.notes", "yours"),
            Map.entry("resume.where", "yours"));

    private Hints() {}

    static String of(Field field, Figures figures) {
        String id = field.id();
        if (field instanceof Field.Switch change) {
            return change.on() ? "switch-on" : "switch-off";
        }
        if (id.endsWith(".pair") && !id.startsWith("place")) {
            return id.startsWith("clip") ? "clip" : id.startsWith("fit") ? "solder-resistor" : "solder-trimmer";
        }
        if (id.endsWith(".seen")) {
            return "watch";
        }
        if (field instanceof Field.Number number) {
            return reading(id, number.unit(), figures);
        }
        return HIGHEST.contains(id) ? "turn-up" : ANSWERS.getOrDefault(id, "papers");
    }

    private static String reading(String id, Unit unit, Figures figures) {
        if (COPIED.contains(id) || id.startsWith("sheet.")) {
            return "papers";
        }
        if (CHOSEN.contains(id)) {
            return "choose";
        }
        if (unit == Unit.CELSIUS) {
            return "warmth";
        }
        return unit == Unit.OHM ? ohms(id, figures) : volts(id);
    }

    private static String ohms(String id, Figures figures) {
        if (id.endsWith(".zero")) {
            return "together";
        }
        if (id.startsWith("hand.")) {
            return "resistor-alone";
        }
        if (ALONE.contains(id)) {
            return LOWEST.contains(id) ? "alone-down" : HIGHEST.contains(id) ? "alone-up" : "lift";
        }
        boolean output = id.equals("rail.ohms") || id.endsWith(".rail");
        boolean held = id.equals("other.ohms") || id.endsWith(".other");
        if (output) {
            return "ohms-output";
        }
        String leg = lowerLeg(figures) != held ? "ohms-lower" : "ohms-upper";
        return LOWEST.contains(id) ? "turn-down" : HIGHEST.contains(id) ? leg + "-up" : leg;
    }

    /** Whether the added resistor goes from the adjust pin to ground. */
    private static boolean lowerLeg(Figures figures) {
        return figures.chose("place.leg", "adjust-ground");
    }

    private static String volts(String id) {
        return switch (id) {
            case "meter.proof" -> "cell";
            case "ref.volts" -> "clip";
            case "input.volts" -> "volts-input";
            case "down.volts", "set.volts" -> "turn-to";
            case "stock.volts", "first.loaded", "soak.volts", "cold.volts", "fit.loaded" -> "volts-loaded";
            default -> "volts-output";
        };
    }
}
