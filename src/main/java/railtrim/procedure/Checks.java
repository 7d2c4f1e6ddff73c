package railtrim.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import railtrim.circuit.Bridges;
import railtrim.circuit.Circuit;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.Place;
import railtrim.circuit.PlaceTelling;
import railtrim.circuit.RegulatorFamily;
import railtrim.job.Entry;
import railtrim.job.Fact;
import railtrim.parts.Resistors;
import railtrim.parts.Trimmers;
import railtrim.procedure.Step.Finding;
import railtrim.procedure.Step.Finding.Kind;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.Unit;
import railtrim.threshold.MarginBudget;
import railtrim.threshold.NextRun;
import railtrim.threshold.SuccessRun;

/** What the readings of a step say together. */
final class Checks {
    /** Board rails above this are no work for a hobbyist: the touchable limit for DC, dry (IEC 62368-1 class ES1, from memory). */
    static final double HIGHEST_RAIL = 60;

    private static final int MOST_FIRST_POWERS = 2;

    private Checks() {}

    // ---- prepare
    // -----------------------------------------------------------------------------------------------------

    static List<Finding> scope(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        if (figures.chose("supply.kind", "mains")) {
            findings.add(stops("stop.mains"));
        }
        if (figures.number("rail.highest").orElse(0) > HIGHEST_RAIL) {
            findings.add(stops("stop.rail-too-high"));
        }
        return findings;
    }

    static List<Finding> chip(Figures figures) {
        boolean upsideDown = figures.ratedLow().orElse(0) > figures.ratedHigh().orElse(Double.POSITIVE_INFINITY);
        return upsideDown ? List.of(blocks("verdict.rated-upside-down", "")) : List.of();
    }

    static List<Finding> workplace(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        if (figures.choice("work.off").filter(way -> !way.equals("unplugged")).isPresent()) {
            findings.add(blocks("verdict.not-unplugged", ""));
        }
        if (figures.chose("work.ground", "nothing")) {
            findings.add(blocks("verdict.no-static-care", ""));
        }
        return findings;
    }

    // ---- identify
    // ----------------------------------------------------------------------------------------------------

    static List<Finding> marking(Figures figures) {
        return switch (figures.choice("reg.control").orElse("adjustable")) {
            case "fixed" -> List.of(stops("stop.fixed"));
            case "coded" -> List.of(stops("stop.coded"));
            case "unknown" -> List.of(blocks("verdict.control-unknown", ""));
            default -> outlineFits(figures);
        };
    }

    private static List<Finding> outlineFits(Figures figures) {
        Optional<RegulatorFamily> family = figures.family();
        Optional<Outline> outline = figures.outline();
        if (family.isPresent()
                && outline.isPresent()
                && !family.get().pinouts().isEmpty()
                && !family.get().pinouts().containsKey(outline.get())) {
            return List.of(warns(
                    "verdict.outline-unusual",
                    family.get().name(),
                    outline.get().id()));
        }
        return List.of();
    }

    static List<Finding> datasheet(Figures figures) {
        double nominal = figures.number("sheet.reference").orElse(Double.NaN);
        boolean outside = figures.number("sheet.reference.low").orElse(nominal) > nominal
                || figures.number("sheet.reference.high").orElse(nominal) < nominal;
        return outside ? List.of(blocks("verdict.sheet-order", "")) : List.of();
    }

    static List<Finding> pins(Figures figures) {
        List<Optional<PinRole>> given = figures.pins();
        if (given.isEmpty() || given.stream().anyMatch(Optional::isEmpty)) {
            return List.of();
        }
        List<PinRole> roles = given.stream().map(Optional::orElseThrow).toList();
        List<Finding> findings = new ArrayList<>(rolesPresent(figures, roles));
        findings.addAll(likeDataSheet(figures, roles));
        return findings;
    }

