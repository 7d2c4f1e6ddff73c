package railtrim.procedure;

import static railtrim.procedure.Build.step;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import railtrim.circuit.Place;
import railtrim.circuit.RegulatorFamilies;
import railtrim.job.Entry;
import railtrim.procedure.Field.Outside;
import railtrim.procedure.Step.Picture;
import railtrim.quantity.Unit;

/** The way through, top to bottom. */
final class Steps {
    private static final String[] ANY_PAIR = {"out-adjust", "adjust-ground", "out-ground", "in-out"};
    private static final int SETTLE = 60;
    private static final int WARM_UP = 300;
    private static final int SOAK = 1800;
    private static final int COOL = 600;

    private Steps() {}

    static List<Step> all(RegulatorFamilies families) {
        List<Step> steps = new ArrayList<>();
        prepare(steps);
        identify(steps, families);
        baseline(steps);
        trimmer(steps);
        wire(steps);
        firstPower(steps);
        stepDown(steps);
        fault(steps);
        backOff(steps);
        resistor(steps);
        fit(steps);
        record(steps);
        return List.copyOf(steps);
    }

    private static void prepare(List<Step> steps) {
        steps.add(step(Phase.PREPARE, "scope", PowerNeed.OFF)
                .cautions("mains", "closed-supply")
                .text("board.name", true)
                .choice("supply.kind", "adapter", "bench", "inside", "mains")
                .number("rail.highest", Unit.VOLT, 0.5, 1000, Ranges.fixed(1, 60, "expected.rail-highest"), Outside.ODD)
                .checks(IdentifyChecks::scope)
                .done());
        Predicate<Figures> rated = figures -> figures.chose("rated.known", "yes");
        steps.add(step(Phase.PREPARE, "chip", PowerNeed.OFF)
                .text("chip.name", true)
                .choice("rated.known", "yes", "no")
                .number("rated.low", Unit.VOLT, 0.3, 60, Ranges.fixed(0.5, 24, "expected.rated"), Outside.ODD, rated)
                .number("rated.high", Unit.VOLT, 0.3, 60, Ranges.fixed(0.5, 24, "expected.rated"), Outside.ODD, rated)
                .checks(IdentifyChecks::chip)
                .done());
        Predicate<Figures> typed = figures -> figures.choice("meter.class")
                .filter(Choices.TYPED_METERS::containsKey)
                .isPresent();
        steps.add(step(Phase.PREPARE, "meter", PowerNeed.OFF)
                .picture(Picture.METER)
                .choice("meter.class", Choices::meters)
                .number(
                        "meter.volt.percent",
                        Unit.PERCENT,
                        0,
                        10,
                        Ranges.fixed(0.01, 2, "expected.accuracy"),
                        Outside.ODD,
                        typed)
                .number(
                        "meter.volt.digits",
                        Unit.COUNT,
                        0,
                        100,
                        Ranges.fixed(0, 20, "expected.accuracy"),
                        Outside.ODD,
                        typed)
                .number(
                        "meter.ohm.percent",
                        Unit.PERCENT,
                        0,
                        10,
                        Ranges.fixed(0.01, 3, "expected.accuracy"),
                        Outside.ODD,
                        typed)
                .number(
                        "meter.ohm.digits",
                        Unit.COUNT,
                        0,
                        100,
                        Ranges.fixed(0, 20, "expected.accuracy"),
                        Outside.ODD,
                        typed)
                .number(
                        "meter.proof",
                        Unit.VOLT,
                        -20,
                        20,
                        Ranges.fixed(1.1, 1.8, "expected.cell"),
                        Outside.MEASURE_AGAIN)
                .number("meter.zero", Unit.OHM, 0, 50, Ranges.fixed(0, 1, "expected.zero"), Outside.MEASURE_AGAIN)
                .done());
        steps.add(step(Phase.PREPARE, "ranges", PowerNeed.OFF)
                .picture(Picture.METER)
                .needed(MeterRows::chosen)
                .meterRows(MeterRows.VOLTS)
                .meterRows(MeterRows.OHMS)
                .done());
        steps.add(step(Phase.PREPARE, "workplace", PowerNeed.OFF)
                .cautions("jewellery", "static")
                .choice("work.off", "unplugged", "switch-only", "someone-else")
                .choice("work.ground", "strap", "bare-metal", "nothing")
                .number("iron.set", Unit.CELSIUS, 100, 600, Ranges.fixed(300, 370, "expected.iron"), Outside.ODD)
                .checks(IdentifyChecks::workplace)
                .done());
    }

