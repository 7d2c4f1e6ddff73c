package railtrim.procedure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What to know about a field before it is answered. Fields that ask for the same thing at another time share a topic: {@code help.TOPIC.is} and
 * {@code help.TOPIC.wrong} in the bundle.
 *
 * @param what the thing is
 * @param how to measure it or where to look; empty where that needs no words
 * @param wrong what a wrong answer means, and how it shows
 * @param terms words of the trade used in all that
 */
public record Help(String topic, String what, Optional<String> how, String wrong, List<Glossary.Gloss> terms) {
    private record Rule(Pattern fields, String topic) {}

    /** The first that fits counts. */
    private static final List<Rule> RULES = Stream.of(
                    Map.entry("dead", ".*\\.dead|.*\\.off\\.rail|safe\\.rail|resume\\.rail"),
                    Map.entry("switch-off", ".*off\\.switch"),
                    Map.entry("switch-on", ".*\\.switch"),
                    Map.entry("seen", ".*\\.seen"),
                    Map.entry("name", "board\\.name"),
                    Map.entry("supply", "supply\\.kind"),
                    Map.entry("highest-rail", "rail\\.highest"),
                    Map.entry("chip", "chip\\.name"),
                    Map.entry("rated", "rated\\..*"),
                    Map.entry("meter-class", "meter\\.class"),
                    Map.entry("accuracy", "meter\\.(volt|ohm)\\..*"),
                    Map.entry("range-row", "range\\..*"),
                    Map.entry("proof", "meter\\.proof"),
                    Map.entry("lead-zero", "meter\\.zero|resume\\.zero"),
                    Map.entry("plug", "work\\.off"),
                    Map.entry("static", "work\\.ground"),
                    Map.entry("iron", "iron\\.set"),
                    Map.entry("marking", "reg\\.marking|resume\\.marking"),
                    Map.entry("control", "reg\\.control"),
                    Map.entry("family", "reg\\.family"),
                    Map.entry("outline", "reg\\.outline"),
                    Map.entry("place", "sheet\\.place|place\\.pair"),
                    Map.entry("sheet-reference", "sheet\\.reference.*"),
                    Map.entry("bias", "sheet\\.bias"),
                    Map.entry("dropout", "sheet\\.dropout"),
                    Map.entry("minimum-load", "sheet\\.minimum-load"),
                    Map.entry("input-highest", "sheet\\.input\\.highest"),
                    Map.entry("pins", "pin\\..*"),
                    Map.entry("leg-choice", "place\\.leg"),
                    Map.entry("clips", "clip\\.pair"),
                    Map.entry("reference", "ref\\.volts"),
                    Map.entry("leg", "leg\\.ohms|leg\\.again|solder\\.leg|clip\\.leg"),
                    Map.entry("reversed", "leg\\.reversed"),
                    Map.entry("other-leg", "(other\\.ohms|proof\\.other|fit\\.other)"),
                    Map.entry("rail-ohms", "rail\\.ohms|proof\\.rail|fit\\.rail"),
                    Map.entry("stock", "base\\.rail|stock\\.volts"),
                    Map.entry("input", "input\\.volts"),
                    Map.entry("load", "(load\\.name|run\\.load)"),
                    Map.entry("current", "current\\.known|load\\.current"),
                    Map.entry("thermometer", "temp\\.how"),
                    Map.entry("room", "(fit\\.)?temp\\.room"),
                    Map.entry("temperature", "(fit\\.)?temp\\..*"),
                    Map.entry("drop", "aim\\.drop"),
                    Map.entry("floor", "aim\\.lowest"),
                    Map.entry("trimmer", "trimmer\\.pick"),
                    Map.entry("stop-resistor", "trimmer\\.stop"),
                    Map.entry("trimmer-at", "trimmer\\.at"),
                    Map.entry("trimmer-ends", "trimmer\\..*"),
                    Map.entry("soldered-pair", "solder\\.pair|fit\\.pair"),
                    Map.entry("smooth", "smooth\\.feel"),
                    Map.entry("total", ".*\\.total|smooth\\.low|down\\.max|set\\.max"),
                    Map.entry("power-up", "first\\.volts|down\\.start|set\\.start|fit\\.volts"),
                    Map.entry("loaded", "first\\.loaded|soak\\.volts|cold\\.volts|fit\\.loaded"),
                    Map.entry("turn-down", "down\\.volts|set\\.volts"),
                    Map.entry("end-of-travel", "down\\.end"),
                    Map.entry("fault", "fault\\.text"),
                    Map.entry("again", "fault\\.again"),
                    Map.entry("margin", "target\\..*"),
                    Map.entry("cold", "cool\\.how"),
                    Map.entry("trimmer-alone", "setting\\.(trimmer|again)"),
                    Map.entry("series", "res\\.series"),
                    Map.entry("tolerance", "res\\.tolerance"),
                    Map.entry("how-many", "res\\.most"),
                    Map.entry("resistor", "res\\.pick"),
                    Map.entry("part-ohms", "hand\\..*"),
                    Map.entry("left", "fit\\.left"),
                    Map.entry("undo", "record\\.undo"),
                    Map.entry("notes", "record\\.notes"),
                    Map.entry("where", "resume\\.where"))
            .map(entry -> new Rule(Pattern.compile(entry.getValue()), entry.getKey()))
            .toList();

    /** @throws java.util.NoSuchElementException for a field of no procedure */
    static String topic(String field) {
        return RULES.stream()
                .filter(rule -> rule.fields().matcher(field).matches())
                .findFirst()
                .orElseThrow()
                .topic();
    }

    /** All topics there are. */
    static List<String> topics() {
        return RULES.stream().map(Rule::topic).toList();
    }

    public static Help of(Words words, Glossary glossary, String field) {
        String topic = topic(field);
        String what = words.of("help." + topic + ".is");
        String wrong = words.of("help." + topic + ".wrong");
        String key = "field." + (field.matches("pin\\.\\d+") ? "pin" : field) + ".help";
        Optional<String> how = words.has(key) ? Optional.of(words.of(key)) : Optional.empty();
        return new Help(topic, what, how, wrong, glossary.in(what, how.orElse(""), wrong));
    }
}
