package railtrim.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import railtrim.circuit.Circuit;
import railtrim.parts.Trimmers;
import railtrim.procedure.Words;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;

/** {@code trimmer}: ranks trimmers for a circuit, with the stop resistor each needs; or judges the one in hand. */
@Command(name = "trimmer", description = "${bundle:command.trimmer.about}")
final class TrimmerChoice implements Asked {
    private static final double COMMON_TOLERANCE = 0.10;
    private static final List<Integer> COMMON_TURNS = List.of(25, 12, 1);

    private final Words words;

    @Mixin
    private CircuitOptions given;

    @Option(
            names = "--start-drop",
            required = true,
            paramLabel = "2%",
            description = "${bundle:command.option.start-drop}")
    private String startDrop;

    @Option(names = "--lowest", required = true, paramLabel = "2.9V", description = "${bundle:command.option.lowest}")
    private String lowest;

    @Option(names = "--tolerance", paramLabel = "10%", description = "${bundle:command.option.trimmer-tolerance}")
    private String tolerance;

    @Option(names = "--turns", paramLabel = "25", description = "${bundle:command.option.turns}")
    private String turns;

    @Option(names = "--measured-max", paramLabel = "4.8k", description = "${bundle:command.option.measured-max}")
    private String measuredMax;

    @Option(names = "--measured-min", paramLabel = "12R", description = "${bundle:command.option.measured-min}")
    private String measuredMin;

    TrimmerChoice(Words words) {
        this.words = words;
    }

    @Override
    public Answer answer() {
        Circuit circuit = given.circuit();
        given.supply(circuit);
        Trimmers.Wish wish = wish(circuit);
        if (measuredMax == null && measuredMin != null) {
            throw BadInput.of("command.wrong.measured-min-alone");
        }
        List<Rated> rated = measuredMax == null
                ? Trimmers.rank(circuit, wish, tolerances()).stream()
                        .map(Rated::of)
                        .toList()
                : List.of(inHand(circuit, wish));
        boolean any = rated.stream().anyMatch(one -> one.verdict() != Trimmers.Verdict.REFUSED);
        List<Object> list = rated.stream()
                .<Object>map(one -> one.json(circuit, words).map())
                .toList();
        return Answer.of(any, Json.object().put("trimmers", list).map(), sheet(circuit, rated, any));
    }

    private Trimmers.Wish wish(Circuit circuit) {
        double drop = Typed.fraction("--start-drop", startDrop, 0.1, 20);
        double lowestVolts = Typed.railVolts("--lowest", lowest, CircuitOptions.minusAllowed(circuit.place()));
        if (lowestVolts <= circuit.reference() || lowestVolts >= circuit.stock()) {
            throw new BadOption(
                    "--lowest",
                    Message.of(
                            "command.wrong.not-between",
                            Display.volts(lowestVolts),
                            Display.volts(circuit.reference()),
                            Display.volts(circuit.stock())));
        }
        List<Integer> each = turns == null ? COMMON_TURNS : List.of((int) Typed.whole("--turns", turns, 1, 40));
        return new Trimmers.Wish(drop, lowestVolts, tolerances().get(0), each);
    }

    private List<Double> tolerances() {
        return tolerance == null
                ? List.of(COMMON_TOLERANCE)
                : Arrays.stream(tolerance.split(",", -1))
                        .map(one -> Typed.fraction("--tolerance", one, 0.1, 30))
                        .toList();
    }

    /** The trimmer as measured. Where its other end was not measured the wiper is taken to reach 0 Ω, with the stop resistor in series. */
    private Rated inHand(Circuit circuit, Trimmers.Wish wish) {
        double maximum = Typed.ohms("--measured-max", measuredMax);
        double stop = Trimmers.stopResistor(circuit, wish.lowest());
        double minimum = measuredMin == null ? stop : Typed.ohms("--measured-min", measuredMin);
        double top = measuredMin == null ? maximum + stop : maximum;
        if (minimum >= top) {
            throw new BadOption(
                    "--measured-min",
                    Message.of("command.wrong.measured-ends", Display.ohms(minimum), Display.ohms(top)));
        }
        Trimmers.InHand judged = Trimmers.judge(circuit, wish, top, 0, minimum, 0);
        int fewest = wish.turns().get(0);
        double ohmsPerTurn = (top - minimum) / fewest;
        double current =
                minimum > 0 ? (circuit.magnitude(minimum) - circuit.reference()) / minimum : circuit.legCurrent();
        return new Rated(
                maximum,
                0,
                wish.tolerance(),
                fewest,
                judged.start(),
                judged.startWorst(),
                circuit.magnitude(measuredMin == null ? 0 : minimum),
                judged.lowest(),
                measuredMin == null ? stop : 0,
                1000 * ohmsPerTurn * circuit.sensitivity(top),
                1000 * ohmsPerTurn * circuit.sensitivity(circuit.addedFor(wish.lowest())),
                1000 * ohmsPerTurn * circuit.sensitivity(circuit.addedFor(wish.lowest())),
                current,
                current * current * minimum,
                Trimmers.wiperLimit(maximum),
                judged.verdict(),
                judged.reasons());
    }

