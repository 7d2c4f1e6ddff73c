package railtrim.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import railtrim.circuit.Outline;
import railtrim.circuit.PinRole;
import railtrim.circuit.RegulatorFamilies;
import railtrim.parts.Resistors;
import railtrim.parts.Trimmers;
import railtrim.procedure.Field.Option;
import railtrim.quantity.Display;
import railtrim.quantity.Message;

/** The lists of answers the steps offer. */
final class Choices {
    private static final int TRIMMERS_SHOWN = 8;
    private static final int PAIRS_SHOWN = 3;
    private static final int RESISTORS_SHOWN = 8;

    /** Meters of older jobs, whose accuracy was typed for all ranges at once, with what they can show and one more. */
    static final Map<String, Integer> TYPED_METERS = Map.of("typed-2000", 2000, "typed", 6000, "typed-50000", 50_000);

    private Choices() {}

    static List<Option> plain(String field, String... ids) {
        return named("option." + field + ".", ids);
    }

    /** A job begun when one accuracy was typed for all ranges goes on with it. */
    static List<Option> meters(Figures figures) {
        List<Option> options = new ArrayList<>(plain("meter.class", "basic", "middle", "fine", MeterRows.CLASS));
        figures.choice("meter.class")
                .filter(TYPED_METERS::containsKey)
                .ifPresent(typed -> options.addAll(plain("meter.class", typed)));
        return options;
    }

    static List<Option> pairs(String... ids) {
        return named("option.pair.", ids);
    }

    static List<Option> seen(String... more) {
        List<Option> options = new ArrayList<>(named("option.seen.", "well", "glitch", "reset", "errors", "smoke"));
        options.addAll(1, named("option.seen.", more));
        return options;
    }

    static List<Option> roles() {
        return named(
                "option.role.", Arrays.stream(PinRole.values()).map(PinRole::id).toArray(String[]::new));
    }

    private static List<Option> named(String prefix, String... ids) {
        return Arrays.stream(ids)
                .map(id -> new Option(id, Message.of(prefix + id)))
                .toList();
    }

    static List<Option> families(RegulatorFamilies families) {
        List<Option> options = families.all().stream()
                .map(family -> new Option(family.id(), Message.of("option.reg.family.named", family.name())))
                .collect(Collectors.toCollection(ArrayList::new));
        options.add(new Option("other", Message.of("option.reg.family.other")));
        return options;
    }

    static List<Option> outlines() {
        return Arrays.stream(Outline.values())
                .map(outline -> new Option(
                        outline.id(),
                        outline.plain()
                                ? Message.of("option.reg.outline.plain", String.valueOf(outline.pins()))
                                : Message.of("option.reg.outline.named", outline.id())))
                .toList();
    }

    // ---- candidates ----

    static String trimmerId(Trimmers.Candidate candidate) {
        String one = Math.round(candidate.nominal()) + "x" + candidate.turns();
        return candidate.pair() ? one + "+" + Math.round(candidate.fine()) + "x" + candidate.turns() : one;
    }

    /** Not pairs alone: a person may have a single trimmer in the drawer. */
    static List<Option> trimmers(Figures figures) {
        List<Trimmers.Candidate> fit = figures.trimmers().stream()
                .filter(candidate -> candidate.verdict() != Trimmers.Verdict.REFUSED)
                .toList();
        List<Trimmers.Candidate> pairs =
                fit.stream().filter(Trimmers.Candidate::pair).limit(PAIRS_SHOWN).toList();
        return fit.stream()
                .filter(candidate -> !candidate.pair() || pairs.contains(candidate))
                .limit(TRIMMERS_SHOWN)
                .map(candidate -> new Option(trimmerId(candidate), trimmerInWords(figures, candidate)))
                .toList();
    }

    private static Message trimmerInWords(Figures figures, Trimmers.Candidate candidate) {
        boolean good = candidate.verdict() == Trimmers.Verdict.GOOD;
        String key = candidate.pair()
                ? good ? "option.trimmer.pick.pair-good" : "option.trimmer.pick.pair-usable"
                : good ? "option.trimmer.pick.good" : "option.trimmer.pick.usable";
        return Message.of(
                key,
                Display.part(candidate.nominal()),
                String.valueOf(candidate.turns()),
                figures.sign().volts(candidate.startWorst()),
                candidate.stopResistor() > 0 ? Display.part(candidate.stopResistor()) : "–",
                Display.millivolts(candidate.millivoltsPerTurnLowest() / 1000),
                candidate.pair() ? Display.part(candidate.fine()) : "–");
    }

    static String resistorId(Resistors.Candidate candidate) {
        return candidate.arrangement().id() + ":"
                + candidate.values().stream().map(Choices::shortest).collect(Collectors.joining("+"));
    }

    private static String shortest(double ohms) {
        return new java.math.BigDecimal(String.valueOf(ohms))
                .stripTrailingZeros()
                .toPlainString();
    }

    static List<Option> resistors(Figures figures) {
        List<Resistors.Candidate> all = figures.resistors();
        return all.stream()
                .filter(candidate -> all.indexOf(candidate) < RESISTORS_SHOWN
                        || candidate.arrangement() == Resistors.Arrangement.SINGLE)
                .map(candidate -> new Option(
                        resistorId(candidate),
                        Message.of(
                                "option.res.pick.named",
                                candidate.partsInWords(),
                                figures.sign().volts(candidate.voltage()),
                                figures.sign().volts(candidate.lowest()),
                                figures.sign().volts(candidate.highest()))))
                .toList();
    }
}
