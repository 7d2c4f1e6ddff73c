package railtrim.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.parts.Packages;
import railtrim.parts.PartsBox;
import railtrim.parts.Resistors;
import railtrim.parts.Series;
import railtrim.parts.Yield;
import railtrim.practice.Rehearsal;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** {@code resistor}: fixed resistors for a target voltage, with the worst case counted. */
@Command(name = "resistor", description = "${bundle:command.resistor.about}")
final class ResistorChoice implements Asked {
    private static final double COMMON_TOLERANCE = 0.01;
    private static final double COMMON_WARMING = 40;
    private static final int COMMON_SAMPLES = 10_000;

    private final Words words;

    @Mixin
    private CircuitOptions given;

    @Option(names = "--target", required = true, paramLabel = "3.0V", description = "${bundle:command.option.target}")
    private String target;

    @Option(names = "--at-least", paramLabel = "2.9V", description = "${bundle:command.option.at-least}")
    private String atLeast;

    @Option(names = "--series", paramLabel = "E24", description = "${bundle:command.option.series}")
    private String series;

    @Option(names = "--tolerance", paramLabel = "1%", description = "${bundle:command.option.resistor-tolerance}")
    private String tolerance;

    @Option(names = "--parts", paramLabel = "FILE.csv", description = "${bundle:command.option.parts}")
    private String parts;

    @Option(names = "--most", paramLabel = "2", description = "${bundle:command.option.most}")
    private String most;

    @Option(names = "--leg-tolerance", paramLabel = "1%", description = "${bundle:command.option.leg-tolerance}")
    private String legTolerance;

    @Option(names = "--tempco", paramLabel = "100", description = "${bundle:command.option.tempco}")
    private String tempco;

    @Option(names = "--warming", paramLabel = "40C", description = "${bundle:command.option.warming}")
    private String warming;

    @Option(names = "--ambient", paramLabel = "70C", description = "${bundle:command.option.part-ambient}")
    private String ambient;

    @Option(names = "--within", paramLabel = "1%", description = "${bundle:command.option.within}")
    private String within;

    @Option(names = "--samples", paramLabel = "10000", description = "${bundle:command.option.samples}")
    private String samples;

    @Option(names = "--seed", paramLabel = "1", description = "${bundle:command.option.seed}")
    private String seed;

    private Optional<PartsBox> box = Optional.empty();

    ResistorChoice(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Circuit circuit = given.circuit();
        given.supply(circuit);
        Resistors.Wish wish = wish(circuit);
        double legDoubt = circuit.leg() * optional("--leg-tolerance", legTolerance, 0.01, 20, 0);
        List<Resistors.Candidate> candidates = choose(circuit, legDoubt, wish);
        double exact = Resistors.exact(circuit, wish.target());
        List<Object> list = candidates.stream()
                .<Object>map(candidate -> json(circuit, legDoubt, wish, candidate))
                .toList();
        Json json = Json.object()
                .put("exact", exact)
                .put("seed", seedNumber())
                .put("candidates", list)
                .put("order", candidates.isEmpty() ? List.of() : order(candidates, wish));
        Sheet sheet = sheet(circuit, exact, candidates);
        if (!candidates.isEmpty()) {
            order(candidates, wish).forEach(sheet::say);
            reasons(circuit, legDoubt, wish, candidates.get(0)).forEach(sheet::say);
        }
        return Answer.of(!candidates.isEmpty(), json.map(), sheet);
    }

    private static double optional(String option, String text, double least, double most, double otherwise) {
        return text == null ? otherwise : Typed.fraction(option, text, least, most);
    }

    private long seedNumber() {
        return seed == null ? 1 : Typed.whole("--seed", seed, 0, Long.MAX_VALUE / 10);
    }

    private double ambientCelsius() {
        return ambient == null ? 70 : Typed.between("--ambient", ambient, Unit.CELSIUS, -40, 154);
    }