    private static void identify(List<Step> steps, RegulatorFamilies families) {
        List<Field.Option> known = Choices.families(families);
        List<Field.Option> outlines = Choices.outlines();
        steps.add(step(Phase.IDENTIFY, "marking", PowerNeed.OFF)
                .text("reg.marking", true)
                .choice("reg.control", "adjustable", "fixed", "coded", "unknown")
                .choice("reg.family", figures -> known)
                .choice("reg.outline", figures -> outlines)
                .checks(IdentifyChecks::marking)
                .picture(Picture.PACKAGE)
                .done());
        steps.add(step(Phase.IDENTIFY, "datasheet", PowerNeed.OFF)
                .needed(figures -> figures.chose("reg.family", "other"))
                .restsOn("marking")
                .choice("sheet.place", placeIds())
                .number(
                        "sheet.reference",
                        Unit.VOLT,
                        0.2,
                        10,
                        Ranges.fixed(0.4, 3, "expected.sheet-reference"),
                        Outside.ODD)
                .number("sheet.reference.low", Unit.VOLT, 0.2, 10, Ranges::sheetReferenceLow, Outside.ODD)
                .number("sheet.reference.high", Unit.VOLT, 0.2, 10, Ranges::sheetReferenceHigh, Outside.ODD)
                .number("sheet.bias", Unit.AMPERE, 0, 0.01, Ranges.fixed(0, 3e-4, "expected.sheet-bias"), Outside.ODD)
                .number("sheet.dropout", Unit.VOLT, 0, 5, Ranges.fixed(0.05, 3, "expected.sheet-dropout"), Outside.ODD)
                .number(
                        "sheet.minimum-load",
                        Unit.AMPERE,
                        0,
                        0.1,
                        Ranges.fixed(0, 0.02, "expected.sheet-load"),
                        Outside.ODD)
                .number(
                        "sheet.input.highest",
                        Unit.VOLT,
                        1,
                        100,
                        Ranges.fixed(5, 60, "expected.sheet-input"),
                        Outside.ODD)
                .checks(IdentifyChecks::datasheet)
                .picture(Picture.PACKAGE)
                .done());
        steps.add(pins());
        steps.add(step(Phase.IDENTIFY, "place", PowerNeed.OFF)
                .hold()
                .restsOn("marking", "datasheet", "pins")
                .cautions("wrong-leg")
                .choice("place.pair", figures -> Choices.pairs("out-adjust", "adjust-ground", "unsure"))
                .choice("place.leg", figures -> Choices.pairs("out-adjust", "adjust-ground"))
                .checks(IdentifyChecks::place)
                .picture(Picture.DIVIDER)
                .done());
        steps.add(step(Phase.IDENTIFY, "clip", PowerNeed.OFF)
                .hold()
                .restsOn("place", "meter")
                .cautions("live-adjust", "dead-first")
                .dead("clip.dead")
                .ohms("clip.leg", AsItCame::leg, figures -> AsItCame.hadIronAt(figures, "clip.dead"))
                .choice("clip.pair", figures -> Choices.pairs(ANY_PAIR))
                .checks(IdentifyChecks::clip)
                .picture(Picture.PACKAGE, "reference")
                .done());
        steps.add(step(Phase.IDENTIFY, "ref.on", PowerNeed.TO_ON)
                .hold()
                .restsOn("clip", "meter")
                .cautions("short")
                .volts("ref.volts", Ranges::reference)
                .picture(Picture.DIVIDER, "reference")
                .done());
        steps.add(step(Phase.IDENTIFY, "ref.off", PowerNeed.TO_OFF)
                .dead("ref.off.rail")
                .picture(Picture.BOARD)
                .done());
    }

    private static String[] placeIds() {
        return java.util.Arrays.stream(Place.values()).map(Place::id).toArray(String[]::new);
    }

    private static Step pins() {
        Build build = step(Phase.IDENTIFY, "pins", PowerNeed.OFF)
                .hold()
                .restsOn("marking", "datasheet")
                .checks(IdentifyChecks::pins)
                .picture(Picture.PACKAGE);
        List<Field.Option> roles = Choices.roles();
        for (int pin = 1; pin <= 8; pin++) {
            int number = pin;
            build.choice(
                    "pin." + pin,
                    figures -> roles,
                    figures -> figures.outline()
                            .filter(outline -> outline.pins() >= number)
                            .isPresent());
        }
        build.choice(
                "pin.tab",
                figures -> roles,
                figures -> figures.outline().filter(outline -> outline.hasTab()).isPresent());
        return build.done();
    }