    private Sheet sheet(Circuit circuit, List<Rated> rated, boolean any) {
        Sheet sheet = new Sheet();
        List<List<String>> rows = new ArrayList<>();
        for (Rated one : rated) {
            if (one.verdict() != Trimmers.Verdict.REFUSED || rated.size() == 1) {
                rows.add(List.of(
                        words.of("command.trimmer.verdict." + one.word()),
                        one.fine() > 0
                                ? Display.part(one.nominal()) + " + " + Display.part(one.fine())
                                : Display.part(one.nominal()),
                        Integer.toString(one.turns()),
                        Display.volts(circuit.signed(one.start())),
                        Display.volts(circuit.signed(one.startWorst())),
                        Display.volts(circuit.signed(one.lowest())),
                        one.stopResistor() > 0 ? Display.part(one.stopResistor()) : "–",
                        String.format(Locale.ROOT, "%.1f", one.perTurnStart()),
                        String.format(Locale.ROOT, "%.1f", one.perTurnLowest())));
            }
        }
        if (!rows.isEmpty()) {
            sheet.table(
                    1,
                    List.of(
                            words.of("command.trimmer.head.verdict"),
                            words.of("command.trimmer.head.nominal"),
                            words.of("command.trimmer.head.turns"),
                            words.of("command.trimmer.head.start"),
                            words.of("command.trimmer.head.start-worst"),
                            words.of("command.trimmer.head.lowest"),
                            words.of("command.trimmer.head.stop"),
                            words.of("command.trimmer.head.per-turn-start"),
                            words.of("command.trimmer.head.per-turn-lowest")),
                    rows);
        }
        if (!any) {
            sheet.say(words.of(measuredMax == null ? "command.trimmer.none" : "command.trimmer.in-hand-none"));
        }
        if (!rated.isEmpty()) {
            Rated first = rated.get(0);
            first.reasons().forEach(reason -> sheet.say(words.of(reason)));
            sheet.say(words.of(
                    "command.trimmer.end",
                    Display.of(first.endCurrent(), Unit.AMPERE),
                    Display.of(first.wiperLimit(), Unit.AMPERE),
                    Display.of(first.endPower(), Unit.WATT),
                    Display.volts(circuit.signed(first.lowestBare()))));
        }
        return sheet;
    }

    /** One trimmer as it is written out; voltages are magnitudes, steps are millivolts for one turn of the screw. */
    private record Rated(
            double nominal,
            double fine,
            double tolerance,
            int turns,
            double start,
            double startWorst,
            double lowestBare,
            double lowest,
            double stopResistor,
            double perTurnStart,
            double perTurnLowest,
            double coarsePerTurnLowest,
            double endCurrent,
            double endPower,
            double wiperLimit,
            Trimmers.Verdict verdict,
            List<Message> reasons) {
        static Rated of(Trimmers.Candidate one) {
            return new Rated(
                    one.nominal(),
                    one.fine(),
                    one.tolerance(),
                    one.turns(),
                    one.start(),
                    one.startWorst(),
                    one.lowestBare(),
                    one.lowest(),
                    one.stopResistor(),
                    one.millivoltsPerTurnStart(),
                    one.millivoltsPerTurnLowest(),
                    one.coarseMillivoltsPerTurnLowest(),
                    one.endCurrent(),
                    one.endPower(),
                    Trimmers.wiperLimit(one.nominal()),
                    one.verdict(),
                    one.reasons());
        }

        String word() {
            return Named.word(verdict);
        }

        /**
         * {@code nominal} is all that can be turned, {@code coarse} and {@code fine} its parts; {@code millivoltsPerTurn} is the coarsest of the
         * way down, at the lowest voltage wished for, for the fine screw where there is one.
         */
        Json json(Circuit circuit, Words words) {
            return Json.object()
                    .put("nominal", nominal + fine)
                    .put("coarse", nominal)
                    .put("fine", fine)
                    .put("tolerance", tolerance)
                    .put("turns", turns)
                    .put("start", circuit.signed(start))
                    .put("startWorst", circuit.signed(startWorst))
                    .put("lowest", circuit.signed(lowest))
                    .put("lowestBare", circuit.signed(lowestBare))
                    .put("stopResistor", stopResistor)
                    .put("millivoltsPerTurn", perTurnLowest)
                    .put("millivoltsPerTurnStart", perTurnStart)
                    .put("coarseMillivoltsPerTurn", coarsePerTurnLowest)
                    .put("endCurrent", endCurrent)
                    .put("endPower", endPower)
                    .put("wiperLimit", wiperLimit)
                    .put("verdict", word())
                    .put("reasons", reasons.stream().map(words::of).toList());
        }
    }
}