    private Resistors.Wish wish(Circuit circuit) {
        boolean minus = CircuitOptions.minusAllowed(circuit.place());
        double targetVolts = Typed.railVolts("--target", target, minus);
        if (targetVolts <= circuit.reference() || targetVolts >= circuit.stock()) {
            throw new BadOption(
                    "--target",
                    Message.of(
                            "command.wrong.not-between",
                            Display.volts(targetVolts),
                            Display.volts(circuit.reference()),
                            Display.volts(circuit.stock())));
        }
        double floor = atLeast == null ? circuit.reference() : Typed.railVolts("--at-least", atLeast, minus);
        if (floor > targetVolts) {
            throw new BadOption(
                    "--at-least",
                    Message.of("command.wrong.floor-above-target", Display.volts(floor), Display.volts(targetVolts)));
        }
        double fraction = tolerance == null ? COMMON_TOLERANCE : Typed.fraction("--tolerance", tolerance, 0.01, 20);
        int count = most == null ? 2 : (int) Typed.whole("--most", most, 1, 3);
        double perKelvin = tempco == null ? 0 : 1e-6 * Typed.whole("--tempco", tempco, 0, 5000);
        double kelvin = warming == null ? COMMON_WARMING : Typed.between("--warming", warming, Unit.CELSIUS, 0, 150);
        return new Resistors.Wish(targetVolts, floor, fraction, count, perKelvin * kelvin);
    }

    private List<Resistors.Candidate> choose(Circuit circuit, double legDoubt, Resistors.Wish wish) {
        if (parts == null) {
            return Resistors.choose(
                    circuit, legDoubt, wish, series == null ? Series.E24 : Named.series("--series", series));
        }
        if (series != null || tolerance != null) {
            throw BadInput.of("command.wrong.parts-and-series");
        }
        box = Optional.of(partsBox());
        return Resistors.choose(circuit, legDoubt, wish, box.get());
    }

    private PartsBox partsBox() {
        String csv = TextFile.read("--parts", parts);
        try {
            return PartsBox.of(csv);
        } catch (BadInput e) {
            throw new BadOption("--parts", e);
        }
    }

    /** Boards drawn by chance; with a parts box every part is taken at the widest tolerance among those used. */
    private Yield drawn(Circuit circuit, double legDoubt, Resistors.Wish wish, Resistors.Candidate candidate) {
        double band = wish.target() * optional("--within", within, 0.01, 50, 0.01);
        int count = samples == null ? COMMON_SAMPLES : (int) Typed.whole("--samples", samples, 1, 1_000_000);
        return Yield.of(
                circuit,
                legDoubt,
                candidate,
                wish.withDrift(toleranceOf(candidate, wish)),
                Math.max(wish.atLeast(), wish.target() - band),
                wish.target() + band,
                count,
                Rehearsal.chance(seedNumber()));
    }

    private double toleranceOf(Resistors.Candidate candidate, Resistors.Wish wish) {
        return box.stream()
                .flatMap(each -> each.parts().stream())
                .filter(part -> candidate.values().contains(part.ohms()))
                .mapToDouble(PartsBox.Part::tolerance)
                .max()
                .orElse(wish.tolerance());
    }

    /** Why the first comes first. */
    private List<String> order(List<Resistors.Candidate> candidates, Resistors.Wish wish) {
        Resistors.Candidate first = candidates.get(0);
        List<String> said = new ArrayList<>();
        said.add(words.of(
                first.voltage() >= wish.target() - 1e-9 ? "command.resistor.order" : "command.resistor.order-below"));
        Resistors.nearerWithMore(candidates, wish.target())
                .ifPresent(nearer -> said.add(words.of(
                        "command.resistor.because-simpler",
                        named(nearer),
                        Display.millivolts(first.voltage() - nearer.voltage()),
                        Display.of(200 * Resistors.WORTH_OF_A_PART, Unit.PERCENT))));
        Resistors.bestWithFewer(candidates)
                .ifPresent(simpler -> said.add(words.of(
                        "command.resistor.because-more",
                        named(simpler),
                        Display.millivolts(simpler.voltage() - wish.target()))));
        return said;
    }

