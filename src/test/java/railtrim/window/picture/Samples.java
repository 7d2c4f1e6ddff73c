package railtrim.window.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Bridges;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.parts.Bands;
import railtrim.parts.Resistors;
import railtrim.procedure.Slip;
import railtrim.procedure.State;
import railtrim.procedure.Words;
import railtrim.quantity.RailSign;
import railtrim.window.picture.LadderData.Kind;
import railtrim.window.picture.LadderData.Rung;

/** Every picture in the states it can be in, with invented values of a sensible size. */
final class Samples {
    static final Words WORDS = Words.english();
    private static final RailSign PLUS = new RailSign(false);
    private static final RailSign MINUS = new RailSign(true);

    private Samples() {}

    static Map<String, Drawing> all() {
        Map<String, Drawing> all = new LinkedHashMap<>();
        dividers(all);
        packages(all);
        ladders(all);
        lines(all);
        boards(all);
        meters(all);
        trimmers(all);
        budgets(all);
        resistors(all);
        faults(all);
        heats(all);
        logs(all);
        return all;
    }

    static OptionalDouble some(double value) {
        return OptionalDouble.of(value);
    }

    static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    static Spot red(PinRole role) {
        return new Spot(Spot.Probe.RED, role);
    }

    static Spot black(PinRole role) {
        return new Spot(Spot.Probe.BLACK, role);
    }

    static DividerData divider(Place place, Added added, Spot... spots) {
        double sign = place.negative() ? -1 : 1;
        return new DividerData(
                Optional.of(place),
                some(sign * 3.555),
                DividerData.RailIs.NOW,
                some(1.25),
                some(120.4),
                some(219.6),
                Optional.ofNullable(added),
                List.of(spots),
                added != null && added.kind() == Added.Kind.PLANNED,
                spots.length == 0,
                added != null && added.kind() != Added.Kind.PLANNED,
                some(0.0105));
    }

    private static void dividers(Map<String, Drawing> all) {
        Added planned = new Added(Added.Kind.PLANNED, none(), none(), false);
        Added trimmer = new Added(Added.Kind.TRIMMER, some(10_020), some(330), false);
        Added bare = new Added(Added.Kind.TRIMMER, some(4_870), none(), false);
        Added lifted = new Added(Added.Kind.TRIMMER, some(123_400), some(330), true);
        Added resistor = new Added(Added.Kind.RESISTOR, some(1_800), none(), false);
        DividerData nothing = new DividerData(
                Optional.empty(),
                none(),
                DividerData.RailIs.OFF,
                none(),
                none(),
                none(),
                Optional.empty(),
                List.of(),
                false,
                false,
                false,
                none());
        all.put("divider-unknown", new DividerDrawing(nothing, WORDS));
        for (Place place : Place.values()) {
            String name = "divider-" + place.id();
            all.put(
                    name + "-planned",
                    new DividerDrawing(divider(place, planned, red(PinRole.OUTPUT), black(PinRole.ADJUST)), WORDS));
            all.put(
                    name + "-trimmer",
                    new DividerDrawing(divider(place, trimmer, red(PinRole.OUTPUT), black(PinRole.GROUND)), WORDS));
            all.put(name + "-solder", new DividerDrawing(divider(place, trimmer), WORDS));
            all.put(
                    name + "-bare",
                    new DividerDrawing(divider(place, bare, red(PinRole.INPUT), black(PinRole.GROUND)), WORDS));
            all.put(
                    name + "-lifted",
                    new DividerDrawing(divider(place, lifted, red(PinRole.ADJUST), black(PinRole.GROUND)), WORDS));
            all.put(
                    name + "-resistor",
                    new DividerDrawing(divider(place, resistor, red(PinRole.GROUND), black(PinRole.OUTPUT)), WORDS));
        }
    }