    private static List<Finding> rolesPresent(Figures figures, List<PinRole> roles) {
        List<Finding> findings = new ArrayList<>();
        if (!roles.contains(PinRole.ADJUST)) {
            findings.add(stops("stop.no-adjust-pin"));
            return findings;
        }
        if (!roles.contains(PinRole.OUTPUT) && !roles.contains(PinRole.SWITCH)) {
            findings.add(blocks("verdict.no-output-pin", ""));
        }
        Place place = figures.place().orElse(Place.OUT_ADJ);
        boolean grounded = place == Place.FB_GND || place == Place.SHUNT;
        if (grounded != roles.contains(PinRole.GROUND)) {
            findings.add(blocks(grounded ? "verdict.ground-pin-missing" : "verdict.ground-pin-odd", "marking"));
        }
        return findings;
    }

    private static List<Finding> likeDataSheet(Figures figures, List<PinRole> roles) {
        RegulatorFamily family = figures.family().orElse(null);
        Outline outline = figures.outline().orElse(null);
        if (family == null || outline == null || !family.pinouts().containsKey(outline)) {
            return List.of(warns("verdict.pins-unchecked"));
        }
        List<PinRole> sheet = family.pinouts().get(outline);
        List<Finding> findings = new ArrayList<>();
        for (int pin = 0; pin < outline.pins() && pin < sheet.size(); pin++) {
            if (sheet.get(pin) != roles.get(pin)) {
                findings.add(blocks("verdict.pin-differs", "marking", String.valueOf(pin + 1), family.name()));
            }
        }
        return findings;
    }

    /** Killer item: between which pins the reference sits decides which leg lowers; the person must find both pairs in the data sheet. */
    static List<Finding> place(Figures figures) {
        if (figures.chose("place.pair", "unsure")) {
            return List.of(stops("stop.place-unclear"));
        }
        List<Finding> findings = new ArrayList<>();
        differs(figures, "place.pair", referencePair(figures), "verdict.place-differs", "marking")
                .ifPresent(findings::add);
        differs(figures, "place.leg", legPair(figures), "verdict.leg-differs", "")
                .ifPresent(findings::add);
        return findings;
    }

    /** The two pins the reference voltage sits between. */
    static String referencePair(Figures figures) {
        return figures.place()
                        .filter(place -> place == Place.FB_GND || place == Place.SHUNT)
                        .isPresent()
                ? "adjust-ground"
                : "out-adjust";
    }

    /** The two pins the added resistor goes across. */
    static String legPair(Figures figures) {
        return referencePair(figures).equals("out-adjust") ? "adjust-ground" : "out-adjust";
    }

    static List<Finding> clip(Figures figures) {
        return asList(differs(figures, "clip.pair", referencePair(figures), "verdict.clips-elsewhere", ""));
    }

    // ---- baseline
    // ----------------------------------------------------------------------------------------------------

    /** Done again after soldering, the legs have to be read as they came: with nothing across them. */
    static List<Finding> legs(Figures figures) {
        List<Finding> findings = new ArrayList<>(AsItCame.takeOffFirst(figures, "leg.ohms"));
        findings.addAll(AsItCame.ohms(figures, "leg.ohms"));
        findings.addAll(AsItCame.ohms(figures, "other.ohms"));
        return findings;
    }

    static List<Finding> load(Figures figures) {
        List<Finding> findings = new ArrayList<>();
        OptionalDouble stock = figures.stock();
        OptionalDouble high = figures.ratedHigh();
        if (stock.isPresent() && high.isPresent() && stock.getAsDouble() > high.getAsDouble()) {
            findings.add(warns(
                    "verdict.stock-above-rated",
                    figures.sign().volts(stock.getAsDouble()),
                    figures.sign().volts(high.getAsDouble())));
        }
        if (stock.isPresent()
                && figures.ratedLow().isPresent()
                && stock.getAsDouble() < figures.ratedLow().getAsDouble()) {
            findings.add(warns("verdict.stock-below-rated"));
        }
        double inputHighest =
                figures.family().map(RegulatorFamily::inputHighest).orElse(Double.NaN);
        if (figures.input().orElse(0) > inputHighest) {
            findings.add(warns("verdict.input-above-sheet", figures.sign().volts(inputHighest)));
        }
        stock.ifPresent(volts -> findings.add(says("verdict.stock-doubt", Doubts.reading(figures, volts))));
        if (stock.isPresent() && figures.reference().isPresent() && bothPlacesFit(figures)) {
            findings.add(warns("verdict.twice-reference"));
        }
        return findings;
    }

