package railtrim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import railtrim.parts.Bands;
import railtrim.parts.Resistors;
import railtrim.procedure.Figures;
import railtrim.quantity.Display;
import railtrim.quantity.Unit;
import railtrim.report.Checklist.Block;
import railtrim.report.Checklist.Pair;

/** The resistor that was chosen, what it may do at worst, and how to know it by its bands. */
final class ResistorPart {
    private final Source source;
    private final Figures figures;

    ResistorPart(Source source) {
        this.source = source;
        this.figures = source.figures();
    }

    List<Block> blocks() {
        Optional<Resistors.Candidate> chosen = figures.chosen();
        if (chosen.isEmpty()) {
            return List.of(new Block.Says(source.say("report.resistor.none")));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Pairs(pairs(chosen.get())));
        chosen.get().values().forEach(ohms -> blocks.add(bands(ohms)));
        return blocks;
    }

    private List<Pair> pairs(Resistors.Candidate chosen) {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(pair("report.resistor.parts", chosen.partsInWords()));
        pairs.add(pair(
                "report.resistor.arrangement",
                source.say("report.arrangement." + chosen.arrangement().id())));
        pairs.add(pair(
                "report.resistor.tolerance",
                figures.tolerance().map(t -> Display.of(100 * t, Unit.PERCENT)).orElseGet(source::notKnown)));
        pairs.add(pair("report.resistor.added", Display.ohms(chosen.added())));
        pairs.add(pair(
                "report.resistor.hand",
                figures.reading("hand.ohms").map(source::withMeter).orElseGet(source::notKnown)));
        pairs.add(pair(
                "report.resistor.setting",
                figures.reading("setting.trimmer").map(source::withMeter).orElseGet(source::notKnown)));
        pairs.add(pair("report.resistor.voltage", source.rail(chosen.voltage())));
        pairs.add(pair(
                "report.resistor.worst",
                source.say("report.range", source.rail(chosen.lowest()), source.rail(chosen.highest()))));
        pairs.add(pair("report.resistor.power", Display.of(chosen.power(), Unit.WATT)));
        return pairs;
    }

    /** The parts chosen beside each other; empty where none is, or one has no bands. */
    Optional<Block> bandsOfAll() {
        List<Double> values = figures.chosen().map(Resistors.Candidate::values).orElse(List.of());
        List<List<Bands.Colour>> bands = values.stream().map(this::colours).toList();
        if (bands.isEmpty() || bands.contains(List.<Bands.Colour>of())) {
            return Optional.empty();
        }
        String inWords =
                values.stream().map(ohms -> inWords(ohms, colours(ohms))).collect(Collectors.joining("; "));
        return Optional.of(new Block.Picture(BandsDrawing.row(bands, inWords), inWords));
    }

    private List<Bands.Colour> colours(double ohms) {
        return figures.tolerance().map(t -> Bands.of(ohms, t)).orElse(List.of());
    }

    private Block bands(double ohms) {
        List<Bands.Colour> colours = colours(ohms);
        if (colours.isEmpty()) {
            return new Block.Says(source.say("report.resistor.no-bands", Display.part(ohms)));
        }
        String inWords = inWords(ohms, colours);
        return new Block.Picture(BandsDrawing.of(colours, inWords), inWords);
    }

    private String inWords(double ohms, List<Bands.Colour> colours) {
        String names = colours.stream()
                .map(colour -> source.say("report.colour." + colour.name().toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
        return source.say("report.resistor.bands", Display.part(ohms), names);
    }

    /** Whether what was fitted is more than one part, so that each has to come off again. */
    boolean several() {
        return figures.chosen().filter(chosen -> chosen.values().size() > 1).isPresent();
    }

    /** "1.2 kΩ, 1 %", with what was chosen; where nothing was, what was measured. */
    String fittedInWords() {
        Optional<Resistors.Candidate> chosen = figures.chosen();
        if (chosen.isPresent() && figures.tolerance().isPresent()) {
            return source.say(
                    chosen.get().values().size() > 1
                            ? "report.resistor.with-tolerance-two"
                            : "report.resistor.with-tolerance",
                    chosen.get().partsInWords(),
                    Display.of(100 * figures.tolerance().get(), Unit.PERCENT),
                    source.say(
                            "report.arrangement." + chosen.get().arrangement().id()));
        }
        return figures.reading("hand.ohms").map(source::withMeter).orElseGet(source::notKnown);
    }

    private Pair pair(String key, String value) {
        return new Pair(source.say(key), value);
    }
}
