package railtrim.parts;

import java.util.ArrayList;
import java.util.List;
import railtrim.circuit.Circuit;
import railtrim.parts.Trimmers.Candidate;
import railtrim.parts.Trimmers.InHand;
import railtrim.parts.Trimmers.Verdict;
import railtrim.parts.Trimmers.Wish;
import railtrim.quantity.BadInput;
import railtrim.quantity.Display;
import railtrim.quantity.Message;
import railtrim.quantity.RailSign;
import railtrim.quantity.Unit;

/** Holds one trimmer after the other against the wish. */
final class TrimmerCheck {
    private final Circuit circuit;
    private final RailSign sign;
    private final Wish wish;
    /** The lowest start that is allowed, volts. */
    private final double startLimit;
    /** Ohms across the leg at the lowest wished voltage. */
    private final double lowestAdded;

    private final double stop;

    TrimmerCheck(Circuit circuit, Wish wish) {
        this.circuit = circuit;
        this.sign = circuit.place().sign();
        this.wish = wish;
        check(
                wish.lowest() > circuit.reference() && wish.lowest() < circuit.stock(),
                "parts.trimmer.lowest",
                sign.volts(wish.lowest()),
                sign.volts(circuit.reference()),
                sign.volts(circuit.stock()));
        this.startLimit = circuit.stock() * (1 - wish.startDrop());
        check(
                wish.startDrop() > 0 && startLimit > wish.lowest(),
                "parts.trimmer.drop",
                Display.of(100 * wish.startDrop(), Unit.PERCENT),
                sign.volts(startLimit),
                sign.volts(wish.lowest()),
                sign.volts(circuit.stock()));
        check(
                wish.tolerance() >= 0 && wish.tolerance() < 1,
                "parts.trimmer.tolerance",
                Display.of(100 * wish.tolerance(), Unit.PERCENT));
        check(
                !wish.turns().isEmpty() && wish.turns().stream().allMatch(turns -> turns >= 1 && turns <= 100),
                "parts.trimmer.turns",
                wish.turns().toString());
        this.lowestAdded = circuit.addedFor(wish.lowest());
        this.stop = Trimmers.stopResistor(circuit, wish.lowest());
    }

    /** @param fine ohms of the fine trimmer in series, 0 for none */
    Candidate candidate(double nominal, double fine, int turns) {
        boolean pair = fine > 0;
        double total = nominal + fine;
        double end = Trimmers.endResistance(nominal) + (pair ? Trimmers.endResistance(fine) : 0);
        double startWorst = circuit.magnitude(total * (1 - wish.tolerance()));
        double lowest = circuit.magnitude(stop * (1 - Trimmers.STOP_TOLERANCE));
        double coarseLowest = millivoltsPerTurn(nominal, turns, lowestAdded);
        double perTurnLowest = pair ? millivoltsPerTurn(fine, turns, lowestAdded) : coarseLowest;
        double endAcross = circuit.magnitude(stop) - circuit.reference();
        double endCurrent = endAcross / stop;

        List<Message> refusals = new ArrayList<>();
        if (startWorst < startLimit) {
            refusals.add(Message.of(
                    "parts.trimmer.starts-low",
                    sign.volts(startWorst),
                    sign.volts(startLimit),
                    Display.ohms(total * (1 - wish.tolerance())),
                    Display.ohms(Trimmers.leastMaximum(circuit, wish.startDrop()))));
        }
        if (end > lowestAdded) {
            refusals.add(Message.of(
                    "parts.trimmer.reach",
                    Display.ohms(end),
                    sign.volts(circuit.magnitude(end)),
                    sign.volts(wish.lowest())));
        }

        List<Message> cares = new ArrayList<>();
        if (perTurnLowest > Trimmers.COARSE_MILLIVOLTS_PER_TURN) {
            double finest = perTurnLowest * Trimmers.FINEST_MOVE;
            cares.add(Message.of(
                    finest > 1000 * Trimmers.JUMP * circuit.stock() ? "parts.trimmer.jumps" : "parts.trimmer.coarse",
                    Display.millivolts(perTurnLowest / 1000),
                    sign.volts(wish.lowest()),
                    Display.millivolts(finest / 1000)));
        }
        double coarseMove = coarseLowest * Trimmers.FINEST_MOVE;
        if (pair && coarseMove > 1000 * Trimmers.JUMP * circuit.stock()) {
            cares.add(Message.of(
                    "parts.trimmer.coarse-one-jumps",
                    Display.millivolts(coarseMove / 1000),
                    sign.volts(wish.lowest())));
        }
        if (turns == 1) {
            cares.add(Message.of("parts.trimmer.one-turn"));
        }
        if (endCurrent > Trimmers.wiperLimit(nominal)) {
            cares.add(Message.of(
                    "parts.trimmer.wiper",
                    Display.of(endCurrent, Unit.AMPERE),
                    Display.of(Trimmers.wiperLimit(nominal), Unit.AMPERE)));
        }
        Verdict verdict = !refusals.isEmpty() ? Verdict.REFUSED : cares.isEmpty() ? Verdict.GOOD : Verdict.USABLE;

        List<Message> reasons = new ArrayList<>(refusals);
        if (refusals.isEmpty()) {
            reasons.add(Message.of("parts.trimmer.starts-safe", sign.volts(startWorst), sign.volts(startLimit)));
            if (pair) {
                reasons.add(Message.of(
                        "parts.trimmer.pair",
                        Display.millivolts(perTurnLowest / 1000),
                        sign.volts(wish.lowest()),
                        String.valueOf(Math.round(nominal / fine)),
                        Display.millivolts(coarseLowest / 1000)));
                reasons.add(Message.of("parts.trimmer.pair-use"));
            }
            reasons.addAll(cares);
            reasons.add(Message.of(
                    "parts.trimmer.stop", Display.part(stop), sign.volts(circuit.reference()), sign.volts(lowest)));
        }
        return new Candidate(
                nominal,
                fine,
                turns,
                wish.tolerance(),
                circuit.magnitude(total),
                startWorst,
                circuit.magnitude(0),
                lowest,
                stop,
                millivoltsPerTurn(pair ? fine : nominal, turns, total),
                perTurnLowest,
                endCurrent,
                endAcross * endCurrent,
                verdict,
                reasons);
    }