    private static void baseline(List<Step> steps) {
        steps.add(step(Phase.BASELINE, "legs", PowerNeed.OFF)
                .restsOn("meter", "place")
                .cautions("stored-charge")
                .ohms("leg.ohms", Ranges::none)
                .ohms("leg.reversed", Ranges::reversedLeg)
                .ohmsOdd("other.ohms", Ranges::otherLeg)
                .ohmsOdd("rail.ohms", Ranges.fixed(0.5, 1e7, "expected.rail-ohms"))
                .checks(BaselineChecks::legs)
                .picture(Picture.DIVIDER, "leg")
                .done());
        steps.add(step(Phase.BASELINE, "base.on", PowerNeed.TO_ON)
                .restsOn("legs")
                .cautions("hot-parts")
                .volts("base.rail", Ranges::stock)
                .checks(AsItCame::rail)
                .picture(Picture.DIVIDER, "output")
                .done());
        Predicate<Figures> currentKnown = figures -> figures.chose("current.known", "yes");
        steps.add(step(Phase.BASELINE, "load", PowerNeed.ON)
                .restsOn("meter", "base.on")
                .cautions("minimum-load")
                .text("load.name", true)
                .volts("stock.volts", Ranges::stockUnderLoad)
                .volts("input.volts", Ranges::input)
                .choice("current.known", "yes", "no")
                .number(
                        "load.current",
                        Unit.AMPERE,
                        0,
                        50,
                        Ranges.fixed(0.01, 10, "expected.current"),
                        Outside.ODD,
                        currentKnown)
                .checks(BaselineChecks::load)
                .picture(Picture.LADDER)
                .done());
        Predicate<Figures> thermometer = figures ->
                figures.choice("temp.how").filter(how -> !how.equals("none")).isPresent();
        steps.add(step(Phase.BASELINE, "warm", PowerNeed.ON)
                .skippable()
                .restsOn("load")
                .cautions("infrared")
                .choice("temp.how", "thermocouple", "tape-infrared", "none")
                .celsius("temp.room", Ranges.fixed(5, 40, "expected.room"), thermometer)
                .celsius("temp.chip", Ranges::warm, thermometer)
                .celsius("temp.reg", Ranges::warm, thermometer)
                .dwell(WARM_UP)
                .checks(BaselineChecks::warm)
                .picture(Picture.HEAT)
                .done());
        steps.add(step(Phase.BASELINE, "base.off", PowerNeed.TO_OFF)
                .dead("base.off.rail")
                .picture(Picture.BOARD)
                .done());
        steps.add(step(Phase.BASELINE, "agree", PowerNeed.OFF)
                .hold()
                .restsOn("legs", "load", "ref.on")
                .again("leg.again", "leg.ohms", 0.02)
                .checks(AgreeFindings::of)
                .picture(Picture.DIVIDER, "leg")
                .done());
    }

    private static void trimmer(List<Step> steps) {
        steps.add(step(Phase.TRIMMER, "aim", PowerNeed.OFF)
                .restsOn("agree", "chip")
                .number("aim.drop", Unit.PERCENT, 0.2, 20, Ranges.fixed(1, 5, "expected.drop"), Outside.ODD)
                .number("aim.lowest", Unit.VOLT, 0.2, 60, Ranges::lowest, Outside.MEASURE_AGAIN)
                .checks(TrimmerChecks::aim)
                .picture(Picture.LADDER)
                .done());
        Predicate<Figures> stopAdvised = figures -> figures.trimmerPicked()
                .filter(candidate -> candidate.stopResistor() > 0)
                .isPresent();
        steps.add(step(Phase.TRIMMER, "pick", PowerNeed.OFF)
                .restsOn("aim")
                .choice("trimmer.pick", Choices::trimmers)
                .choice("trimmer.stop", figures -> Choices.plain("trimmer.stop", "fitted", "none"), stopAdvised)
                .checks(TrimmerChecks::pick)
                .picture(Picture.TRIMMER)
                .done());
        steps.add(step(Phase.TRIMMER, "ends", PowerNeed.OFF)
                .hold()
                .restsOn("pick", "meter")
                .cautions("trimmer-end")
                .ohms("trimmer.max", Ranges::trimmerMaximum)
                .ohms("trimmer.min", Ranges::trimmerMinimum)
                .again("trimmer.max.again", "trimmer.max", 0.02)
                .choice("trimmer.at", "maximum", "minimum", "between")
                .checks(TrimmerChecks::ends)
                .picture(Picture.TRIMMER)
                .done());
    }