    /** Where stock is about twice the reference, both legs read the reference and no voltage tells which is which. */
    private static boolean bothPlacesFit(Figures figures) {
        double reference = figures.reference().orElseThrow();
        double rest = figures.stock().orElseThrow() - reference;
        double uncertainty = figures.voltUncertainty(reference);
        return rest > 0
                && reference > uncertainty
                && PlaceTelling.of(
                                reference,
                                uncertainty,
                                rest,
                                Math.hypot(uncertainty, figures.voltUncertainty(rest)),
                                reference - uncertainty,
                                reference + uncertainty)
                        == PlaceTelling.BOTH;
    }

    static List<Finding> warm(Figures figures) {
        return HeatFindings.junction(figures);
    }

    // ---- trimmer
    // -----------------------------------------------------------------------------------------------------

    static List<Finding> aim(Figures figures) {
        OptionalDouble floor = figures.floor();
        OptionalDouble rated = figures.ratedLow();
        return floor.isPresent() && rated.isPresent() && floor.getAsDouble() < rated.getAsDouble()
                ? List.of(warns("verdict.below-rated", figures.sign().volts(rated.getAsDouble())))
                : List.of();
    }

    static List<Finding> pick(Figures figures) {
        if (Choices.trimmers(figures).isEmpty()) {
            return List.of(blocks("verdict.no-trimmer", "aim"));
        }
        Optional<Trimmers.Candidate> picked = figures.trimmerPicked();
        List<Finding> findings = new ArrayList<>();
        picked.ifPresent(candidate ->
                candidate.reasons().forEach(reason -> findings.add(new Finding(Kind.SAYS, reason, ""))));
        if (figures.chose("trimmer.stop", "none")) {
            picked.ifPresent(candidate ->
                    findings.add(blocks("verdict.stop-resistor-needed", "", Display.ohms(candidate.stopResistor()))));
        }
        return findings;
    }

    static List<Finding> ends(Figures figures) {
        List<Finding> findings = new ArrayList<>(AsItCame.takeOffFirst(figures, "trimmer.max"));
        if (figures.choice("trimmer.at").filter(end -> !end.equals("maximum")).isPresent()) {
            findings.add(blocks("verdict.not-at-maximum", ""));
        }
        figures.trimmerInHand().ifPresent(hand -> {
            Kind kind = hand.verdict() == Trimmers.Verdict.REFUSED ? Kind.BLOCKS : Kind.SAYS;
            hand.reasons()
                    .forEach(reason -> findings.add(new Finding(kind, reason, kind == Kind.BLOCKS ? "pick" : "")));
            findings.add(says(
                    "verdict.start-predicted",
                    figures.sign().volts(hand.start()),
                    figures.sign().volts(hand.startWorst())));
            findings.addAll(slips(figures));
        });
        return findings;
    }

    /** What must not happen with the iron, told before it is picked up: bridged pins, and the way the rail goes then. */
    private static List<Finding> slips(Figures figures) {
        return figures.slips().stream()
                .filter(Slip::harmful)
                .flatMap(slip -> slip.pins().stream())
                .map(pins -> bridged(figures, pins))
                .toList();
    }

    private static Finding bridged(Figures figures, Bridges.Bridge pins) {
        String one = String.valueOf(pins.first());
        String two = String.valueOf(pins.second());
        if (pins.voltage().isEmpty()) {
            return says("verdict.bridge", one, two);
        }
        double volts = pins.voltage().getAsDouble();
        return volts == 0
                ? says("verdict.bridge-short", one, two)
                : says("verdict.bridge-volts", one, two, figures.sign().volts(volts));
    }

    // ---- wire
    // --------------------------------------------------------------------------------------------------------

    static List<Finding> solder(Figures figures) {
        return asList(differs(figures, "solder.pair", legPair(figures), "verdict.soldered-elsewhere", ""));
    }