    private static void packages(Map<String, Drawing> all) {
        all.put(
                "package-which",
                new PackageDrawing(new PackageData(Optional.empty(), List.of(), List.of(), false, false), WORDS));
        List<PinRole> order = List.of(
                PinRole.ADJUST,
                PinRole.OUTPUT,
                PinRole.INPUT,
                PinRole.GROUND,
                PinRole.CONTROL,
                PinRole.NOT_CONNECTED,
                PinRole.ENABLE,
                PinRole.SWITCH);
        for (Outline outline : Outline.values()) {
            List<Optional<PinRole>> roles = new ArrayList<>();
            for (int pin = 0; pin < outline.pins(); pin++) {
                roles.add(Optional.of(order.get(pin)));
            }
            if (outline.hasTab()) {
                roles.add(Optional.of(PinRole.OUTPUT));
            }
            PackageData data = new PackageData(
                    Optional.of(outline), roles, List.of(red(PinRole.OUTPUT), black(PinRole.ADJUST)), true, false);
            all.put("package-" + outline.id(), new PackageDrawing(data, WORDS));
        }
        all.put(
                "package-roles-missing",
                new PackageDrawing(
                        new PackageData(Optional.of(Outline.TO_220), List.of(Optional.empty()), List.of(), false, true),
                        WORDS));
        all.put(
                "package-tab-probe",
                new PackageDrawing(
                        new PackageData(
                                Optional.of(Outline.TO_263),
                                List.of(
                                        Optional.of(PinRole.ADJUST),
                                        Optional.of(PinRole.NOT_CONNECTED),
                                        Optional.of(PinRole.INPUT),
                                        Optional.of(PinRole.OUTPUT)),
                                List.of(red(PinRole.OUTPUT), black(PinRole.GROUND)),
                                false,
                                false),
                        WORDS));
    }

    static LadderData ladder(OptionalDouble low, OptionalDouble high, Object... kindsAndVolts) {
        List<Rung> rungs = new ArrayList<>();
        for (int i = 0; i < kindsAndVolts.length; i += 2) {
            rungs.add(new Rung((Kind) kindsAndVolts[i], (Double) kindsAndVolts[i + 1]));
        }
        return new LadderData(rungs, low, high, PLUS);
    }

    private static void ladders(Map<String, Drawing> all) {
        all.put("ladder-empty", new LadderDrawing(ladder(none(), none()), WORDS));
        all.put("ladder-stock", new LadderDrawing(ladder(none(), none(), Kind.STOCK, 3.555), WORDS));
        all.put(
                "ladder-way-down",
                new LadderDrawing(
                        ladder(
                                some(3.135),
                                some(3.465),
                                Kind.STOCK,
                                3.412,
                                Kind.START,
                                3.371,
                                Kind.NOW,
                                3.214,
                                Kind.LAST_GOOD,
                                3.214,
                                Kind.NEXT,
                                3.184,
                                Kind.FLOOR,
                                2.9,
                                Kind.REFERENCE,
                                1.25),
                        WORDS));
        all.put(
                "ladder-all",
                new LadderDrawing(
                        ladder(
                                some(1.71),
                                some(1.89),
                                Kind.STOCK,
                                1.832,
                                Kind.START,
                                1.82,
                                Kind.NOW,
                                1.652,
                                Kind.LAST_GOOD,
                                1.6,
                                Kind.NEXT,
                                1.58,
                                Kind.FAULT,
                                1.59,
                                Kind.TARGET,
                                1.65,
                                Kind.FITTED,
                                1.653,
                                Kind.FLOOR,
                                1.5,
                                Kind.REFERENCE,
                                1.25),
                        WORDS));
        LadderData way = ladder(
                some(4.5),
                some(5.5),
                Kind.STOCK,
                5.127,
                Kind.START,
                5.021,
                Kind.FAULT,
                4.2,
                Kind.FITTED,
                4.37,
                Kind.REFERENCE,
                1.25);
        all.put(
                "ladder-negative",
                new LadderDrawing(new LadderData(way.rungs(), way.ratedLow(), way.ratedHigh(), MINUS), WORDS));
        all.put(
                "ladder-rated-far",
                new LadderDrawing(
                        ladder(some(4.5), some(5.5), Kind.STOCK, 3.3, Kind.NOW, 3.299, Kind.REFERENCE, 1.24), WORDS));
        all.put(
                "ladder-high",
                new LadderDrawing(
                        ladder(
                                some(22),
                                some(26),
                                Kind.STOCK,
                                24.12,
                                Kind.START,
                                23.9,
                                Kind.FLOOR,
                                20.0,
                                Kind.REFERENCE,
                                1.23),
                        WORDS));
    }