    InHand inHand(double maximum, double maximumExpanded, double minimum, double minimumExpanded) {
        check(
                maximum > 0 && Double.isFinite(maximum) && minimum >= 0 && Double.isFinite(minimum),
                "parts.trimmer.ends",
                Display.ohms(maximum),
                Display.ohms(minimum));
        check(
                maximumExpanded >= 0 && minimumExpanded >= 0,
                "parts.trimmer.ends",
                Display.ohms(maximum),
                Display.ohms(minimum));
        double least = Math.max(0, maximum - maximumExpanded);
        double start = circuit.magnitude(maximum);
        double startWorst = circuit.magnitude(least);
        double lowestExpected = circuit.magnitude(minimum);
        double lowest = circuit.magnitude(Math.max(0, minimum - minimumExpanded));

        List<Message> refusals = new ArrayList<>();
        if (minimum + minimumExpanded >= least) {
            refusals.add(Message.of("parts.trimmer.ends-alike", Display.ohms(maximum), Display.ohms(minimum)));
        } else if (startWorst < startLimit) {
            refusals.add(Message.of(
                    "parts.trimmer.starts-low",
                    sign.volts(startWorst),
                    sign.volts(startLimit),
                    Display.ohms(least),
                    Display.ohms(Trimmers.leastMaximum(circuit, wish.startDrop()))));
        } else if (lowestExpected >= startLimit) {
            refusals.add(Message.of(
                    "parts.trimmer.reach",
                    Display.ohms(minimum),
                    sign.volts(lowestExpected),
                    sign.volts(wish.lowest())));
        }

        List<Message> cares = new ArrayList<>();
        if (lowestExpected < wish.lowest()) {
            cares.add(Message.of(
                    "parts.trimmer.goes-below", sign.volts(lowest), sign.volts(wish.lowest()), Display.part(stop)));
        } else if (lowestExpected - wish.lowest() > Trimmers.SHORTENED * (circuit.stock() - wish.lowest())) {
            cares.add(Message.of(
                    "parts.trimmer.stays-above",
                    Display.ohms(minimum),
                    sign.volts(lowestExpected),
                    sign.volts(wish.lowest())));
        }
        Verdict verdict = !refusals.isEmpty() ? Verdict.REFUSED : cares.isEmpty() ? Verdict.GOOD : Verdict.USABLE;
        List<Message> reasons = new ArrayList<>(refusals);
        if (refusals.isEmpty()) {
            reasons.add(Message.of("parts.trimmer.starts-safe", sign.volts(startWorst), sign.volts(startLimit)));
            reasons.addAll(cares);
        }
        return new InHand(start, startWorst, lowest, verdict, reasons);
    }

    private double millivoltsPerTurn(double nominal, int turns, double added) {
        return 1000 * circuit.sensitivity(added) * nominal / turns;
    }

    private static void check(boolean holds, String key, String... values) {
        if (!holds) {
            throw BadInput.of(key, values);
        }
    }
}