    /** Proven twice by ohms and twice not what the sums allow: no third try, for then an earlier reading is wrong. */
    static List<Finding> proof(Figures figures) {
        long legs = figures.entry("leg.ohms").map(Entry::sequence).orElse(Long.MAX_VALUE);
        long outside = figures.job().entries().stream()
                .filter(entry -> entry.sequence() > legs
                        && entry.fact() instanceof Fact.Alarm alarm
                        && alarm.step().equals("first.on")
                        && alarm.reason().equals("outside"))
                .count();
        return outside < MOST_FIRST_POWERS ? List.of() : List.of(stops("stop.first-power", "legs"));
    }

    static List<Finding> smooth(Figures figures) {
        List<Finding> findings = new ArrayList<>(LegProof.lowEnd(figures));
        if (figures.choice("smooth.feel")
                .filter(feel -> !feel.equals("falls-smoothly"))
                .isPresent()) {
            findings.add(blocks("verdict.not-smooth", "solder"));
        }
        return findings;
    }

    // ---- power
    // -------------------------------------------------------------------------------------------------------

    static List<Finding> firstLoad(Figures figures) {
        return figures.magnitude("first.loaded").isPresent() ? Doubts.leg(figures) : List.of();
    }

    /** The rail did not come down as far as asked: either the trimmer was not turned far enough, or it is at its end. */
    static boolean perhapsAtTheEnd(Figures figures) {
        if (figures.chose("down.end", "at-end")) {
            return true;
        }
        OptionalDouble read = figures.magnitude("down.volts");
        return read.isPresent()
                && Ranges.down(figures)
                        .filter(expected ->
                                read.getAsDouble() > Math.max(Math.abs(expected.low()), Math.abs(expected.high())))
                        .isPresent();
    }

    static List<Finding> downSet(Figures figures) {
        return figures.chose("down.end", "not-yet") && perhapsAtTheEnd(figures)
                ? List.of(blocks("verdict.turn-further", ""))
                : List.of();
    }

    static List<Finding> seenWell(Figures figures, String field) {
        return figures.choice(field).filter(Descent.FAULTS::contains).isPresent()
                ? List.of(blocks("verdict.fault-after-margin", "budget"))
                : List.of();
    }

    /** A run with another program shows nothing new if it is the program of the first run. */
    static List<Finding> otherLoad(Figures figures) {
        String first = figures.text("load.name").orElse("").strip();
        return figures.text("run.load")
                        .filter(now -> now.strip().equalsIgnoreCase(first))
                        .isPresent()
                ? List.of(blocks("verdict.same-load", ""))
                : List.of();
    }

    /** What another run would be expected to buy, so that nobody stops too early or goes on for nothing. */
    static List<Finding> nextRun(Figures figures) {
        return figures.nextRun().map(Checks::nextRun).orElse(List.of());
    }

    private static List<Finding> nextRun(NextRun next) {
        List<Finding> findings = new ArrayList<>();
        if (!next.spreadKnown()) {
            findings.add(says("verdict.next.one-run"));
        }
        boolean warm = next.worth(next.warmGain());
        boolean five = !warm && next.worth(next.fiveGain());
        if (next.coldWorth()) {
            findings.add(says("verdict.next.cold", gain(next.coldGain()), saved(next, next.coldGain())));
        }
        if (next.loadWorth()) {
            findings.add(says("verdict.next.load", gain(next.loadGain()), saved(next, next.loadGain())));
        }
        if (warm) {
            findings.add(says("verdict.next.warm", gain(next.warmGain()), saved(next, next.warmGain())));
        }
        if (five) {
            findings.add(says(
                    next.spreadKnown() ? "verdict.next.five" : "verdict.next.five-if",
                    gain(next.fiveGain()),
                    saved(next, next.fiveGain())));
        }
        if (!next.anyWorth() && next.spreadKnown()) {
            findings.add(says("verdict.next.enough"));
        }
        return findings;
    }

    /** It is an estimate: to 5 mV. */
    private static String gain(double volts) {
        return 5 * Math.round(200 * volts) + " mV";
    }

    private static String saved(NextRun next, double volts) {
        return Math.max(1, Math.round(100 * next.powerSaved(volts))) + " %";
    }