    static LineData line(double noise, double uncertainty, double... added) {
        LineData.Fit fit = new LineData.Fit(220, 0.010476667, Math.abs(noise));
        List<LineData.Reading> readings = new ArrayList<>();
        double sign = 1;
        for (double ohms : added) {
            readings.add(new LineData.Reading(ohms, 1.25 + fit.above(1 / ohms) + sign * noise, uncertainty));
            sign = -sign;
        }
        Optional<LineData.Reading> suspect = readings.stream()
                .filter(reading -> Math.abs(noise) > 2.9 * uncertainty && reading.added() == added[added.length - 1])
                .findFirst();
        return new LineData(
                some(1.25), readings, added.length < 2 ? Optional.empty() : Optional.of(fit), suspect, PLUS);
    }

    private static void lines(Map<String, Drawing> all) {
        double open = Double.POSITIVE_INFINITY;
        all.put(
                "line-empty",
                new LineDrawing(new LineData(none(), List.of(), Optional.empty(), Optional.empty(), PLUS), WORDS));
        all.put("line-one", new LineDrawing(line(0, 0.0114, open), WORDS));
        all.put("line-two", new LineDrawing(line(0, 0.0114, open, 10_000), WORDS));
        all.put(
                "line-many",
                new LineDrawing(line(0.004, 0.0114, open, 10_000, 6_000, 3_000, 2_400, 2_000, 1_800), WORDS));
        all.put("line-off", new LineDrawing(line(0.06, 0.02, open, 10_000, 1_000), WORDS));
        all.put("line-fine", new LineDrawing(line(0.0002, 0.0005, open, 4_990, 4_700, 1_000, 680, 470), WORDS));
    }

    private static void boards(Map<String, Drawing> all) {
        String longName = "A very long name for a board that somebody typed without thinking of the picture";
        all.put(
                "board-off",
                new BoardDrawing(
                        new BoardData(State.Power.OFF, Optional.empty(), Optional.empty(), Optional.empty(), none()),
                        WORDS));
        all.put(
                "board-on",
                new BoardDrawing(
                        new BoardData(
                                State.Power.ON,
                                Optional.of(false),
                                Optional.of("Garden weather station"),
                                Optional.of("Main processor"),
                                some(3.412)),
                        WORDS));
        all.put(
                "board-unknown",
                new BoardDrawing(
                        new BoardData(
                                State.Power.UNKNOWN,
                                Optional.of(true),
                                Optional.of(longName),
                                Optional.of(longName),
                                some(-12.345)),
                        WORDS));
    }

    private static void meters(Map<String, Drawing> all) {
        all.put("meter-untried", new MeterDrawing(new MeterData(Optional.empty(), Optional.empty()), WORDS));
        all.put("meter-tried", new MeterDrawing(new MeterData(Optional.of("1.588 V"), Optional.of("0.2 Ω")), WORDS));
        all.put("ranges-none", new RangesDrawing(new RangesData(List.of(), List.of()), WORDS));
        all.put(
                "ranges-copied",
                new RangesDrawing(
                        new RangesData(
                                List.of(
                                        List.of("6 V", "1 mV", "±(0.5 % + 3)"),
                                        List.of("60 V", "10 mV", "±(0.5 % + 3)")),
                                List.of(
                                        List.of("600 Ω", "0.1 Ω", "±(0.9 % + 2)"),
                                        List.of("6 kΩ", "1 Ω", "±(0.9 % + 2)"),
                                        List.of("60 kΩ", "10 Ω", "±(0.9 % + 2)"),
                                        List.of("600 kΩ", "100 Ω", "±(0.9 % + 2)"))),
                        WORDS));
    }

    private static void trimmers(Map<String, Drawing> all) {
        all.put(
                "trimmer-none",
                new TrimmerDrawing(
                        new TrimmerData(
                                none(),
                                none(),
                                Optional.empty(),
                                none(),
                                none(),
                                none(),
                                none(),
                                none(),
                                false,
                                TrimmerData.At.UNKNOWN,
                                false,
                                PLUS),
                        WORDS));
        for (TrimmerData.At at : TrimmerData.At.values()) {
            all.put(
                    "trimmer-" + at.name().toLowerCase(Locale.ROOT),
                    new TrimmerDrawing(
                            new TrimmerData(
                                    some(10_000),
                                    at == TrimmerData.At.MAXIMUM ? some(200) : none(),
                                    Optional.of(at == TrimmerData.At.BETWEEN ? 1 : 25),
                                    at == TrimmerData.At.MINIMUM ? none() : some(680),
                                    some(10_680),
                                    some(682),
                                    some(3.501),
                                    some(2.95),
                                    at != TrimmerData.At.UNKNOWN,
                                    at,
                                    at == TrimmerData.At.UNKNOWN,
                                    PLUS),
                            WORDS));
        }
    }