    private static void wire(List<Step> steps) {
        steps.add(step(Phase.WIRE, "solder", PowerNeed.OFF)
                .hold()
                .restsOn("ends", "place")
                .cautions("eyes", "iron", "fume", "lifted-pad")
                .dead("solder.dead")
                .again("solder.leg", "leg.ohms", 0.02, Steps::legIsBare)
                .choice("solder.pair", figures -> Choices.pairs(ANY_PAIR))
                .checks(TrimmerChecks::solder)
                .pictureBefore(Picture.FAULTS)
                .picture(Picture.DIVIDER, "solder")
                .done());
        steps.add(step(Phase.WIRE, "proof", PowerNeed.OFF)
                .hold()
                .restsOn("solder")
                .ohms("proof.total", figures -> Ranges.total(figures, "trimmer.max"))
                .ohms("proof.other", Ranges::otherAsBefore)
                .ohms("proof.rail", Ranges::railAsBefore)
                .checks(TrimmerChecks::proof)
                .picture(Picture.DIVIDER, "leg")
                .done());
        steps.add(step(Phase.WIRE, "smooth", PowerNeed.OFF)
                .hold()
                .restsOn("proof")
                .ohms("smooth.low", Ranges::totalAtLowEnd)
                .choice("smooth.feel", "falls-smoothly", "jumps", "no-change")
                .again("smooth.total", "proof.total", 0.01)
                .checks(TrimmerChecks::smooth)
                .picture(Picture.DIVIDER, "leg")
                .done());
    }

    /** Where a trimmer sits already, the leg does not read as it did; it comes off where legs or trimmer are measured by themselves. */
    private static boolean legIsBare(Figures figures) {
        long off = Math.max(figures.lastOf("leg.ohms"), figures.lastOf("trimmer.max"));
        long soldered = figures.history("solder.pair").stream()
                .mapToLong(Entry::sequence)
                .filter(sequence -> sequence > off)
                .findFirst()
                .orElse(Long.MAX_VALUE);
        return figures.number("solder.leg").isPresent() || figures.lastOf("proof.total") < soldered;
    }

