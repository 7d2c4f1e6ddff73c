package railtrim.practice;

import java.util.EnumSet;
import java.util.Set;
import railtrim.procedure.Field;
import railtrim.procedure.PowerNeed;
import railtrim.procedure.Step;
import railtrim.quantity.Unit;

/** Which slips can be made at which question. */
final class SlipPlaces {
    /** Volts that are copied or chosen, not read off a meter. */
    private static final Set<String> NOT_MEASURED = Set.of(
            "rail.highest",
            "rated.low",
            "rated.high",
            "sheet.reference",
            "sheet.reference.low",
            "sheet.reference.high",
            "sheet.dropout",
            "sheet.input.highest",
            "aim.lowest",
            "target.volts");

    /** Ohms that are measured between pins of the board, not on a part by itself. */
    private static final Set<String> ON_THE_BOARD = Set.of(
            "leg.ohms",
            "leg.reversed",
            "leg.again",
            "other.ohms",
            "rail.ohms",
            "solder.leg",
            "proof.total",
            "proof.other",
            "proof.rail",
            "smooth.low",
            "smooth.total",
            "down.max",
            "set.max",
            "setting.total",
            "fit.total",
            "fit.other",
            "fit.rail");

    private static final Set<String> KILLERS =
            Set.of("place.pair", "place.leg", "clip.pair", "trimmer.at", "fit.left", "reg.family", "reg.outline");
    private static final Set<String> OFF_WORK =
            Set.of("legs", "agree", "solder", "proof", "smooth", "setting", "fit", "fit.proof");

    private SlipPlaces() {}

    static Set<Slip> at(Field field, Step step) {
        Set<Slip> slips = EnumSet.of(Slip.NEXT_DAY);
        if (field instanceof Field.Number number) {
            number(number, slips);
        } else if (field instanceof Field.Switch change) {
            slips.add(change.on() ? Slip.LEFT_OFF : Slip.LEFT_ON);
            if (change.on() && Set.of("first.on", "down.on", "set.on").contains(step.id())) {
                slips.add(Slip.TRIMMER_AT_MINIMUM);
            }
        } else if (KILLERS.contains(field.id()) || field.id().startsWith("pin.")) {
            slips.add(Slip.WRONG_ANSWER);
        }
        if (OFF_WORK.contains(step.id()) && step.power() == PowerNeed.OFF) {
            slips.add(Slip.LIVE);
        }
        byHand(field.id(), slips);
        return slips;
    }

    private static void number(Field.Number number, Set<Slip> slips) {
        boolean volts = number.unit() == Unit.VOLT;
        if (!volts && number.unit() != Unit.OHM) {
            slips.addAll(Set.of(Slip.DECIMAL, Slip.COMMA, Slip.UNIT));
            return;
        }
        slips.addAll(Set.of(Slip.PREFIX, Slip.DECIMAL, Slip.COMMA, Slip.UNIT));
        if (!NOT_MEASURED.contains(number.id())) {
            slips.addAll(Set.of(Slip.STALE, Slip.RANGE));
            if (volts && !number.id().equals("meter.proof") || ON_THE_BOARD.contains(number.id())) {
                slips.add(Slip.PROBE_SLIP);
            }
            if (volts) {
                slips.add(Slip.SWAPPED_PROBES);
            }
        }
    }

    private static void byHand(String field, Set<Slip> slips) {
        switch (field) {
            case "meter.zero" -> slips.add(Slip.NO_LEAD_ZERO);
            case "leg.ohms" -> slips.add(Slip.SWAPPED_LEGS);
            case "solder.leg" -> slips.add(Slip.WRONG_LEG);
            case "solder.pair", "fit.pair" ->
                slips.addAll(Set.of(Slip.WRONG_LEG, Slip.WRONG_PIN, Slip.BRIDGE, Slip.DRY_JOINT));
            case "down.volts", "set.volts" -> slips.add(Slip.OVERSHOOT);
            case "down.seen", "first.seen", "soak.seen", "cold.seen", "fit.seen" -> slips.add(Slip.MISSED_FAULT);
            case "cool.how", "fault.again" -> slips.add(Slip.NO_COLD_START);
            case "res.pick" -> slips.add(Slip.SWAPPED_RESISTOR);
            default -> {}
        }
    }
}