    /** The soak began with one start, the cold start is the second: what so few show by themselves. */
    static List<Finding> cold(Figures figures) {
        List<Finding> findings = new ArrayList<>(seenWell(figures, "cold.seen"));
        if (figures.chose("cold.seen", "well")) {
            long shown = Math.round(100 * SuccessRun.reliability(2, 0.95));
            findings.add(says("verdict.clean-starts", shown + " %"));
        }
        return findings;
    }

    static List<Finding> budget(Figures figures) {
        Optional<MarginBudget> budget = figures.budget();
        if (budget.isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        findings.add(says(
                figures.descent().faulted() ? "verdict.recommended" : "verdict.recommended.unfailed",
                figures.sign().volts(budget.get().fail()),
                Display.volts(budget.get().sum()),
                figures.sign().volts(budget.get().recommended())));
        if (!budget.get().worthDoing() || outOfReach(figures, budget.get())) {
            String backTo = figures.descent().faulted() ? "fault.next" : "aim";
            findings.add(stops("stop.not-worth-doing", backTo));
        }
        boolean above = figures.target().orElse(0) > figures.stock().orElse(Double.POSITIVE_INFINITY);
        if (above) {
            findings.add(blocks("verdict.target-above-stock", ""));
        } else {
            findings.addAll(HeatFindings.outlook(figures));
        }
        return findings;
    }

    /** The trimmer at its maximum already lies below what the budget allows. */
    private static boolean outOfReach(Figures figures, MarginBudget budget) {
        return budget.recommended() > figures.start().orElse(Double.POSITIVE_INFINITY);
    }

    static boolean belowBudget(Figures figures) {
        return figures.target().isPresent()
                && figures.budget().isPresent()
                && figures.target().getAsDouble() < figures.budget().get().recommended() - 1e-9;
    }

    static List<Finding> cool(Figures figures) {
        return figures.chose("cool.how", "still-warm") ? List.of(blocks("verdict.still-warm", "")) : List.of();
    }

    // ---- resistor
    // ----------------------------------------------------------------------------------------------------

    /** Conductances subtract: the trimmer on its own and the total across the leg must tell the same leg. */
    static List<Finding> setting(Figures figures) {
        OptionalDouble total = figures.ohms("setting.total");
        OptionalDouble trimmer = figures.ohms("setting.trimmer");
        if (total.isEmpty() || trimmer.isEmpty() || figures.readLeg().isEmpty()) {
            return List.of();
        }
        double expected = Ranges.parallel(figures.readLeg().getAsDouble(), trimmer.getAsDouble());
        double slack = 0.03 * expected + 3 * figures.ohmUncertainty(expected);
        if (Math.abs(total.getAsDouble() - expected) > slack) {
            return List.of(
                    blocks("verdict.setting-differs", "", Display.ohms(expected), Display.ohms(total.getAsDouble())));
        }
        List<Finding> findings = new ArrayList<>(Doubts.difference(figures));
        findings.addAll(Doubts.offTheLine(figures));
        return findings;
    }

    static List<Finding> choose(Figures figures) {
        boolean asked = figures.choice("res.series").isPresent()
                && figures.choice("res.tolerance").isPresent()
                && figures.choice("res.most").isPresent();
        if (asked && figures.resistors().isEmpty()) {
            return List.of(blocks("verdict.no-resistor", ""));
        }
        List<Finding> findings = new ArrayList<>(whySimpler(figures));
        if (figures.resistorFloor().isPresent() && figures.chosen().isPresent()) {
            findings.add(says(
                    "verdict.resistor-holds",
                    figures.sign().volts(figures.chosen().get().lowest()),
                    figures.sign().volts(figures.chosen().get().highest()),
                    figures.sign().volts(figures.resistorFloor().getAsDouble())));
        }
        return findings;
    }

    /** Where a second part would come nearer, and why it is not the first in the list all the same. */
    private static List<Finding> whySimpler(Figures figures) {
        List<Resistors.Candidate> list = figures.resistors();
        if (list.isEmpty()) {
            return List.of();
        }
        return Resistors.nearerWithMore(list, figures.resistorTarget())
                .map(nearer -> says(
                        "verdict.resistor-simpler",
                        list.get(0).partsInWords(),
                        nearer.partsInWords(),
                        Display.millivolts(list.get(0).voltage() - nearer.voltage()),
                        Display.of(200 * Resistors.WORTH_OF_A_PART, Unit.PERCENT)))
                .stream()
                .toList();
    }

    static List<Finding> hand(Figures figures) {
        OptionalDouble ohms = figures.ohms("hand.ohms");
        Optional<Circuit> circuit = figures.circuit();
        OptionalDouble floor = figures.resistorFloor();
        if (ohms.isEmpty() || circuit.isEmpty() || floor.isEmpty()) {
            return List.of();
        }
        double volts = circuit.get().magnitude(ohms.getAsDouble());
        return volts < floor.getAsDouble() - figures.voltResolution(volts) / 2
                ? List.of(blocks(
                        "verdict.hand-too-low",
                        "choose",
                        figures.sign().volts(volts),
                        figures.sign().volts(floor.getAsDouble())))
                : List.of(says("verdict.hand-gives", Doubts.volts(figures, ohms.getAsDouble(), volts)));
    }

    // ---- fit
    // ---------------------------------------------------------------------------------------------------------

    static List<Finding> fit(Figures figures) {
        List<Finding> findings = new ArrayList<>(LegProof.oftenInVain(figures));
        differs(figures, "fit.pair", legPair(figures), "verdict.soldered-elsewhere", "")
                .ifPresent(findings::add);
        if (figures.choice("fit.left")
                .filter(left -> !left.equals("resistor-only"))
                .isPresent()) {
            findings.add(blocks("verdict.trimmer-left", ""));
        }
        return findings;
    }

    static List<Finding> fitSoak(Figures figures) {
        List<Finding> findings = new ArrayList<>(seenWell(figures, "fit.seen"));
        findings.addAll(Doubts.offTheLine(figures));
        OptionalDouble before = figures.number("temp.reg");
        OptionalDouble after = figures.number("fit.temp.reg");
        if (before.isPresent() && after.isPresent() && after.getAsDouble() > before.getAsDouble() + 2) {
            findings.add(warns("verdict.regulator-hotter", Display.of(after.getAsDouble(), Unit.CELSIUS)));
        }
        findings.addAll(HeatFindings.measured(figures));
        return findings;
    }

    static List<Finding> record(Figures figures) {
        return figures.choice("record.undo")
                        .filter(undo -> !undo.equals("added-resistor"))
                        .isPresent()
                ? List.of(blocks("verdict.undo-wrong", ""))
                : List.of();
    }

    // ---- helpers
    // -----------------------------------------------------------------------------------------------------

    private static Optional<Finding> differs(Figures figures, String field, String right, String key, String backTo) {
        return figures.choice(field).filter(option -> !option.equals(right)).map(option -> blocks(key, backTo));
    }

    private static List<Finding> asList(Optional<Finding> finding) {
        return finding.map(List::of).orElse(List.of());
    }

    static Finding says(String key, String... values) {
        return new Finding(Kind.SAYS, Message.of(key, values), "");
    }

    static Finding warns(String key, String... values) {
        return new Finding(Kind.WARNS, Message.of(key, values), "");
    }

    static Finding blocks(String key, String backTo, String... values) {
        return new Finding(Kind.BLOCKS, Message.of(key, values), backTo);
    }

    static Finding stops(String key) {
        return stops(key, "");
    }

    static Finding stops(String key, String backTo) {
        return new Finding(Kind.STOPS, Message.of(key), backTo);
    }

    /** Where work starts again after something went wrong with the board on: the last proof with the power off. */
    static final Map<Phase, String> REWORK = Map.of(
            Phase.IDENTIFY, "clip",
            Phase.BASELINE, "legs",
            Phase.FIRST_POWER, "proof",
            Phase.STEP_DOWN, "proof",
            Phase.FAULT, "proof",
            Phase.BACK_OFF, "proof",
            Phase.RESISTOR, "setting",
            Phase.FIT, "fit");
}