    private String named(Resistors.Candidate candidate) {
        return words.of(
                "command.resistor." + joined(candidate),
                candidate.values().stream().map(Display::part).toArray());
    }

    private List<String> reasons(Circuit circuit, double legDoubt, Resistors.Wish wish, Resistors.Candidate candidate) {
        double above = candidate.voltage() - wish.target();
        List<String> said = new ArrayList<>();
        said.add(words.of(
                above >= -1e-9 ? "command.resistor.because-above" : "command.resistor.because-below",
                named(candidate),
                Display.millivolts(Math.abs(above)),
                Display.volts(candidate.lowest())));
        double across = candidate.voltage() - circuit.reference();
        said.add(words.of(
                "command.resistor.because-power",
                Display.of(candidate.power(), Unit.WATT),
                size(Packages.smallestChip(candidate.power(), across, ambientCelsius())),
                size(Packages.smallestLeaded(candidate.power(), across, ambientCelsius()))));
        Yield drawn = drawn(circuit, legDoubt, wish, candidate);
        said.add(words.of(
                "command.resistor.because-yield",
                String.format(Locale.ROOT, "%.1f", 100 * drawn.inside()),
                Integer.toString(drawn.samples()),
                Display.volts(2 * drawn.deviation())));
        return said;
    }

    /** Three in a row are written with one joint more. */
    private static String joined(Resistors.Candidate candidate) {
        boolean rowOfThree = candidate.values().size() == 3
                && (candidate.arrangement() == Resistors.Arrangement.SERIES
                        || candidate.arrangement() == Resistors.Arrangement.PARALLEL);
        return candidate.arrangement().id() + (rowOfThree ? "-of-three" : "");
    }

    private static String size(Optional<Packages> size) {
        return size.map(Packages::id).orElse("–");
    }

    private Map<String, Object> json(
            Circuit circuit, double legDoubt, Resistors.Wish wish, Resistors.Candidate candidate) {
        Yield drawn = drawn(circuit, legDoubt, wish, candidate);
        double across = candidate.voltage() - circuit.reference();
        return Json.object()
                .put("values", candidate.values())
                .put("arrangement", candidate.arrangement().id())
                .put("added", candidate.added())
                .put("voltage", circuit.signed(candidate.voltage()))
                .put("lowest", circuit.signed(candidate.lowest()))
                .put("highest", circuit.signed(candidate.highest()))
                .put("power", candidate.power())
                .put("chip", size(Packages.smallestChip(candidate.power(), across, ambientCelsius())))
                .put("leaded", size(Packages.smallestLeaded(candidate.power(), across, ambientCelsius())))
                .put("yield", drawn.inside())
                .put("deviation", drawn.deviation())
                .put("reasons", reasons(circuit, legDoubt, wish, candidate))
                .map();
    }

    private Sheet sheet(Circuit circuit, double exact, List<Resistors.Candidate> candidates) {
        Sheet sheet = new Sheet()
                .pair(
                        words.of("command.label.across"),
                        words.of("command.leg." + circuit.place().id()))
                .pair(words.of("command.label.exact"), Display.ohms(exact))
                .blank();
        if (candidates.isEmpty()) {
            return sheet.say(words.of("command.resistor.none"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (Resistors.Candidate candidate : candidates) {
            rows.add(List.of(
                    named(candidate),
                    Display.volts(circuit.signed(candidate.voltage())),
                    Display.volts(circuit.signed(candidate.lowest())),
                    Display.volts(circuit.signed(candidate.highest())),
                    Display.of(candidate.power(), Unit.WATT)));
        }
        return sheet.table(
                1,
                List.of(
                        words.of("command.resistor.head.parts"),
                        words.of("command.resistor.head.voltage"),
                        words.of("command.resistor.head.lowest"),
                        words.of("command.resistor.head.highest"),
                        words.of("command.resistor.head.power")),
                rows);
    }
}