    private static void budgets(Map<String, Drawing> all) {
        all.put("budget-empty", new BudgetDrawing(Optional.empty(), WORDS));
        List<BudgetData.Piece> pieces = List.of(
                new BudgetData.Piece("spread", 0.0106, false),
                new BudgetData.Piece("step", 0.035, true),
                new BudgetData.Piece("meter", 0.008, true),
                new BudgetData.Piece("drift", 0.017, false),
                new BudgetData.Piece("load", 0.034, false),
                new BudgetData.Piece("cold", 0.034, false),
                new BudgetData.Piece("ageing", 0.034, false));
        all.put(
                "budget-all",
                new BudgetDrawing(
                        Optional.of(new BudgetData(2.82, true, pieces, 2.995, some(3.05), some(3.412), PLUS)), WORDS));
        all.put(
                "budget-no-fault",
                new BudgetDrawing(
                        Optional.of(new BudgetData(1.5, false, pieces.subList(0, 3), 1.555, none(), some(1.8), MINUS)),
                        WORDS));
        all.put(
                "budget-small",
                new BudgetDrawing(
                        Optional.of(new BudgetData(
                                3.3,
                                true,
                                List.of(new BudgetData.Piece("meter", 0.0004, true)),
                                3.3,
                                some(3.3),
                                some(3.31),
                                PLUS)),
                        WORDS));
    }

    private static ResistorsData.Row row(Resistors.Arrangement how, double volts, boolean picked, double... ohms) {
        List<Double> values = new ArrayList<>();
        List<List<Bands.Colour>> bands = new ArrayList<>();
        for (double each : ohms) {
            values.add(each);
            bands.add(Bands.of(each, 0.01));
        }
        return new ResistorsData.Row(values, how, bands, volts, volts - 0.021, volts + 0.019, picked);
    }

    private static void resistors(Map<String, Drawing> all) {
        all.put("hand-one", new HandDrawing(row(Resistors.Arrangement.SINGLE, 3.02, true, 715), none(), PLUS, WORDS));
        all.put(
                "hand-row",
                new HandDrawing(
                        row(Resistors.Arrangement.SERIES, 3.02, true, 127_000, 249_000), some(375_800), MINUS, WORDS));
        all.put(
                "hand-side-by-side",
                new HandDrawing(
                        row(Resistors.Arrangement.PARALLEL, 3.026, true, 1000, 2610), some(722.6), PLUS, WORDS));
        all.put(
                "resistors-empty",
                new ResistorsDrawing(new ResistorsData(List.of(), none(), none(), some(693.9), PLUS), WORDS));
        List<ResistorsData.Row> rows = List.of(
                row(Resistors.Arrangement.SINGLE, 3.02, true, 715),
                row(Resistors.Arrangement.SERIES, 3.024, false, 470, 249),
                row(Resistors.Arrangement.PARALLEL, 3.026, false, 1000, 2610),
                row(Resistors.Arrangement.SINGLE, 3.035, false, 750));
        all.put(
                "resistors-four",
                new ResistorsDrawing(new ResistorsData(rows, some(3.01), some(2.995), none(), PLUS), WORDS));
        all.put(
                "resistors-one",
                new ResistorsDrawing(
                        new ResistorsData(
                                List.of(row(Resistors.Arrangement.SERIES, 3.02, false, 127_000, 249_000)),
                                some(3.01),
                                some(2.995),
                                none(),
                                MINUS),
                        WORDS));
        all.put(
                "resistors-two",
                new ResistorsDrawing(
                        new ResistorsData(rows.subList(1, 3), some(3.024), some(3.024), none(), PLUS), WORDS));
    }

    private static Slip slip(String id, double volts, boolean harmful) {
        return new Slip(id, Optional.empty(), some(volts), false, harmful);
    }

    private static Slip bridge(int pin, PinRole one, PinRole two, OptionalDouble volts, boolean up, boolean harmful) {
        return new Slip(
                "bridge",
                Optional.of(new Bridges.Bridge(pin, pin + 1, one, two, volts, up, harmful)),
                volts,
                up,
                harmful);
    }