    private static void firstPower(List<Step> steps) {
        steps.add(step(Phase.FIRST_POWER, "first.on", PowerNeed.TO_ON)
                .hold()
                .restsOn("smooth")
                .cautions("over-voltage")
                .voltsOrSafe("first.volts", Ranges::first)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.FIRST_POWER, "first.load", PowerNeed.ON)
                .restsOn("first.on")
                .voltsOrSafe("first.loaded", Ranges::first)
                .choice("first.seen", figures -> Choices.seen())
                .checks(PowerChecks::firstLoad)
                .dwell(SETTLE)
                .picture(Picture.LINE)
                .done());
    }

    private static void stepDown(List<Step> steps) {
        Predicate<Figures> goingDown = figures -> !figures.descent().ended();
        Predicate<Figures> fromOff = goingDown.and(figures -> figures.power() != State.Power.ON);
        steps.add(step(Phase.STEP_DOWN, "down.back", PowerNeed.OFF)
                .hold()
                .needed(fromOff)
                .ohms("down.max", figures -> Ranges.total(figures, "trimmer.max"))
                .picture(Picture.DIVIDER, "leg")
                .done());
        steps.add(step(Phase.STEP_DOWN, "down.on", PowerNeed.TO_ON)
                .needed(goingDown.and(figures -> figures.power() != State.Power.ON
                        || figures.entry("down.on.switch").isPresent()))
                .voltsOrSafe("down.start", Ranges::asStart)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.STEP_DOWN, "down.load", PowerNeed.ON)
                .needed(goingDown.and(figures -> figures.descent().anotherLoad()))
                .text("run.load", true)
                .checks(PowerChecks::otherLoad)
                .picture(Picture.LADDER)
                .done());
        // Once the way down has ended, its last round stays to be read; one that no longer counts is not asked again.
        Predicate<Figures> set = goingDown.or(figures ->
                figures.descent().rounds() > 0 && figures.entry("down.volts").isPresent());
        Predicate<Figures> watched = goingDown.or(figures ->
                figures.descent().rounds() > 0 && figures.entry("down.seen").isPresent());
        steps.add(step(Phase.STEP_DOWN, "down.set", PowerNeed.ON)
                .needed(set)
                .cautions("low-voltage-data")
                .volts("down.volts", Ranges::down)
                .choice(
                        "down.end",
                        figures -> Choices.plain("down.end", "not-yet", "at-end"),
                        PowerChecks::perhapsAtTheEnd)
                .checks(PowerChecks::downSet)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.STEP_DOWN, "down.watch", PowerNeed.ON)
                .needed(watched.and(figures -> !figures.descent().endOfTravel()))
                .restsOn("down.set")
                .choice("down.seen", figures -> Choices.seen("enough"))
                .dwell(SETTLE)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.STEP_DOWN, "down.off", PowerNeed.TO_OFF)
                .needed(figures -> figures.descent().ended())
                .dead("down.off.rail")
                .picture(Picture.BOARD)
                .done());
    }

    private static void fault(List<Step> steps) {
        Predicate<Figures> faulted = figures -> figures.descent().faulted();
        steps.add(step(Phase.FAULT, "fault.note", PowerNeed.OFF)
                .needed(faulted)
                .text("fault.text", true)
                .picture(Picture.LOG)
                .done());
        steps.add(step(Phase.FAULT, "fault.next", PowerNeed.OFF)
                .needed(faulted)
                .choice("fault.again", "hot", "cold", "load", "enough")
                .checks(PowerChecks::nextRun)
                .picture(Picture.BUDGET)
                .done());
    }

    private static void backOff(List<Step> steps) {
        steps.add(step(Phase.BACK_OFF, "budget", PowerNeed.OFF)
                .hold()
                .restsOn("first.load", "down.watch", "fault.next")
                .number("target.volts", Unit.VOLT, 0.2, 60, Ranges::target, Outside.ODD)
                .text("target.reason", true, PowerChecks::belowBudget)
                .checks(PowerChecks::budget)
                .picture(Picture.BUDGET)
                .done());
        steps.add(step(Phase.BACK_OFF, "set.back", PowerNeed.OFF)
                .hold()
                .restsOn("budget", "smooth")
                .ohms("set.max", figures -> Ranges.total(figures, "trimmer.max"))
                .picture(Picture.DIVIDER, "leg")
                .done());
        steps.add(step(Phase.BACK_OFF, "set.on", PowerNeed.TO_ON)
                .restsOn("set.back")
                .voltsOrSafe("set.start", Ranges::asStart)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.BACK_OFF, "set.down", PowerNeed.ON)
                .restsOn("set.on")
                .volts("set.volts", Ranges::set)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.BACK_OFF, "soak", PowerNeed.ON)
                .restsOn("set.down")
                .cautions("hot-parts")
                .volts("soak.volts", Ranges::asSet)
                .choice("soak.seen", figures -> Choices.seen())
                .checks(figures -> PowerChecks.seenWell(figures, "soak.seen"))
                .dwell(SOAK)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.BACK_OFF, "set.off", PowerNeed.TO_OFF)
                .restsOn("soak")
                .dead("set.off.rail")
                .picture(Picture.BOARD)
                .done());
        steps.add(step(Phase.BACK_OFF, "cool", PowerNeed.OFF)
                .restsOn("soak")
                .cautions("cooling")
                .choice("cool.how", "room-temperature", "still-warm")
                .checks(PowerChecks::cool)
                .dwell(COOL)
                .picture(Picture.BOARD)
                .done());
        steps.add(step(Phase.BACK_OFF, "cold", PowerNeed.TO_ON)
                .hold()
                .restsOn("cool")
                .volts("cold.volts", Ranges::asSet)
                .choice("cold.seen", figures -> Choices.seen())
                .checks(PowerChecks::cold)
                .picture(Picture.LADDER)
                .done());
        steps.add(step(Phase.BACK_OFF, "cold.off", PowerNeed.TO_OFF)
                .restsOn("cold")
                .dead("cold.off.rail")
                .picture(Picture.BOARD)
                .done());
    }

    private static void resistor(List<Step> steps) {
        steps.add(step(Phase.RESISTOR, "setting", PowerNeed.OFF)
                .hold()
                .restsOn("cold")
                .cautions("iron")
                .ohms("setting.total", Ranges::settingTotal)
                .ohms("setting.trimmer", Ranges::settingTrimmer)
                .again("setting.again", "setting.trimmer", 0.01)
                .checks(ResistorChecks::setting)
                .picture(Picture.DIVIDER, "lift")
                .done());
        steps.add(step(Phase.RESISTOR, "choose", PowerNeed.OFF)
                .restsOn("setting")
                .choice("res.series", "E12", "E24", "E96")
                .choice("res.tolerance", "5", "1", "0.5", "0.1")
                .choice("res.most", "1", "2")
                .choice(
                        "res.pick",
                        Choices::resistors,
                        figures -> !figures.resistors().isEmpty())
                .checks(ResistorChecks::choose)
                .picture(Picture.RESISTORS)
                .done());
        steps.add(step(Phase.RESISTOR, "hand", PowerNeed.OFF)
                .hold()
                .restsOn("choose")
                .ohms("hand.ohms", Ranges::hand)
                .again("hand.again", "hand.ohms", 0.01)
                .checks(ResistorChecks::hand)
                .picture(Picture.RESISTORS)
                .done());
    }

    private static void fit(List<Step> steps) {
        steps.add(step(Phase.FIT, "fit", PowerNeed.OFF)
                .hold()
                .restsOn("hand")
                .cautions("eyes", "fume", "lifted-pad")
                .dead("fit.dead")
                .choice("fit.pair", figures -> Choices.pairs(ANY_PAIR))
                .choice("fit.left", "resistor-only", "both", "trimmer-only")
                .checks(ResistorChecks::fit)
                .picture(Picture.DIVIDER, "solder")
                .done());
        steps.add(step(Phase.FIT, "fit.proof", PowerNeed.OFF)
                .hold()
                .restsOn("fit")
                .ohms("fit.total", figures -> Ranges.total(figures, "hand.ohms"))
                .ohms("fit.other", Ranges::otherWhenFitted)
                .ohms("fit.rail", Ranges::railAsBefore)
                .checks(LegProof::of)
                .picture(Picture.DIVIDER, "leg")
                .done());
        steps.add(step(Phase.FIT, "fit.on", PowerNeed.TO_ON)
                .hold()
                .restsOn("fit.proof")
                .cautions("over-voltage")
                .voltsOrSafe("fit.volts", Ranges::fitted)
                .picture(Picture.LADDER)
                .done());
        Predicate<Figures> thermometer = figures -> figures.number("temp.chip").isPresent();
        steps.add(step(Phase.FIT, "fit.soak", PowerNeed.ON)
                .restsOn("fit.on")
                .cautions("regulator-heat")
                .volts("fit.loaded", Ranges::fitted)
                .choice("fit.seen", figures -> Choices.seen())
                .celsius("fit.temp.room", Ranges.fixed(5, 40, "expected.room"), thermometer)
                .celsius("fit.temp.chip", Ranges::chipAfter, thermometer)
                .celsius("fit.temp.reg", Ranges::warm, thermometer)
                .checks(ResistorChecks::fitSoak)
                .dwell(SOAK)
                .picture(Picture.HEAT)
                .done());
        steps.add(step(Phase.FIT, "fit.off", PowerNeed.TO_OFF)
                .restsOn("fit.soak")
                .dead("fit.off.rail")
                .picture(Picture.BOARD)
                .done());
    }

    private static void record(List<Step> steps) {
        steps.add(step(Phase.RECORD, "record", PowerNeed.OFF)
                .restsOn("fit.soak")
                .choice("record.undo", "added-resistor", "board-resistor", "regulator")
                .text("record.notes", false)
                .checks(ResistorChecks::record)
                .picture(Picture.LADDER)
                .done());
    }

    // ---- steps of the cards ----

    /** Behind the make-safe card. */
    static final Step SAFE =
            step(Phase.FAULT, "safe", PowerNeed.OFF).dead("safe.rail").done();

    /** Behind the card after an interruption. */
    static final Step RESUME = step(Phase.PREPARE, "resume", PowerNeed.OFF)
            .dead("resume.rail")
            .number("resume.zero", Unit.OHM, 0, 50, Ranges.fixed(0, 1, "expected.zero"), Outside.MEASURE_AGAIN)
            .choice("resume.where", "as-left", "moved", "unsure")
            .text("resume.marking", true)
            .ohms("resume.total", Ranges::totalAfterBreak)
            .picture(Picture.DIVIDER, "leg")
            .done();

    /** The fields of that card which are asked now. */
    static Step resume(List<String> fields) {
        return RESUME.with(RESUME.fields().stream()
                .filter(field -> fields.contains(field.id()))
                .toList());
    }
}