    private static void faults(Map<String, Drawing> all) {
        all.put("faults-empty", new FaultsDrawing(new FaultsData(List.of(), none(), false, PLUS), WORDS));
        // LM1117 with 120/220 Ω on 12 V, a 1 kΩ part across the lower leg
        List<Slip> three = List.of(
                bridge(2, PinRole.OUTPUT, PinRole.INPUT, some(12), true, true),
                bridge(1, PinRole.ADJUST, PinRole.OUTPUT, some(10.8), true, true),
                slip("lower-open", 10.8, true),
                slip("upper-short", 10.8, true),
                slip("added-wrong-leg", 3.83, true),
                slip("added-open", 3.555, false),
                slip("upper-open", 1.263, false),
                slip("added-short", 1.25, false),
                slip("lower-short", 1.25, false));
        all.put("faults-three-pins", new FaultsDrawing(new FaultsData(three, some(3.555), false, PLUS), WORDS));
        all.put("faults-negative", new FaultsDrawing(new FaultsData(three, some(3.6), true, MINUS), WORDS));
        List<Slip> eight = new ArrayList<>(three.subList(2, 9));
        eight.add(0, bridge(5, PinRole.ADJUST, PinRole.HELPER, none(), false, true));
        eight.add(1, bridge(1, PinRole.HELPER, PinRole.INPUT, none(), true, true));
        eight.add(5, bridge(7, PinRole.GROUND, PinRole.SWITCH, some(0), false, true));
        eight.add(bridge(2, PinRole.INPUT, PinRole.ENABLE, none(), false, false));
        eight.add(bridge(3, PinRole.ENABLE, PinRole.HELPER, none(), false, true));
        eight.add(bridge(6, PinRole.HELPER, PinRole.GROUND, none(), false, true));
        all.put("faults-eight-pins", new FaultsDrawing(new FaultsData(eight, some(3.465), true, PLUS), WORDS));
    }

    private static void heats(Map<String, Drawing> all) {
        HeatData.Part nothing = new HeatData.Part(none(), none(), none(), none());
        all.put("heat-empty", new HeatDrawing(new HeatData(nothing, nothing, false), WORDS));
        all.put(
                "heat-before",
                new HeatDrawing(
                        new HeatData(
                                new HeatData.Part(some(71.5), none(), none(), none()),
                                new HeatData.Part(some(64), none(), none(), none()),
                                false),
                        WORDS));
        all.put(
                "heat-both",
                new HeatDrawing(
                        new HeatData(
                                new HeatData.Part(some(71.5), some(62.3), some(6.6), some(5.4545)),
                                new HeatData.Part(some(64), some(66.5), some(3.4), some(3.6364)),
                                false),
                        WORDS));
        all.put(
                "heat-relative",
                new HeatDrawing(
                        new HeatData(
                                new HeatData.Part(none(), none(), some(1), some(0.826)),
                                new HeatData.Part(none(), none(), none(), none()),
                                true),
                        WORDS));
    }

    private static void logs(Map<String, Drawing> all) {
        all.put("log-empty", new LogDrawing(new LogData(List.of(), List.of(), none(), PLUS), WORDS));
        List<LogData.Held> held = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double volts = 3.412 - 0.03 * i;
            Optional<String> fault = i == 17 ? Optional.of("glitch") : Optional.empty();
            held.add(new LogData.Held(1.6 * i, volts, i == 0 ? none() : some(22_000.0 / i), fault));
        }
        List<LogData.Warm> warm = List.of(
                new LogData.Warm(2, 71.5, false),
                new LogData.Warm(2.5, 64, true),
                new LogData.Warm(41, 58.2, false),
                new LogData.Warm(42, 66.1, true));
        all.put("log-full", new LogDrawing(new LogData(held, warm, some(3.412), PLUS), WORDS));
        all.put("log-volts", new LogDrawing(new LogData(held.subList(0, 2), List.of(), none(), MINUS), WORDS));
        List<LogData.Held> many = new ArrayList<>();
        for (int i = 0; i < 90; i++) {
            Optional<String> fault = i % 30 == 29 ? Optional.of("reset") : Optional.empty();
            many.add(new LogData.Held(2.0 * i, 12.0 - 0.1 * (i % 30), some(3000.0 / (1 + i % 30)), fault));
        }
        all.put("log-many", new LogDrawing(new LogData(many, warm, some(12), PLUS), WORDS));
    }
}
